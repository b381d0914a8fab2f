/**
 * Which parts are cut in one group of lasers, so that the slowest keeps its time and the cut parts are the fewest.
 * First quick constructions: everything starts as divisible and parts are then placed whole, the largest first,
 * on the roomiest laser; what fits nowhere even after an exchange (repair.ts) stays cut (so there is always an answer, as few cuts as a basic solution of
 * the linear program has or fewer). Then a search for fewer, from none upwards, that proves the number where it ends
 * within its budget. Loads in seconds.
 */
import type { Groups } from './flow';
import type { Fragment, Group, Item } from './groups';
import { bestFit, copyOf, take, type Slack } from './slack';
import { repair } from './repair';
import { lowestOf, sizeOf } from './sets';
import { equalsOf, OVERHEAD, searchTree, twinsOf, type Budget, type Tree } from './tree';

/** Constructions with the largest parts held back. */
const MOST_DIVES = 6;
/** Steps of a search that cannot come to its end, where it still finds something now and then; more where lasers are few. */
const fewSteps = (lasers: number): number => (lasers <= 3 ? 800 : 300);

/** Which items stay whole, and how many do not. */
export interface Plan {
  /** Item → laser it is whole on, −1: cut. */
  readonly laserOf: Int32Array;
  readonly cuts: number;
}
/** A plan and what it leaves of the lasers' time. */
export interface Dive extends Plan {
  readonly slack: Slack;
}

const countCuts = (laserOf: Int32Array): number => laserOf.reduce((n, k) => (k < 0 ? n + 1 : n), 0);

/** The largest items that join lasers not yet joined by divisible load: what a basic solution would cut at most. */
function joiners(lasers: number, items: readonly Item[], free: readonly Fragment[]): Uint8Array {
  const held = new Uint8Array(items.length);
  const root = Array.from({ length: lasers }, (_, k) => k);
  const join = (mask: number): boolean => {
    const to = root[lowestOf(mask)]!;
    let joined = false;
    for (let rest = mask; rest !== 0; rest &= rest - 1) {
      const old = root[lowestOf(rest)]!;
      if (old === to) continue;
      joined = true;
      for (let k = 0; k < lasers; k++) if (root[k] === old) root[k] = to;
    }
    return joined;
  };
  for (const { mask } of free) join(mask);
  items.forEach(({ masks }, i) => {
    for (const mask of masks) if (join(mask)) held[i] = 1;
  });
  return held;
}

/** Places every item that is not held back, in order; then tries the others once more, the smallest first. */
function dive(start: Slack, items: readonly Item[], held: Uint8Array, prefer?: Int32Array): Dive {
  const slack = copyOf(start);
  const laserOf = new Int32Array(items.length).fill(-1);
  const place = (i: number): void => {
    const k = bestFit(slack, items[i]!, prefer?.[i] ?? 0);
    if (k < 0) return;
    laserOf[i] = k;
    take(slack, items[i]!, k, 1);
  };
  for (let i = 0; i < items.length; i++) if (held[i] === 0) place(i);
  for (let i = items.length - 1; i >= 0; i--) if (held[i] === 1) place(i);
  return { laserOf, cuts: countCuts(laserOf), slack };
}

/** The better of two constructions: nothing held back, and the joiners held back. */
export function bestDive(
  start: Slack,
  items: readonly Item[],
  free: readonly Fragment[],
  prefer?: Int32Array,
): Dive {
  const first = dive(start, items, new Uint8Array(items.length), prefer);
  if (first.cuts <= 1) return first;
  const other = dive(start, items, joiners(start.lasers, items, free), prefer);
  return other.cuts < first.cuts ? other : first;
}

/** The best of a few constructions, each repaired: as above, then with more and more of the largest held back. */
function construct(start: Slack, { decisions, free }: Group, budget: Budget): Plan {
  const share = { left: Math.floor(budget.left / 2) };
  const given = share.left;
  const mend = ({ slack, laserOf, cuts }: Dive): Plan => {
    if (cuts > 0) repair(slack, decisions, laserOf, share);
    return { laserOf, cuts: countCuts(laserOf) };
  };
  let best = mend(bestDive(start, decisions, free));
  const held = new Uint8Array(decisions.length);
  for (let i = 0; i < Math.min(best.cuts - 1, MOST_DIVES); i++) {
    held[i] = 1;
    const next = mend(dive(start, decisions, held));
    if (next.cuts < best.cuts) best = next;
  }
  budget.left -= given - Math.max(0, share.left);
  return best;
}

/**
 * A search over a group's decisions with nothing decided; it accepts the first answer. `slack` is changed by the
 * search.
 */
export function treeOf(slack: Slack, group: Group, loads: Groups, budget: Budget): Tree {
  return {
    slack,
    decisions: group.decisions,
    laserOf: new Int32Array(group.decisions.length).fill(-1),
    equals: equalsOf(group.decisions),
    twins: twinsOf(slack.lasers, [...loads.keys(), ...group.decisions.map((d) => d.allowed)]),
    budget,
    accept: () => true,
    hopeless: null,
  };
}

/** True where a search can come near its end within the budget: what pruning was seen to leave is far less than all choices. */
function searchable({ decisions }: Group, { left }: Budget): boolean {
  const choices = decisions.reduce((bits, { allowed }) => bits + Math.log2(1 + sizeOf(allowed)), 0);
  return left > 0 && choices <= 3 * Math.log2(left);
}

/**
 * The fewest cuts found, and whether they are proven the fewest. `loads`: all load of the group by set of lasers. Each
 * number of cuts gets an equal share of the budget that is left.
 */
export function fewestCuts(
  slack: Slack,
  group: Group,
  loads: Groups,
  budget: Budget,
): Plan & { readonly proven: boolean } {
  const plan = construct(slack, group, budget);
  let proven = true;
  const most = searchable(group, budget)
    ? budget.left
    : fewSteps(slack.lasers) * (slack.sets.length + OVERHEAD);
  for (let cuts = 0; cuts < plan.cuts; cuts++) {
    const share = { left: Math.min(Math.floor(budget.left / (plan.cuts - cuts)), most) };
    const given = share.left;
    const tree = treeOf(copyOf(slack), group, loads, share);
    const outcome = searchTree(tree, cuts);
    budget.left -= given - Math.max(0, share.left);
    if (outcome === 'found') return { laserOf: tree.laserOf, cuts: countCuts(tree.laserOf), proven };
    if (outcome === 'unknown') proven = false;
  }
  return { laserOf: plan.laserOf, cuts: plan.cuts, proven };
}
