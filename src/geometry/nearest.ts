/**
 * The nearest two points of two regions. Millimetres. Every outline of one is held against every outline of the other;
 * edges whose boxes lie further apart than what is found already are passed over.
 */
import type { Mm, PlatePoint } from '../units/types';
import { containsPoint } from './region';
import type { Region } from './types';

export interface Nearest {
  readonly distance_mm: Mm;
  /** On the first region and on the second one. */
  readonly from: PlatePoint;
  readonly to: PlatePoint;
}

type Edge = readonly [x0: Mm, y0: Mm, x1: Mm, y1: Mm];

function edgesOf(region: Region): Edge[] {
  const edges: Edge[] = [];
  for (const ring of region)
    for (let i = 0; i < ring.length; i += 2) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      edges.push([ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!]);
    }
  return edges;
}

/** The point of an edge nearest to (x, y). */
export function nearestOnEdge([x0, y0, x1, y1]: Edge, { x, y }: PlatePoint): PlatePoint {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / square));
  return { x: x0 + t * dx, y: y0 + t * dy };
}

const apart = (a0: Mm, a1: Mm, b0: Mm, b1: Mm): Mm =>
  Math.max(0, Math.min(b0, b1) - Math.max(a0, a1), Math.min(a0, a1) - Math.max(b0, b1));

const between = (from: PlatePoint, to: PlatePoint): Nearest => ({
  distance_mm: Math.hypot(to.x - from.x, to.y - from.y),
  from,
  to,
});

/** Edges that do not cross are nearest at an end of one of them. */
function ofEdges(a: Edge, b: Edge): Nearest {
  const [a0, a1]: readonly PlatePoint[] = [
    { x: a[0], y: a[1] },
    { x: a[2], y: a[3] },
  ];
  const [b0, b1]: readonly PlatePoint[] = [
    { x: b[0], y: b[1] },
    { x: b[2], y: b[3] },
  ];
  return [
    between(a0!, nearestOnEdge(b, a0!)),
    between(a1!, nearestOnEdge(b, a1!)),
    between(nearestOnEdge(a, b0!), b0!),
    between(nearestOnEdge(a, b1!), b1!),
  ].reduce((best, next) => (next.distance_mm < best.distance_mm ? next : best));
}

const side = ([x0, y0, x1, y1]: Edge, x: Mm, y: Mm): number => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);
const crosses = (a: Edge, b: Edge): boolean =>
  side(a, b[0], b[1]) * side(a, b[2], b[3]) < 0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) < 0;

const inside = (region: Region, other: Region): PlatePoint | null => {
  const ring = other.find(([x, y]) => containsPoint(region, x!, y!));
  return ring ? { x: ring[0]!, y: ring[1]! } : null;
};

/** The nearest points of two regions; null where they overlap, or one is empty. */
export function nearestPoints(a: Region, b: Region): Nearest | null {
  if (inside(a, b) !== null || inside(b, a) !== null) return null;
  const others = edgesOf(b);
  let best: Nearest | null = null;
  for (const edge of edgesOf(a))
    for (const other of others) {
      const limit = best?.distance_mm ?? Infinity;
      const dx = apart(edge[0], edge[2], other[0], other[2]);
      if (dx > limit || Math.hypot(dx, apart(edge[1], edge[3], other[1], other[3])) > limit) continue;
      if (crosses(edge, other)) return null;
      const found = ofEdges(edge, other);
      if (best === null || found.distance_mm < best.distance_mm) best = found;
    }
  return best;
}
