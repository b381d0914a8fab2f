/**
 * The met length: how much of the blade's line lies inside sections, as a function of the blade's place along its
 * stroke. Millimetres. The blade is a straight line square to its travel direction (ux, uy); s = ux·x + uy·y is its place,
 * t = ux·y − uy·x runs along it. Between two vertices the met length is linear in s, at edges parallel to the blade it
 * jumps. Geometry alone (mathematics); nothing is said about forces.
 *
 * An edge from (s0, t0) to (s1, t1) bounds the material with ±t(s), t linear: the met length is Σ ± t(s) over the edges
 * above s. So each edge adds a constant and a slope at its lower end and takes them away at its upper end.
 */
import type { Region } from '../geometry/types';
import type { Mm } from '../units/types';

/** What the met length's form "constant + slope · s" gains at each place of the stroke, ascending. */
export interface Sweep {
  readonly at: Float64Array;
  readonly constant: Float64Array;
  readonly slope: Float64Array;
}
/** Met length just below and just above each place of the stroke; linear between them, 0 outside. */
export interface MetProfile {
  readonly at_mm: Float64Array;
  readonly below_mm: Float64Array;
  readonly above_mm: Float64Array;
}

/** An edge that takes up less of the stroke than the resolution of a layout is parallel to the blade: a jump. */
const PARALLEL_MM: Mm = 1e-3;
/** Places nearer than this are one. */
const SAME_MM: Mm = 1e-9;

export const NO_SWEEP: Sweep = emptySweep(new Float64Array(0));

function emptySweep(at: Float64Array): Sweep {
  return { at, constant: new Float64Array(at.length), slope: new Float64Array(at.length) };
}

/** Ascending without repeats. */
function distinct(places: Float64Array): Float64Array {
  places.sort();
  let n = 0;
  for (const s of places) if (n === 0 || s - places[n - 1] > SAME_MM) places[n++] = s;
  return places.slice(0, n);
}

