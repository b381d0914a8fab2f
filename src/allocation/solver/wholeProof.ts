/**
 * The certificate: branch and bound over one laser per part, the longest first. A branch is worth no less than Σ layers
 * × the densest set of lasers with everything still open as divisible; it ends where that does not beat the best
 * known. A second pass, while budget is left, goes through the builds as short as the best for the flattest loads. What
 * is the same twice is looked at once: equal parts in ascending order of laser, and of lasers that nothing tells
 * apart only the first. Bounded by a count of watched sets visited.
 */
import type { Seconds } from '../../units/types';
import { flattestLoads, type FlatLoads } from './flattest';
import { lowestOf } from './sets';
import { twinsOf, type Budget } from './tree';
import { choiceOf, compareFlat, isBetter, longestFirst, type Choice } from './wholeSearch';
import { densest, put, reachOf, setsFor, type WholeState } from './wholeState';

interface Proof {
  readonly state: WholeState;
  readonly order: readonly number[];
  /** Position in order → 1 where the part equals the one before it. */
  readonly equal: Uint8Array;
  readonly twins: Int32Array;
  readonly sets: Int32Array;
  /** [stretch × sets + set]: placed load of the set, open and shared load that only it can take. */
  readonly reach_s: Float64Array;
  readonly budget: Budget;
  /** Part → laser, for the parts above the present depth. */
  readonly laserOf: Int32Array;
  best: Choice;
  /** Look among builds as short as the best for flatter ones. */
  flatter: boolean;
}

const masksOf = ({ problem, shared }: WholeState): number[] => [
  ...new Set([...problem.parts.map(({ mask }) => mask), ...shared.flatMap((groups) => [...groups.keys()])]),
];

/** Adds part p to every set it is confined to by `mask`, less the sets it was confined to by `before`. */
function confine(proof: Proof, p: number, mask: number, before: number): void {
  const { sets, reach_s, state } = proof;
  for (let i = 0; i < sets.length; i++) {
    const change = Number((mask & ~sets[i]!) === 0) - Number(before !== 0 && (before & ~sets[i]!) === 0);
    if (change === 0) continue;
    for (let s = 0; s < state.stretches; s++)
      reach_s[s * sets.length + i]! += change * state.loads_s[p * state.stretches + s]!;
  }
}

/** No completion of the present choice is shorter. */
function boundOf({ state, reach_s, sets }: Proof): Seconds {
  let sum = 0;
  for (let s = 0; s < state.stretches; s++)
    sum += state.problem.layers[s]! * densest(reach_s, sets, state.lasers, s);
  return sum;
}

/** As flat as the build could become if every open part were divisible. */
function flattestOf({ state, order, laserOf }: Proof, depth: number): FlatLoads[] {
  const { problem, loads_s, stretches } = state;
  return state.shared.map((shared, s) => {
    const own_s = Float64Array.from(problem.fixed_s[s]!);
    const groups = new Map(shared);
    order.forEach((p, i) => {
      const load = loads_s[p * stretches + s]!;
      const mask = problem.parts[p]!.mask;
      if (i < depth) own_s[laserOf[p]!]! += load;
      else groups.set(mask, (groups.get(mask) ?? 0) + load);
    });
    return flattestLoads(own_s, groups);
  });
}

function hopeless(proof: Proof, depth: number): boolean {
  const { state, best, flatter } = proof;
  const bound_s = boundOf(proof);
  if (!flatter) return bound_s >= best.exposure_s - state.tiny_s;
  if (bound_s > best.exposure_s + state.tiny_s) return true;
  if (bound_s < best.exposure_s - state.tiny_s) return false;
  proof.budget.left -= state.stretches << Math.min(8, state.lasers);
  return compareFlat(flattestOf(proof, depth), best.flatness) >= 0;
}

/** True where a laser of lower index, tried before, stands exactly as laser k does in every stretch. */
function tried({ twins, sets, reach_s, state }: Proof, k: number, before: number): boolean {
  for (let rest = twins[k]! & before; rest !== 0; rest &= rest - 1) {
    const other = lowestOf(rest);
    let same = true;
    for (let s = 0; s < state.stretches && same; s++)
      same = reach_s[s * sets.length + k] === reach_s[s * sets.length + other];
    if (same) return true;
  }
  return false;
}

