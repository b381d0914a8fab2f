/**
 * Parts that keep one laser each, over all stretches of a build, and what a change costs: exposure of a stretch (seconds
 * per layer) = the densest watched set of lasers, its own load and the shared load that only it can take over its
 * size; exposure of the build = Σ layers × that. A move or an exchange shifts load between two lasers in every stretch,
 * so that its effect is found without touching the rest.
 */
import type { Seconds } from '../../units/types';
import type { WholeProblem } from '../types';
import { flattestLoads, type FlatLoads } from './flattest';
import type { Groups } from './flow';
import { byMaskOf } from './groups';
import { lowestOf, RELATIVE_TIE, sizeOf } from './sets';
import { watchedSets } from './slack';

/** A choice in the making, with the sums that tell what a change costs. */
export interface WholeState {
  readonly problem: WholeProblem;
  readonly lasers: number;
  readonly stretches: number;
  /** Single lasers first, then unions of the sets of shared load. */
  readonly sets: Int32Array;
  /** False where the sets are too many to watch: exposure is then a lower bound only. */
  readonly exact: boolean;
  /** [stretch × sets + set] seconds: load of the set's lasers and shared load only they can take. */
  readonly reach_s: Float64Array;
  /** [part × stretches + stretch] seconds. */
  readonly loads_s: Float64Array;
  readonly shared: readonly Groups[];
  /** Stretch → seconds. */
  readonly exposure_s: Float64Array;
  /** Part → laser, −1 while it has none. */
  readonly laserOf: Int32Array;
  /** Differences of the build's exposure below this are none. */
  readonly tiny_s: Seconds;
}

/** Single lasers and the unions of `masks`; where those are too many, the masks themselves. */
export function setsFor(lasers: number, masks: readonly number[]): { sets: Int32Array; exact: boolean } {
  const sets = watchedSets(lasers, masks);
  if (sets !== null) return { sets, exact: true };
  const singles = Array.from({ length: lasers }, (_, k) => 1 << k);
  return { sets: Int32Array.from(new Set([...singles, ...masks, 2 ** lasers - 1])), exact: false };
}

/** Seconds per stretch and set before any part is placed. */
export function reachOf(problem: WholeProblem, sets: Int32Array, shared: readonly Groups[]): Float64Array {
  const reach_s = new Float64Array(problem.layers.length * sets.length);
  shared.forEach((groups, s) =>
    sets.forEach((set, i) => {
      let sum = 0;
      for (let rest = set; rest !== 0; rest &= rest - 1) sum += problem.fixed_s[s]![lowestOf(rest)]!;
      for (const [mask, load] of groups) if ((mask & ~set) === 0) sum += load;
      reach_s[s * sets.length + i] = sum;
    }),
  );
  return reach_s;
}

/** The density of the densest set of stretch s. */
export function densest(reach_s: Float64Array, sets: Int32Array, lasers: number, s: number): Seconds {
  const from = s * sets.length;
  let most = 0;
  for (let i = 0; i < lasers; i++) most = Math.max(most, reach_s[from + i]!);
  for (let i = lasers; i < sets.length; i++) most = Math.max(most, reach_s[from + i]! / sizeOf(sets[i]!));
  return most;
}

/** The state with no part placed. */
export function emptyState(problem: WholeProblem): WholeState {
  const { laserCount: lasers, parts, layers } = problem;
  const shared = problem.shared.map(byMaskOf);
  const masks = new Set(shared.flatMap((groups) => [...groups.keys()]));
  const { sets, exact } = setsFor(lasers, [...masks]);
  const reach_s = reachOf(problem, sets, shared);
  const loads_s = Float64Array.from(parts.flatMap((part) => part.loads_s));
  const exposure_s = Float64Array.from(layers, (_, s) => densest(reach_s, sets, lasers, s));
  const scale_s = layers.reduce(
    (sum, count, s) =>
      sum +
      count * (exposure_s[s]! + parts.reduce((all, part) => all + part.loads_s[s]!, 0) / Math.max(1, lasers)),
    0,
  );
  const laserOf = new Int32Array(parts.length).fill(-1);
  // prettier-ignore
  return { problem, lasers, stretches: layers.length, sets, exact, reach_s, loads_s, shared, exposure_s, laserOf,
    tiny_s: scale_s * RELATIVE_TIE * 0.1 };
}

