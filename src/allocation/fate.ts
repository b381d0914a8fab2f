/**
 * What becomes of a fragment: it goes to one laser, or straight lines divide it among several.
 */
import type { Mm } from '../units/types';
import type { CutFragment } from './cutFragment';

/** Whole to one laser, or in sides: side i lies between positions i − 1 and i along the cut's normal. */
export type Fate =
  | { readonly kind: 'laser'; readonly laser: number }
  | {
      readonly kind: 'cut';
      readonly cut: CutFragment;
      /** Lasers of the sides, along the cut's normal. */
      readonly lasers: readonly number[];
      /** One fewer than lasers, ascending. */
      readonly positions: readonly Mm[];
    };

/** The side of a cut fragment that is too small to be exposed on its own. */
export interface CrumbSide {
  readonly fragment: number;
  readonly laser: number;
}
