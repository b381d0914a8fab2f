/**
 * What the check page has to say about an import, as messages of the one table.
 */
import type { Fault } from '../layout/result';
import type { OutlineImport } from './types';

/** One message for the unit, one for repairs, one for each kind of thing left out. */
export function importProblems(imported: OutlineImport): Fault[] {
  const faults: Fault[] = [];
  if (imported.unit === null) faults.push({ code: 'import-unit-unknown', params: {} });
  if (imported.repaired > 0) faults.push({ code: 'import-repaired', params: { count: imported.repaired } });
  for (const { kind, count, what, gap_mm } of imported.leftOut) {
    const gap = gap_mm === null ? 'unknown' : `${Number(gap_mm.toPrecision(3))} mm`;
    faults.push({ code: `left-out-${kind}`, params: { count, what, gap } });
  }
  return faults;
}
