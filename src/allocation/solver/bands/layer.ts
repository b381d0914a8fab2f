/**
 * A layer whose shared load always lies between two lasers, read into flat arrays that are kept from call to call (this
 * runs in every frame of a drag). A band is all that two lasers share. Loads in seconds, lasers as indices.
 * - Free fragments may be divided at no cost: their part ends on several lasers anyway (see groups.ts).
 * - Every other part is an item of one band: bound to one of its two lasers, or to either, or cut.
 * Read only where the bands join the lasers without a cycle and no item lies in two bands; else the general solver
 * takes over.
 */
import type { BalanceProblem, SharedPart } from '../../types';
import { lowestOf, sizeOf } from '../sets';

/** Sets of lasers are tried one by one up to here (bound.ts, flattest.ts). */
export const MOST_LASERS = 12;
/** Item that either of the two lasers may hold. */
export const EITHER = -1;

/** What is read; only the first `bands`, `items`, `fragments` … entries count. */
export interface BandLayer {
  lasers: number;
  /** Fixed load and fragments that only this laser may take. */
  readonly own_s: Float64Array;
  /** Load by exact set of lasers, for the bound. */
  readonly reach_s: Float64Array;
  bands: number;
  readonly maskOf: Int32Array;
  items: number;
  itemPart: Int32Array;
  itemBand: Int32Array;
  /** The only laser that may hold it, or EITHER. */
  itemTo: Int32Array;
  itemLoad_s: Float64Array;
  /** Shared fragments with load, part by part. */
  fragments: number;
  partOf: Int32Array;
  indexOf: Int32Array;
  bandOf: Int32Array;
  load_s: Float64Array;
  /** Item the fragment belongs to, −1 where it is free. */
  itemOf: Int32Array;
  /** Part → lasers that expose something of it (bits): fixed fragments and settled ones. */
  used: Int32Array;
  settled: number;
  settledAt: Int32Array;
}

const grown = (size: number): Omit<BandLayer, 'lasers' | 'own_s' | 'reach_s' | 'bands' | 'maskOf'> => ({
  items: 0,
  itemPart: new Int32Array(size),
  itemBand: new Int32Array(size),
  itemTo: new Int32Array(size),
  itemLoad_s: new Float64Array(size),
  fragments: 0,
  partOf: new Int32Array(size),
  indexOf: new Int32Array(size),
  bandOf: new Int32Array(size),
  load_s: new Float64Array(size),
  itemOf: new Int32Array(size),
  used: new Int32Array(size),
  settled: 0,
  settledAt: new Int32Array(2 * size),
});
const layer: BandLayer = {
  lasers: 0,
  own_s: new Float64Array(MOST_LASERS),
  reach_s: new Float64Array(1 << MOST_LASERS),
  bands: 0,
  maskOf: new Int32Array(MOST_LASERS),
  ...grown(256),
};
/** (lower laser, higher laser) → band + 1, 0 where there is none yet. */
const bandAt = new Int8Array(MOST_LASERS * MOST_LASERS);
const root = new Int8Array(MOST_LASERS);

function makeRoom(parts: readonly SharedPart[]): void {
  let fragments = 0;
  for (let p = 0; p < parts.length; p++) fragments += parts[p].fragments.length;
  const size = Math.max(parts.length, fragments);
  if (size > layer.used.length) Object.assign(layer, grown(2 * size));
}

/** The band of a pair of lasers; −1 where it would close a cycle. */
function bandFor(mask: number): number {
  const low = lowestOf(mask);
  const high = 31 - Math.clz32(mask);
  const at = low * MOST_LASERS + high;
  if (bandAt[at] > 0) return bandAt[at] - 1;
  const [from, to] = [root[high], root[low]];
  if (from === to) return -1;
  for (let k = 0; k < layer.lasers; k++) if (root[k] === from) root[k] = to;
  layer.maskOf[layer.bands] = mask;
  bandAt[at] = ++layer.bands;
  return layer.bands - 1;
}

/** Reads the fragments of part p; false where the layer is none of this kind. */
function readFragments(part: SharedPart, p: number): boolean {
  const { fragments } = part;
  let used = part.fixedLasers;
  for (let f = 0; f < fragments.length; f++) {
    const { mask, load_s } = fragments[f];
    if (!(mask > 0 && mask >>> layer.lasers === 0 && load_s >= 0 && load_s < Infinity)) return false;
    if (load_s === 0) continue;
    layer.reach_s[mask] += load_s;
    if ((mask & (mask - 1)) === 0) {
      layer.settledAt[2 * layer.settled] = p;
      layer.settledAt[2 * layer.settled++ + 1] = f;
      layer.own_s[31 - Math.clz32(mask)] += load_s;
      used |= mask;
      continue;
    }
    const band = sizeOf(mask) === 2 ? bandFor(mask) : -1;
    if (band < 0) return false;
    const at = layer.fragments++;
    layer.partOf[at] = p;
    layer.indexOf[at] = f;
    layer.bandOf[at] = band;
    layer.load_s[at] = load_s;
    layer.itemOf[at] = -1;
  }
  layer.used[p] = used;
  return true;
}

/** Makes the part's fragments from `first` on an item where they are a decision; false where it spans bands. */
function readItem(p: number, first: number): boolean {
  const used = layer.used[p];
  let allowed = used === 0 ? -1 : (used & (used - 1)) === 0 ? used : 0;
  let total_s = 0;
  let spans = false;
  for (let i = first; i < layer.fragments; i++) {
    allowed &= layer.maskOf[layer.bandOf[i]];
    total_s += layer.load_s[i];
    if (layer.bandOf[i] !== layer.bandOf[first]) spans = true;
  }
  if (allowed === 0) return true;
  if (spans) return false;
  const item = layer.items++;
  layer.itemPart[item] = p;
  layer.itemBand[item] = layer.bandOf[first];
  layer.itemTo[item] = (allowed & (allowed - 1)) === 0 ? lowestOf(allowed) : EITHER;
  layer.itemLoad_s[item] = total_s;
  for (let i = first; i < layer.fragments; i++) layer.itemOf[i] = item;
  return true;
}

/** The layer as bands, parts in the order given; null where it is none of this kind or not sound. Valid until the next call. */
export function readBands(problem: BalanceProblem, order: readonly number[]): BandLayer | null {
  const { laserCount, fixed_s, parts } = problem;
  if (laserCount > MOST_LASERS || laserCount === 0) return null;
  makeRoom(parts);
  layer.lasers = laserCount;
  layer.bands = layer.items = layer.fragments = layer.settled = 0;
  layer.reach_s.fill(0, 0, 1 << laserCount);
  bandAt.fill(0);
  for (let k = 0; k < laserCount; k++) {
    if (!(fixed_s[k] >= 0 && fixed_s[k] < Infinity)) return null;
    layer.own_s[k] = layer.reach_s[1 << k] = fixed_s[k];
    root[k] = k;
  }
  for (let i = 0; i < order.length; i++) {
    const first = layer.fragments;
    if (!readFragments(parts[order[i]], order[i])) return null;
    if (layer.fragments > first && !readItem(order[i], first)) return null;
  }
  return layer;
}
