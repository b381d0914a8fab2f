/**
 * Which size and how many columns tables take so that all of their rows fit; where they do not even at the least size,
 * which of them give up rows, to a next page. Millimetres.
 */
import type { Mm } from '../../../units/types';
import type { SheetTable } from '../types';
import type { Measure } from './pen';
import { drawTable, fits, setTable, SIZES, tableHeight, type SetTable, type Tables } from './table';

/** A column narrower than this breaks most rows. */
const NARROWEST: Mm = 34;

export interface Place {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** One table in columns: the largest size at which all rows fit, the fewest columns among those. */
export function drawInColumns(table: SheetTable, { x, y, width, height }: Place, measure: Measure): Tables {
  const most = Math.max(1, Math.floor(width / NARROWEST));
  for (const size of SIZES)
    for (let columns = 1; columns <= most; columns++) {
      const set = setTable(table, { size, columns, width, measure });
      if (fits(set, height)) return drawTable(set, x, y, height);
    }
  return drawTable(setTable(table, { size: SIZES.at(-1)!, columns: most, width, measure }), x, y, height);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Least room of a table that gives up rows: title, hint, and a few rows. */
const LEAST: Mm = 24;

/** Heights of tables below each other: the ones named first in `yielding` give up rows first. */
function heightsOf(sets: readonly SetTable[], yielding: readonly number[], room: Mm): Mm[] {
  const heights = sets.map(tableHeight);
  for (const i of yielding) {
    const over = sum(heights) - room;
    if (over <= 0) break;
    heights[i] = Math.max(Math.min(LEAST, heights[i]!), heights[i]! - over);
  }
  return heights;
}

/** Tables below each other, all at one size: the largest at which everything fits. */
export function drawBelow(
  tables: readonly SheetTable[],
  yielding: readonly number[],
  { x, y, width, height }: Place,
  measure: Measure,
): Tables {
  const setAt = (size: Mm): SetTable[] =>
    tables.map((table) => setTable(table, { size, columns: 1, width, measure }));
  const size = SIZES.find((one) => sum(setAt(one).map(tableHeight)) <= height) ?? SIZES.at(-1)!;
  const sets = setAt(size);
  const heights = heightsOf(sets, yielding, height);
  // What is over is spread between the tables.
  const gap = Math.min(4, Math.max(0, height - sum(heights)) / Math.max(1, tables.length - 1));
  let at = y;
  const drawn = sets.map((set, i) => {
    const one = drawTable(set, x, at, heights[i]!);
    at += heights[i]! + gap;
    return one;
  });
  return { marks: drawn.flatMap(({ marks }) => marks), left: drawn.flatMap(({ left }) => left) };
}
