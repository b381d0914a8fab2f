/**
 * Fewer cuts by making room: a part that fits nowhere whole goes to a laser that first gives a whole part to another
 * laser, or exchanges one with it. What is tried is judged by the time left (seconds) of the two lasers alone and
 * then held against every watched set, and taken back where one is overdrawn.
 */
import type { Item } from './groups';
import { lowestOf } from './sets';
import { fits, take, type Slack } from './slack';
import type { Budget } from './tree';

interface Repair {
  readonly slack: Slack;
  readonly items: readonly Item[];
  readonly laserOf: Int32Array;
  readonly budget: Budget;
}

type Change = readonly [item: number, from: number, to: number];

/** Makes all the changes (from or to −1: cut), or none: false where they overdraw a set. */
function change({ slack, items, laserOf }: Repair, changes: readonly Change[]): boolean {
  for (const [i, from] of changes) if (from >= 0) take(slack, items[i]!, from, -1);
  let done = 0;
  for (const [i, , to] of changes) {
    if (!fits(slack, items[i]!, to)) break;
    take(slack, items[i]!, to, 1);
    laserOf[i] = to;
    done++;
  }
  if (done === changes.length) return true;
  for (const [i, , to] of changes.slice(0, done)) take(slack, items[i]!, to, -1);
  for (const [i, from] of changes) {
    if (from >= 0) take(slack, items[i]!, from, 1);
    laserOf[i] = from;
  }
  return false;
}

const may = (item: Item, k: number): boolean => ((item.allowed >>> k) & 1) !== 0;

/** Gives part i of laser a to laser b, or exchanges it with one that is there, so that part u fits on a. */
function giveWay(repair: Repair, u: number, a: number, i: number, b: number): boolean {
  const { slack, items, laserOf, budget } = repair;
  const { left_s, tiny_s } = slack;
  const size = items[i]!.total_s;
  const least = size - (items[u]!.total_s - left_s[a]!) + tiny_s;
  const most = size - left_s[b]! - tiny_s;
  if (least < 0) return false;
  // prettier-ignore
  if (most <= 0 && change(repair, [[i, a, b], [u, -1, a]])) return true;
  budget.left -= items.length >> 3;
  for (let j = 0; j < items.length; j++) {
    const back = items[j]!;
    if (laserOf[j] !== b || back.total_s > least || back.total_s < most || !may(back, a)) continue;
    budget.left -= slack.sets.length;
    // prettier-ignore
    if (change(repair, [[i, a, b], [j, b, a], [u, -1, a]])) return true;
    if (budget.left < 0) return false;
  }
  return false;
}

function placeBy(repair: Repair, u: number, a: number): boolean {
  const { items, laserOf, budget } = repair;
  for (let i = 0; i < items.length; i++) {
    if (laserOf[i] !== a) continue;
    for (let rest = items[i]!.allowed & ~(1 << a); rest !== 0; rest &= rest - 1) {
      if (budget.left < 0) return false;
      if (giveWay(repair, u, a, i, lowestOf(rest))) return true;
    }
  }
  return false;
}

/** Places cut items whole where one exchange makes room, the smallest first; changes slack and laserOf. */
export function repair(slack: Slack, items: readonly Item[], laserOf: Int32Array, budget: Budget): void {
  const state: Repair = { slack, items, laserOf, budget };
  for (let u = items.length - 1; u >= 0; u--) {
    if (laserOf[u]! >= 0) continue;
    for (let rest = items[u]!.allowed; rest !== 0 && budget.left >= 0; rest &= rest - 1)
      if (placeBy(state, u, lowestOf(rest))) break;
  }
}
