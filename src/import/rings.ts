/**
 * Closed walks to rings. Millimetres, +y up. Arcs of one circle that together make a full turn stay that circle, so it
 * is not approximated before the layout is; everything else becomes a polygon, cleaned by its own fill rule.
 */
import { circleRing } from '../geometry/circle';
import { clean, type Fill } from '../geometry/clipper';
import { boxOfRing } from '../geometry/region';
import { signedArea } from '../geometry/ring';
import type { Box, Ring } from '../geometry/types';
import type { Circle } from '../layout/types';
import { halfAxes, FULL_TURN, type ArcCurve, type Curve } from './curve';
import { isTangled } from './tangle';
import type { UnitFound } from './types';

/** A ring on its way to becoming the outside or a hole of a shape. */
export interface FoundRing {
  readonly ring: Ring;
  /** Where the ring stands for a true circle. */
  readonly circle: Circle | null;
  readonly name: string;
}
/** The ring's box; a circle's own, not its polygon's. */
export function layoutBox(circle: Circle | null, ring: Ring): Box {
  if (circle === null) return boxOfRing(ring);
  const [x, y, r] = circle.circle_mm;
  return { minX: x - r, minY: y - r, maxX: x + r, maxY: y + r };
}
/** What a reader makes of a file. */
export interface Found {
  readonly unit: UnitFound | null;
  readonly rings: readonly FoundRing[];
  /** Elements that crossed themselves. */
  readonly repaired: number;
  /** Open outlines that a fill closed. */
  readonly closed: number;
}
/** Centres, radii and half-axes that differ by less than this are equal: the resolution of a layout. */
const EQUAL_mm = 0.001;

/** The circle that these curves, one closed walk of area `area`, make together; null where they make something else. */
export function circleOf(curves: readonly Curve[], area: number): Circle | null {
  const arcs = curves.filter((curve): curve is ArcCurve => curve.kind === 'arc');
  if (arcs.length === 0 || arcs.length < curves.length) return null;
  const [{ cx, cy }] = arcs;
  const [r] = halfAxes(arcs[0]);
  let turn = 0;
  for (const a of arcs) {
    const [large, small] = halfAxes(a);
    if (Math.abs(large - r) > EQUAL_mm || large - small > EQUAL_mm) return null;
    if (Math.hypot(a.cx - cx, a.cy - cy) > EQUAL_mm) return null;
    turn += Math.abs(a.to - a.from);
  }
  const slack = EQUAL_mm / Math.max(r, EQUAL_mm);
  const full = Math.abs(turn - FULL_TURN) <= arcs.length * slack;
  const fills = Math.abs(Math.abs(area) - Math.PI * r * r) <= 0.01 * Math.PI * r * r;
  return full && fills && r >= EQUAL_mm ? { circle_mm: [cx, cy, r] } : null;
}

/** Neighbours nearer than this are one point (the end of a line and the start of the arc after it). */
const NEAR_mm = 1e-6;

/** A polygon without repeated neighbours; null where it encloses nothing. */
export function polygonOf(flat: readonly number[]): Ring | null {
  const kept: number[] = [];
  for (let i = 0; i < flat.length; i += 2) {
    const n = kept.length;
    if (n === 0 || !near(flat[i], flat[i + 1], kept[n - 2], kept[n - 1])) kept.push(flat[i], flat[i + 1]);
  }
  while (kept.length > 2 && near(kept[0], kept[1], kept[kept.length - 2], kept[kept.length - 1]))
    kept.length -= 2;
  if (kept.length < 6) return null;
  const ring = Float64Array.from(kept);
  const { minX, minY, maxX, maxY } = boxOfRing(ring);
  return Math.min(maxX - minX, maxY - minY) < EQUAL_mm ? null : ring;
}

const near = (x0: number, y0: number, x1: number, y1: number): boolean =>
  Math.abs(x0 - x1) < NEAR_mm && Math.abs(y0 - y1) < NEAR_mm;

/** One closed walk: its points and the curves they came from. */
export interface Walk {
  readonly points: readonly number[];
  readonly curves: readonly Curve[];
}
export interface Cleaned {
  readonly rings: readonly FoundRing[];
  readonly repaired: boolean;
  /** Too tangled to be put right; nothing was read. */
  readonly tangled: boolean;
}

/** True where the ends of a walk lie apart although it encloses something: only a fill closes it. */
export function isOpen({ points }: Walk): boolean {
  const last = points.length - 2;
  const apart = Math.hypot(points[last] - points[0], points[last + 1] - points[1]) > EQUAL_mm;
  return apart && polygonOf(points) !== null;
}

/** The walks of one element under its fill rule. */
export function cleanWalks(walks: readonly Walk[], fill: Fill, name: string): Cleaned {
  const nothing: Cleaned = { rings: [], repaired: false, tangled: false };
  const given: { ring: Ring; circle: Circle | null }[] = [];
  for (const { points, curves } of walks) {
    const polygon = polygonOf(points);
    if (polygon === null) continue;
    const circle = circleOf(curves, signedArea(polygon));
    given.push({ ring: circle === null ? polygon : turned(circle, polygon), circle });
  }
  if (given.length === 1 && given[0].circle !== null) return { ...nothing, rings: [{ ...given[0], name }] };
  const circles = given.filter((entry) => entry.circle !== null);
  const rings = given.map((entry) => entry.ring);
  if (rings.length > 0 && isTangled(rings)) return { ...nothing, tangled: true };
  const { region, repaired } = clean(rings, fill);
  const found = region.map((ring) => ({ ring, circle: sameRing(circles, ring), name }));
  return { ...nothing, rings: found.filter((entry) => polygonOf([...entry.ring]) !== null), repaired };
}

/** The circle's polygon, running the way the drawn one ran (a non-zero fill depends on it). */
function turned({ circle_mm: [x, y, r] }: Circle, drawn: Ring): Ring {
  const ring = circleRing(x, y, r);
  if (signedArea(drawn) > 0) return ring;
  return ring.map((_, i) => ring[ring.length - 2 - i + 2 * (i % 2)]);
}

/** The circle whose polygon came through cleaning untouched. */
function sameRing(circles: readonly { ring: Ring; circle: Circle | null }[], ring: Ring): Circle | null {
  if (circles.length === 0) return null;
  const box = boxOfRing(ring);
  for (const { ring: own, circle } of circles) {
    if (own.length !== ring.length) continue;
    const other = boxOfRing(own);
    const same = other.minX === box.minX && other.minY === box.minY && other.maxX === box.maxX;
    if (same && other.maxY === box.maxY) return circle;
  }
  return null;
}
