/**
 * Area of a region inside a convex cell, and nothing else: every ring is clipped by one half-plane after the other and
 * measured by Green's theorem. Bridges that such clipping leaves along the lines have no area. Millimetres, mm².
 * Source of the method: Sutherland and Hodgman, Reentrant polygon clipping, CACM 17 (1974) [memory].
 */
import type { Mm2 } from '../units/types';
import { area, boxOf } from './region';
import type { Box, HalfPlane, Region } from './types';

let front = new Float64Array(2048);
let back = new Float64Array(2048);

/** Largest value of n·p − c over a box: at most 0 where the box lies inside the half-plane. Millimetres. */
export const highest = (b: Box, h: HalfPlane): number =>
  h.nx * (h.nx > 0 ? b.maxX : b.minX) + h.ny * (h.ny > 0 ? b.maxY : b.minY) - h.c;
/** Smallest value of n·p − c over a box. */
const lowest = (b: Box, h: HalfPlane): number =>
  h.nx * (h.nx > 0 ? b.minX : b.maxX) + h.ny * (h.ny > 0 ? b.minY : b.maxY) - h.c;

/** A box as the half-planes of its right, left, rear and front edge. */
export const planesOfBox = ({ minX, minY, maxX, maxY }: Box): HalfPlane[] => [
  { nx: 1, ny: 0, c: maxX },
  { nx: -1, ny: 0, c: -minX },
  { nx: 0, ny: 1, c: maxY },
  { nx: 0, ny: -1, c: -minY },
];

/** Where a box lies: 1 inside every half-plane, −1 outside one of them, 0 neither. */
export function boxInConvex(box: Box, planes: readonly HalfPlane[]): 1 | 0 | -1 {
  let inside: 1 | 0 = 1;
  for (const h of planes) {
    if (highest(box, h) <= 0) continue;
    if (lowest(box, h) >= 0) return -1;
    inside = 0;
  }
  return inside;
}

/** Area of region ∩ all half-planes. */
export function areaInConvex(region: Region, planes: readonly HalfPlane[]): Mm2 {
  if (region.length === 0) return 0;
  const box = boxOf(region);
  const needed: HalfPlane[] = [];
  for (const h of planes) {
    if (highest(box, h) <= 0) continue;
    if (lowest(box, h) >= 0) return 0;
    needed.push(h);
  }
  if (needed.length === 0) return area(region);
  let sum = 0;
  for (const ring of region) sum += clippedArea(ring, needed);
  return sum;
}

function clippedArea(ring: Float64Array, planes: readonly HalfPlane[]): Mm2 {
  let source: Float64Array = ring;
  let n = ring.length;
  let useFront = true;
  for (const plane of planes) {
    const target = bufferFor(useFront, n);
    n = clipOnce(source, n, plane, target);
    if (n < 6) return 0;
    source = target;
    useFront = !useFront;
  }
  return areaOf(source, n);
}

/** A buffer with room for the outcome: a half-plane adds at most one point per two of the ring's. */
function bufferFor(useFront: boolean, n: number): Float64Array {
  if (useFront) {
    if (front.length < 2 * n) front = new Float64Array(4 * n);
    return front;
  }
  if (back.length < 2 * n) back = new Float64Array(4 * n);
  return back;
}

/** Copies the part of a ring inside the half-plane into `target`; returns how many numbers were written. */
function clipOnce(source: Float64Array, n: number, h: HalfPlane, target: Float64Array): number {
  const { nx, ny, c } = h;
  let px = source[n - 2];
  let py = source[n - 1];
  let dp = nx * px + ny * py - c;
  let m = 0;
  for (let i = 0; i < n; i += 2) {
    const qx = source[i];
    const qy = source[i + 1];
    const dq = nx * qx + ny * qy - c;
    if (dp < 0 ? dq > 0 : dp > 0 && dq < 0) {
      const share = dp / (dp - dq);
      target[m++] = px + share * (qx - px);
      target[m++] = py + share * (qy - py);
    }
    if (dq <= 0) {
      target[m++] = qx;
      target[m++] = qy;
    }
    px = qx;
    py = qy;
    dp = dq;
  }
  return m;
}

function areaOf(xy: Float64Array, n: number): Mm2 {
  const x0 = xy[0];
  const y0 = xy[1];
  let twice = 0;
  for (let i = 2; i < n - 2; i += 2)
    twice += (xy[i] - x0) * (xy[i + 3] - y0) - (xy[i + 2] - x0) * (xy[i + 1] - y0);
  return twice / 2;
}
