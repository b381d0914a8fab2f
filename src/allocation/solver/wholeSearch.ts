/**
 * A good choice of one laser per part, quickly: the longest part first on the laser where it costs least (Graham 1969),
 * then moves and exchanges while they shorten the build or, at the same length, flatten its loads, then the same
 * again from seeded random kicks. Bounded by a count of evaluations, so that the answer is the same everywhere.
 */
import { compareFlatness, type FlatLoads } from './flattest';
import { sizeOf } from './sets';
import { effectOf, flatnessOf, put, totalOf, type Effect, type WholeState } from './wholeState';

/** Parts moved at random by one kick. */
const KICK = 3;
/** Below this part of itself Σ load² has not changed. */
const SAME_SQUARES = 1e-10;

/** A laser per part, Σ layers × exposure (seconds), and the loads of every stretch from the slowest down. */
export interface Choice {
  readonly laserOf: Int32Array;
  readonly exposure_s: number;
  readonly flatness: readonly FlatLoads[];
}

/** Below 0 where choice a is the better one: shorter, or as short and flatter, stretch by stretch from the bottom. */
export function compareFlat(a: readonly FlatLoads[], b: readonly FlatLoads[]): number {
  for (const [s, loads_s] of a.entries()) {
    const tiny_s = 1e-9 * Math.max(0, ...loads_s);
    const difference = compareFlatness(loads_s, b[s]!, tiny_s);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** The choice a state stands at, copied. */
export const choiceOf = (state: WholeState): Choice => ({
  laserOf: state.laserOf.slice(),
  exposure_s: totalOf(state),
  flatness: flatnessOf(state),
});

/** True where a is the better choice: shorter by more than `tiny_s`, or as short and flatter. */
export function isBetter(a: Choice, b: Choice, tiny_s: number): boolean {
  const difference = a.exposure_s - b.exposure_s;
  return Math.abs(difference) > tiny_s ? difference < 0 : compareFlat(a.flatness, b.flatness) < 0;
}

const weightOf = (state: WholeState, p: number): number =>
  state.problem.layers.reduce((sum, count, s) => sum + count * state.problem.parts[p]!.loads_s[s]!, 0);

/** Parts by falling load over the build, then by id. */
export function longestFirst(state: WholeState): number[] {
  const { parts } = state.problem;
  const weights = parts.map((_, p) => weightOf(state, p));
  const id = (p: number): string => parts[p]!.id;
  return [...parts.keys()].sort((a, b) => weights[b]! - weights[a]! || (id(a) < id(b) ? -1 : 1));
}

/** Places every part of `order`, each where it adds least. */
function placeAll(state: WholeState, order: readonly number[]): void {
  const effect: Effect = { exposure_s: 0, squares: 0 };
  for (const p of order) {
    let best = -1;
    let least: Effect = { exposure_s: Infinity, squares: Infinity };
    for (let k = 0; k < state.lasers; k++) {
      if (((state.problem.parts[p]!.mask >>> k) & 1) === 0) continue;
      effectOf(state, p, k, -1, effect);
      const difference = effect.exposure_s - least.exposure_s;
      if (difference > state.tiny_s || (difference >= -state.tiny_s && effect.squares >= least.squares))
        continue;
      best = k;
      least = { ...effect };
    }
    put(state, p, best);
  }
}

interface Walk {
  readonly state: WholeState;
  /** Parts with more than one laser to choose from, longest first. */
  readonly movable: readonly number[];
  readonly sameSquares: number;
  /** What one evaluation costs: a unit per stretch, more where unions of lasers are watched. */
  readonly cost: number;
  /** Evaluations left. */
  left: number;
}

const helps = (walk: Walk, { exposure_s, squares }: Effect): boolean =>
  exposure_s < -walk.state.tiny_s || (exposure_s <= walk.state.tiny_s && squares < -walk.sameSquares);

const may = (state: WholeState, p: number, k: number): boolean =>
  ((state.problem.parts[p]!.mask >>> k) & 1) !== 0;

/** Moves part p to the first laser that helps. */
function tryMoves(walk: Walk, p: number, effect: Effect): boolean {
  const { state } = walk;
  for (let k = 0; k < state.lasers; k++) {
    if (k === state.laserOf[p] || !may(state, p, k)) continue;
    walk.left -= walk.cost;
    if (!helps(walk, effectOf(state, p, k, -1, effect))) continue;
    put(state, p, k);
    return true;
  }
  return false;
}

/** Exchanges part p with the first later part that helps. */
function tryExchanges(walk: Walk, at: number, effect: Effect): boolean {
  const { state, movable } = walk;
  const { laserOf } = state;
  const p = movable[at]!;
  for (let i = at + 1; i < movable.length && walk.left > 0; i++) {
    const q = movable[i]!;
    const [a, b] = [laserOf[p]!, laserOf[q]!];
    if (a === b || !may(state, p, b) || !may(state, q, a)) continue;
    walk.left -= walk.cost;
    if (!helps(walk, effectOf(state, p, b, q, effect))) continue;
    put(state, p, b);
    put(state, q, a);
    return true;
  }
  return false;
}

/** Moves and exchanges until none helps or the evaluations are used up. */
function descend(walk: Walk): void {
  const effect: Effect = { exposure_s: 0, squares: 0 };
  for (let changed = true; changed && walk.left > 0;) {
    changed = false;
    for (const p of walk.movable) if (tryMoves(walk, p, effect)) changed = true;
    if (changed) continue;
    for (let at = 0; at < walk.movable.length; at++) if (tryExchanges(walk, at, effect)) changed = true;
  }
}

/** Uniform numbers 0 ≤ x < 1 from a fixed seed (linear congruential, Numerical Recipes' constants [memory]). */
function randomFrom(seed: number): () => number {
  let value = seed >>> 0;
  return () => {
    value = (Math.imul(value, 1664525) + 1013904223) >>> 0;
    return value / 2 ** 32;
  };
}

function kick(walk: Walk, random: () => number): void {
  const { state, movable } = walk;
  for (let n = 0; n < KICK; n++) {
    const p = movable[Math.floor(random() * movable.length)]!;
    const { mask } = state.problem.parts[p]!;
    let steps = Math.floor(random() * sizeOf(mask));
    let k = state.laserOf[p]!;
    do k = (k + 1) % state.lasers;
    while (!may(state, p, k) || steps-- > 0);
    put(state, p, k);
  }
}

/** The best choice found with so many evaluations; stops where it is as short and flat as `goal`, which none can better. */
export function searchWhole(
  state: WholeState,
  goal: { readonly bound_s: number; readonly flatness: readonly FlatLoads[] },
  evaluations: number,
): Choice {
  const order = longestFirst(state);
  placeAll(state, order);
  const movable = order.filter((p) => sizeOf(state.problem.parts[p]!.mask) > 1);
  let best = choiceOf(state);
  if (movable.length === 0) return best;
  const squares = order.reduce((sum, p) => sum + weightOf(state, p), 0) ** 2;
  const cost = (state.stretches * state.sets.length) / state.lasers;
  const walk: Walk = { state, movable, sameSquares: SAME_SQUARES * squares, cost, left: evaluations };
  const random = randomFrom(20_261_125);
  const short = (): boolean => best.exposure_s <= goal.bound_s + state.tiny_s;
  const perfect = (): boolean => short() && compareFlat(best.flatness, goal.flatness) <= 0;
  descend(walk);
  for (let tries = 0; ; tries++) {
    const next = choiceOf(state);
    if (isBetter(next, best, state.tiny_s)) best = next;
    else best.laserOf.forEach((k, p) => put(state, p, k));
    if (walk.left <= 0 || perfect() || (short() && tries >= movable.length)) return best;
    kick(walk, random);
    descend(walk);
  }
}
