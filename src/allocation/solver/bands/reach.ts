/**
 * What the child side of a band can take (seconds) with a given number of cut items. With A bound to it, F free and D
 * in items that may choose: the n largest items bound to the child, cut, bring it down to A − their load; the n
 * largest bound to the parent, cut, bring it up to A + F + D + their load; anything from A to A + F + D needs one cut
 * at most (the choosers filled in one after the other, the one that overflows is cut), and none only where a subset of
 * the choosers comes close enough, which is a bounded search.
 */
import type { Budget } from '../tree';
import { CHILD, CHOICE, PARENT, topOf, type Forest } from './forest';

/** The forest, and how carefully it is asked. */
export interface Reach {
  readonly forest: Forest;
  readonly itemLoad_s: Float64Array;
  /** Amounts closer than this are the same. */
  readonly tiny_s: number;
  /** Visits of one search among the choosers. */
  readonly budget: Budget;
  /** False once a search among the choosers ran out of budget. */
  exact: boolean;
}

/** Chooser (place in its run) → 1 where it goes to the child; of the last search. */
let taken = new Uint8Array(64);
let trial = new Uint8Array(64);
/** More choosers than this are not searched through to the end by default. */
const MOST_CHOOSERS = 13;
const FEW_VISITS = 400;

/** The largest sum of choosers that is at most `most_s`; any that is at least `enough_s` will do. Sets chosen(). */
export function largestSum(reach: Reach, band: number, most_s: number, enough_s: number): number {
  const { forest, itemLoad_s, tiny_s, budget } = reach;
  const from = forest.start[3 * band + CHOICE];
  const count = forest.start[3 * band + CHOICE + 1] - from;
  const all_s = forest.sum_s[3 * band + CHOICE];
  if (taken.length < count) [taken, trial] = [new Uint8Array(2 * count), new Uint8Array(2 * count)];
  taken.fill(0, 0, count);
  let best_s = 0;
  let visits = count <= MOST_CHOOSERS ? budget.left : Math.min(budget.left, FEW_VISITS + budget.left / 100);
  const given = visits;
  const keep = (sum_s: number, next: number, fill: number): void => {
    best_s = sum_s;
    taken.set(trial.subarray(0, next));
    taken.fill(fill, next, count);
  };
  const visit = (next: number, sum_s: number): boolean => {
    if (--visits < 0) return true;
    const left_s = next === count ? 0 : all_s - (next === 0 ? 0 : forest.top_s[from + next - 1]);
    if (sum_s + left_s <= best_s) return false;
    if (sum_s + left_s <= most_s + tiny_s) {
      keep(sum_s + left_s, next, 1);
      return best_s >= enough_s - tiny_s;
    }
    if (sum_s > best_s) keep(sum_s, next, 0);
    if (best_s >= enough_s - tiny_s) return true;
    const size_s = itemLoad_s[forest.sorted[from + next]];
    trial[next] = 1;
    if (sum_s + size_s <= most_s + tiny_s && visit(next + 1, sum_s + size_s)) return true;
    let after = next;
    for (; after < count && itemLoad_s[forest.sorted[from + after]] === size_s; after++) trial[after] = 0;
    return visit(after, sum_s);
  };
  visit(0, 0);
  budget.left -= given - Math.max(0, visits);
  if (visits < 0 && best_s < enough_s - tiny_s) reach.exact = false;
  return best_s;
}

/** Whether chooser number i of its run went to the child in the last search. */
export const chosen = (i: number): boolean => taken[i] === 1;

/** The most the child side can take with n cuts, at most `cap_s`; −Infinity where even its least is more. */
export function mostWithin(reach: Reach, band: number, n: number, cap_s: number): number {
  const { forest, tiny_s } = reach;
  const { sum_s, free_s, start } = forest;
  const bound_s = sum_s[3 * band + CHILD];
  const choosers = start[3 * band + CHOICE + 1] > start[3 * band + CHOICE];
  if (n === 0 && choosers) {
    const room_s = cap_s - bound_s;
    if (room_s < -tiny_s) return -Infinity;
    const sum = largestSum(reach, band, room_s, room_s - free_s[band]);
    return Math.max(bound_s + sum, Math.min(cap_s, bound_s + sum + free_s[band]));
  }
  const least_s = bound_s - topOf(forest, 3 * band + CHILD, n);
  if (least_s > cap_s + tiny_s) return -Infinity;
  const most_s = bound_s + free_s[band] + sum_s[3 * band + CHOICE] + topOf(forest, 3 * band + PARENT, n);
  return Math.max(least_s, Math.min(cap_s, most_s));
}

/** The least n for which the n largest of a run come to `amount_s`; one more than there are where they never do. */
function cutsToReach({ forest, tiny_s }: Reach, run: number, amount_s: number): number {
  const { start, top_s } = forest;
  let n = 0;
  for (let i = start[run]; i < start[run + 1]; i++) {
    n++;
    if (top_s[i] >= amount_s - tiny_s) return n;
  }
  return n + 1;
}

/** The fewest cuts with which the child side takes exactly `amount_s`. */
export function cutsFor(reach: Reach, band: number, amount_s: number): number {
  const { forest, tiny_s } = reach;
  const { sum_s, free_s, start } = forest;
  const over_s = amount_s - sum_s[3 * band + CHILD];
  if (over_s < -tiny_s) return cutsToReach(reach, 3 * band + CHILD, -over_s);
  const most_s = free_s[band] + sum_s[3 * band + CHOICE];
  if (over_s > most_s + tiny_s) return cutsToReach(reach, 3 * band + PARENT, over_s - most_s);
  if (start[3 * band + CHOICE + 1] === start[3 * band + CHOICE]) return 0;
  const sum = largestSum(reach, band, over_s, over_s - free_s[band]);
  return sum >= over_s - free_s[band] - tiny_s ? 0 : 1;
}
