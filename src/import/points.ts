/**
 * Curves of a drawing to points, within reach and within budget. Millimetres, after every transform. Where a curve lies
 * is known from the numbers that define it before a single point of it is computed, so a coordinate of 1e300 or a
 * transform that blows up costs nothing; and the number of points is known before they are made.
 */
import { mapCurve, type ArcCurve, type Curve } from './curve';
import type { Affine } from './affine';
import { flattenWithin, turningPoints } from './flatten';
import { FURTHEST_CENTRE_mm, FURTHEST_mm, type Budget } from './limits';

export interface Drawn {
  readonly curve: Curve;
  /** Flat x, y, with both ends. */
  readonly points: readonly number[];
}
/** far: one of the curves leaves the reach of any drawing; full: the budget does not hold them all. */
export type Draw = readonly Drawn[] | 'far' | 'full';

/** False for numbers too large and for those that are none. */
const near = (value: number, limit: number = FURTHEST_mm): boolean => Math.abs(value) <= limit;

/** Extreme points of an arc are its ends and where it turns back in x or y. */
function arcIsNear(arc: ArcCurve): boolean {
  const { cx, cy, ux, uy, vx, vy, from, to } = arc;
  if (![cx, cy, ux, uy, vx, vy].every((value) => near(value, FURTHEST_CENTRE_mm))) return false;
  if (!Number.isFinite(from) || !Number.isFinite(to)) return false;
  return turningPoints(arc).every((t) => {
    const [c, s] = [Math.cos(t), Math.sin(t)];
    return near(cx + ux * c + vx * s) && near(cy + uy * c + vy * s);
  });
}

/** True where no point of the curve lies further out than FURTHEST_mm. A spline lies within its control points. */
export function isNear(curve: Curve): boolean {
  switch (curve.kind) {
    case 'line':
      return near(curve.x0) && near(curve.y0) && near(curve.x1) && near(curve.y1);
    case 'arc':
      return arcIsNear(curve);
    case 'spline':
      return curve.points.every((value) => near(value));
  }
}

/** The curves of one object, mapped into the drawing and cut into points. */
export function drawCurves(map: Affine, given: readonly Curve[], budget: Budget): Draw {
  if (!budget.take(given.length)) return 'full';
  const curves = given.map((curve) => mapCurve(map, curve));
  if (!curves.every(isNear)) return 'far';
  const drawn: Drawn[] = [];
  for (const curve of curves) {
    const points = flattenWithin(curve, budget);
    // Without room the budget is overdrawn, so that reading ends.
    if (!budget.takePoints(points === null ? budget.room + 1 : points.length / 2) || points === null)
      return 'full';
    drawn.push({ curve, points });
  }
  return drawn;
}
