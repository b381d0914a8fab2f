/**
 * How a region grows while a line sweeps over it: area, true outline and chord as functions of c for the half-planes
 * n·p ≤ c. Millimetres, mm². Between two vertices the chord is linear, the area quadratic, the outline linear; each
 * stretch keeps its own end values, so nothing is lost to cancellation.
 */
import type { Mm, Mm2 } from '../units/types';
import type { TaggedRegion } from './types';

/** One region swept in one direction; c outside min … max gives nothing or all. */
export interface SweepProfile {
  /** Smallest and largest n·p of the region. */
  readonly min: Mm;
  readonly max: Mm;
  /** n·p of the vertices, ascending without repeats; between two of them all functions are polynomials. */
  readonly levels: Float64Array;
  /** Area with n·p ≤ c. */
  area(c: Mm): Mm2;
  /** Length of uncut edges with n·p ≤ c. */
  outline(c: Mm): Mm;
  /** Total length of the line n·p = c inside the region; at a step, the value just below c. */
  chord(c: Mm): Mm;
  /** The c at which area(c) reaches the given area (clamped to 0 … whole area). */
  atArea(area: Mm2): Mm;
}

/** Prepares the functions for the direction (nx, ny) of length 1; every later query is a binary search. */
export function sweepProfile(t: TaggedRegion, nx: number, ny: number): SweepProfile {
  const levels = levelsOf(t, nx, ny);
  return new Profile(levels, t, nx, ny);
}

function levelsOf(t: TaggedRegion, nx: number, ny: number): Float64Array {
  let total = 0;
  for (const ring of t.rings) total += ring.length >> 1;
  const all = new Float64Array(total);
  let k = 0;
  for (const ring of t.rings)
    for (let i = 0; i < ring.length; i += 2) all[k++] = nx * ring[i] + ny * ring[i + 1];
  all.sort();
  let n = 0;
  for (let i = 0; i < total; i++) if (n === 0 || all[i] !== all[n - 1]) all[n++] = all[i];
  return all.slice(0, n);
}

/** Index of the last level ≤ value; −1 below the first. */
function indexAtOrBelow(levels: Float64Array, value: number): number {
  let low = 0;
  let high = levels.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (levels[middle] <= value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

class Profile implements SweepProfile {
  readonly min: Mm;
  readonly max: Mm;
  /** Chord just above level i and just below level i + 1. */
  private readonly chordFrom: Float64Array;
  private readonly chordTo: Float64Array;
  /** Area and outline up to level i, edges on the level included. */
  private readonly areaAt: Float64Array;
  private readonly outlineAt: Float64Array;
  /** Outline between level i and i + 1. */
  private readonly outlineIn: Float64Array;

  constructor(
    readonly levels: Float64Array,
    t: TaggedRegion,
    nx: number,
    ny: number,
  ) {
    const n = levels.length;
    this.min = n > 0 ? levels[0] : Infinity;
    this.max = n > 0 ? levels[n - 1] : -Infinity;
    this.chordFrom = new Float64Array(n);
    this.chordTo = new Float64Array(n);
    this.areaAt = new Float64Array(n);
    this.outlineAt = new Float64Array(n);
    this.outlineIn = new Float64Array(n);
    this.addEdges(t, nx, ny);
    this.sumUp();
  }

  private addEdges(t: TaggedRegion, nx: number, ny: number): void {
    t.rings.forEach((ring, r) => {
      const n = ring.length;
      for (let i = 0; i < n; i += 2) {
        const j = i + 2 === n ? 0 : i + 2;
        const cut = t.cut[r][i >> 1] === 1;
        const s0 = nx * ring[i] + ny * ring[i + 1];
        const s1 = nx * ring[j] + ny * ring[j + 1];
        const t0 = nx * ring[i + 1] - ny * ring[i];
        const t1 = nx * ring[j + 1] - ny * ring[j];
        if (s0 === s1) {
          if (!cut) this.outlineAt[indexAtOrBelow(this.levels, s0)] += Math.abs(t1 - t0);
        } else if (s0 < s1) this.addEdge(s0, t0, s1, t1, -1, cut);
        else this.addEdge(s1, t1, s0, t0, 1, cut);
      }
    });
  }

  /** Material lies on the left of an edge: at greater t where it rises (sign −1), at smaller t where it falls. */
  private addEdge(s0: number, t0: number, s1: number, t1: number, sign: number, cut: boolean): void {
    const { levels, chordFrom, chordTo, outlineIn } = this;
    const slope = (t1 - t0) / (s1 - s0);
    const density = cut ? 0 : Math.sqrt(1 + slope * slope);
    let from = t0;
    for (let i = indexAtOrBelow(levels, s0); levels[i] < s1; i++) {
      const width = levels[i + 1] - levels[i];
      const to = levels[i + 1] === s1 ? t1 : t0 + slope * (levels[i + 1] - s0);
      chordFrom[i] += sign * from;
      chordTo[i] += sign * to;
      outlineIn[i] += density * width;
      from = to;
    }
  }

  private sumUp(): void {
    const { levels, chordFrom, chordTo, areaAt, outlineAt, outlineIn } = this;
    for (let i = 1; i < levels.length; i++) {
      const width = levels[i] - levels[i - 1];
      areaAt[i] = areaAt[i - 1] + ((chordFrom[i - 1] + chordTo[i - 1]) / 2) * width;
      outlineAt[i] += outlineAt[i - 1] + outlineIn[i - 1];
    }
  }

  area(c: Mm): Mm2 {
    const i = indexAtOrBelow(this.levels, c);
    if (i < 0) return 0;
    if (i === this.levels.length - 1) return this.areaAt[i];
    const x = c - this.levels[i];
    const growth = (this.chordTo[i] - this.chordFrom[i]) / (this.levels[i + 1] - this.levels[i]);
    return this.areaAt[i] + x * (this.chordFrom[i] + (growth * x) / 2);
  }

  outline(c: Mm): Mm {
    const i = indexAtOrBelow(this.levels, c);
    if (i < 0) return 0;
    if (i === this.levels.length - 1) return this.outlineAt[i];
    const share = (c - this.levels[i]) / (this.levels[i + 1] - this.levels[i]);
    return this.outlineAt[i] + share * this.outlineIn[i];
  }

  chord(c: Mm): Mm {
    const { levels } = this;
    let i = indexAtOrBelow(levels, c);
    if (i >= 0 && levels[i] === c) i--;
    if (i < 0 || i === levels.length - 1) return 0;
    const share = (c - levels[i]) / (levels[i + 1] - levels[i]);
    return this.chordFrom[i] + share * (this.chordTo[i] - this.chordFrom[i]);
  }

  atArea(wanted: Mm2): Mm {
    const { levels, areaAt } = this;
    const last = levels.length - 1;
    if (last < 1 || wanted <= 0) return this.min;
    if (wanted >= areaAt[last]) return this.max;
    const i = Math.min(indexAtOrBelow(areaAt, wanted), last - 1);
    const width = levels[i + 1] - levels[i];
    const half = (this.chordTo[i] - this.chordFrom[i]) / (2 * width);
    const rest = wanted - areaAt[i];
    // Stable form of the root of half·x² + chord·x = rest.
    const root = Math.sqrt(Math.max(0, this.chordFrom[i] * this.chordFrom[i] + 4 * half * rest));
    const below = this.chordFrom[i] + root;
    return levels[i] + (below > 0 ? Math.min(width, Math.max(0, (2 * rest) / below)) : 0);
  }
}
