/**
 * Tables as comma-separated text (RFC 4180): comma, CRLF, a header line, quotes where a cell needs them; or with semicolons
 * and, for spreadsheets of countries that write so, decimal commas. Numbers are written so that reading them gives the same
 * number again. A text cell that a spreadsheet would take for a formula gets an
 * apostrophe in front (= + - @, tab and line ends, and their full-width forms; OWASP, "CSV Injection" [memory]); so does one
 * that begins with an apostrophe, so that taking away one gives back what was there.
 */
import { finished } from '../../build/finished';

export type Cell = string | number | null;
/** How cells are kept apart and numbers are written. */
export type CsvForm =
  | { readonly separator: ',' | ';'; readonly decimal: '.' }
  | { readonly separator: ';'; readonly decimal: ',' };

/** As RFC 4180 has it. */
export const PLAIN_CSV: CsvForm = { separator: ',', decimal: '.' };

const FORMULA = /^['=+\-@\t\r\n＝＋－＠]/;
const NEEDS_QUOTES = /[",;\r\n]|^\s|\s$/;

function textCell(text: string): string {
  const guarded = FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

function cellText(cell: Cell, { decimal }: CsvForm): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return textCell(cell);
  return Number.isFinite(cell) ? String(cell + 0).replace('.', decimal) : '';
}

/** One table: a header and its rows, every row as long as the header. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** The table as text, row by row. Yields how far it is, 0 to 1. */
export function* csvSteps({ header, rows }: Table, form: CsvForm = PLAIN_CSV): Generator<number, string> {
  const line = (row: readonly Cell[]): string =>
    `${row.map((cell) => cellText(cell, form)).join(form.separator)}\r\n`;
  const lines = [line(header)];
  for (const row of rows) {
    lines.push(line(row));
    yield lines.length / (rows.length + 1);
  }
  return lines.join('');
}

/** The same at once. */
export const csvText = (table: Table, form: CsvForm = PLAIN_CSV): string => finished(csvSteps(table, form));
