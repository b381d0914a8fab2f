/**
 * What the copies form makes of its four texts: counts are whole numbers from 1 to 100, pitches lengths of up to 1 m in
 * either sense. Millimetres.
 */
import { t, type Text } from '../../language/index';
import type { Rows } from '../../commands/operations';
import { MOST_COPIES, partBox } from '../../commands/operations';
import { MOST_PARTS } from '../../layout/limits';
import { ok, type Fault, type Result } from '../../layout/result';
import type { Layout, PartId } from '../../layout/types';
import { formatField } from '../../units/format';
import { parseLength, parseNumber } from '../../units/parse';
import { readField, type Reading } from '../controls/readField';

/** Two in x, one in y, a spacing apart, rounded up to 0.1 mm. */
export function firstRows(layout: Layout, ids: readonly PartId[]): Rows {
  const boxes = layout.parts.filter(({ id }) => ids.includes(id)).map((part) => partBox(layout, part));
  const span = (low: 'minX' | 'minY', high: 'maxX' | 'maxY'): number => {
    const from = Math.min(...boxes.map((box) => box[low]));
    const to = Math.max(...boxes.map((box) => box[high]));
    return Math.ceil((to - from + layout.limits.spacing_mm) * 10) / 10;
  };
  return { countX: 2, countY: 1, pitchX_mm: span('minX', 'maxX'), pitchY_mm: span('minY', 'maxY') };
}

/** What is no number at all is refused like one out of range: the message then says which counts are accepted. */
function parseCount(text: string): Result<number> {
  const read = parseNumber(text);
  return read.ok ? read : ok(NaN);
}

type RowKey = keyof Rows;
const COUNT = { unit: '', parse: parseCount, min: 1, max: MOST_COPIES, whole: true } as const;
const PITCH = { unit: 'mm', parse: parseLength, min: -1000, max: 1000 } as const;
export const ROW_FIELDS: readonly (Omit<Reading, 'what'> & { readonly key: RowKey; readonly what: Text })[] =
  [
    { key: 'countX', what: 'count in x', ...COUNT },
    { key: 'pitchX_mm', what: 'pitch in x', ...PITCH },
    { key: 'countY', what: 'count in y', ...COUNT },
    { key: 'pitchY_mm', what: 'pitch in y', ...PITCH },
  ];

export type RowTexts = Readonly<Record<RowKey, string>>;

export const rowTexts = (rows: Rows): RowTexts => ({
  countX: formatField(rows.countX),
  countY: formatField(rows.countY),
  pitchX_mm: formatField(rows.pitchX_mm),
  pitchY_mm: formatField(rows.pitchY_mm),
});

export interface RowsRead {
  /** null while a field cannot be read. */
  readonly rows: Rows | null;
  readonly faults: Readonly<Partial<Record<RowKey, Fault>>>;
}

/** What the four texts say: rows, or the fault of each field that cannot be read. */
export function readRows(texts: RowTexts): RowsRead {
  const faults: Partial<Record<RowKey, Fault>> = {};
  const values: Record<string, number> = {};
  for (const { key, what, ...reading } of ROW_FIELDS) {
    const read = readField(texts[key], { ...reading, what: t(what) });
    if (read.ok) values[key] = read.value;
    else faults[key] = read.fault;
  }
  return { rows: Object.keys(faults).length === 0 ? (values as unknown as Rows) : null, faults };
}

/** Copies that rows make of each part; the original counts as the first. */
export const copiesOf = ({ countX, countY }: Rows): number => countX * countY - 1;

/** "Place 5 copies", "Place 1 copy of each part": what the button does. */
export function placeWords(rows: Rows | null, parts: number): string {
  if (rows === null) return t('Place copies');
  const copies = copiesOf(rows);
  if (copies === 0) return t('No copy to place');
  return t(parts > 1 ? 'Place {count} [copy|copies] of each part' : 'Place {count} [copy|copies]', {
    count: copies,
  });
}

/** Why rows that can be read cannot be placed: a layout holds only so many parts. */
export function placeFault(rows: Rows | null, parts: number, held: number): Fault | null {
  const found = rows === null ? 0 : held + copiesOf(rows) * parts;
  return found > MOST_PARTS ? { code: 'too-many-parts', params: { found, limit: MOST_PARTS } } : null;
}
