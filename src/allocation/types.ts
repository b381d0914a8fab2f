/**
 * The allocation solver's own words: loads in seconds, lasers as compact indices 0 … m−1 (only lasers that are on),
 * sets of lasers as bit masks. No geometry in here.
 */
import type { Seconds } from '../units/types';

/** Load that any laser of `mask` may take, in any split. */
export interface SharedLoad {
  readonly mask: number;
  readonly load_s: Seconds;
}
/** The shared fragments of one part in one layer. */
export interface SharedPart {
  readonly id: string;
  /** Lasers that already hold a fixed fragment of this part (bits); 0 where the part is shared only. */
  readonly fixedLasers: number;
  readonly fragments: readonly SharedLoad[];
}
/** One layer put to the solver. */
export interface BalanceProblem {
  readonly laserCount: number;
  /** Load per laser that cannot move. */
  readonly fixed_s: readonly Seconds[];
  readonly parts: readonly SharedPart[];
}
/** The least time of the slowest laser, and why it is no less. */
export interface Bound {
  readonly best_s: Seconds;
  /** The binding subset: of tied ones the smallest, then by index order. */
  readonly setBy: number;
}
/** Who takes what; the slowest laser works `best_s`. */
export interface BalanceSolution extends Bound {
  readonly loads_s: readonly Seconds[];
  /** [part][fragment][laser] → seconds */
  readonly shares_s: readonly (readonly (readonly Seconds[])[])[];
  /** Parts exposed by more than one laser, the ones cut by their fixed fragments included. */
  readonly cutParts: number;
  readonly cutsProven: boolean;
}
/** A part that keeps one laser from its first to its last layer. */
export interface StickyPart {
  readonly id: string;
  /** Lasers that may hold it (bits); never 0. */
  readonly mask: number;
  /** Load per stretch. */
  readonly loads_s: readonly Seconds[];
}
/** A whole build put to the solver: one laser is wanted for each of `parts`. */
export interface WholeProblem {
  readonly laserCount: number;
  /** Number of layers of each stretch. */
  readonly layers: readonly number[];
  /** [stretch][laser] load that cannot move. */
  readonly fixed_s: readonly (readonly Seconds[])[];
  /** [stretch] load that stays divisible. */
  readonly shared: readonly (readonly SharedLoad[])[];
  readonly parts: readonly StickyPart[];
}
/** The choice of lasers and what it costs. */
export interface WholeSolution {
  /** Laser per part. */
  readonly laserOf: readonly number[];
  /** Σ over stretches of layers × best possible exposure given the choice. */
  readonly exposure_s: Seconds;
  readonly proven: boolean;
}
