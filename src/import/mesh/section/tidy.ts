/**
 * A ring made fit for a layout: points that lie within TOLERANCE_mm of the line between their neighbours that stay are left
 * out, the others are rounded to whole micrometres. Source: Douglas and Peucker, Cartographica 10 (1973), 112-122 [memory].
 * Millimetres.
 */
import { signedArea } from '../../../geometry/ring';
import type { Ring } from '../../../geometry/types';
import { roundMm } from '../../../units/round';
import type { Mm } from '../../../units/types';

/** With the rounding (at most 0.0007 mm) a section stays within about a micrometre of the mesh's. */
export const TOLERANCE_mm: Mm = 0.0005;

/** A polyline in which some points are marked to stay. */
class Polyline {
  private readonly kept: Uint8Array;
  constructor(
    private readonly flat: Float64Array,
    private readonly tolerance: Mm,
  ) {
    this.kept = new Uint8Array(flat.length / 2);
  }

  keep(point: number): void {
    this.kept[point] = 1;
  }

  /** Marks what has to stay between two points that stay. */
  mark(from: number, to: number): void {
    const stack = [from, to];
    while (stack.length > 0) {
      const b = stack.pop()!;
      const a = stack.pop()!;
      const split = this.furthest(a, b);
      if (split < 0) continue;
      this.kept[split] = 1;
      stack.push(a, split, split, b);
    }
  }

  /** The points that stay, without the last one. */
  ring(): Ring {
    const { flat, kept } = this;
    const made: number[] = [];
    for (let i = 0; i < kept.length - 1; i++) if (kept[i] === 1) made.push(flat[2 * i], flat[2 * i + 1]);
    return Float64Array.from(made);
  }

  /** The point between a and b that lies furthest from the segment a–b; −1 where all lie within the tolerance. */
  private furthest(a: number, b: number): number {
    const { flat } = this;
    const ax = flat[2 * a];
    const ay = flat[2 * a + 1];
    const dx = flat[2 * b] - ax;
    const dy = flat[2 * b + 1] - ay;
    const over = 1 / (dx * dx + dy * dy);
    let most = this.tolerance * this.tolerance;
    let found = -1;
    for (let i = a + 1; i < b; i++) {
      const px = flat[2 * i] - ax;
      const py = flat[2 * i + 1] - ay;
      const share = (px * dx + py * dy) * over;
      const along = share > 0 ? (share < 1 ? share : 1) : 0;
      const ex = px - along * dx;
      const ey = py - along * dy;
      const far = ex * ex + ey * ey;
      if (far > most) {
        most = far;
        found = i;
      }
    }
    return found;
  }
}

/** Index of the point furthest from point `from`: a corner of the convex hull, so it has to stay. */
function furthestFrom(flat: Float64Array, from: number): number {
  let most = -1;
  let found = 0;
  for (let i = 0; i < flat.length; i += 2) {
    const far = (flat[i] - flat[2 * from]) ** 2 + (flat[i + 1] - flat[2 * from + 1]) ** 2;
    if (far > most) {
      most = far;
      found = i / 2;
    }
  }
  return found;
}

/** The ring with fewer points; what is left out lies within the tolerance of it. */
export function simplified(ring: Ring, tolerance: Mm): Ring {
  if (ring.length <= 6) return ring;
  const first = furthestFrom(ring, 0);
  const turned = new Float64Array(ring.length + 2);
  turned.set(ring.subarray(2 * first));
  turned.set(ring.subarray(0, 2 * first + 2), ring.length - 2 * first);
  const line = new Polyline(turned, tolerance);
  const across = furthestFrom(turned, 0);
  line.keep(0);
  line.keep(across);
  line.mark(0, across);
  line.mark(across, ring.length / 2);
  return line.ring();
}

/** The ring in whole micrometres, without repeated points and without spikes; null where no area is left. */
export function rounded(ring: Ring): Ring | null {
  let made = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) made[i] = roundMm(ring[i]);
  for (let needless = firstNeedless(made); needless >= 0; needless = firstNeedless(made))
    made = withoutNeedless(made, needless);
  return made.length < 6 || signedArea(made) === 0 ? null : made;
}

/** Index of the first point that repeats the one before it, or is the tip of a spike; −1 where none is. */
function firstNeedless(ring: Ring): number {
  const n = ring.length;
  for (let i = 0, before = n - 2; i < n; before = i, i += 2) {
    const after = i + 2 === n ? 0 : i + 2;
    if (same(ring, i, before) || same(ring, before, after)) return i;
  }
  return -1;
}

/** One pass over the points from `start` on: a point goes where the one kept before it makes it needless. */
function withoutNeedless(ring: Ring, start: number): Float64Array<ArrayBuffer> {
  const n = ring.length;
  const made = new Float64Array(n);
  made.set(ring.subarray(0, start));
  let end = start;
  for (let i = start; i < n; i += 2) {
    const after = i + 2 === n ? 0 : i + 2;
    const before = end === 0 ? n - 2 : end - 2;
    const kept = end === 0 ? ring : made;
    const repeats = kept[before] === ring[i] && kept[before + 1] === ring[i + 1];
    const isTip = kept[before] === ring[after] && kept[before + 1] === ring[after + 1];
    if (repeats || isTip) continue;
    made[end] = ring[i];
    made[end + 1] = ring[i + 1];
    end += 2;
  }
  return made.slice(0, end);
}

const same = (ring: Ring, i: number, k: number): boolean =>
  ring[i] === ring[k] && ring[i + 1] === ring[k + 1];
