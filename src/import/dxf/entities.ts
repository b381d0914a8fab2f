/**
 * DXF objects to curves in the drawing's units, each in its own coordinate system, +y up (DXF Reference, "Entities"
 * [memory]). A bulge is the tangent of a quarter of the arc's angle, positive counter-clockwise; a negative extrusion
 * direction mirrors x (arbitrary axis algorithm for (0, 0, −1)).
 */
import { IDENTITY, type Affine } from '../affine';
import { FULL_TURN, arc, line, type ArcCurve, type Curve, type SplineCurve } from '../curve';
import { curveThrough, splineIsSound } from '../spline';
import type { LeftOutKind } from '../types';
import { numberOf, numbersOf, type Entity } from './document';

export interface Drawn {
  readonly curves: readonly Curve[];
  /** The object closes by itself. */
  readonly closed: boolean;
}
/** Curves, or why there are none. */
export type Drawing = Drawn | LeftOutKind;

const TEXTS = ['TEXT', 'MTEXT', 'ATTDEF', 'ATTRIB', 'RTEXT', 'ARCALIGNEDTEXT'];
const DIMENSIONS = [
  'DIMENSION',
  'ARC_DIMENSION',
  'LARGE_RADIAL_DIMENSION',
  'LEADER',
  'MULTILEADER',
  'MLEADER',
  'TOLERANCE',
];
const MESHES = ['3DFACE', '3DSOLID', 'BODY', 'REGION', 'SURFACE', 'MESH', 'SOLID', 'TRACE', 'POLYSOLID'];
const IMAGES = ['IMAGE', 'WIPEOUT', 'OLEFRAME', 'OLE2FRAME', 'PDFUNDERLAY', 'DWFUNDERLAY', 'DGNUNDERLAY'];

const KINDS: ReadonlyMap<string, LeftOutKind> = new Map([
  ...TEXTS.map((type) => [type, 'text'] as const),
  ...DIMENSIONS.map((type) => [type, 'dimension'] as const),
  ...MESHES.map((type) => [type, 'mesh'] as const),
  ...IMAGES.map((type) => [type, 'image'] as const),
  ['HATCH', 'hatch'],
  ['MPOLYGON', 'hatch'],
  ['POINT', 'point'],
  ['VIEWPORT', 'paper'],
]);

/** Draws one object; INSERT is not drawn here. */
export function draw(entity: Entity): Drawing {
  switch (entity.type) {
    case 'LINE':
      return { curves: [lineOf(entity)], closed: false };
    case 'CIRCLE':
      return circle(entity);
    case 'ARC':
      return arcOf(entity);
    case 'ELLIPSE':
      return ellipse(entity);
    case 'LWPOLYLINE':
      return lightPolyline(entity);
    case 'POLYLINE':
      return heavyPolyline(entity);
    case 'SPLINE':
      return spline(entity);
    default:
      return KINDS.get(entity.type) ?? 'other';
  }
}

/** The object's own plane in the drawing: as it is, mirrored, or null where it is tilted. */
export function planeOf(entity: Entity): Affine | null {
  if (!OWN_PLANE.has(entity.type) && entity.type !== 'ELLIPSE') return IDENTITY;
  const normal = [numberOf(entity, 210, 0), numberOf(entity, 220, 0), numberOf(entity, 230, 1)];
  const length = Math.hypot(...normal);
  const up = length === 0 ? 1 : normal[2] / length;
  if (Math.abs(up) < 1 - 1e-9) return null;
  return up > 0 || !OWN_PLANE.has(entity.type) ? IDENTITY : [-1, 0, 0, 1, 0, 0];
}
/** Objects given in the coordinates of their own plane; the others are in the drawing's. */
const OWN_PLANE: ReadonlySet<string> = new Set(['ARC', 'CIRCLE', 'LWPOLYLINE', 'POLYLINE', 'INSERT']);

const lineOf = (e: Entity): Curve =>
  line(numberOf(e, 10, 0), numberOf(e, 20, 0), numberOf(e, 11, 0), numberOf(e, 21, 0));

function circle(e: Entity): Drawing {
  const r = numberOf(e, 40, 0);
  if (r <= 0) return 'broken';
  return { curves: [arc(numberOf(e, 10, 0), numberOf(e, 20, 0), r, r)], closed: true };
}

/** The same direction, less than a full turn from zero; so that adding to a very large angle is never lost. */
const withinTurn = (angle: number): number => angle % FULL_TURN;

/** From start to end counter-clockwise; equal ends mean a full turn. */
function turnTo(from: number, to: number): number {
  const turn = (((to - from) % FULL_TURN) + FULL_TURN) % FULL_TURN;
  return from + (turn < 1e-12 ? FULL_TURN : turn);
}

function arcOf(e: Entity): Drawing {
  const r = numberOf(e, 40, 0);
  if (r <= 0) return 'broken';
  const from = withinTurn((numberOf(e, 50, 0) * Math.PI) / 180);
  const to = turnTo(from, (numberOf(e, 51, 360) * Math.PI) / 180);
  const curve = arc(numberOf(e, 10, 0), numberOf(e, 20, 0), r, r, from, to);
  return { curves: [curve], closed: to - from >= FULL_TURN - 1e-9 };
}

