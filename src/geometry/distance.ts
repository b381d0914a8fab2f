/**
 * How near two regions are and how much they overlap. Millimetres, mm². Boxes first, then only the edges that are near
 * the other region's box.
 */
import type { Mm, Mm2 } from '../units/types';
import { intersect } from './clipper';
import { clipToConvex, planesOfBox, untagged } from './halfPlane';
import { area, boxOf, boxesMeet, boxOverlap, containsPoint } from './region';
import type { Box, Region } from './types';

/**
 * Least distance between two regions: 0 where they overlap or touch, Infinity where it is more than `limit`.
 */
export function gap(a: Region, b: Region, limit: Mm): Mm {
  const boxA = boxOf(a);
  const boxB = boxOf(b);
  if (!boxesMeet(boxA, boxB, limit)) return Infinity;
  if (boxesMeet(boxA, boxB) && (touchesInside(a, b) || touchesInside(b, a))) return 0;
  const edgesA = edgesNear(a, boxB, limit);
  const edgesB = edgesNear(b, boxA, limit);
  const least2 = leastSquare(edgesA, edgesB, limit * limit);
  return least2 <= limit * limit ? Math.sqrt(least2) : Infinity;
}

/** A vertex of some ring of `a` lies inside `b`; together with the edge distances this finds every overlap. */
const touchesInside = (a: Region, b: Region): boolean => a.some((ring) => containsPoint(b, ring[0], ring[1]));

/** Area that two regions have in common. Both are cut to their common box first, which leaves few edges to compare. */
export function overlapArea(a: Region, b: Region): Mm2 {
  const [boxA, boxB] = [boxOf(a), boxOf(b)];
  if (!boxesMeet(boxA, boxB)) return 0;
  const common = planesOfBox(boxOverlap(boxA, boxB));
  const cut = (region: Region): Region => clipToConvex(untagged(region), common).rings;
  return area(intersect(cut(a), cut(b)));
}

/** x0, y0, x1, y1 of the edges whose boxes come within `limit` of a box. */
function edgesNear(region: Region, box: Box, limit: Mm): Float64Array {
  const edges: number[] = [];
  for (const ring of region)
    for (let i = 0; i < ring.length; i += 2) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      if (ring[i] > box.maxX + limit && ring[j] > box.maxX + limit) continue;
      if (ring[i] < box.minX - limit && ring[j] < box.minX - limit) continue;
      if (ring[i + 1] > box.maxY + limit && ring[j + 1] > box.maxY + limit) continue;
      if (ring[i + 1] < box.minY - limit && ring[j + 1] < box.minY - limit) continue;
      edges.push(ring[i], ring[i + 1], ring[j], ring[j + 1]);
    }
  return Float64Array.from(edges);
}

function leastSquare(a: Float64Array, b: Float64Array, limit2: number): number {
  let least = Infinity;
  const reach = (): number => Math.sqrt(Math.min(least, limit2));
  let near = reach();
  for (let i = 0; i < a.length; i += 4) {
    const minX = Math.min(a[i], a[i + 2]) - near;
    const maxX = Math.max(a[i], a[i + 2]) + near;
    const minY = Math.min(a[i + 1], a[i + 3]) - near;
    const maxY = Math.max(a[i + 1], a[i + 3]) + near;
    for (let k = 0; k < b.length; k += 4) {
      if ((b[k] < minX && b[k + 2] < minX) || (b[k] > maxX && b[k + 2] > maxX)) continue;
      if ((b[k + 1] < minY && b[k + 3] < minY) || (b[k + 1] > maxY && b[k + 3] > maxY)) continue;
      least = Math.min(least, segmentsSquare(a, i, b, k));
      if (least === 0) return 0;
    }
    near = reach();
  }
  return least;
}

/** Squared distance of two segments. */
function segmentsSquare(a: Float64Array, i: number, b: Float64Array, k: number): number {
  if (segmentsCross(a, i, b, k)) return 0;
  return Math.min(
    pointSquare(a[i], a[i + 1], b, k),
    pointSquare(a[i + 2], a[i + 3], b, k),
    pointSquare(b[k], b[k + 1], a, i),
    pointSquare(b[k + 2], b[k + 3], a, i),
  );
}

function segmentsCross(a: Float64Array, i: number, b: Float64Array, k: number): boolean {
  const side = (e: Float64Array, n: number, x: Mm, y: Mm): number =>
    (e[n + 2] - e[n]) * (y - e[n + 1]) - (e[n + 3] - e[n + 1]) * (x - e[n]);
  return (
    side(a, i, b[k], b[k + 1]) * side(a, i, b[k + 2], b[k + 3]) < 0 &&
    side(b, k, a[i], a[i + 1]) * side(b, k, a[i + 2], a[i + 3]) < 0
  );
}

function pointSquare(x: Mm, y: Mm, e: Float64Array, n: number): number {
  const dx = e[n + 2] - e[n];
  const dy = e[n + 3] - e[n + 1];
  const length2 = dx * dx + dy * dy;
  const along = length2 > 0 ? ((x - e[n]) * dx + (y - e[n + 1]) * dy) / length2 : 0;
  const s = Math.max(0, Math.min(1, along));
  const px = x - e[n] - s * dx;
  const py = y - e[n + 1] - s * dy;
  return px * px + py * py;
}
