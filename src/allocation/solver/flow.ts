/**
 * Shared load as a flow: groups of load (seconds, by set of lasers) into lasers of a given capacity (seconds). Decides
 * what fits, and where it does not, which lasers are the bottleneck. Used where the lasers are too many to try every
 * subset. Source: max-flow/min-cut with shortest augmenting paths (Edmonds and Karp 1972 [memory]); the best ratio by
 * Dinkelbach's method (1967 [memory]): each round replaces the time by the density of the bottleneck just found.
 */
import type { Seconds } from '../../units/types';
import { allOf, comesBefore, lowestOf, RELATIVE_TIE, sizeOf } from './sets';

/** Load by set of lasers, every set once. */
export type Groups = ReadonlyMap<number, Seconds>;

/** Where a flow put the groups, and what stopped it. */
export interface Filling {
  /** Sets of lasers, one per group. */
  readonly masks: readonly number[];
  /** [group × laserCount + laser] seconds. */
  readonly flow_s: Float64Array;
  /** Per group: seconds that found no place. */
  readonly left_s: Float64Array;
  /** Lasers that hold back what found no place (bits); 0 where everything fits. */
  readonly bottleneck: number;
}

interface State {
  readonly m: number;
  readonly masks: number[];
  readonly flow_s: Float64Array;
  readonly left_s: Float64Array;
  readonly room_s: Float64Array;
  readonly tiny_s: number;
}

/** The cheap start: every group goes where there is room, in index order. */
function pour(state: State): void {
  const { m, masks, flow_s, left_s, room_s } = state;
  masks.forEach((mask, j) => {
    for (let rest = mask; rest !== 0 && left_s[j]! > 0; rest &= rest - 1) {
      const k = lowestOf(rest);
      const amount = Math.min(left_s[j]!, room_s[k]!);
      if (amount <= 0) continue;
      flow_s[j * m + k]! += amount;
      left_s[j]! -= amount;
      room_s[k]! -= amount;
    }
  });
}

interface Search {
  /** Laser → group it was reached from (−1: not reached). */
  readonly from: Int32Array;
  /** Group → laser it was reached from (−1: start of a path, −2: not reached). */
  readonly back: Int32Array;
  readonly reached: number;
  /** A laser with room, −1 where there is none. */
  readonly end: number;
}

/** Breadth first over what can still be moved, starting at every group with load left. */
function search(state: State): Search {
  const { m, masks, flow_s, left_s, room_s, tiny_s } = state;
  const from = new Int32Array(m).fill(-1);
  const back = new Int32Array(masks.length).fill(-2);
  const queue: number[] = [];
  masks.forEach((_, j) => {
    if (left_s[j]! > tiny_s) {
      back[j] = -1;
      queue.push(j);
    }
  });
  let reached = 0;
  for (let head = 0; head < queue.length; head++) {
    const j = queue[head]!;
    for (let rest = masks[j]! & ~reached; rest !== 0; rest &= rest - 1) {
      const k = lowestOf(rest);
      reached |= 1 << k;
      from[k] = j;
      if (room_s[k]! > tiny_s) return { from, back, reached, end: k };
      for (let i = 0; i < masks.length; i++) {
        if (back[i] !== -2 || !(flow_s[i * m + k]! > tiny_s)) continue;
        back[i] = k;
        queue.push(i);
      }
    }
  }
  return { from, back, reached, end: -1 };
}

/** Sends as much as one path allows. */
function augment(state: State, path: Search): void {
  const { m, flow_s, left_s, room_s } = state;
  let amount = room_s[path.end]!;
  let k = path.end;
  let j = path.from[k]!;
  for (; path.back[j]! >= 0; j = path.from[k]!) {
    k = path.back[j]!;
    amount = Math.min(amount, flow_s[j * m + k]!);
  }
  amount = Math.min(amount, left_s[j]!);
  left_s[j]! -= amount;
  room_s[path.end]! -= amount;
  for (k = path.end, j = path.from[k]!; ; j = path.from[k]!) {
    flow_s[j * m + k]! += amount;
    if (path.back[j]! < 0) return;
    k = path.back[j]!;
    flow_s[j * m + k]! -= amount;
  }
}

/**
 * Fills lasers up to their room (seconds, ≥ 0) with the groups' load. `scale_s`: the size loads are judged by; what is
 * below 1e-13 of it is nothing.
 */
export function fill(groups: Groups, room_s: readonly Seconds[], scale_s: Seconds): Filling {
  const masks = [...groups.keys()];
  const state: State = {
    m: room_s.length,
    masks,
    flow_s: new Float64Array(masks.length * room_s.length),
    left_s: Float64Array.from(groups.values()),
    room_s: Float64Array.from(room_s),
    tiny_s: scale_s * 1e-13,
  };
  pour(state);
  let found = search(state);
  while (found.end >= 0) {
    augment(state, found);
    found = search(state);
  }
  return { masks, flow_s: state.flow_s, left_s: state.left_s, bottleneck: found.reached };
}

/** Load that only lasers of `set` can take. */
function loadOnlyOf(set: number, fixed_s: readonly Seconds[], groups: Groups): Seconds {
  let sum = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) sum += fixed_s[lowestOf(rest)]!;
  for (const [mask, load] of groups) if ((mask & ~set) === 0) sum += load;
  return sum;
}

/** The least set with laser k that holds everything its own lasers were given, following the filling. */
function closure(k: number, m: number, filling: Filling, tiny_s: number): number {
  let set = 1 << k;
  for (let todo = set; todo !== 0;) {
    const laser = lowestOf(todo);
    todo &= todo - 1;
    filling.masks.forEach((mask, j) => {
      if (!(filling.flow_s[j * m + laser]! > tiny_s)) return;
      todo |= mask & ~set;
      set |= mask;
    });
  }
  return set;
}

/** The densest set by max-flow, any number of lasers up to 31; of tied ones the one that comes first. */
export function densestByFlow(
  fixed_s: readonly Seconds[],
  groups: Groups,
): { readonly best_s: Seconds; readonly setBy: number } {
  const m = fixed_s.length;
  const all = allOf(m);
  let setBy = all;
  let best_s = loadOnlyOf(all, fixed_s, groups) / m;
  fixed_s.forEach((load, k) => {
    if (load > best_s) [best_s, setBy] = [load, 1 << k];
  });
  for (;;) {
    const limit_s = best_s;
    const room_s = fixed_s.map((load) => Math.max(0, limit_s - load));
    const filling = fill(groups, room_s, limit_s);
    const set = filling.bottleneck;
    const density_s = set === 0 ? 0 : loadOnlyOf(set, fixed_s, groups) / sizeOf(set);
    if (density_s > limit_s * (1 + 1e-14)) {
      [best_s, setBy] = [density_s, set];
      continue;
    }
    for (let k = 0; k < m; k++) {
      const tied = closure(k, m, filling, limit_s * RELATIVE_TIE);
      const ratio_s = loadOnlyOf(tied, fixed_s, groups) / sizeOf(tied);
      if (ratio_s >= limit_s * (1 - RELATIVE_TIE) && comesBefore(tied, setBy)) setBy = tied;
    }
    return { best_s: limit_s, setBy };
  }
}
