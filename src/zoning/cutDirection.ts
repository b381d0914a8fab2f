/**
 * Which way a new cut runs: parallel to the nearest zone line, along y where there is none. Drawn zones
 * have no lines; the nearest zone edge inside the platform takes their place. The answer is the cut's unit normal,
 * pointing to +x (to +y where it has no x).
 */
import { edgesOf } from '../geometry/edges';
import { boxOf } from '../geometry/region';
import type { Box } from '../geometry/types';
import type { Division } from './types';

type Normal = readonly [number, number];
const ALONG_Y: Normal = [1, 0];

function oriented(nx: number, ny: number): Normal {
  const flip = nx < -1e-12 || (Math.abs(nx) <= 1e-12 && ny < 0);
  return flip ? [-nx, -ny] : [nx, ny];
}

interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly dx: number;
  readonly dy: number;
  readonly length: number;
}

function zoneEdges(division: Division): Edge[] {
  const edges: Edge[] = [];
  const limits = boxOf(division.platform);
  const { ends } = edgesOf(division.zones.flatMap(({ region }) => region));
  for (let i = 0; i < ends.length; i += 4) {
    const edge = makeEdge(ends[i], ends[i + 1], ends[i + 2], ends[i + 3]);
    if (edge.length > 0 && !onLimits(edge, limits)) edges.push(edge);
  }
  return edges;
}

const makeEdge = (x0: number, y0: number, x1: number, y1: number): Edge => {
  const length = Math.hypot(x1 - x0, y1 - y0);
  return { x0, y0, dx: (x1 - x0) / (length || 1), dy: (y1 - y0) / (length || 1), length };
};

/** Zone edges along the platform's own edge are no zone lines. */
function onLimits(edge: Edge, { minX, minY, maxX, maxY }: Box): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-3;
  const x1 = edge.x0 + edge.dx * edge.length;
  const y1 = edge.y0 + edge.dy * edge.length;
  return (
    [minX, maxX].some((x) => near(edge.x0, x) && near(x1, x)) ||
    [minY, maxY].some((y) => near(edge.y0, y) && near(y1, y))
  );
}

function distanceTo(edge: Edge, x: number, y: number): number {
  const t = Math.min(edge.length, Math.max(0, (x - edge.x0) * edge.dx + (y - edge.y0) * edge.dy));
  return Math.hypot(x - edge.x0 - t * edge.dx, y - edge.y0 - t * edge.dy);
}

const edgeCache = new WeakMap<Division, Edge[]>();

function nearestEdge(division: Division, x: number, y: number): Edge | null {
  let edges = edgeCache.get(division);
  if (!edges) edgeCache.set(division, (edges = zoneEdges(division)));
  let best: Edge | null = null;
  let least = Infinity;
  for (const edge of edges) {
    const d = distanceTo(edge, x, y);
    if (d < least - 1e-9) [least, best] = [d, edge];
  }
  return best;
}

/** Normal of a cut through something around (x, y). */
export function cutNormal(division: Division, x: number, y: number): Normal {
  let best: Normal | null = null;
  let least = Infinity;
  for (const line of division.lines) {
    const d = Math.abs(line.nx * x + line.ny * y - line.c);
    if (d < least - 1e-9) [least, best] = [d, [line.nx, line.ny]];
  }
  if (best) return best;
  const edge = nearestEdge(division, x, y);
  return edge ? oriented(edge.dy, -edge.dx) : ALONG_Y;
}