/** Exposure of the build. */
export const totalOf = ({ problem, exposure_s }: WholeState): Seconds =>
  problem.layers.reduce((sum, count, s) => sum + count * exposure_s[s]!, 0);

/** Exposure of stretch s after `shift_s` has gone from laser a (−1: from nowhere) to laser b. */
function exposureAfter(state: WholeState, s: number, a: number, b: number, shift_s: number): Seconds {
  const { sets, reach_s, lasers } = state;
  const from = s * sets.length;
  if (sets.length === lasers && a >= 0) {
    // nothing shared, and the laser that is relieved is not the slowest: the rest need not be looked at
    const [down, up] = shift_s > 0 ? [a, b] : [b, a];
    const present_s = state.exposure_s[s]!;
    if (reach_s[from + down]! < present_s)
      return Math.max(present_s, reach_s[from + up]! + Math.abs(shift_s));
  }
  let most = 0;
  for (let k = 0; k < lasers; k++) {
    const load = reach_s[from + k]! + (k === b ? shift_s : k === a ? -shift_s : 0);
    if (load > most) most = load;
  }
  for (let i = lasers; i < sets.length; i++) {
    const set = sets[i]!;
    const change = ((set >>> b) & 1) - (a < 0 ? 0 : (set >>> a) & 1);
    most = Math.max(most, (reach_s[from + i]! + change * shift_s) / sizeOf(set));
  }
  return most;
}

/** What a change does to the build: its exposure, and Σ layers × Σ load² as a guide to flatter loads. */
export interface Effect {
  exposure_s: number;
  squares: number;
}

/** The effect of moving part p to laser b, or of exchanging it with part q (q ≥ 0) that is there, into `effect`. */
export function effectOf(state: WholeState, p: number, b: number, q: number, effect: Effect): Effect {
  const { stretches, loads_s, sets, reach_s, problem, exposure_s, laserOf } = state;
  const a = laserOf[p]!;
  effect.exposure_s = 0;
  effect.squares = 0;
  for (let s = 0; s < stretches; s++) {
    const shift = loads_s[p * stretches + s]! - (q < 0 ? 0 : loads_s[q * stretches + s]!);
    if (shift === 0) continue;
    const from = s * sets.length;
    const gap = reach_s[from + b]! - (a < 0 ? 0 : reach_s[from + a]!);
    const count = problem.layers[s]!;
    effect.squares += count * 2 * shift * (a < 0 ? gap + shift / 2 : gap + shift);
    effect.exposure_s += count * (exposureAfter(state, s, a, b, shift) - exposure_s[s]!);
  }
  return effect;
}

/** Puts part p on laser b (−1: takes it off). */
export function put(state: WholeState, p: number, b: number): void {
  const { stretches, loads_s, sets, reach_s, lasers, exposure_s, laserOf } = state;
  const a = laserOf[p]!;
  if (a === b) return;
  laserOf[p] = b;
  for (let s = 0; s < stretches; s++) {
    const load = loads_s[p * stretches + s]!;
    if (load === 0) continue;
    for (let i = 0; i < sets.length; i++) {
      const change = (b < 0 ? 0 : (sets[i]! >>> b) & 1) - (a < 0 ? 0 : (sets[i]! >>> a) & 1);
      if (change !== 0) reach_s[s * sets.length + i]! += change * load;
    }
    exposure_s[s] = densest(reach_s, sets, lasers, s);
  }
}

/** The loads per stretch as flat as shared load allows, each stretch from its slowest laser down. */
export function flatnessOf(state: WholeState): FlatLoads[] {
  const { sets, lasers, reach_s, shared, problem } = state;
  return shared.map((groups, s) => {
    const own_s = reach_s.slice(s * sets.length, s * sets.length + lasers);
    for (const [mask, load] of groups) if ((mask & (mask - 1)) === 0) own_s[lowestOf(mask)]! -= load;
    return problem.laserCount === 0 ? own_s : flattestLoads(own_s, groups);
  });
}
