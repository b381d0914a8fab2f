/**
 * The fewest cut items of a layer of bands with every laser at most at its time (seconds), by dynamic programming from
 * the leaves of every tree to its root: for each number of cuts below a band, the most that the child side of the
 * band can take. Taking more never hurts the lasers above, so only the most counts. A laser's own cap follows from
 * what its children took. Exact as far as the searches among choosers are (reach.ts). What must be taken, because the
 * rest of the tree could not, narrows the numbers to look at: where every laser is full, to one per band.
 */
import { loadOfBand, type Forest } from './forest';
import { MOST_LASERS, type BandLayer } from './layer';
import { mostWithin, type Reach } from './reach';

interface Table {
  stride: number;
  /** [band × stride + cuts below and in it] → the most its child side takes; −Infinity: cannot be. */
  most_s: Float64Array;
  /** … → cuts in the band itself. */
  inBand: Int32Array;
  /** [band × stride + cuts of the parent's children up to this one] → cuts of this one. */
  ofThis: Int32Array;
  readonly first: Int32Array;
  readonly last: Int32Array;
}
const table: Table = {
  stride: 0,
  most_s: new Float64Array(0),
  inBand: new Int32Array(0),
  ofThis: new Int32Array(0),
  first: new Int32Array(MOST_LASERS),
  last: new Int32Array(MOST_LASERS),
};
/** Laser → what it and the lasers below it have to do, bands between them included, less their time. */
const excess_s = new Float64Array(MOST_LASERS);
const rootOf = new Int32Array(MOST_LASERS);
/** Band → all its load. */
const bandLoad_s = new Float64Array(MOST_LASERS);
/** Cuts → sum of what the children merged so far take. */
let sum_s = new Float64Array(0);
let merged_s = new Float64Array(0);
let sumFirst = 0;
let sumLast = 0;

function reset(bands: number, items: number): void {
  const stride = items + 1;
  table.stride = stride;
  if (table.most_s.length < bands * stride) {
    table.most_s = new Float64Array(2 * bands * stride);
    table.inBand = new Int32Array(2 * bands * stride);
    table.ofThis = new Int32Array(2 * bands * stride);
  }
  if (sum_s.length < stride) [sum_s, merged_s] = [new Float64Array(2 * stride), new Float64Array(2 * stride)];
}

/** Excess of what hangs below every laser; for a root: of its whole tree. */
function addUp(layer: BandLayer, { order, parent, bandUp }: Forest, time_s: Float64Array): void {
  for (let i = 0; i < layer.lasers; i++) {
    const v = order[i];
    excess_s[v] = layer.own_s[v] - time_s[v];
    rootOf[v] = parent[v] < 0 ? v : rootOf[parent[v]];
  }
  for (let i = layer.lasers - 1; i >= 0; i--) {
    const v = order[i];
    if (parent[v] >= 0) excess_s[parent[v]] += excess_s[v] + bandLoad_s[bandUp[v]];
  }
}

/** Adds what child band b takes to the sums of its parent. */
function mergeChild(b: number): void {
  const { stride, most_s, ofThis, first, last } = table;
  const [from, to] = [sumFirst + first[b], sumLast + last[b]];
  for (let n = from; n <= to; n++) {
    let best_s = -Infinity;
    for (let own = Math.max(first[b], n - sumLast); own <= last[b] && own <= n - sumFirst; own++) {
      const total_s = sum_s[n - own] + most_s[b * stride + own];
      if (total_s <= best_s) continue;
      best_s = total_s;
      ofThis[b * stride + n] = own;
    }
    merged_s[n] = best_s;
  }
  [sum_s, merged_s] = [merged_s, sum_s];
  sumFirst = from;
  sumLast = to;
}

