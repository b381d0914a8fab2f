/**
 * Among choices with equally few cut parts, the one with the flattest loads (seconds; sorted from the slowest laser
 * down, lexicographically smallest). Where the loads already are as flat as divisible load would be, nothing is left to
 * gain. Otherwise parts are moved and exchanged while that flattens, and then a search goes through all choices within
 * its budget; a choice it could not reach may be flatter still.
 */
import type { Groups } from './flow';
import { compareFlatness, flattestLoads } from './flattest';
import type { Group } from './groups';
import { sizeOf } from './sets';
import type { Plan } from './cuts';
import { treeOf } from './cuts';
import { copyOf, type Slack } from './slack';
import { searchTree, type Budget, type Tree } from './tree';

/** Most moves and exchanges of one call. */
const MOST_STEPS = 64;

/** A choice and the flattest loads it allows: decision → laser (−1: cut), laser → seconds. */
export interface Flat {
  readonly laserOf: Int32Array;
  readonly loads_s: Float64Array;
}

/** The flattest loads given a choice: what is cut or open stays divisible. */
export function loadsOf(group: Group, laserOf: Int32Array): Float64Array {
  const own_s = Float64Array.from(group.fixed_s);
  const shared = new Map<number, number>();
  for (const { mask, load_s } of group.free) shared.set(mask, (shared.get(mask) ?? 0) + load_s);
  group.decisions.forEach(({ masks, loads_s, total_s }, i) => {
    const k = laserOf[i]!;
    if (k >= 0) own_s[k]! += total_s;
    else masks.forEach((mask, f) => shared.set(mask, (shared.get(mask) ?? 0) + loads_s[f]!));
  });
  return flattestLoads(own_s, shared);
}

interface Step {
  readonly gain_s: number;
  readonly moves: readonly (readonly [item: number, to: number])[];
}

/** What moving d seconds from a load to another takes off the larger of the two. */
const gain = (from_s: number, to_s: number, d_s: number): number =>
  from_s - Math.max(from_s - d_s, to_s + d_s);

/** The best move or exchange between two lasers, the fuller one first. */
function bestStep(group: Group, laserOf: Int32Array, loads_s: Float64Array, a: number, b: number): Step {
  const { decisions } = group;
  let best: Step = { gain_s: 0, moves: [] };
  const may = (i: number, k: number): boolean => ((decisions[i]!.allowed >>> k) & 1) !== 0;
  const back = decisions.flatMap((_, j) => (laserOf[j] === b && may(j, a) ? [j] : []));
  for (let i = 0; i < decisions.length; i++) {
    if (laserOf[i] !== a || !may(i, b)) continue;
    const size = decisions[i]!.total_s;
    const alone_s = gain(loads_s[a]!, loads_s[b]!, size);
    if (alone_s > best.gain_s) best = { gain_s: alone_s, moves: [[i, b]] };
    for (const j of back) {
      const both_s = gain(loads_s[a]!, loads_s[b]!, size - decisions[j]!.total_s);
      // prettier-ignore
      if (both_s > best.gain_s) best = { gain_s: both_s, moves: [[i, b], [j, a]] };
    }
  }
  return best;
}

/** Moves and exchanges whole parts while that makes the fuller of two lasers emptier; never makes loads less flat. */
function improve(group: Group, flat: Flat, tiny_s: number, budget: Budget): Flat {
  let { loads_s } = flat;
  const laserOf = flat.laserOf.slice();
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const order = [...loads_s.keys()].sort((a, b) => loads_s[b]! - loads_s[a]! || a - b);
    const step = firstStep(group, laserOf, loads_s, order, tiny_s, budget);
    if (step === null) break;
    for (const [item, to] of step.moves) laserOf[item] = to;
    loads_s = loadsOf(group, laserOf);
  }
  return { laserOf, loads_s };
}

function firstStep(
  group: Group,
  laserOf: Int32Array,
  loads_s: Float64Array,
  order: readonly number[],
  tiny_s: number,
  budget: Budget,
): Step | null {
  for (let from = 0; from < order.length; from++)
    for (let to = order.length - 1; to > from; to--) {
      budget.left -= group.decisions.length;
      if (budget.left < 0) return null;
      const step = bestStep(group, laserOf, loads_s, order[from]!, order[to]!);
      if (step.gain_s > tiny_s) return step;
    }
  return null;
}

/**
 * True where a search through all choices can come to an end within the budget: their number before anything is pruned
 * is at most that to the power of 2.5 (what pruning was seen to leave over). A search cut short rarely finds anything.
 */
function searchable({ decisions, lasers }: Group, { left }: Budget): boolean {
  const steps = left / (1 << Math.min(10, lasers.length));
  const choices = decisions.reduce((bits, { allowed }) => bits + Math.log2(1 + sizeOf(allowed)), 0);
  return steps > 1 && choices <= 2.5 * Math.log2(steps);
}

/** Goes through all choices with at most `cuts` cut parts, as far as the budget reaches. */
function searchAll(
  slack: Slack,
  group: Group,
  loads: Groups,
  budget: Budget,
  start: Flat,
  cuts: number,
): Flat {
  let best = start;
  const goal = loadsOf(group, new Int32Array(group.decisions.length).fill(-1));
  const cost = 1 << Math.min(10, slack.lasers);
  const tree: Tree = {
    ...treeOf(copyOf(slack), group, loads, budget),
    hopeless: () => {
      budget.left -= cost;
      return compareFlatness(loadsOf(group, tree.laserOf), best.loads_s, slack.tiny_s) >= 0;
    },
    accept: () => {
      best = { laserOf: tree.laserOf.slice(), loads_s: loadsOf(group, tree.laserOf) };
      return compareFlatness(best.loads_s, goal, slack.tiny_s) <= 0;
    },
  };
  searchTree(tree, cuts);
  return best;
}

/** The flattest choice found with no more cut parts than the plan has. */
export function flatten(slack: Slack, group: Group, loads: Groups, budget: Budget, plan: Plan): Flat {
  const start: Flat = { laserOf: plan.laserOf, loads_s: loadsOf(group, plan.laserOf) };
  const goal_s = loadsOf(group, new Int32Array(group.decisions.length).fill(-1));
  if (compareFlatness(start.loads_s, goal_s, slack.tiny_s) <= 0) return start;
  const better = improve(group, start, slack.tiny_s, budget);
  if (compareFlatness(better.loads_s, goal_s, slack.tiny_s) <= 0) return better;
  return searchable(group, budget) ? searchAll(slack, group, loads, budget, better, plan.cuts) : better;
}