/** Index of the last place ≤ s (or the same place). */
function indexOf(at: Float64Array, s: Mm): number {
  let [low, high] = [0, at.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at[middle] <= s + SAME_MM) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The sweep of one clean region along (ux, uy) of length 1. */
export function sweepOf(region: Region, ux: number, uy: number): Sweep {
  let count = 0;
  for (const ring of region) count += ring.length >> 1;
  const places = new Float64Array(count);
  let k = 0;
  for (const ring of region)
    for (let i = 0; i < ring.length; i += 2) places[k++] = ux * ring[i] + uy * ring[i + 1];
  const sweep = emptySweep(distinct(places));
  for (const ring of region) {
    const n = ring.length;
    for (let i = 0; i < n; i += 2) {
      const j = i + 2 === n ? 0 : i + 2;
      const s0 = ux * ring[i] + uy * ring[i + 1];
      const s1 = ux * ring[j] + uy * ring[j + 1];
      const t0 = ux * ring[i + 1] - uy * ring[i];
      const t1 = ux * ring[j + 1] - uy * ring[j];
      // Material lies on the left: beyond t where the edge runs along the stroke, short of it where it runs back.
      if (s0 < s1) addEdge(sweep, s0, t0, s1, t1, -1);
      else if (s1 < s0) addEdge(sweep, s1, t1, s0, t0, 1);
    }
  }
  return sweep;
}

function addEdge({ at, constant, slope }: Sweep, s0: Mm, t0: Mm, s1: Mm, t1: Mm, sign: 1 | -1): void {
  const m = s1 - s0 < PARALLEL_MM ? 0 : (sign * (t1 - t0)) / (s1 - s0);
  const c = sign * t0 - m * s0;
  const from = indexOf(at, s0);
  const to = indexOf(at, s1);
  constant[from] += c;
  slope[from] += m;
  constant[to] -= c;
  slope[to] -= m;
}

export interface Moved {
  readonly sweep: Sweep;
  /** How far the region stands along the stroke. */
  readonly by_mm: Mm;
}

/** The sum of regions, each moved along the stroke. */
export function sumOfSweeps(parts: readonly Moved[]): Sweep {
  if (parts.length === 1 && parts[0].by_mm === 0) return parts[0].sweep;
  const places = new Float64Array(parts.reduce((count, { sweep }) => count + sweep.at.length, 0));
  let k = 0;
  for (const { sweep, by_mm } of parts) for (const s of sweep.at) places[k++] = s + by_mm;
  const sum = emptySweep(distinct(places));
  for (const { sweep, by_mm } of parts)
    for (let i = 0; i < sweep.at.length; i++) {
      const place = indexOf(sum.at, sweep.at[i] + by_mm);
      sum.constant[place] += sweep.constant[i] - sweep.slope[i] * by_mm;
      sum.slope[place] += sweep.slope[i];
    }
  return sum;
}

/** Met lengths from a sweep. */
export function profileOf({ at, constant, slope }: Sweep): MetProfile {
  const below_mm = new Float64Array(at.length);
  const above_mm = new Float64Array(at.length);
  let c = 0;
  let m = 0;
  const last = at.length - 1;
  for (let i = 0; i <= last; i++) {
    below_mm[i] = i === 0 ? 0 : Math.max(0, c + m * at[i]);
    c += constant[i];
    m += slope[i];
    above_mm[i] = i === last ? 0 : Math.max(0, c + m * at[i]);
  }
  return { at_mm: at, below_mm, above_mm };
}

/** Met length at a place of the stroke; at a jump, the value above it. */
export function metAt({ at_mm, below_mm, above_mm }: MetProfile, s: Mm): Mm {
  const i = indexOf(at_mm, s);
  if (i < 0 || i === at_mm.length - 1) return 0;
  const share = (s - at_mm[i]) / (at_mm[i + 1] - at_mm[i]);
  return above_mm[i] + Math.max(0, share) * (below_mm[i + 1] - above_mm[i]);
}

/** The same met lengths as the blade meets them on its way back; places are −s. */
export const wayBack = ({ at_mm, below_mm, above_mm }: MetProfile): MetProfile => ({
  at_mm: at_mm.map((s) => -s).reverse(),
  below_mm: above_mm.slice().reverse(),
  above_mm: below_mm.slice().reverse(),
});

export interface Largest {
  readonly met_mm: Mm;
  readonly at_mm: Mm;
}

/** The largest met length and the first place where the blade meets it; 0 at 0 where there is nothing to meet. */
export function largestMet({ at_mm, below_mm, above_mm }: MetProfile): Largest {
  let best: Largest = { met_mm: 0, at_mm: 0 };
  at_mm.forEach((s, i) => {
    const met_mm = Math.max(below_mm[i], above_mm[i]);
    if (met_mm > best.met_mm + SAME_MM) best = { met_mm, at_mm: s };
  });
  return best;
}

export interface Rise {
  readonly rise_mm: Mm;
  /** Places of the blade before and after; the same at a jump. */
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  /** Met on the blade's way back: it comes from the larger place. */
  readonly back: boolean;
}
export const NO_RISE: Rise = { rise_mm: 0, from_mm: 0, to_mm: 0, back: false };

/** The largest sudden rise: where an edge parallel to the blade begins. */
export function largestJump({ at_mm, below_mm, above_mm }: MetProfile): Rise {
  let best = NO_RISE;
  at_mm.forEach((s, i) => {
    const rise_mm = above_mm[i] - below_mm[i];
    if (rise_mm > best.rise_mm + SAME_MM) best = { rise_mm, from_mm: s, to_mm: s, back: false };
  });
  return best;
}

/**
 * The steepest rise: the largest L(b⁺) − L(a⁻) over places a ≤ b of the blade no further apart than `stroke_mm`, where a
 * jump counts in full; of equal ones the first of the shortest. L is linear between vertices, so the largest is found where both places are vertices, or one is
 * and the other stands the whole stroke away.
 */
export function steepestRise(profile: MetProfile, stroke_mm: Mm): Rise {
  const { at_mm, below_mm, above_mm } = profile;
  const lows = new LeastInWindow(at_mm.length);
  let best = NO_RISE;
  const consider = (rise_mm: Mm, from_mm: Mm, to_mm: Mm): void => {
    const more_mm = rise_mm - best.rise_mm;
    const shorter = to_mm - from_mm < best.to_mm - best.from_mm - SAME_MM;
    if (more_mm > SAME_MM || (more_mm > -SAME_MM && shorter)) best = { rise_mm, from_mm, to_mm, back: false };
  };
  for (let i = 0; i < at_mm.length; i++) {
    const s = at_mm[i];
    const high = Math.max(below_mm[i], above_mm[i]);
    while (lows.size > 0 && at_mm[lows.first] < s - stroke_mm - SAME_MM) lows.dropFirst();
    if (lows.size > 0) consider(high - lows.least, at_mm[lows.first], s);
    consider(high - metAt(profile, s - stroke_mm), s - stroke_mm, s);
    consider(above_mm[i] - below_mm[i], s, s);
    const low = Math.min(below_mm[i], above_mm[i]);
    consider(metAt(profile, s + stroke_mm) - low, s, s + stroke_mm);
    lows.push(i, low);
  }
  return best;
}

/** The least of the values pushed and not yet dropped, oldest first: only those that may become the least are kept. */
class LeastInWindow {
  private readonly index: Int32Array;
  private readonly value: Float64Array;
  private head = 0;
  private tail = 0;
  constructor(capacity: number) {
    this.index = new Int32Array(capacity);
    this.value = new Float64Array(capacity);
  }
  get size(): number {
    return this.tail - this.head;
  }
  get first(): number {
    return this.index[this.head];
  }
  get least(): number {
    return this.value[this.head];
  }
  dropFirst(): void {
    this.head++;
  }
  push(index: number, value: number): void {
    while (this.tail > this.head && this.value[this.tail - 1] >= value) this.tail--;
    this.index[this.tail] = index;
    this.value[this.tail++] = value;
  }
}
