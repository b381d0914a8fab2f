/**
 * Text of a spreadsheet as rows of cells: tabs (as the clipboard has it), semicolons or commas between them; a cell in
 * quotes may hold separators, line ends and doubled quotes (RFC 4180). A quote within a cell is an inch sign or a letter
 * like any other. Rows without any text are left out.
 */
export type Separator = '\t' | ';' | ',';
export interface SplitRow {
  /** Of the text, from 1: where the row begins. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** In the order of trust: a decimal comma looks like a separator, a tab never is anything else. */
export const SEPARATORS: readonly Separator[] = ['\t', ';', ','];
/** Rows by which a separator is told. */
const LOOKED_AT = 50;

/** One cell and what ends it. */
const cellPattern = (separator: Separator): RegExp =>
  new RegExp(
    `(?: *"([^"]*(?:""[^"]*)*)" *(?=[${separator}\\r\\n]|$)|([^${separator}\\r\\n]*))(${separator}|\\r\\n|\\r|\\n|$)`,
    'y',
  );

const linesIn = (text: string): number => text.split(/\r\n|\r|\n/).length - 1;

/** The rows of a text, at most so many. Cells are without blanks around them. */
export function splitTable(text: string, separator: Separator, most = Infinity): SplitRow[] {
  const pattern = cellPattern(separator);
  const rows: SplitRow[] = [];
  let [line, begun]: [number, number] = [1, 1];
  let cells: string[] = [];
  while (rows.length < most) {
    const match = pattern.exec(text);
    if (!match) break;
    const [whole, quoted, plain = '', end] = match;
    cells.push(quoted === undefined ? plain.trim() : quoted.replaceAll('""', '"').trim());
    line += linesIn(whole);
    if (end === separator) continue;
    if (cells.some((cell) => cell !== '')) rows.push({ line: begun, cells });
    [cells, begun] = [[], line];
    if (end === '') break;
  }
  return rows;
}

/**
 * The first separator but the comma that divides every row; else the one that gives every row as many cells as the first;
 * else the first that divides at all.
 */
export function guessSeparator(text: string): Separator {
  const counts = (separator: Separator): number[] =>
    splitTable(text, separator, LOOKED_AT).map(({ cells }) => cells.length);
  const trusted = SEPARATORS.find(
    (separator) => separator !== ',' && counts(separator).every((count) => count > 1),
  );
  if (trusted) return trusted;
  const even = SEPARATORS.find((separator) => {
    const [first = 1, ...rest] = counts(separator);
    return first > 1 && rest.every((count) => count === first);
  });
  return even ?? SEPARATORS.find((separator) => counts(separator).some((count) => count > 1)) ?? ',';
}
