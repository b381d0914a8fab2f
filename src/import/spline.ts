/**
 * Points on rational B-splines (de Boor's algorithm in homogeneous coordinates) and the smooth curve through given
 * points (cubic, twice continuously differentiable, parameter by chord length). Sources: de Boor, A Practical Guide to
 * Splines [memory]; the tridiagonal system is derived from equal second derivatives at the points [mathematics].
 */
import { bezier, type SplineCurve } from './curve';

const HIGHEST_DEGREE = 25;

/** True where knots, points and weights fit together, so that spanPoint cannot fail. */
export function splineIsSound(s: SplineCurve): boolean {
  const count = s.points.length / 2;
  return (
    Number.isInteger(s.degree) &&
    s.degree >= 1 &&
    s.degree <= HIGHEST_DEGREE &&
    count > s.degree &&
    s.knots.length === count + s.degree + 1 &&
    s.knots.every((knot, i) => Number.isFinite(knot) && (i === 0 || knot >= s.knots[i - 1])) &&
    s.knots[s.degree] < s.knots[count] &&
    (s.weights === null || (s.weights.length === count && s.weights.every((w) => w > 0)))
  );
}

/** Indices of the knot intervals that are not empty. */
export function spansOf(s: SplineCurve): number[] {
  const spans: number[] = [];
  for (let i = s.degree; i < s.points.length / 2; i++) if (s.knots[i + 1] > s.knots[i]) spans.push(i);
  return spans;
}

/** The point at `share` (0 … 1) of the knot interval `span`. */
export function spanPoint(s: SplineCurve, span: number, share: number): readonly [number, number] {
  const { degree, knots, points, weights } = s;
  const t = knots[span] + share * (knots[span + 1] - knots[span]);
  const d = new Float64Array(3 * (degree + 1));
  for (let j = 0; j <= degree; j++) {
    const i = span - degree + j;
    const w = weights === null ? 1 : weights[i];
    d[3 * j] = points[2 * i] * w;
    d[3 * j + 1] = points[2 * i + 1] * w;
    d[3 * j + 2] = w;
  }
  for (let r = 1; r <= degree; r++) {
    for (let j = degree; j >= r; j--) {
      const low = knots[span - degree + j];
      const width = knots[span + 1 + j - r] - low;
      const alpha = width > 0 ? (t - low) / width : 0;
      for (let k = 3 * j; k < 3 * j + 3; k++) d[k] = (1 - alpha) * d[k - 3] + alpha * d[k];
    }
  }
  const w = d[3 * degree + 2];
  return [d[3 * degree] / w, d[3 * degree + 1] / w];
}

/** Slopes (one coordinate) of the natural or clamped cubic through `values` at the parameters `at`. */
function slopes(
  at: readonly number[],
  values: readonly number[],
  ends: readonly (number | null)[],
): number[] {
  const n = values.length;
  const diagonal = Array.from({ length: n }, () => 1);
  const upper = Array.from({ length: n }, () => 0);
  const right = Array.from({ length: n }, () => 0);
  const rise = (i: number): number => (values[i + 1] - values[i]) / (at[i + 1] - at[i]);
  const first = ends[0];
  if (first === null) [diagonal[0], upper[0], right[0]] = [2, 1, 3 * rise(0)];
  else right[0] = first;
  for (let i = 1; i < n; i++) {
    const before = at[i] - at[i - 1];
    const last = i === n - 1;
    const clamped = last ? ends[1] : null;
    const after = last ? 0 : at[i + 1] - at[i];
    const lower = last ? (clamped === null ? 1 : 0) : after;
    const centre = last ? (clamped === null ? 2 : 1) : 2 * (before + after);
    const value = last ? (clamped ?? 3 * rise(i - 1)) : 3 * (after * rise(i - 1) + before * rise(i));
    upper[i] = last ? 0 : before;
    const factor = lower / diagonal[i - 1];
    diagonal[i] = centre - factor * upper[i - 1];
    right[i] = value - factor * right[i - 1];
  }
  for (let i = n - 1; i >= 0; i--)
    right[i] = (right[i] - (i < n - 1 ? upper[i] * right[i + 1] : 0)) / diagonal[i];
  return right;
}

/** Points repeated on both sides of a closed curve: the ends' influence fades by 3.7 from point to point. */
const WRAP = 24;

export interface Tangents {
  readonly start: readonly [number, number] | null;
  readonly end: readonly [number, number] | null;
}

/**
 * The smooth curve through points (flat x, y, no two neighbours equal) as cubic Bézier pieces; closed: back to the
 * first one. Tangents are directions at the ends of an open curve.
 */
export function curveThrough(flat: readonly number[], closed: boolean, tangents: Tangents): SplineCurve[] {
  const count = flat.length / 2;
  const wrap = closed ? WRAP : 0;
  const order = Array.from({ length: count + (closed ? 1 + 2 * wrap : 0) }, (_, i) =>
    closed ? (((i - wrap) % count) + count) % count : i,
  );
  const xs = order.map((i) => flat[2 * i]);
  const ys = order.map((i) => flat[2 * i + 1]);
  const at = [0];
  for (let i = 1; i < order.length; i++)
    at.push(at[i - 1] + Math.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]));
  const unit = (t: Tangents['start'], axis: 0 | 1): number | null =>
    closed || t === null || Math.hypot(...t) === 0 ? null : t[axis] / Math.hypot(...t);
  const sx = slopes(at, xs, [unit(tangents.start, 0), unit(tangents.end, 0)]);
  const sy = slopes(at, ys, [unit(tangents.start, 1), unit(tangents.end, 1)]);
  const pieces: SplineCurve[] = [];
  for (let i = wrap; i < order.length - 1 - wrap; i++) {
    const third = (at[i + 1] - at[i]) / 3;
    const leave = [xs[i], ys[i], xs[i] + third * sx[i], ys[i] + third * sy[i]];
    const j = i + 1;
    const arrive = [xs[j] - third * sx[j], ys[j] - third * sy[j], xs[j], ys[j]];
    pieces.push(bezier([...leave, ...arrive]));
  }
  return pieces;
}
