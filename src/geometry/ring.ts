/**
 * One closed outline: making it, its area and its length. Millimetres, mm²; +x right, +y back, counter-clockwise
 * positive. Area by Green's theorem about the ring's first point (so that far-away rings lose no digits).
 */
import type { LayoutRing } from '../layout/types';
import type { Mm, Mm2 } from '../units/types';
import { circleRing } from './circle';
import type { Ring } from './types';

/** A ring from points [x, y]; a repeated last point and repeated neighbours are dropped. */
export function ringOf(points: readonly (readonly [Mm, Mm])[]): Ring {
  const flat: number[] = [];
  for (const [x, y] of points) {
    const n = flat.length;
    if (n === 0 || flat[n - 2] !== x || flat[n - 1] !== y) flat.push(x, y);
  }
  while (flat.length > 2 && flat[0] === flat[flat.length - 2] && flat[1] === flat[flat.length - 1])
    flat.length -= 2;
  return Float64Array.from(flat);
}

/** A ring of the layout file: points as they are, a circle as a polygon (see circle.ts). */
export function ringFromLayout(ring: LayoutRing): Ring {
  if ('circle_mm' in ring) return circleRing(ring.circle_mm[0], ring.circle_mm[1], ring.circle_mm[2]);
  return ringOf(ring);
}

/** Area of a ring, positive where it runs counter-clockwise. */
export function signedArea(ring: Ring): Mm2 {
  const n = ring.length;
  if (n < 6) return 0;
  const x0 = ring[0];
  const y0 = ring[1];
  let px = ring[2] - x0;
  let py = ring[3] - y0;
  let twice = 0;
  for (let i = 4; i < n; i += 2) {
    const qx = ring[i] - x0;
    const qy = ring[i + 1] - y0;
    twice += px * qy - qx * py;
    px = qx;
    py = qy;
  }
  return twice / 2;
}

/** Length of a ring, the closing edge included. */
export function ringLength(ring: Ring): Mm {
  const n = ring.length;
  let length = 0;
  let px = ring[n - 2];
  let py = ring[n - 1];
  for (let i = 0; i < n; i += 2) {
    const dx = ring[i] - px;
    const dy = ring[i + 1] - py;
    length += Math.sqrt(dx * dx + dy * dy);
    px = ring[i];
    py = ring[i + 1];
  }
  return length;
}

/** The same outline run through the other way. */
export function reversed(ring: Ring): Ring {
  const n = ring.length;
  const back = new Float64Array(n);
  for (let i = 0; i < n; i += 2) {
    back[i] = ring[n - 2 - i];
    back[i + 1] = ring[n - 1 - i];
  }
  return back;
}

/** True where the point is inside the ring by the even-odd rule; points on the outline fall either way. */
export function ringContains(ring: Ring, x: Mm, y: Mm): boolean {
  let inside = false;
  let px = ring[ring.length - 2];
  let py = ring[ring.length - 1];
  for (let i = 0; i < ring.length; i += 2) {
    const qx = ring[i];
    const qy = ring[i + 1];
    if (py > y !== qy > y && x < px + ((y - py) / (qy - py)) * (qx - px)) inside = !inside;
    px = qx;
    py = qy;
  }
  return inside;
}

/** Most edges' points have to agree: rings may touch, and a touching point says nothing. */
const VOTES = 3;

/** True where `inner` lies inside `outer` (the two do not cross). */
export function ringInRing(inner: Ring, outer: Ring): boolean {
  let votes = 0;
  const n = inner.length;
  for (let i = 0; i < n && Math.abs(votes) < VOTES; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    const x = inner[i] * 0.618 + inner[j] * 0.382;
    const y = inner[i + 1] * 0.618 + inner[j + 1] * 0.382;
    votes += ringContains(outer, x, y) ? 1 : -1;
  }
  return votes > 0;
}
