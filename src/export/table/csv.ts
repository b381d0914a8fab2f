/**
 * Tables as comma-separated text (RFC 4180): comma, CRLF, a header line, quotes where a cell needs them. Numbers are written
 * so that reading them gives the same number again. A text cell that a spreadsheet would take for a formula gets an
 * apostrophe in front (= + - @, tab and line ends, and their full-width forms; OWASP, "CSV Injection" [memory]); so does one
 * that begins with an apostrophe, so that taking away one gives back what was there.
 */

export type Cell = string | number | null;

const FORMULA = /^['=+\-@\t\r\n＝＋－＠]/;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

function textCell(text: string): string {
  const guarded = FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return textCell(cell);
  return Number.isFinite(cell) ? String(cell + 0) : '';
}

/** One table: a header and its rows, every row as long as the header. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** The table as text. */
export const csvText = ({ header, rows }: Table): string =>
  [header, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
