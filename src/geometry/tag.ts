/**
 * Which edges of a piece are true outline and which were made by cutting, for pieces that come out of the polygon
 * engine (half-plane cuts tag their own). Most edges of a piece are edges of the original, vertex for vertex; only the
 * others are measured. Millimetres.
 */
import type { Mm } from '../units/types';
import { edgesOf } from './edges';
import type { Region, Ring, TaggedRegion } from './types';

/** A few units of the polygon engine's grid on the largest platforms. */
export const OUTLINE_TOLERANCE_MM: Mm = 5e-5;
/** Places along an edge that have to lie on the outline for the edge to count as outline. */
const PLACES = [0.29, 0.5, 0.73];

interface Outline {
  /** x0, y0, x1, y1 per edge */
  readonly ends: Float64Array;
  /** Place in `ends` by the edge's first vertex; two vertices with one key only cost the quick way. */
  readonly edgeAt: ReadonlyMap<number, number>;
}

const keyOf = (x: Mm, y: Mm): number => x * 0.7548776662466927 + y * 0.5698402909980532;

function outlineOf(region: Region): Outline {
  const { ends } = edgesOf(region);
  const edgeAt = new Map<number, number>();
  for (let i = 0; i < ends.length; i += 4) edgeAt.set(keyOf(ends[i], ends[i + 1]), i);
  return { ends, edgeAt };
}

/**
 * The piece with its edges tagged: 1 (cut) unless the edge lies on the original's outline. Edges are first divided at
 * the original's vertices, since a cut may continue an outline edge in its line.
 */
export function tagCutEdges(piece: Region, original: Region): TaggedRegion {
  const outline = outlineOf(original);
  const rings: Ring[] = [];
  const cut: Uint8Array[] = [];
  for (const ring of piece) {
    const points: number[] = [];
    const tags: number[] = [];
    for (let i = 0; i < ring.length; i += 2) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      addEdge(ring[i], ring[i + 1], ring[j], ring[j + 1], outline, points, tags);
    }
    rings.push(points.length === ring.length ? ring : Float64Array.from(points));
    cut.push(Uint8Array.from(tags));
  }
  return { rings, cut };
}

function addEdge(x0: Mm, y0: Mm, x1: Mm, y1: Mm, outline: Outline, points: number[], tags: number[]): void {
  let x = x0;
  let y = y0;
  if (!isOriginalEdge(x0, y0, x1, y1, outline))
    for (const [vx, vy] of verticesAlong(x0, y0, x1, y1, outline.ends)) {
      points.push(x, y);
      tags.push(onOutline(x, y, vx, vy, outline.ends) ? 0 : 1);
      x = vx;
      y = vy;
    }
  points.push(x, y);
  tags.push(isOriginalEdge(x, y, x1, y1, outline) || onOutline(x, y, x1, y1, outline.ends) ? 0 : 1);
}

function isOriginalEdge(x0: Mm, y0: Mm, x1: Mm, y1: Mm, { ends, edgeAt }: Outline): boolean {
  const i = edgeAt.get(keyOf(x0, y0));
  if (i === undefined) return false;
  return ends[i] === x0 && ends[i + 1] === y0 && ends[i + 2] === x1 && ends[i + 3] === y1;
}

const onOutline = (x0: Mm, y0: Mm, x1: Mm, y1: Mm, ends: Float64Array): boolean =>
  PLACES.every((s) => passes(ends, x0 + s * (x1 - x0), y0 + s * (y1 - y0)));

/** True where an edge of the outline passes the point within the tolerance. */
function passes(ends: Float64Array, x: Mm, y: Mm): boolean {
  const tolerance = OUTLINE_TOLERANCE_MM;
  for (let i = 0; i < ends.length; i += 4) {
    const ax = ends[i] - x;
    const bx = ends[i + 2] - x;
    if ((ax > tolerance && bx > tolerance) || (ax < -tolerance && bx < -tolerance)) continue;
    const ay = ends[i + 1] - y;
    const by = ends[i + 3] - y;
    if ((ay > tolerance && by > tolerance) || (ay < -tolerance && by < -tolerance)) continue;
    const dx = bx - ax;
    const dy = by - ay;
    const off = ax * dy - ay * dx;
    if (off * off <= tolerance * tolerance * (dx * dx + dy * dy)) return true;
  }
  return false;
}

/** Vertices of the outline strictly between the ends of a segment and on it within the tolerance, in order. */
function verticesAlong(x0: Mm, y0: Mm, x1: Mm, y1: Mm, ends: Float64Array): [Mm, Mm][] {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const ux = (x1 - x0) / length;
  const uy = (y1 - y0) / length;
  const found: { along: Mm; at: [Mm, Mm] }[] = [];
  for (let i = 0; i < ends.length; i += 4) {
    const dx = ends[i] - x0;
    const dy = ends[i + 1] - y0;
    if (Math.abs(dx * uy - dy * ux) > OUTLINE_TOLERANCE_MM) continue;
    const along = dx * ux + dy * uy;
    if (along > 2 * OUTLINE_TOLERANCE_MM && along < length - 2 * OUTLINE_TOLERANCE_MM)
      found.push({ along, at: [ends[i], ends[i + 1]] });
  }
  return found.sort((a, b) => a.along - b.along).map(({ at }) => at);
}
