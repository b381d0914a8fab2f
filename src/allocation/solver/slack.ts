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

/** The watched sets of a group and the time each has left. */
export interface Slack {
  readonly lasers: number;
  /** Single lasers first (index = laser), then unions. */
  readonly sets: Int32Array;
  /** Per set; less than −tiny_s: overdrawn. */
  readonly left_s: Float64Array;
  readonly tiny_s: Seconds;
  /** (set of lasers, laser) → watched sets that hold the laser but not the whole set: see crossing(). */
  readonly crossings: Map<number, Int32Array>;
}

/** Every union of overlapping masks, by ascending mask; null where there are too many. */
function unionsOf(masks: readonly number[]): number[] | null {
  const queue = [...new Set(masks)].sort((a, b) => a - b);
  const parts = Int32Array.from(queue);
  const top = parts.at(-1) ?? 0;
  const seen = top < MOST_SETS ? new Uint8Array(MOST_SETS) : null;
  const others = new Set(seen === null ? queue : []);
  if (seen !== null) for (const mask of parts) seen[mask] = 1;
  for (let head = 0; head < queue.length; head++) {
    const set = queue[head]!;
    for (let i = 0; i < parts.length; i++) {
      const mask = parts[i]!;
      const union = set | mask;
      if (union === set || (set & mask) === 0) continue;
      if (seen === null ? others.has(union) : seen[union] === 1) continue;
      if (queue.length >= MOST_SETS) return null;
      if (seen === null) others.add(union);
      else seen[union] = 1;
      queue.push(union);
    }
  }
  return queue;
}

/** Sets found before, by lasers and masks: from frame to frame the zones stay, so the sets do. */
const known = new Map<string, Int32Array | null>();
const MOST_KNOWN = 32;
const knownCrossings = new WeakMap<Int32Array, Map<number, Int32Array>>();

/** The sets to watch: single lasers, then unions of the masks; null where there are too many. */
export function watchedSets(lasers: number, masks: readonly number[]): Int32Array | null {
  const sorted = [...masks].sort((a, b) => a - b);
  const key = `${lasers}:${sorted.join()}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const unions = unionsOf(sorted);
  const singles = Array.from({ length: lasers }, (_, k) => 1 << k);
  const sets =
    unions === null
      ? null
      : Int32Array.from([...singles, ...unions.filter((set) => (set & (set - 1)) !== 0)]);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, sets);
  return sets;
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
  const crossings = knownCrossings.get(sets) ?? new Map<number, Int32Array>();
  knownCrossings.set(sets, crossings);
  return { lasers: room_s.length, sets, left_s, tiny_s, crossings };
}

/** The same state, to be changed apart. */
export const copyOf = (slack: Slack): Slack => ({ ...slack, left_s: slack.left_s.slice() });

/** The watched sets that load of `mask` newly burdens when it goes to laser k: found once, then kept. */
function crossing({ sets, crossings }: Slack, mask: number, k: number): Int32Array {
  const key = mask * 32 + k;
  let found = crossings.get(key);
  if (found === undefined) {
    const list: number[] = [];
    sets.forEach((set, s) => {
      if (((set >>> k) & 1) !== 0 && (mask & ~set) !== 0) list.push(s);
    });
    found = Int32Array.from(list);
    crossings.set(key, found);
  }
  return found;
}

function fitsMixed({ sets, left_s, tiny_s }: Slack, { masks, loads_s }: Item, k: number): boolean {
  for (let s = 0; s < sets.length; s++) {
    const set = sets[s]!;
    if (((set >>> k) & 1) === 0) continue;
    let left = left_s[s]! + tiny_s;
    for (let f = 0; f < masks.length; f++) if ((masks[f]! & ~set) !== 0) left -= loads_s[f]!;
    if (left < 0) return false;
  }
  return true;
}

/** True where the item may go whole to laser k and all the rest still finds room. */
export function fits(slack: Slack, item: Item, k: number): boolean {
  if (item.masks.length > 1) return fitsMixed(slack, item, k);
  const { left_s } = slack;
  const burdened = crossing(slack, item.masks[0]!, k);
  const least = item.loads_s[0]! - slack.tiny_s;
  for (let i = 0; i < burdened.length; i++) if (left_s[burdened[i]!]! < least) return false;
  return true;
}

/** Puts `load_s` of load for `mask` on laser k; less than 0 takes it back to divisible. */
export function takeSome(slack: Slack, mask: number, load_s: Seconds, k: number): void {
  const { left_s } = slack;
  const burdened = crossing(slack, mask, k);
  for (let i = 0; i < burdened.length; i++) left_s[burdened[i]!]! -= load_s;
}

/** Puts the item whole on laser k (sign 1), or takes it back to divisible (sign −1). */
export function take(slack: Slack, { masks, loads_s }: Item, k: number, sign: 1 | -1): void {
  for (let f = 0; f < masks.length; f++) takeSome(slack, masks[f]!, sign * loads_s[f]!, k);
}

/** The most of a fragment that laser k can take with all the rest still finding room. */
export function mostOn(slack: Slack, mask: number, load_s: Seconds, k: number): Seconds {
  const { left_s } = slack;
  const burdened = crossing(slack, mask, k);
  let most = load_s;
  for (let i = 0; i < burdened.length; i++) most = Math.min(most, left_s[burdened[i]!]!);
  return Math.max(0, most);
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
