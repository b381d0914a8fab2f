/**
 * The lasers of a layer of bands as trees: every band has a child side and a parent side, and its items stand in three
 * runs, each by falling load, then in the order read: bound to the child, bound to the parent, free to choose.
 * Seconds. Arrays are kept from call to call.
 */
import { lowestOf } from '../sets';
import { EITHER, MOST_LASERS, type BandLayer } from './layer';

/** The three runs of a band: items bound to its child side, to its parent side, and free to choose. */
export const CHILD = 0;
export const PARENT = 1;
export const CHOICE = 2;

/** All trees of a layer in flat arrays; lasers, bands and items by their index in the layer. */
export interface Forest {
  /** Lasers, every parent before its children. */
  readonly order: Int32Array;
  /** Laser → its band towards the parent, −1 at a root. */
  readonly bandUp: Int32Array;
  readonly parent: Int32Array;
  /** Band → laser on its child side. */
  readonly child: Int32Array;
  /** Band → load of its free fragments. */
  readonly free_s: Float64Array;
  /** [band × 3 + run] → first entry of `sorted`; one entry more at the end. */
  readonly start: Int32Array;
  /** [band × 3 + run] seconds. */
  readonly sum_s: Float64Array;
  /** Items, run by run. */
  sorted: Int32Array;
  /** Entry of `sorted` → load of the entries of its run up to and with it. */
  top_s: Float64Array;
}

const forest: Forest = {
  order: new Int32Array(MOST_LASERS),
  bandUp: new Int32Array(MOST_LASERS),
  parent: new Int32Array(MOST_LASERS),
  child: new Int32Array(MOST_LASERS),
  free_s: new Float64Array(MOST_LASERS),
  start: new Int32Array(3 * MOST_LASERS + 1),
  sum_s: new Float64Array(3 * MOST_LASERS),
  sorted: new Int32Array(256),
  top_s: new Float64Array(256),
};
const next = new Int32Array(3 * MOST_LASERS);

/** Breadth first from the lowest laser of every tree. */
function orient({ lasers, bands, maskOf }: BandLayer): void {
  const { order, bandUp, parent, child } = forest;
  let seen = 0;
  let tail = 0;
  for (let head = 0, k = 0; head < lasers; head++) {
    if (head === tail) {
      while ((seen >>> k) & 1) k++;
      seen |= 1 << k;
      bandUp[k] = parent[k] = -1;
      order[tail++] = k;
    }
    const v = order[head];
    for (let b = 0; b < bands; b++) {
      const other = maskOf[b] & ~(1 << v);
      if (((maskOf[b] >>> v) & 1) === 0 || (seen & other) !== 0) continue;
      const u = lowestOf(other);
      seen |= other;
      bandUp[u] = b;
      parent[u] = v;
      child[b] = u;
      order[tail++] = u;
    }
  }
}

const runOf = ({ itemBand, itemTo }: BandLayer, i: number): number => {
  const band = itemBand[i];
  return 3 * band + (itemTo[i] === EITHER ? CHOICE : itemTo[i] === forest.child[band] ? CHILD : PARENT);
};

/** Entries from … to−1 by falling load; equals keep their order. */
function sortRun(load_s: Float64Array, from: number, to: number): void {
  const { sorted } = forest;
  if (to - from > 48) {
    sorted.subarray(from, to).sort((a, b) => load_s[b] - load_s[a] || a - b);
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const item = sorted[i];
    const size = load_s[item];
    let j = i - 1;
    for (; j >= from && load_s[sorted[j]] < size; j--) sorted[j + 1] = sorted[j];
    sorted[j + 1] = item;
  }
}

function sortItems(layer: BandLayer): void {
  const { bands, items, itemLoad_s } = layer;
  if (forest.sorted.length < items) {
    forest.sorted = new Int32Array(2 * items);
    forest.top_s = new Float64Array(2 * items);
  }
  const { start, sorted, sum_s, top_s } = forest;
  start.fill(0, 0, 3 * bands + 1);
  for (let i = 0; i < items; i++) start[runOf(layer, i) + 1]++;
  for (let r = 0; r < 3 * bands; r++) next[r] = start[r + 1] += start[r];
  for (let i = items - 1; i >= 0; i--) sorted[--next[runOf(layer, i)]] = i;
  for (let r = 0; r < 3 * bands; r++) {
    sortRun(itemLoad_s, start[r], start[r + 1]);
    let sum = 0;
    for (let i = start[r]; i < start[r + 1]; i++) top_s[i] = sum += itemLoad_s[sorted[i]];
    sum_s[r] = sum;
  }
}

/** The layer's lasers as trees. Valid until the next call. */
export function forestOf(layer: BandLayer): Forest {
  orient(layer);
  sortItems(layer);
  forest.free_s.fill(0, 0, layer.bands);
  for (let i = 0; i < layer.fragments; i++)
    if (layer.itemOf[i] < 0) forest.free_s[layer.bandOf[i]] += layer.load_s[i];
  return forest;
}

/** Load of the n largest items of a run, of all where it has fewer. */
export function topOf({ start, top_s }: Forest, run: number, n: number): number {
  const count = Math.min(n, start[run + 1] - start[run]);
  return count === 0 ? 0 : top_s[start[run] + count - 1];
}

/** Load of a band's items and free fragments together, whichever side they go to. */
export const loadOfBand = ({ sum_s, free_s }: Forest, band: number): number =>
  sum_s[3 * band] + sum_s[3 * band + 1] + sum_s[3 * band + 2] + free_s[band];
