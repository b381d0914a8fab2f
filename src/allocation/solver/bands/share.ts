/**
 * Gives the divisible fragments of every band to its two lasers (seconds): the child side is filled in order until it has
 * its amount, so at most one fragment of a band is divided. Fragments of parts that the child's laser alone exposes
 * already come first, those of the parent's last; within that by falling load, so that what is divided is large.
 */
import type { Forest } from './forest';
import { MOST_LASERS, type BandLayer } from './layer';
import { CUT } from './place';

/** Called for every share found; indices of the layer's part, its fragment and the laser. */
export type GiveOut = (part: number, fragment: number, laser: number, load_s: number) => void;

let queue = new Int32Array(256);
let rank = new Int8Array(256);
const start = new Int32Array(MOST_LASERS + 1);
const next = new Int32Array(MOST_LASERS);

/** 0: only the child's laser exposes something of the part, 2: only the parent's, 1: both or neither. */
function rankOf(used: number, down: number, up: number): number {
  const [onDown, onUp] = [(used >>> down) & 1, (used >>> up) & 1];
  return onDown === onUp ? 1 : onDown === 1 ? 0 : 2;
}

function sortQueue(load_s: Float64Array, from: number, to: number): void {
  const before = (a: number, b: number): boolean =>
    rank[a] !== rank[b] ? rank[a] < rank[b] : load_s[a] > load_s[b];
  if (to - from > 48) {
    queue.subarray(from, to).sort((a, b) => (before(a, b) ? -1 : before(b, a) ? 1 : a - b));
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const fragment = queue[i];
    let j = i - 1;
    for (; j >= from && before(fragment, queue[j]); j--) queue[j + 1] = queue[j];
    queue[j + 1] = fragment;
  }
}

/** Open fragments, band by band, into the queue. */
function fillQueue(layer: BandLayer, forest: Forest, to: Int32Array): void {
  const { fragments, bands, bandOf, itemOf, partOf, load_s, used } = layer;
  const { child, parent } = forest;
  if (queue.length < fragments) [queue, rank] = [new Int32Array(2 * fragments), new Int8Array(2 * fragments)];
  start.fill(0, 0, bands + 1);
  for (let i = 0; i < fragments; i++) if (itemOf[i] < 0 || to[itemOf[i]] === CUT) start[bandOf[i] + 1]++;
  for (let b = 0; b < bands; b++) next[b] = start[b + 1] += start[b];
  for (let i = fragments - 1; i >= 0; i--) {
    if (itemOf[i] >= 0 && to[itemOf[i]] !== CUT) continue;
    const b = bandOf[i];
    rank[i] = rankOf(used[partOf[i]], child[b], parent[child[b]]);
    queue[--next[b]] = i;
  }
  for (let b = 0; b < bands; b++) sortQueue(load_s, start[b], start[b + 1]);
}

/** Gives out every fragment: items that are whole to their laser, the rest so that child sides take `amount_s`. */
export function shareOut(
  layer: BandLayer,
  forest: Forest,
  to: Int32Array,
  amount_s: Float64Array,
  tiny_s: number,
  give: GiveOut,
): void {
  const { fragments, bands, itemOf, partOf, indexOf, load_s } = layer;
  fillQueue(layer, forest, to);
  for (let i = 0; i < fragments; i++)
    if (itemOf[i] >= 0 && to[itemOf[i]] !== CUT) give(partOf[i], indexOf[i], to[itemOf[i]], load_s[i]);
  for (let b = 0; b < bands; b++) {
    const down = forest.child[b];
    let left_s = amount_s[b];
    for (let q = start[b]; q < start[b + 1]; q++) {
      const i = queue[q];
      const down_s = left_s >= load_s[i] - tiny_s ? load_s[i] : left_s <= tiny_s ? 0 : left_s;
      if (down_s > 0) give(partOf[i], indexOf[i], down, down_s);
      if (down_s < load_s[i]) give(partOf[i], indexOf[i], forest.parent[down], load_s[i] - down_s);
      left_s -= down_s;
    }
  }
}
