/**
 * The curves drawings are made of, in the plane. All three kinds stay what they are under any plane map: a line, an
 * elliptical arc P(t) = c + u·cos t + v·sin t, and a rational B-spline (Bézier curves included; Piegl and Tiller,
 * The NURBS Book, 4.1 [memory]). Angles in radians.
 */
import { mapX, mapY, type Affine } from './affine';

export interface LineCurve {
  readonly kind: 'line';
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
export interface ArcCurve {
  readonly kind: 'arc';
  readonly cx: number;
  readonly cy: number;
  readonly ux: number;
  readonly uy: number;
  readonly vx: number;
  readonly vy: number;
  /** Parameter at the start and the end; it may run downwards. */
  readonly from: number;
  readonly to: number;
}
export interface SplineCurve {
  readonly kind: 'spline';
  readonly degree: number;
  /** Control points + degree + 1 values, ascending. */
  readonly knots: readonly number[];
  /** Control points, flat x, y. */
  readonly points: readonly number[];
  /** One per control point; null where all are 1. */
  readonly weights: readonly number[] | null;
}
export type Curve = LineCurve | ArcCurve | SplineCurve;

export const FULL_TURN = 2 * Math.PI;

export const line = (x0: number, y0: number, x1: number, y1: number): LineCurve => ({
  kind: 'line',
  x0,
  y0,
  x1,
  y1,
});

/** A circle's or ellipse's arc with axes along x and y. */
export const arc = (
  cx: number,
  cy: number,
  rx: number,
  ry: number,
  from = 0,
  to: number = FULL_TURN,
): ArcCurve => ({ kind: 'arc', cx, cy, ux: rx, uy: 0, vx: 0, vy: ry, from, to });

/** A Bézier curve of degree 2 or 3 from its control points, flat x, y. */
export function bezier(points: readonly number[]): SplineCurve {
  const degree = points.length / 2 - 1;
  const knots = Array.from({ length: 2 * degree + 2 }, (_, i) => (i <= degree ? 0 : 1));
  return { kind: 'spline', degree, knots, points, weights: null };
}

/** The straight lines through points given flat x, y; from the last back to the first where `closed`. */
export function polyline(flat: readonly number[], closed: boolean): LineCurve[] {
  const lines: LineCurve[] = [];
  for (let i = 2; i < flat.length; i += 2) lines.push(line(flat[i - 2], flat[i - 1], flat[i], flat[i + 1]));
  const n = flat.length;
  if (closed && n > 2) lines.push(line(flat[n - 2], flat[n - 1], flat[0], flat[1]));
  return lines;
}

/** The curve after a plane map. */
export function mapCurve(m: Affine, curve: Curve): Curve {
  switch (curve.kind) {
    case 'line':
      return line(
        mapX(m, curve.x0, curve.y0),
        mapY(m, curve.x0, curve.y0),
        mapX(m, curve.x1, curve.y1),
        mapY(m, curve.x1, curve.y1),
      );
    case 'arc':
      return {
        ...curve,
        cx: mapX(m, curve.cx, curve.cy),
        cy: mapY(m, curve.cx, curve.cy),
        ux: m[0] * curve.ux + m[2] * curve.uy,
        uy: m[1] * curve.ux + m[3] * curve.uy,
        vx: m[0] * curve.vx + m[2] * curve.vy,
        vy: m[1] * curve.vx + m[3] * curve.vy,
      };
    case 'spline': {
      const points = curve.points.map((value, i, all) =>
        i % 2 === 0 ? mapX(m, value, all[i + 1]) : mapY(m, all[i - 1], value),
      );
      return { ...curve, points };
    }
  }
}

/** The arc's two half-axes, the larger one first (singular values of the matrix u v). */
export function halfAxes(a: ArcCurve): readonly [number, number] {
  const mean = (a.ux * a.ux + a.uy * a.uy + a.vx * a.vx + a.vy * a.vy) / 2;
  const det = a.ux * a.vy - a.uy * a.vx;
  const spread = Math.hypot(
    (a.ux * a.ux + a.uy * a.uy - a.vx * a.vx - a.vy * a.vy) / 2,
    a.ux * a.vx + a.uy * a.vy,
  );
  const large = Math.sqrt(mean + spread);
  return [large, large === 0 ? 0 : Math.abs(det) / large];
}
