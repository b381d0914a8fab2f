/**
 * What the check page has to say about an import, as messages of the one table.
 */
import type { Fault, Param } from '../layout/result';
import { SMALL_mm } from './remarks';
import type { OutlineImport } from './types';

/** Worth a look in what was read: closed by a fill, put right, very small, overlapping; one message each. */
export function importRemarks({ closed, repaired, small, overlaps }: OutlineImport): Fault[] {
  const faults: Fault[] = [];
  const add = (code: Fault['code'], count: number, params: Fault['params'] = {}): void => {
    if (count > 0) faults.push({ code, params: { count, ...params } });
  };
  add('import-closed', closed);
  add('import-repaired', repaired);
  add('import-small', small.count, { limit: SMALL_mm, first: small.first[0] ?? '' });
  add('import-overlap', overlaps.count, { first: overlaps.first[0] ?? '', second: overlaps.first[1] ?? '' });
  return faults;
}

/** One message for the unit, the remarks, one for each kind of thing left out. */
export function importProblems(imported: OutlineImport): Fault[] {
  const faults: Fault[] = [];
  if (imported.unit === null) faults.push({ code: 'import-unit-unknown', params: {} });
  if (imported.unit?.from === 'css') faults.push({ code: 'import-unit-px', params: {} });
  faults.push(...importRemarks(imported));
  for (const { kind, count, what, gap_mm } of imported.leftOut) {
    const gap: Param =
      gap_mm === null
        ? { text: 'unknown ¦ gap' }
        : { text: '{value} {unit}', values: { value: Number(gap_mm.toPrecision(3)), unit: 'mm' } };
    faults.push({ code: `left-out-${kind}`, params: { count, what, gap } });
  }
  return faults;
}