/** Fills the row of band b: its child laser has `room_s` and what its own children take; at least `need_s` must be taken. */
function fillBand(reach: Reach, b: number, room_s: number, need_s: number): void {
  const { stride, most_s, inBand } = table;
  const { start } = reach.forest;
  const most = Math.max(start[3 * b + 1] - start[3 * b], start[3 * b + 2] - start[3 * b + 1], 1);
  const end = Math.min(stride - 1, sumLast + most);
  most_s.fill(-Infinity, b * stride + sumFirst, b * stride + end + 1);
  for (let below = sumFirst; below <= sumLast; below++) {
    const cap_s = room_s + sum_s[below];
    if (cap_s < need_s - reach.tiny_s) continue;
    for (let n = 0; n <= most && below + n <= end; n++) {
      const taken_s = mostWithin(reach, b, n, cap_s);
      const at = b * stride + below + n;
      if (taken_s > most_s[at] && taken_s >= need_s - reach.tiny_s) {
        most_s[at] = taken_s;
        inBand[at] = n;
      }
      if (taken_s >= cap_s - reach.tiny_s) break;
    }
  }
  trim(b, sumFirst, end);
}

/** Keeps the numbers of cuts between the first that can be and the last that takes more than all before it. */
function trim(b: number, from: number, to: number): void {
  const { stride, most_s, first, last } = table;
  first[b] = to + 1;
  last[b] = to;
  let best_s = -Infinity;
  for (let n = from; n <= to; n++) {
    if (most_s[b * stride + n] <= best_s) continue;
    if (best_s === -Infinity) first[b] = n;
    best_s = most_s[b * stride + n];
    last[b] = n;
  }
}

/** A way to give every band's child side its amount with the fewest cuts. */
export interface FewestCuts {
  /** Band → seconds its child side takes. */
  readonly amount_s: Float64Array;
  /** Band → items cut in it. */
  readonly cuts: Int32Array;
  /** Root → cuts in its tree. */
  readonly ofTree: Int32Array;
  /** Laser → root of its tree. */
  readonly rootOf: Int32Array;
}
const answer: FewestCuts = {
  amount_s: new Float64Array(MOST_LASERS),
  cuts: new Int32Array(MOST_LASERS),
  ofTree: new Int32Array(MOST_LASERS),
  rootOf,
};
const cutsBelow = new Int32Array(MOST_LASERS);

/** Reads the way back from the root of every tree. */
function readBack(layer: BandLayer, { order, parent, bandUp }: Forest): void {
  const { stride, most_s, inBand, ofThis } = table;
  for (let i = 0; i < layer.lasers; i++) {
    const v = order[i];
    if (parent[v] < 0) cutsBelow[v] = answer.ofTree[v];
    // children in the reverse of the order they were merged in
    for (let j = i + 1; j < layer.lasers; j++) {
      const u = order[j];
      if (parent[u] !== v) continue;
      const b = bandUp[u];
      const own = ofThis[b * stride + cutsBelow[v]];
      cutsBelow[v] -= own;
      answer.amount_s[b] = most_s[b * stride + own];
      answer.cuts[b] = inBand[b * stride + own];
      cutsBelow[u] = own - answer.cuts[b];
    }
  }
}

/** `time_s` by laser. Null where the time is not enough. Valid until the next call. */
export function fewestCuts(layer: BandLayer, reach: Reach, time_s: Float64Array): FewestCuts | null {
  const { forest, tiny_s } = reach;
  const { order, parent, bandUp } = forest;
  reset(layer.bands, layer.items);
  for (let b = 0; b < layer.bands; b++) bandLoad_s[b] = loadOfBand(forest, b);
  addUp(layer, forest, time_s);
  for (let i = layer.lasers - 1; i >= 0; i--) {
    const v = order[i];
    let room_s = time_s[v] - layer.own_s[v];
    sum_s[0] = sumFirst = sumLast = 0;
    for (let j = layer.lasers - 1; j > i; j--) {
      if (parent[order[j]] !== v) continue;
      const b = bandUp[order[j]];
      room_s -= bandLoad_s[b];
      mergeChild(b);
    }
    if (parent[v] < 0) {
      let n = sumFirst;
      while (n <= sumLast && room_s + sum_s[n] < -2 * tiny_s) n++;
      if (n > sumLast) return null;
      answer.ofTree[v] = n;
      continue;
    }
    const b = bandUp[v];
    fillBand(reach, b, room_s, excess_s[rootOf[v]] - excess_s[v]);
    if (table.first[b] > table.last[b]) return null;
  }
  readBack(layer, forest);
  return answer;
}