/** The lasers for the part at this depth, the emptiest first. */
function branches(proof: Proof, depth: number): number[] {
  const { state, order, equal, sets, reach_s, laserOf } = proof;
  let mask = state.problem.parts[order[depth]!]!.mask;
  if (equal[depth] === 1) mask &= ~((1 << laserOf[order[depth - 1]!]!) - 1);
  const load = (k: number): number =>
    state.problem.layers.reduce((sum, count, s) => sum + count * reach_s[s * sets.length + k]!, 0);
  const out: { k: number; load: number }[] = [];
  let before = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) {
    const k = lowestOf(rest);
    if (!tried(proof, k, before)) out.push({ k, load: load(k) });
    before |= 1 << k;
  }
  return out.sort((a, b) => a.load - b.load || a.k - b.k).map(({ k }) => k);
}

/** False where the budget ran out. */
function explore(proof: Proof, depth: number): boolean {
  const { state, order, budget, sets, laserOf } = proof;
  budget.left -= sets.length * state.stretches;
  if (budget.left < 0) return false;
  if (hopeless(proof, depth)) return true;
  if (depth === order.length) {
    laserOf.forEach((k, part) => put(state, part, k));
    const choice = choiceOf(state);
    if (isBetter(choice, proof.best, state.tiny_s)) proof.best = choice;
    return true;
  }
  const p = order[depth]!;
  const { mask } = state.problem.parts[p]!;
  for (const k of branches(proof, depth)) {
    laserOf[p] = k;
    confine(proof, p, 1 << k, mask);
    const finished = explore(proof, depth + 1);
    confine(proof, p, mask, 1 << k);
    if (!finished) return false;
  }
  return true;
}

function proofOf(state: WholeState, best: Choice, budget: Budget): Proof {
  const masks = masksOf(state);
  const { sets } = setsFor(state.lasers, masks);
  const order = longestFirst(state);
  const { parts } = state.problem;
  const equal = Uint8Array.from(order, (p, i) => {
    const before = parts[order[i - 1] ?? p]!;
    return i > 0 &&
      before.mask === parts[p]!.mask &&
      before.loads_s.every((load, s) => load === parts[p]!.loads_s[s])
      ? 1
      : 0;
  });
  // prettier-ignore
  const proof: Proof = { state, order, equal, twins: twinsOf(state.lasers, masks), sets,
    reach_s: reachOf(state.problem, sets, state.shared), budget, best, flatter: false,
    laserOf: new Int32Array(parts.length).fill(-1) };
  for (const p of order) confine(proof, p, parts[p]!.mask, 0);
  return proof;
}

/** What no choice can better: the exposure with everything divisible and every part in one piece, and the loads then. */
export interface Root {
  readonly bound_s: Seconds;
  readonly flatness: readonly FlatLoads[];
}

/** The bound before anything is chosen. */
export function rootOf(state: WholeState): Root {
  const proof = proofOf(state, { laserOf: state.laserOf, exposure_s: 0, flatness: [] }, { left: 0 });
  const bound_s = state.problem.layers.reduce((sum, count, s) => {
    const longest = Math.max(0, ...state.problem.parts.map((part) => part.loads_s[s]!));
    return sum + count * Math.max(longest, densest(proof.reach_s, proof.sets, state.lasers, s));
  }, 0);
  return { bound_s, flatness: flattestOf(proof, 0) };
}

/** Improves `best` and says whether its exposure is proven the least. */
export function prove(
  state: WholeState,
  best: Choice,
  bound_s: Seconds,
  budget: Budget,
): { readonly best: Choice; readonly proven: boolean } {
  const half = { left: budget.left / 2 };
  const proof = proofOf(state, best, half);
  let proven = best.exposure_s <= bound_s + state.tiny_s || explore(proof, 0);
  proven &&= state.exact;
  if (!proven) return { best: proof.best, proven };
  proof.flatter = true;
  half.left += budget.left / 2;
  const again = proofOf(state, proof.best, half);
  again.flatter = true;
  explore(again, 0);
  return { best: again.best, proven };
}
