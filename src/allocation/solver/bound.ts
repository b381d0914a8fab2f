/**
 * The best possible exposure time of a layer (seconds): no division of the shared load can be faster than the densest
 * set of lasers, max over sets S of (load that only S can take)/|S|, and by max-flow/min-cut this time is reached
 * where shared load may be cut freely. Up to 12 lasers every subset is tried: load is summed by its exact set,
 * the sum over all subsets is one pass per laser (the sum-over-subsets or "zeta" transform), then the largest
 * ratio is read off. Above 12 lasers by max-flow (flow.ts).
 */
import type { Seconds } from '../../units/types';
import type { Bound, SharedLoad } from '../types';
import { densestByFlow } from './flow';
import { comesBefore, RELATIVE_TIE, requireLaserCount, requireMask, sizeOf } from './sets';

const MOST_BY_SUBSETS = 12;
/** 1/|S| for every subset of 12 lasers. */
const SHARE = Float64Array.from({ length: 1 << MOST_BY_SUBSETS }, (_, set) => 1 / sizeOf(set));
/** Load by subset, reused from call to call. */
const reach = new Float64Array(1 << MOST_BY_SUBSETS);

/** Turns "load of exactly this set" into "load of this set and its subsets", in place. */
function sumOverSubsets(loads: Float64Array, laserCount: number): void {
  const end = 1 << laserCount;
  for (let bit = 1; bit < end; bit <<= 1)
    for (let high = bit; high < end; high += bit << 1)
      for (let set = high; set < high + bit; set++) loads[set]! += loads[set - bit]!;
}

function largestRatio(loads: Float64Array, laserCount: number): Bound {
  const end = 1 << laserCount;
  let best_s = 0;
  for (let set = 1; set < end; set++) {
    const ratio = loads[set]! * SHARE[set]!;
    if (ratio > best_s) best_s = ratio;
  }
  if (best_s === 0) return { best_s, setBy: 1 };
  const least = best_s * (1 - RELATIVE_TIE);
  let setBy = 0;
  for (let set = 1; set < end; set++)
    if (loads[set]! * SHARE[set]! >= least && (setBy === 0 || comesBefore(set, setBy))) setBy = set;
  return { best_s, setBy };
}

function boundBySubsets(
  laserCount: number,
  fixed_s: readonly Seconds[],
  shared: readonly SharedLoad[],
): Bound {
  reach.fill(0, 0, 1 << laserCount);
  for (let k = 0; k < laserCount; k++) reach[1 << k] = fixed_s[k]!;
  for (const { mask, load_s } of shared) {
    requireMask(mask, laserCount);
    reach[mask]! += load_s;
  }
  return boundOfReach(reach, laserCount);
}

/** The same from the load of every exact set of 1 to 12 lasers, which is overwritten. */
export function boundOfReach(loads_s: Float64Array, laserCount: number): Bound {
  sumOverSubsets(loads_s, laserCount);
  return largestRatio(loads_s, laserCount);
}

function boundByFlow(fixed_s: readonly Seconds[], shared: readonly SharedLoad[]): Bound {
  const groups = new Map<number, number>();
  for (const { mask, load_s } of shared) {
    requireMask(mask, fixed_s.length);
    if (load_s > 0) groups.set(mask, (groups.get(mask) ?? 0) + load_s);
  }
  const bound = densestByFlow(fixed_s, groups);
  return bound.best_s === 0 ? { best_s: 0, setBy: 1 } : bound;
}

/**
 * The least time of the slowest laser, shared load divisible, with the set of lasers that forces it (ties within
 * 1e-9: the smallest set, then by index order). All loads zero: 0, set by laser 0. No lasers: 0, set by none.
 * Loads are ≥ 0. Throws where a set is empty or names a laser that does not exist.
 */
export function lowerBound(
  laserCount: number,
  fixed_s: readonly Seconds[],
  shared: readonly SharedLoad[],
): Bound {
  requireLaserCount(laserCount);
  if (laserCount <= MOST_BY_SUBSETS && laserCount > 0) return boundBySubsets(laserCount, fixed_s, shared);
  for (const { mask } of shared) requireMask(mask, laserCount);
  return laserCount === 0 ? { best_s: 0, setBy: 0 } : boundByFlow(fixed_s.slice(0, laserCount), shared);
}