/** Given in the drawing's own coordinates; the minor axis is the extrusion direction × the major one. */
function ellipse(e: Entity): Drawing {
  const [ux, uy] = [numberOf(e, 11, 0), numberOf(e, 21, 0)];
  const ratio = numberOf(e, 40, 1);
  if (Math.hypot(ux, uy) === 0 || ratio <= 0) return 'broken';
  const up = numberOf(e, 230, 1) < 0 ? -1 : 1;
  const from = withinTurn(numberOf(e, 41, 0));
  const to = turnTo(from, numberOf(e, 42, FULL_TURN));
  const [cx, cy] = [numberOf(e, 10, 0), numberOf(e, 20, 0)];
  const [vx, vy] = [-uy * ratio * up, ux * ratio * up];
  const curve: ArcCurve = { kind: 'arc', cx, cy, ux, uy, vx, vy, from, to };
  return { curves: [curve], closed: to - from >= FULL_TURN - 1e-9 };
}

interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** The line or arc from one vertex to the next; null where they are the same point. */
function bulged(a: Vertex, b: Vertex): Curve | null {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return null;
  if (Math.abs(a.bulge) < 1e-9) return line(a.x, a.y, b.x, b.y);
  const rise = (1 - a.bulge * a.bulge) / (4 * a.bulge);
  const [cx, cy] = [(a.x + b.x) / 2 - dy * rise, (a.y + b.y) / 2 + dx * rise];
  const r = (chord * (1 + a.bulge * a.bulge)) / (4 * Math.abs(a.bulge));
  const from = Math.atan2(a.y - cy, a.x - cx);
  return arc(cx, cy, r, r, from, from + 4 * Math.atan(a.bulge));
}

function joined(vertices: readonly Vertex[], closed: boolean): Drawing {
  if (vertices.length < 2) return 'no-area';
  const ends = closed ? [...vertices.slice(1), vertices[0]] : vertices.slice(1);
  const curves = ends.map((end, i) => bulged(vertices[i], end)).filter((curve) => curve !== null);
  return curves.length === 0 ? 'no-area' : { curves, closed };
}

function lightPolyline(e: Entity): Drawing {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  e.codes.forEach((code, i) => {
    const value = e.numbers[i];
    const last = vertices[vertices.length - 1];
    if (code === 10) vertices.push({ x: value, y: 0, bulge: 0 });
    else if (code === 20 && last !== undefined) last.y = value;
    else if (code === 42 && last !== undefined) last.bulge = value;
  });
  return joined(vertices, (numberOf(e, 70, 0) & 1) !== 0);
}

const CLOSED = 1;
const MESH_FLAGS = 16 | 64;
/** A vertex that only controls a smoothed polyline. */
const FRAME_VERTEX = 16;

function heavyPolyline(e: Entity): Drawing {
  const flags = numberOf(e, 70, 0);
  if ((flags & MESH_FLAGS) !== 0) return 'mesh';
  const vertices = e.vertices
    .filter((vertex) => (numberOf(vertex, 70, 0) & FRAME_VERTEX) === 0)
    .map((vertex) => ({
      x: numberOf(vertex, 10, 0),
      y: numberOf(vertex, 20, 0),
      bulge: numberOf(vertex, 42, 0),
    }));
  return joined(vertices, (flags & CLOSED) !== 0);
}

/** Pairs of two group codes, flat x, y. */
function pointsOf(e: Entity, code: number): number[] {
  const ys = numbersOf(e, code + 10);
  return numbersOf(e, code).flatMap((x, i) => [x, ys[i] ?? Number.NaN]);
}

function spline(e: Entity): Drawing {
  const points = pointsOf(e, 10);
  const closed = (numberOf(e, 70, 0) & CLOSED) !== 0;
  if (points.length === 0) return fitted(e, closed);
  const weights = numbersOf(e, 41);
  const curve: SplineCurve = {
    kind: 'spline',
    degree: numberOf(e, 71, 3),
    knots: numbersOf(e, 40),
    points,
    weights: weights.length === 0 ? null : weights,
  };
  if (!points.every(Number.isFinite) || !splineIsSound(curve)) return 'broken';
  return { curves: [curve], closed: false };
}

/** A spline given by the points it passes through only. */
function fitted(e: Entity, closed: boolean): Drawing {
  const given = pointsOf(e, 11);
  const flat: number[] = [];
  for (let i = 0; i < given.length; i += 2) {
    const n = flat.length;
    if (n === 0 || given[i] !== flat[n - 2] || given[i + 1] !== flat[n - 1])
      flat.push(given[i], given[i + 1]);
  }
  const meets = flat.length > 4 && flat[0] === flat[flat.length - 2] && flat[1] === flat[flat.length - 1];
  if (closed && meets) flat.length -= 2;
  if (flat.length < 4 || !flat.every(Number.isFinite)) return 'broken';
  const tangent = (code: number): [number, number] | null =>
    e.codes.includes(code) ? [numberOf(e, code, 0), numberOf(e, code + 10, 0)] : null;
  const curves = curveThrough(flat, closed, { start: tangent(12), end: tangent(13) });
  return { curves, closed };
}
