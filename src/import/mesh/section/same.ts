/**
 * Are two sections the same to 0.001 mm² of symmetric difference (not of area alone)? Cheap bounds first: what the outline
 * sweeps over on its way from one to the other is no less than the difference; the difference of areas, whole or in strips,
 * is no more. Only where neither decides, the difference itself is computed. Millimetres, mm². Both bounds: mathematics.
 */
import { subtract } from '../../../geometry/clipper';
import { area, boxOf } from '../../../geometry/region';
import type { Box, Region, Ring } from '../../../geometry/types';
import type { Mm2 } from '../../../units/types';
import { simplified } from './tidy';

export const SAME_mm2: Mm2 = 0.001;
/** Points on a straight side say nothing about the shape. */
const STRAIGHT_mm = 1e-7;
const STRIPS = 64;

/**
 * What the outlines sweep over when every point moves straight to its counterpart: over each side a bilinear patch, whose
 * area is at most the largest of its four corner Jacobians. Infinity where they have no counterparts.
 */
export function sweptArea(a: readonly Ring[], b: readonly Ring[]): Mm2 {
  if (a.length !== b.length) return Infinity;
  let swept = 0;
  for (let r = 0; r < a.length; r++) {
    if (a[r].length !== b[r].length) return Infinity;
    swept += ringSweeps(a[r], b[r]);
    if (swept > SAME_mm2) return Infinity;
  }
  return swept;
}

function ringSweeps(p: Ring, q: Ring): Mm2 {
  let swept = 0;
  for (let i = p.length - 2, k = 0; k < p.length; i = k, k += 2) {
    const ix = q[i] - p[i];
    const iy = q[i + 1] - p[i + 1];
    const kx = q[k] - p[k];
    const ky = q[k + 1] - p[k + 1];
    const ex = p[k] - p[i];
    const ey = p[k + 1] - p[i + 1];
    const fx = q[k] - q[i];
    const fy = q[k + 1] - q[i + 1];
    swept += Math.max(
      Math.abs(ex * iy - ey * ix),
      Math.abs(ex * ky - ey * kx),
      Math.abs(fx * iy - fy * ix),
      Math.abs(fx * ky - fy * kx),
    );
  }
  return swept;
}

/** Rings without points on straight sides, each from its least point on, in the order of those points. */
export function normal(region: Region): Ring[] {
  const rings = region.map((ring) => fromLeast(simplified(ring, STRAIGHT_mm)));
  return rings.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

function fromLeast(ring: Ring): Ring {
  let least = 0;
  for (let i = 2; i < ring.length; i += 2)
    if (ring[i] < ring[least] || (ring[i] === ring[least] && ring[i + 1] < ring[least + 1])) least = i;
  const turned = new Float64Array(ring.length);
  turned.set(ring.subarray(least));
  turned.set(ring.subarray(0, least), ring.length - least);
  return turned;
}

/** Area of a region in each of the strips that divide a box along x (axis 0) or y (axis 1); the rest is in the end strips. */
function strips(region: Region, axis: 0 | 1, low: number, width: number): Float64Array {
  const sums = new Float64Array(STRIPS);
  const stripOf = (value: number): number =>
    Math.min(STRIPS - 1, Math.max(0, Math.floor((value - low) / width)));
  const sign = axis === 0 ? -1 : 1;
  for (const ring of region)
    for (let i = ring.length - 2, k = 0; k < ring.length; i = k, k += 2) {
      const [u, v, p, q] = [ring[i + axis], ring[i + 1 - axis], ring[k + axis], ring[k + 1 - axis]];
      const [fromStrip, toStrip] = [stripOf(u), stripOf(p)];
      if (fromStrip === toStrip) {
        sums[fromStrip] += (sign * (p - u) * (v + q)) / 2;
        continue;
      }
      const [first, last] = u < p ? [fromStrip, toStrip] : [toStrip, fromStrip];
      const across = (value: number): number => v + ((q - v) * (value - u)) / (p - u);
      for (let s = first; s <= last; s++) {
        const a = s === first ? Math.min(u, p) : low + s * width;
        const b = s === last ? Math.max(u, p) : low + (s + 1) * width;
        sums[s] += (sign * Math.sign(p - u) * (b - a) * (across(a) + across(b))) / 2;
      }
    }
  return sums;
}

interface Strips {
  readonly box: Box;
  readonly sums: readonly [Float64Array, Float64Array];
}
function stripsOf(region: Region, box: Box): Strips {
  const width = (box.maxX - box.minX) / STRIPS || 1;
  const height = (box.maxY - box.minY) / STRIPS || 1;
  return { box, sums: [strips(region, 0, box.minX, width), strips(region, 1, box.minY, height)] };
}

/** A section that others are compared with. */
export class Reference {
  private readonly areaSum: Mm2;
  private rings: Ring[] | null = null;
  private stripped: Strips | null = null;

  constructor(
    private readonly region: Region,
    /** Rings as they were traced; sections with the same triangles are told by them at once. */
    private readonly traced: readonly Ring[],
  ) {
    this.areaSum = area(region);
  }

  /** True where rings were traced over the same places. */
  isTracedAgain(traced: readonly Ring[]): boolean {
    return sweptArea(this.traced, traced) <= SAME_mm2;
  }

  /** True where the symmetric difference is at most 0.001 mm². */
  equals(other: Region): boolean {
    if (this.region.length === 0 || other.length === 0) return this.region.length === other.length;
    if (Math.abs(area(other) - this.areaSum) > SAME_mm2) return false;
    this.rings ??= normal(this.region);
    if (sweptArea(this.rings, normal(other)) <= SAME_mm2) return true;
    if (this.stripsDiffer(other)) return false;
    return area(subtract(this.region, other)) + area(subtract(other, this.region)) <= SAME_mm2;
  }

  private stripsDiffer(other: Region): boolean {
    this.stripped ??= stripsOf(this.region, boxOf(this.region));
    const { box, sums } = this.stripped;
    const others = stripsOf(other, box).sums;
    return [0, 1].some(
      (axis) => sums[axis].reduce((sum, s, i) => sum + Math.abs(s - others[axis][i]), 0) > SAME_mm2,
    );
  }
}
