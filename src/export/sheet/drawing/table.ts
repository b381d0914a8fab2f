/**
 * Tables of the sheet: rows of a bold head and words beside it, set into a place as large as they can be read, at most as
 * many as fit it. Millimetres.
 */
import { t } from '../../../language/index';
import type { Mm } from '../../../units/types';
import type { SheetRow, SheetTable } from '../types';
import { frame, LINE, NOTE, rule, THICK, words, wrap, type Measure } from './pen';

/** From the size that reads at a metre down to the least that still reads in the hand. */
export const SIZES: readonly Mm[] = [3.2, 2.9, 2.6, 2.4];
const TITLE: Mm = 3.4;
const TITLE_ROOM: Mm = 5.2;
const GAP: Mm = 1.6;
/** Between the columns of a table. */
const BETWEEN: Mm = 4;
/** The head's column is at most this share of a row. */
const HEAD_SHARE = 0.34;
/** Room for a box to tick. */
const TICK: Mm = 5;
/** Words of an actual time are written on a line of this length. */
const ACTUAL: Mm = 24;

interface SetRow {
  readonly head: readonly string[];
  readonly body: readonly string[];
  readonly tick: boolean;
  readonly height: Mm;
}
/** A table set at one size. */
export interface SetTable {
  readonly size: Mm;
  readonly columns: number;
  readonly width: Mm;
  readonly headWidth: Mm;
  readonly hint: readonly string[];
  readonly rows: readonly SetRow[];
  readonly table: SheetTable;
}

export interface Setting {
  readonly size: Mm;
  readonly columns: number;
  /** Of the whole table. */
  readonly width: Mm;
  readonly measure: Measure;
}

const columnWidth = ({ width, columns }: Pick<Setting, 'width' | 'columns'>): Mm =>
  (width - BETWEEN * (columns - 1)) / columns;

function headWidthOf(rows: readonly SheetRow[], { size, measure }: Setting, column: Mm): Mm {
  const widest = rows.reduce((most, { head }) => Math.max(most, measure(head, size, true)), 0);
  return Math.min(widest, HEAD_SHARE * column) + size * 0.6;
}

/** Rows with a box to tick have their head on a line of its own, with the line for the actual time. */
function setRow({ head, body, tick = false }: SheetRow, set: Setting, column: Mm, headWidth: Mm): SetRow {
  const { size, measure } = set;
  const lines = wrap(body, column - (tick ? TICK : headWidth), size, false, measure);
  const heads = tick ? [head] : wrap(head, headWidth - size * 0.6, size, true, measure);
  const count = tick ? lines.length + 1 : Math.max(lines.length, heads.length);
  return { head: heads, body: lines, tick, height: count * size * LINE + size * (tick ? 0.5 : 0.15) };
}

export function setTable(table: SheetTable, set: Setting): SetTable {
  const column = columnWidth(set);
  const headWidth = headWidthOf(table.rows, set, column);
  const rows = table.rows.map((row) => setRow(row, set, column, headWidth));
  const hint = table.hint === '' ? [] : wrap(table.hint, set.width, set.size * 0.9, false, set.measure);
  return { size: set.size, columns: set.columns, width: set.width, headWidth, hint, rows, table };
}

const hintHeight = ({ hint, size }: SetTable): Mm => hint.length * size * 0.9 * LINE;
const restHeight = ({ size }: SetTable): Mm => size * LINE;

/** Rows of each column, filled from the first one on; as many as fit a height. */
function filled({ rows, columns }: SetTable, height: Mm): SetRow[][] {
  const full: SetRow[][] = [[]];
  let used = 0;
  for (const row of rows) {
    if (used + row.height > height + 1e-6) {
      if (full.length === columns) break;
      full.push([]);
      used = 0;
    }
    if (row.height > height + 1e-6) break;
    full.at(-1)!.push(row);
    used += row.height;
  }
  return full;
}

const count = (columns: readonly (readonly SetRow[])[]): number =>
  columns.reduce((sum, rows) => sum + rows.length, 0);

/** Height of all its rows in one column, with title and hint. */
export const tableHeight = (set: SetTable): Mm =>
  TITLE_ROOM + hintHeight(set) + set.rows.reduce((sum, { height }) => sum + height, 0) + GAP;

/** Whether all rows fit a height. */
export const fits = (set: SetTable, height: Mm): boolean =>
  count(filled(set, height - TITLE_ROOM - hintHeight(set) - GAP)) === set.rows.length;

function drawRow(row: SetRow, { size, headWidth }: SetTable, x: Mm, y: Mm, width: Mm): string[] {
  const line = (i: number): Mm => y + size + i * size * LINE;
  const left = x + (row.tick ? TICK : 0);
  const heads = row.head.map((text, i) => words(text, left, line(i), { size, bold: true }));
  const bodies = row.body.map((text, i) =>
    words(text, x + (row.tick ? TICK : headWidth), line(row.tick ? i + 1 : i), { size }),
  );
  if (!row.tick) return [...heads, ...bodies];
  const [end, base] = [x + width, line(0)];
  const actual = words(t('actual'), end - ACTUAL - 1, base, {
    size: size * 0.85,
    align: 'end',
    colour: NOTE,
  });
  return [
    frame(x, y + 0.3, 3.4, 3.4, 0.3),
    ...heads,
    actual,
    rule(end - ACTUAL, base + 0.5, end, base + 0.5),
    ...bodies,
  ];
}

/** The last rows that do not fit are counted in words. */
function shownRows(set: SetTable, height: Mm): { columns: SetRow[][]; left: number } {
  const all = filled(set, height);
  if (count(all) === set.rows.length) return { columns: all, left: 0 };
  const columns = filled(set, Math.max(0, height - restHeight(set)));
  return { columns, left: set.rows.length - count(columns) };
}

/** Marks of tables, and what of them had no room: tables of the rows that are left. */
export interface Tables {
  readonly marks: readonly string[];
  readonly left: readonly SheetTable[];
}

const CONTINUED = ', continued';

const leftOf = ({ table }: SetTable, left: number): SheetTable[] =>
  left === 0
    ? []
    : [
        {
          ...table,
          title: table.title.endsWith(CONTINUED) ? table.title : table.title + CONTINUED,
          hint: '',
          rows: table.rows.slice(-left),
        },
      ];

/** A table drawn into a place; the marks never pass its lower end. */
export function drawTable(set: SetTable, x: Mm, y: Mm, height: Mm): Tables {
  const { size, width, table } = set;
  const marks = [words(table.title, x, y + TITLE, { size: TITLE, bold: true })];
  marks.push(rule(x, y + TITLE + 0.9, x + width, y + TITLE + 0.9, THICK / 2));
  const small = size * 0.9;
  set.hint.forEach((text, i) =>
    marks.push(words(text, x, y + TITLE_ROOM + small + i * small * LINE, { size: small, colour: NOTE })),
  );
  const top = y + TITLE_ROOM + hintHeight(set);
  const room = height - TITLE_ROOM - hintHeight(set) - GAP;
  const { columns, left } = shownRows(set, room);
  const column = columnWidth(set);
  for (const [c, rows] of columns.entries()) {
    let at = top;
    for (const row of rows) {
      marks.push(...drawRow(row, set, x + c * (column + BETWEEN), at, column));
      at += row.height;
    }
  }
  if (left > 0)
    marks.push(
      words(t(table.rest, { count: left }), x, y + height - GAP, {
        size,
        bold: true,
      }),
    );
  return { marks, left: leftOf(set, left) };
}
