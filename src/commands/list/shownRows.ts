/**
 * Which rows of the part list are shown, and in which order: words that all have to be found in a row, and a column to
 * sort by. Names with numbers sort by the number ("P9" before "P10"); equal rows keep the layout's order.
 */
import { t, type Text } from '../../language/index';
import type { SortBy, SortColumn } from '../../store/types';
import type { PartRow } from './partRows';

/** Upwards, downwards, then the layout's own order again. */
export function nextSort(now: SortBy | null, column: SortColumn): SortBy | null {
  if (now?.column !== column) return { column, down: false };
  return now.down ? null : { column, down: true };
}

const names = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const laserText = ({ lasers }: PartRow, laserIds: readonly string[]): string =>
  lasers === ''
    ? ''
    : lasers
        .split(' ')
        .map((index) => laserIds[Number(index)] ?? 'none')
        .join(' ');

const valueOf = (row: PartRow, column: SortColumn, laserIds: readonly string[]): string | number => {
  switch (column) {
    case 'id':
      return row.id;
    case 'shape':
      return row.shape;
    case 'height':
      return row.height_mm;
    case 'turn':
      return row.turn_deg;
    case 'laser':
      return laserText(row, laserIds);
  }
};

const compare = (a: string | number, b: string | number): number =>
  typeof a === 'number' && typeof b === 'number' ? a - b : names.compare(String(a), String(b));

/** A word as the list shows it, and in English. */
const inBoth = (text: Text): string => `${t(text)} ${text}`;

function holds(row: PartRow, words: readonly string[], laserIds: readonly string[]): boolean {
  const tags = [
    row.locked ? inBoth('locked') : '',
    row.hidden ? inBoth('hidden') : '',
    row.pinned ? inBoth('pinned') : '',
    row.mayNotBeCut ? inBoth('no seams') : '',
    row.problem > 0 ? inBoth('problem') : '',
  ];
  const text = [row.id, row.shape, laserText(row, laserIds), ...tags].join(' ').toLowerCase();
  return words.every((word) => text.includes(word));
}

/** The rows that hold all the words, sorted. */
export function shownRows(
  rows: readonly PartRow[],
  search: string,
  sort: SortBy | null,
  laserIds: readonly string[],
): readonly PartRow[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const found = words.length === 0 ? rows : rows.filter((row) => holds(row, words, laserIds));
  if (sort === null) return found;
  const sign = sort.down ? -1 : 1;
  const of = (row: PartRow) => valueOf(row, sort.column, laserIds);
  return [...found].sort((a, b) => sign * compare(of(a), of(b)));
}
