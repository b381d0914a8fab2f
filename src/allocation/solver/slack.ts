/**
 * What is left of the lasers' time (seconds) under a limit per laser, set by set: |S| limits less the load that only S
 * can take. Load that may be divided fits if and only if no set is overdrawn (Hall 1935; max-flow/min-cut). Not every
 * subset need be watched: single lasers and the unions of overlapping sets of the loads are enough, since any
 * other set falls apart into those.
 */
import type { Seconds } from '../../units/types';
import type { Item } from './groups';
import type { Groups } from './flow';
import { lowestOf } from './sets';

/** More sets than this are not watched one by one. */
const MOST_SETS = 4096;

export interface Slack {
  readonly lasers: number;
  /** Single lasers first (index = laser), then unions. */
  readonly sets: Int32Array;
  /** Per set; less than −tiny_s: overdrawn. */
  readonly left_s: Float64Array;
  readonly tiny_s: Seconds;
}

/** Every union of overlapping masks; null where there are too many. */
export function unionsOf(masks: readonly number[]): number[] | null {
  const seen = new Set(masks);
  const queue = [...seen];
  for (let head = 0; head < queue.length; head++)
    for (const mask of masks) {
      const union = queue[head]! | mask;
      if ((queue[head]! & mask) === 0 || seen.has(union)) continue;
      if (queue.length >= MOST_SETS) return null;
      seen.add(union);
      queue.push(union);
    }
  return queue;
}

/** The sets to watch: single lasers, then unions of the masks (each of two lasers or more). */
export function watchedSets(lasers: number, masks: readonly number[]): Int32Array | null {
  const unions = unionsOf(masks);
  if (unions === null) return null;
  const singles = Array.from({ length: lasers }, (_, k) => 1 << k);
  return Int32Array.from([...singles, ...unions.filter((set) => (set & (set - 1)) !== 0)]);
}

/** Slack of every watched set where each laser has `room_s` and all of `loads` is still divisible. */
export function slackOf(sets: Int32Array, room_s: readonly Seconds[], loads: Groups, tiny_s: Seconds): Slack {
  const left_s = new Float64Array(sets.length);
  for (let s = 0; s < sets.length; s++) {
    let sum = 0;
    for (let rest = sets[s]!; rest !== 0; rest &= rest - 1) sum += room_s[lowestOf(rest)]!;
    for (const [mask, load] of loads) if ((mask & ~sets[s]!) === 0) sum -= load;
    left_s[s] = sum;
  }
  return { lasers: room_s.length, sets, left_s, tiny_s };
}

/** The same state, to be changed apart. */
export const copyOf = (slack: Slack): Slack => ({ ...slack, left_s: slack.left_s.slice() });

/** True where the item may go whole to laser k and all the rest still finds room. */
export function fits({ sets, left_s, tiny_s }: Slack, { masks, loads_s }: Item, k: number): boolean {
  for (let s = 0; s < sets.length; s++) {
    const set = sets[s]!;
    if (((set >>> k) & 1) === 0) continue;
    let left = left_s[s]! + tiny_s;
    for (let f = 0; f < masks.length; f++) if ((masks[f]! & ~set) !== 0) left -= loads_s[f]!;
    if (left < 0) return false;
  }
  return true;
}

/** Puts the item whole on laser k (sign 1), or takes it back to divisible (sign −1). */
export function take({ sets, left_s }: Slack, { masks, loads_s }: Item, k: number, sign: 1 | -1): void {
  for (let s = 0; s < sets.length; s++) {
    const set = sets[s]!;
    if (((set >>> k) & 1) === 0) continue;
    for (let f = 0; f < masks.length; f++) if ((masks[f]! & ~set) !== 0) left_s[s]! -= sign * loads_s[f]!;
  }
}

/** The most of a fragment that laser k can take with all the rest still finding room. */
export function mostOn({ sets, left_s }: Slack, mask: number, load_s: Seconds, k: number): Seconds {
  let most = load_s;
  for (let s = 0; s < sets.length; s++)
    if (((sets[s]! >>> k) & 1) !== 0 && (mask & ~sets[s]!) !== 0) most = Math.min(most, left_s[s]!);
  return Math.max(0, most);
}

/** Puts `load_s` of a fragment on laser k. */
export function takeSome({ sets, left_s }: Slack, mask: number, load_s: Seconds, k: number): void {
  for (let s = 0; s < sets.length; s++)
    if (((sets[s]! >>> k) & 1) !== 0 && (mask & ~sets[s]!) !== 0) left_s[s]! -= load_s;
}

/** The laser of `among` with the most time left, −1 where there is none; the first of equals. */
export function roomiest({ left_s }: Slack, among: number): number {
  let best = -1;
  for (let rest = among; rest !== 0; rest &= rest - 1) {
    const k = lowestOf(rest);
    if (best < 0 || left_s[k]! > left_s[best]!) best = k;
  }
  return best;
}

/** The roomiest laser the item fits on, those of `prefer` before others; −1 where it fits nowhere. */
export function bestFit(slack: Slack, item: Item, prefer = 0): number {
  for (const among of [item.allowed & prefer, item.allowed & ~prefer])
    for (let left = among; left !== 0;) {
      const k = roomiest(slack, left);
      if (fits(slack, item, k)) return k;
      left &= ~(1 << k);
    }
  return -1;
}
