/**
 * A table of parts from a spreadsheet, or from the files that are handed over, as rows of values. What the table does not
 * say of itself is told from it (separator, decimal sign, columns) and may be chosen instead. Nothing here knows the plate.
 */
import { fail, ok, type Result } from '../../layout/result';
import { readRow, type Decimal, type Entry } from './cells';
import { headingColumns, positionColumns, type Column, type TableField } from './columns';
import { guessSeparator, splitTable, type Separator, type SplitRow } from './split';

/** null, or a column that is not named: as told from the table. */
export interface TableChoices {
  readonly separator: Separator | null;
  readonly decimal: Decimal | null;
  readonly fields: Readonly<Record<number, TableField | null>>;
}
export interface TableRow {
  /** Of the text, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  readonly entry: Result<Entry>;
}
export interface TableReading {
  readonly separator: Separator;
  readonly decimal: Decimal;
  /** Numbers of both ways of writing stand in it: somebody has to say which one holds. */
  readonly mixed: boolean;
  /** Every number with the decimal sign might as well mean thousands: "1,234". */
  readonly thousands: boolean;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
}

export const AS_TOLD: TableChoices = { separator: null, decimal: null, fields: {} };
/** Characters of a table: 5,000 parts with room to spare. */
const LONGEST = 2_000_000;
const NUMBERS: readonly (TableField | null)[] = ['x', 'y', 'turn', 'timeFactor'];

/** How many numbers have a comma, how many a point, and how many of them may set thousands apart. */
function decimalsIn(columns: readonly Column[], rows: readonly SplitRow[]) {
  const numbers = rows.flatMap(({ cells }) =>
    cells.filter((_, i) => NUMBERS.includes(columns[i]?.field ?? null)),
  );
  const count = (sign: RegExp): number => numbers.filter((cell) => sign.test(cell)).length;
  return {
    commas: count(/\d,\d|^\D?,\d/),
    points: count(/\d\.\d|^\D?\.\d/),
    thousands: count(/^[+\-−]?[1-9]\d{0,2}[.,]\d{3}(?!\d)/),
  };
}

/** Where a title stands alone above the headings, they are the first row with several cells. */
function headed(split: readonly SplitRow[]) {
  const first = split.findIndex(({ cells }) => cells.filter((cell) => cell !== '').length > 1);
  const headings = headingColumns(split[Math.max(0, first)]?.cells ?? []);
  return { headings, body: headings ? split.slice(Math.max(0, first) + 1) : split };
}

function chosenColumns(columns: readonly Column[], fields: TableChoices['fields']): readonly Column[] {
  return columns.map((column, i) => {
    const chosen = fields[i];
    if (chosen !== undefined) return { ...column, field: chosen };
    const elsewhere = Object.values(fields).includes(column.field);
    return elsewhere ? { ...column, field: null } : column;
  });
}

/** Reads a table. Fault: table-too-long. */
export function readTable(text: string, choices: TableChoices = AS_TOLD): Result<TableReading> {
  if (text.length > LONGEST) return fail('table-too-long', { found: text.length, limit: LONGEST });
  const plain = text.replace(/^\uFEFF/, '');
  const separator = choices.separator ?? guessSeparator(plain);
  const split = splitTable(plain, separator);
  const { headings, body } = headed(split);
  const width = Math.max(
    0,
    ...(headings ? [headings.length] : body.slice(0, 1).map(({ cells }) => cells.length)),
  );
  const columns = chosenColumns(headings ?? positionColumns(width), choices.fields);
  const { commas, points, thousands } = decimalsIn(columns, body);
  const decimal = choices.decimal ?? (commas > points ? ',' : '.');
  const rows = body.map((row): TableRow => ({ ...row, entry: readRow(row.cells, columns, decimal) }));
  const signs = {
    mixed: commas > 0 && points > 0,
    thousands: thousands > 0 && thousands === commas + points,
  };
  return ok({ separator, decimal, ...signs, columns, rows });
}
