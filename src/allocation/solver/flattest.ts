/**
 * The flattest loads (seconds) that divisible load allows: sorted from the slowest laser down, lexicographically
 * smallest. The densest set of lasers works for its density; with it and the load only it can take set aside, the
 * same holds of the rest, and so on down (Megiddo 1974; Fujishige 1980: the lexicographically optimal base [memory]).
 */
import type { Seconds } from '../../units/types';
import { densestByFlow, type Groups } from './flow';
import { sizeOf } from './sets';

/** Loads per laser, in seconds. */
export type FlatLoads = Float64Array;

const MOST_BY_SUBSETS = 12;
const SIZE = Uint8Array.from({ length: 1 << MOST_BY_SUBSETS }, (_, set) => sizeOf(set));
const reach = new Float64Array(1 << MOST_BY_SUBSETS);

function bySubsets(fixed_s: ArrayLike<Seconds>, shared: Groups): Float64Array {
  begin(fixed_s, fixed_s.length);
  for (const [mask, load] of shared) reach[mask]! += load;
  return decompose(fixed_s.length);
}

/** The same of at most 12 lasers, shared load as the first `count` sets and their loads. */
export function flattestOfSets(
  fixed_s: ArrayLike<Seconds>,
  lasers: number,
  masks: ArrayLike<number>,
  loads_s: ArrayLike<Seconds>,
  count: number,
): Float64Array {
  begin(fixed_s, lasers);
  for (let i = 0; i < count; i++) reach[masks[i]!]! += loads_s[i]!;
  return decompose(lasers);
}

function begin(fixed_s: ArrayLike<Seconds>, n: number): void {
  reach.fill(0, 0, 1 << n);
  for (let k = 0; k < n; k++) reach[1 << k] = fixed_s[k]!;
}

/** Loads from `reach`, filled with load by exact set. */
function decompose(n: number): Float64Array {
  const all = (1 << n) - 1;
  for (let bit = 1; bit <= all; bit <<= 1)
    for (let high = bit; high <= all; high += bit << 1)
      for (let set = high; set < high + bit; set++) reach[set]! += reach[set - bit]!;
  const loads_s = new Float64Array(n);
  for (let done = 0; done !== all;) {
    const rest = all & ~done;
    let best = rest;
    let best_s = -1;
    for (let more = rest; more !== 0; more = (more - 1) & rest) {
      const density = (reach[done | more]! - reach[done]!) / SIZE[more]!;
      if (density > best_s) [best, best_s] = [more, density];
    }
    for (let k = 0; k < n; k++) if ((best >>> k) & 1) loads_s[k] = Math.max(0, best_s);
    done |= best;
  }
  return loads_s;
}

function byFlow(fixed_s: ArrayLike<Seconds>, shared: Groups): Float64Array {
  const loads_s = new Float64Array(fixed_s.length);
  const own = Array.from(fixed_s);
  let groups = shared;
  for (let left = own.length; left > 0;) {
    const { best_s, setBy } = densestByFlow(own, groups);
    if (!(best_s > 0)) break;
    const next = new Map<number, number>();
    for (const [mask, load] of groups) {
      const rest = mask & ~setBy;
      if (rest !== 0) next.set(rest, (next.get(rest) ?? 0) + load);
    }
    for (let k = 0; k < own.length; k++) if ((setBy >>> k) & 1) [loads_s[k], own[k]] = [best_s, 0];
    groups = next;
    left -= sizeOf(setBy);
  }
  return loads_s;
}

/** The flattest load per laser; `shared` holds divisible load by set of lasers. */
export const flattestLoads = (fixed_s: ArrayLike<Seconds>, shared: Groups): Float64Array =>
  fixed_s.length <= MOST_BY_SUBSETS ? bySubsets(fixed_s, shared) : byFlow(fixed_s, shared);

/** Below 0 where loads a are flatter than b, above 0 where b is, 0 where no pair differs by more than `tiny_s`. */
export function compareFlatness(a: ArrayLike<Seconds>, b: ArrayLike<Seconds>, tiny_s: Seconds): number {
  const [down, other] = [Float64Array.from(a).sort(), Float64Array.from(b).sort()];
  for (let k = down.length - 1; k >= 0; k--) {
    const difference = down[k]! - other[k]!;
    if (Math.abs(difference) > tiny_s) return difference;
  }
  return 0;
}
