/**
 * One row of a table of parts as values. Millimetres, degrees counter-clockwise from +x. A bare number has the unit of its
 * heading, one with a unit its own. The decimal sign is one for the whole table: a cell with the other one is refused, for
 * it could as well set thousands apart. An empty cell says nothing.
 */
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import { fail, ok, type Result } from '../../layout/result';
import type { Part } from '../../layout/types';
import { parseAngle, parseLength, parseNumber } from '../../units/parse';
import { roundMm } from '../../units/round';
import { FIELD_NAMES, type Column, type TableField } from './columns';

export type Decimal = '.' | ',';
/** What a row says of a part; shape and laser as written. A laser of null takes the pin away. */
export interface Entry {
  readonly id?: string;
  readonly shape?: string;
  readonly x?: number;
  readonly y?: number;
  readonly turn?: number;
  readonly laser?: string | null;
  readonly seams?: Part['seams'];
  readonly timeFactor?: number;
}

const FREE = ['free', 'frei', 'yes', 'ja', 'allowed', 'erlaubt'];
const NONE = ['none', 'no', 'nein', 'keine', 'ohne'];
const NO_PIN = ['-', '–', 'none', 'free', 'keiner', 'frei'];
/** As the typed field of a part has it. */
const FACTOR_RANGE = [0.001, 1000] as const;
/** A text cell that a spreadsheet would have taken for a formula was given an apostrophe. */
const GUARDED = /^'(?=['=+\-@＝＋－＠])/;

type Read = Entry[TableField] | undefined;

/** A number without the sign of the other way of writing; undefined where it is none. */
const inOneWay = (text: string, decimal: Decimal): string | undefined =>
  text.includes(decimal === '.' ? ',' : '.') ? undefined : text;

function lengthOf(text: string, scale: number): number | undefined {
  const bare = parseNumber(text);
  const read = bare.ok ? bare : parseLength(text);
  if (!read.ok) return undefined;
  const value = roundMm(bare.ok ? read.value * scale : read.value);
  return Math.abs(value) <= COORDINATE_LIMIT_mm ? value : undefined;
}

function factorOf(text: string): number | undefined {
  const read = parseNumber(text);
  return read.ok && read.value >= FACTOR_RANGE[0] && read.value <= FACTOR_RANGE[1] ? read.value : undefined;
}

function seamsOf(text: string): Part['seams'] | undefined {
  const word = text.toLowerCase();
  if (FREE.includes(word)) return 'free';
  return NONE.includes(word) ? 'none' : undefined;
}

function turnOf(text: string): number | undefined {
  const read = parseAngle(text);
  return read.ok ? read.value : undefined;
}

function valueOf(field: TableField, text: string, scale: number, decimal: Decimal): Read {
  if (field === 'seams') return seamsOf(text);
  if (field === 'laser' && NO_PIN.includes(text.toLowerCase())) return null;
  if (field === 'id' || field === 'shape' || field === 'laser') return text.replace(GUARDED, '');
  const number = inOneWay(text, decimal);
  if (number === undefined) return undefined;
  if (field === 'turn') return turnOf(number);
  return field === 'timeFactor' ? factorOf(number) : lengthOf(number, scale);
}

/** The values of a row. Faults: table-cells, table-value. */
export function readRow(
  cells: readonly string[],
  columns: readonly Column[],
  decimal: Decimal,
): Result<Entry> {
  const found = cells.findLastIndex((cell) => cell !== '') + 1;
  if (found > columns.length) return fail('table-cells', { found, expected: columns.length });
  const entry: Partial<Record<TableField, Read>> = {};
  for (const [i, { field, heading, scale }] of columns.entries()) {
    const text = cells[i] ?? '';
    if (field === null || text === '') continue;
    const value = valueOf(field, text, scale, decimal);
    if (value === undefined)
      return fail('table-value', {
        column: heading ?? { text: FIELD_NAMES[field] },
        found: text.slice(0, 40),
      });
    entry[field] = value;
  }
  return ok(entry as Entry);
}
