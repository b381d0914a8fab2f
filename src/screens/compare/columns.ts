/**
 * The layouts that stand side by side: two to four, each with where it came from. Kept while the page is open, so that the
 * comparison can be put away and taken up again.
 */
import { createStore } from 'zustand/vanilla';
import { takenOver } from '../../layout/same';
import type { Layout } from '../../layout/types';

export const MOST_COLUMNS = 4;

export interface Column {
  readonly key: number;
  /** "open plate", a file's name, "library", "link" */
  readonly from: string;
  readonly layout: Layout;
}
export interface Columns {
  readonly columns: readonly Column[];
  /** Key of the column that differences count from. */
  readonly reference: number;
  /** Where all of them are cut; millimetres above the platform. */
  readonly height_mm: number;
}

const EMPTY: Columns = { columns: [], reference: 0, height_mm: 0 };
export const comparison = createStore<Columns>(() => EMPTY);

let nextKey = 1;

/** Adds a layout; what it shares with one that is there already is taken over, so that nothing is computed twice. */
export function addColumn(from: string, layout: Layout): void {
  comparison.setState((now) => {
    if (now.columns.length >= MOST_COLUMNS) return now;
    const shared = now.columns.reduce((next, column) => takenOver(column.layout, next), layout);
    const column = { key: nextKey++, from, layout: shared };
    return {
      ...now,
      columns: [...now.columns, column],
      reference: now.columns.length === 0 ? column.key : now.reference,
    };
  });
}

/** Puts these layouts in place of all that stand there. */
export function showColumns(from: string, layouts: readonly Layout[], height_mm: number): void {
  comparison.setState({ ...EMPTY, height_mm });
  for (const layout of layouts) addColumn(from, layout);
}

/** Takes a column away; where it was the reference, the first one left becomes it. */
export function removeColumn(key: number): void {
  comparison.setState((now) => {
    const columns = now.columns.filter((column) => column.key !== key);
    return { ...now, columns, reference: now.reference === key ? (columns[0]?.key ?? 0) : now.reference };
  });
}

export const setReference = (reference: number): void => comparison.setState({ reference });
export const setCommonHeight = (height_mm: number): void => comparison.setState({ height_mm });
