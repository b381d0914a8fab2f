/**
 * Loose lines and arcs chained to closed outlines, whatever their order and direction. Millimetres. Edges are nodes'
 * connections (see chainEnds.ts). Dead ends are taken away first; where every node then joins two edges the loop is
 * plain; where three or more meet, branches.ts takes the outer contour and tries again with the rest.
 */
import { append } from './append';
import { branchLoops } from './branches';
import { nodesOf } from './chainEnds';
import {
  connected,
  deadEnds,
  edgeLength,
  isPlain,
  plainLoop,
  pointAlong,
  type Edge,
  type Graph,
  type Step,
} from './graph';

export interface Chains {
  readonly loops: readonly (readonly Step[])[];
  /** Connected edges that do not close. */
  readonly open: readonly (readonly Edge[])[];
  /** Edges left over between outlines that did close. */
  readonly branches: readonly Edge[];
  readonly duplicates: readonly Edge[];
}
/** Chains edges whose ends lie within gap_mm of each other. */
export function chain(edges: readonly Edge[], gap_mm: number): Chains {
  const graph: Graph = { edges, node: nodesOf(endsOf(edges), gap_mm) };
  const { kept, duplicates } = withoutDuplicates(graph, gap_mm);
  const dead = deadEnds(graph, kept);
  const live = kept.filter((e) => !dead.has(e));
  const loops: Step[][] = [];
  const branches: Edge[] = [];
  for (const group of connected(graph, live)) {
    const found = isPlain(graph, group)
      ? { loops: [plainLoop(graph, group)], rest: [] }
      : branchLoops(graph, group);
    append(loops, found.loops);
    for (const e of found.rest) branches.push(edges[e]);
  }
  const open = connected(graph, [...dead]).map((group) => group.map((e) => edges[e]));
  return { loops, open, branches, duplicates: duplicates.map((e) => edges[e]) };
}

function endsOf(edges: readonly Edge[]): { x: Float64Array; y: Float64Array; length: Float64Array } {
  const x = new Float64Array(2 * edges.length);
  const y = new Float64Array(2 * edges.length);
  edges.forEach(({ points }, e) => {
    [x[2 * e], y[2 * e]] = points;
    x[2 * e + 1] = points[points.length - 2];
    y[2 * e + 1] = points[points.length - 1];
  });
  return { x, y, length: Float64Array.from(edges, (edge) => edgeLength(edge.points)) };
}

/** Different edges between the same two nodes; the rest count as drawn twice. */
const MOST_BETWEEN = 100;

/** The point halfway along the edge's length. */
const middle = (edge: Edge): readonly [number, number] =>
  pointAlong(edge, false, edgeLength(edge.points) / 2);

/** Edges between the same two nodes with the same middle are one edge drawn twice; edges of no length are dropped. */
function withoutDuplicates(graph: Graph, gap_mm: number): { kept: number[]; duplicates: number[] } {
  const seen = new Map<string, (readonly [number, number])[]>();
  const kept: number[] = [];
  const duplicates: number[] = [];
  graph.edges.forEach((edge, e) => {
    const [a, b] = [graph.node[2 * e], graph.node[2 * e + 1]];
    if (a === b && edgeLength(edge.points) <= 3 * gap_mm) return;
    const key = a < b ? `${a},${b}` : `${b},${a}`;
    const mid = middle(edge);
    const others = seen.get(key) ?? [];
    const twice = others.some((m) => Math.hypot(m[0] - mid[0], m[1] - mid[1]) <= Math.max(gap_mm, 1e-6));
    (twice || others.length === MOST_BETWEEN ? duplicates : kept).push(e);
    if (!twice && others.length < MOST_BETWEEN && others.push(mid) === 1) seen.set(key, others);
  });
  return { kept, duplicates };
}
