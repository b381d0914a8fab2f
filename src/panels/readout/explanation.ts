/**
 * What an explanation says: meaning, formula, the layout's own numbers in it, and the sum where there is one.
 */
import type { Table } from './sumTable';

export interface Explanation {
  readonly title: string;
  readonly meaning: string;
  readonly formula: string;
  /** The formula with this layout's numbers, one line each. */
  readonly numbers: readonly string[];
  /** The sum term by term, below the numbers. */
  readonly table?: Table;
}
