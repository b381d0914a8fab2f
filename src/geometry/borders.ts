/**
 * Where two pieces lie against each other: the stretches in which cut edges of both run along each other in opposite
 * senses. Half-plane cuts give equal lines; cuts by the polygon engine agree to a few units of its grid. Millimetres.
 */
import type { Mm } from '../units/types';
import { OUTLINE_TOLERANCE_MM } from './tag';
import type { TaggedRegion } from './types';

/** Shorter contacts are corners that touch. */
const SHORTEST_MM: Mm = 2e-4;

/** x0, y0, x1, y1 of every cut edge. */
function cutEdges(t: TaggedRegion): number[] {
  const edges: number[] = [];
  t.rings.forEach((ring, r) => {
    const cut = t.cut[r];
    for (let i = 0; i < ring.length; i += 2) {
      if (cut[i >> 1] === 0) continue;
      const j = i + 2 === ring.length ? 0 : i + 2;
      edges.push(ring[i], ring[i + 1], ring[j], ring[j + 1]);
    }
  });
  return edges;
}

/** Segments x0, y0, x1, y1 … along which cut edges of the two pieces meet, in the sense of travel of `a`. */
export function sharedBorder(a: TaggedRegion, b: TaggedRegion): Float64Array {
  const edgesA = cutEdges(a);
  if (edgesA.length === 0) return new Float64Array(0);
  const edgesB = cutEdges(b);
  const found: number[] = [];
  for (let i = 0; i < edgesA.length; i += 4)
    for (let k = 0; k < edgesB.length; k += 4) addContact(edgesA, i, edgesB, k, found);
  return Float64Array.from(found);
}

/** Appends the stretch of edge i of `a` that edge k of `b` runs along, if there is one. */
function addContact(a: number[], i: number, b: number[], k: number, found: number[]): void {
  const dx = a[i + 2] - a[i];
  const dy = a[i + 3] - a[i + 1];
  const ex = b[k + 2] - b[k];
  const ey = b[k + 3] - b[k + 1];
  if (dx * ex + dy * ey >= 0) return;
  const length = Math.sqrt(dx * dx + dy * dy);
  const ux = dx / length;
  const uy = dy / length;
  const along0 = (b[k + 2] - a[i]) * ux + (b[k + 3] - a[i + 1]) * uy;
  const along1 = (b[k] - a[i]) * ux + (b[k + 1] - a[i + 1]) * uy;
  const from = Math.max(0, along0);
  const to = Math.min(length, along1);
  if (to - from < SHORTEST_MM) return;
  const off0 = (b[k + 3] - a[i + 1]) * ux - (b[k + 2] - a[i]) * uy;
  const off1 = (b[k + 1] - a[i + 1]) * ux - (b[k] - a[i]) * uy;
  const slope = (off1 - off0) / (along1 - along0);
  const offAt = (along: Mm): Mm => Math.abs(off0 + slope * (along - along0));
  if (offAt(from) > OUTLINE_TOLERANCE_MM || offAt(to) > OUTLINE_TOLERANCE_MM) return;
  found.push(a[i] + from * ux, a[i + 1] + from * uy, a[i] + to * ux, a[i + 1] + to * uy);
}
