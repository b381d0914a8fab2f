/**
 * The plan of one layer: the parts' demands put to the solver, and its answer read back as shares by machine laser.
 * The solver knows only lasers that are on, as 0 … m−1 in machine order. Seconds.
 */
import type { PartId } from '../layout/types';
import type { Seconds } from '../units/types';
import { membersOf } from '../zoning/lasers';
import type { LaserSet } from '../zoning/types';
import type { Demand } from './demand';
import { solveBalance } from './solver/balance';
import { lowerBound } from './solver/bound';
import type { Bound, SharedLoad, SharedPart } from './types';

/** Machine laser index ↔ the solver's index. */
export interface Compact {
  readonly lasers: readonly number[];
  toMask(set: LaserSet): number;
  toSet(mask: number): LaserSet;
}

export function compactOf(on: LaserSet): Compact {
  const lasers = membersOf(on);
  const same = lasers.every((laser, i) => laser === i);
  const convert = (bits: number, test: (i: number) => number, put: (i: number) => number): number =>
    lasers.reduce((out, _, i) => ((bits >>> test(i)) & 1 ? out | (1 << put(i)) : out), 0);
  return {
    lasers,
    toMask: (set) =>
      same
        ? set & on
        : convert(
            set,
            (i) => lasers[i],
            (i) => i,
          ),
    toSet: (mask) =>
      same
        ? mask
        : convert(
            mask,
            (i) => i,
            (i) => lasers[i],
          ),
  };
}

/** A part whose shared fragments are to be given out. */
export interface FreePart {
  readonly id: PartId;
  readonly demand: Demand;
}
export interface Share {
  readonly laser: number;
  readonly load_s: Seconds;
}
export interface Plan {
  readonly exposure_s: Seconds;
  /** [free part][shared demand] → shares, only those above zero */
  readonly shares: readonly (readonly (readonly Share[])[])[];
  readonly cutsProven: boolean;
}

const toSolverPart = (compact: Compact, part: FreePart): SharedPart => ({
  id: part.id,
  fixedLasers: compact.toMask(part.demand.fixedSet),
  fragments: part.demand.shared.map((s) => ({ mask: compact.toMask(s.set), load_s: s.load_s })),
});

/** A share smaller than this part of its fragment is rounding. */
const NO_SHARE = 1e-9;

/** Shares that minimise the slowest laser's load; `fixed_s` by machine laser holds all load that cannot move. */
export function planLayer(compact: Compact, fixed_s: readonly Seconds[], parts: readonly FreePart[]): Plan {
  const solution = solveBalance({
    laserCount: compact.lasers.length,
    fixed_s: compact.lasers.map((laser) => fixed_s[laser]),
    parts: parts.map((part) => toSolverPart(compact, part)),
  });
  const shares = parts.map((part, p) =>
    part.demand.shared.map((shared, f) => {
      const found = solution.shares_s[p][f]
        .map((load_s, i) => ({ laser: compact.lasers[i], load_s }))
        .filter((share) => share.load_s > NO_SHARE * shared.load_s);
      return found.length > 0 ? found : [{ laser: membersOf(shared.set)[0], load_s: shared.load_s }];
    }),
  );
  return { exposure_s: solution.best_s, shares, cutsProven: solution.cutsProven };
}

/** Load that must stay in one piece, reachable by the lasers of `set`. */
export interface Indivisible {
  readonly set: LaserSet;
  readonly load_s: Seconds;
}

/**
 * Best possible exposure of a layer: the densest set of lasers, and no lower than the largest part that may not be cut
 * (DESIGN 5.5). `setBy` is a set of machine lasers.
 */
export function bestPossible(
  compact: Compact,
  fixed_s: readonly Seconds[],
  shared: readonly { readonly set: LaserSet; readonly load_s: Seconds }[],
  whole: readonly Indivisible[],
): Bound {
  const loads: SharedLoad[] = [...shared, ...whole].map((s) => ({
    mask: compact.toMask(s.set),
    load_s: s.load_s,
  }));
  const bound = lowerBound(
    compact.lasers.length,
    compact.lasers.map((laser) => fixed_s[laser]),
    loads,
  );
  const largest = whole.reduce<Indivisible | null>((m, w) => (m && m.load_s >= w.load_s ? m : w), null);
  if (largest && largest.load_s > bound.best_s * (1 + NO_SHARE)) {
    return { best_s: largest.load_s, setBy: largest.set };
  }
  return { best_s: bound.best_s, setBy: compact.toSet(bound.setBy) };
}
