/**
 * Curves to points, in millimetres, after every transform. Polygon and curve stay within 0.005 mm of each other, and
 * the polygon keeps the curve's area: inner vertices are moved outwards by two thirds of the sagitta. For an
 * elliptical arc cut into n equal steps d the factor k on the inner vertices solves (n−2)·k² + 2k = n·d/sin d, the
 * equality of areas [mathematics]; for other curves the second difference of neighbouring points stands for it.
 */
import { halfAxes, type ArcCurve, type Curve, type SplineCurve } from './curve';
import { spanPoint, spansOf } from './spline';

/** How many points may be made, and the count of those that were computed. */
export interface Room {
  readonly room: number;
  /** `effort`: what one of them costs, a point of an arc being 1. */
  tried(count: number, effort?: number): void;
}
const ENDLESS: Room = { room: Infinity, tried: () => undefined };

/** Aim of the division; with rounding to 1 µm the result stays within 0.005 mm. */
const AIM_mm = 0.004;
/** Bent less than this, a curve is a line. */
const STRAIGHT_mm = 0.0002;
const WIDEST_STEP = Math.PI / 8;
const FEWEST_STEPS = 3;
const MOST_STEPS = 20_000;
const FIRST_TRY = 8;
/** Parameters of an arc nearer than this are the same point. */
const APART = 1e-6;

/** The curve's points, flat x, y, with both ends. */
export const flatten = (curve: Curve): number[] => flattenWithin(curve, ENDLESS) ?? [];

/** The same; null, before they are computed, where there are more points than there is room for. */
export function flattenWithin(curve: Curve, room: Room): number[] | null {
  switch (curve.kind) {
    case 'line':
      return room.room < 2 ? null : [curve.x0, curve.y0, curve.x1, curve.y1];
    case 'arc':
      return flattenArc(curve, room);
    case 'spline':
      return flattenSpline(curve, room);
  }
}

/** An arc has at most four of them and a fifth where it ends on the first. */
const MOST_TURNS = 5;

/**
 * Parameters at which the arc turns back in x or y, from its start to its end, both included. The arc is at most one
 * full turn long.
 */
export function turningPoints(arc: ArcCurve): number[] {
  const low = Math.min(arc.from, arc.to);
  const high = Math.max(arc.from, arc.to);
  const between: number[] = [];
  for (const base of [Math.atan2(arc.vx, arc.ux), Math.atan2(arc.vy, arc.uy)]) {
    const first = Math.ceil((low - base) / Math.PI);
    for (let i = 0; i < MOST_TURNS && base + (first + i) * Math.PI < high; i++)
      between.push(base + (first + i) * Math.PI);
  }
  const inner = between.filter((t) => t - low > APART && high - t > APART).sort((a, b) => a - b);
  const ascending = [low, ...inner.filter((t, i) => i === 0 || t - inner[i - 1] > APART), high];
  return arc.from <= arc.to ? ascending : ascending.reverse();
}

function arcSteps(sweep: number, large: number): number {
  if (sweep < WIDEST_STEP && (large * sweep * sweep) / 8 < STRAIGHT_mm) return 1;
  const step = Math.min(Math.sqrt((8 * AIM_mm) / large), WIDEST_STEP);
  return Math.min(Math.max(Math.ceil(sweep / step), FEWEST_STEPS), MOST_STEPS);
}

/** Cut where it turns back, so that the polygon's box is the arc's. */
function flattenArc(arc: ArcCurve, room: Room): number[] | null {
  const [large] = halfAxes(arc);
  const ends = turningPoints(arc);
  const steps = ends.slice(1).map((to, i) => arcSteps(Math.abs(to - ends[i]), large));
  const count = steps.reduce((sum, n) => sum + n, 1);
  if (!(count <= room.room)) return null;
  room.tried(count);
  const flat = [arc.cx + arc.ux * Math.cos(arc.from) + arc.vx * Math.sin(arc.from)];
  flat.push(arc.cy + arc.uy * Math.cos(arc.from) + arc.vy * Math.sin(arc.from));
  for (let part = 1; part < ends.length; part++) {
    const [from, to] = [ends[part - 1], ends[part]];
    const n = steps[part - 1];
    const d = (to - from) / n;
    const wanted = d === 0 ? 1 : d / Math.sin(d);
    const inner = n === 1 ? 1 : (Math.sqrt(1 + (n - 2) * n * wanted) - 1) / (n - 2);
    for (let i = 1; i <= n; i++) {
      const k = i === n ? 1 : inner;
      const t = i === n ? to : from + i * d;
      const [c, s] = [k * Math.cos(t), k * Math.sin(t)];
      flat.push(arc.cx + arc.ux * c + arc.vx * s, arc.cy + arc.uy * c + arc.vy * s);
    }
  }
  return flat;
}

function samples(spline: SplineCurve, span: number, n: number): number[] {
  const flat: number[] = [];
  for (let i = 0; i <= n; i++) flat.push(...spanPoint(spline, span, i / n));
  return flat;
}

/** Largest second difference of neighbouring points: eight times the sagitta. */
function largestBend(flat: readonly number[]): number {
  let most = 0;
  for (let i = 2; i + 3 < flat.length; i += 2) {
    const bx = flat[i + 2] - 2 * flat[i] + flat[i - 2];
    const by = flat[i + 3] - 2 * flat[i + 1] + flat[i - 1];
    most = Math.max(most, bx * bx + by * by);
  }
  return Math.sqrt(most);
}

/** Points of one knot interval, dense enough; tried, measured and tried again; null where there is no room for them. */
function spanSamples(spline: SplineCurve, span: number, room: Room): number[] | null {
  let n = FIRST_TRY;
  let flat = samples(spline, span, n);
  room.tried(n + 1, spline.degree * spline.degree);
  for (let round = 0; round < 4; round++) {
    const sagitta = largestBend(flat) / 8;
    if (sagitta * n * n < STRAIGHT_mm) return samples(spline, span, 1);
    const better = Math.ceil(n * Math.sqrt(sagitta / AIM_mm));
    const next = Math.min(Math.max(better, FEWEST_STEPS), MOST_STEPS);
    if (round > 0 && sagitta <= AIM_mm) break;
    if (!(next <= room.room)) return null;
    n = next;
    flat = samples(spline, span, n);
    room.tried(n + 1, spline.degree * spline.degree);
  }
  return flat;
}

/** Inner points moved outwards by a twelfth of the second difference, n/(n−1) times for the ends that stay. */
function keepArea(flat: readonly number[]): number[] {
  const n = flat.length / 2 - 1;
  if (n < 2) return [...flat];
  const share = n / (n - 1) / 12;
  return flat.map((value, i) =>
    i < 2 || i >= 2 * n ? value : value - share * (flat[i + 2] - 2 * value + flat[i - 2]),
  );
}

function flattenSpline(spline: SplineCurve, room: Room): number[] | null {
  const flat: number[] = [];
  for (const span of spansOf(spline)) {
    const points = spanSamples(spline, span, room);
    if (points === null || flat.length / 2 + points.length / 2 > room.room) return null;
    const piece = keepArea(points);
    for (let i = flat.length === 0 ? 0 : 2; i < piece.length; i++) flat.push(piece[i]);
  }
  return flat;
}
