/**
 * Edges, nodes and the plain walks on them. Millimetres. An edge is one line, arc or curve of a drawing; a node is a
 * place where ends of edges meet.
 */
import type { Curve } from './curve';

export interface Edge {
  readonly curve: Curve;
  /** The curve's points, flat x, y, both ends included. */
  readonly points: readonly number[];
  /** Layer or element it comes from. */
  readonly name: string;
}
/** An edge on a walk; `back`: against its own direction. */
export interface Step {
  readonly edge: Edge;
  readonly back: boolean;
}
/** Edges by number with the nodes at their ends: edge e runs from node[2e] to node[2e + 1]. */
export interface Graph {
  readonly edges: readonly Edge[];
  readonly node: Int32Array;
}

const pointCount = (edge: Edge): number => edge.points.length / 2;

export function edgeLength(points: readonly number[]): number {
  let sum = 0;
  for (let i = 2; i < points.length; i += 2)
    sum += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  return sum;
}

/** For every node the edges that end there; an edge that returns to its node stands twice. */
export function edgesByNode(graph: Graph, edges: readonly number[]): Map<number, number[]> {
  const at = new Map<number, number[]>();
  for (const e of edges) {
    for (const n of [graph.node[2 * e], graph.node[2 * e + 1]]) {
      const list = at.get(n);
      if (list === undefined) at.set(n, [e]);
      else list.push(e);
    }
  }
  return at;
}

/** Edges that lie on no loop because one of their ends leads nowhere. */
export function deadEnds(graph: Graph, edges: readonly number[]): Set<number> {
  const at = edgesByNode(graph, edges);
  const degree = new Map([...at].map(([n, list]) => [n, list.length]));
  const dead = new Set<number>();
  const queue = [...degree].filter(([, d]) => d === 1).map(([n]) => n);
  for (let n = queue.pop(); n !== undefined; n = queue.pop()) {
    const e = at.get(n)?.find((edge) => !dead.has(edge));
    if (e === undefined) continue;
    dead.add(e);
    const far = graph.node[2 * e] === n ? graph.node[2 * e + 1] : graph.node[2 * e];
    const left = (degree.get(far) ?? 0) - 1;
    degree.set(far, left);
    if (left === 1) queue.push(far);
  }
  return dead;
}

/** Groups of edges that hang together, in the order of their first edges. */
export function connected(graph: Graph, edges: readonly number[]): number[][] {
  const at = edgesByNode(graph, edges);
  const seen = new Set<number>();
  return edges.flatMap((first) => (seen.has(first) ? [] : [groupFrom(graph, first, at, seen)]));
}

function groupFrom(graph: Graph, first: number, at: Map<number, number[]>, seen: Set<number>): number[] {
  const group = [first];
  seen.add(first);
  for (let i = 0; i < group.length; i++) {
    for (const n of [graph.node[2 * group[i]], graph.node[2 * group[i] + 1]]) {
      const fresh = new Set(at.get(n)?.filter((e) => !seen.has(e)));
      for (const e of fresh) {
        group.push(e);
        seen.add(e);
      }
      at.delete(n);
    }
  }
  return group;
}

/** True where every node joins exactly two ends. */
export const isPlain = (graph: Graph, group: readonly number[]): boolean =>
  [...edgesByNode(graph, group).values()].every((list) => list.length === 2);

/** The one loop of a plain group. */
export function plainLoop(graph: Graph, group: readonly number[]): Step[] {
  const at = edgesByNode(graph, group);
  const steps: Step[] = [];
  let e = group[0];
  let from = graph.node[2 * e];
  for (let count = 0; count < group.length; count++) {
    const back = graph.node[2 * e] !== from;
    steps.push({ edge: graph.edges[e], back });
    const to = back ? graph.node[2 * e] : graph.node[2 * e + 1];
    const [p, q] = at.get(to) ?? [e, e];
    e = p === e ? q : p;
    from = to;
  }
  return steps;
}

/** Ends further apart than this are joined by a straight line; nearer ones become one point. */
const BRIDGED_mm = 0.01;

/** The loop's points, flat x, y, the first one not repeated. Of two ends that nearly meet the edge before decides. */
export function loopPoints(loop: readonly Step[]): number[] {
  const flat: number[] = [];
  const last = loop[loop.length - 1];
  let [x, y] = stepPoint(last, pointCount(last.edge) - 1);
  for (const step of loop) {
    const n = pointCount(step.edge);
    const start = stepPoint(step, 0);
    if (Math.hypot(start[0] - x, start[1] - y) > BRIDGED_mm) flat.push(...start);
    for (let i = 1; i < n; i++) flat.push(...stepPoint(step, i));
    [x, y] = stepPoint(step, n - 1);
  }
  return flat;
}

/** Point i of a step, counted along the walk. */
function stepPoint({ edge, back }: Step, i: number): readonly [number, number] {
  const k = back ? pointCount(edge) - 1 - i : i;
  return [edge.points[2 * k], edge.points[2 * k + 1]];
}

/** The point `far` millimetres along an edge from its start, or from its end where it is run backwards; its last point where it is shorter. */
export function pointAlong(edge: Edge, back: boolean, far: number): readonly [number, number] {
  const { points } = edge;
  const n = points.length / 2;
  const at = (i: number): readonly [number, number] => {
    const k = back ? n - 1 - i : i;
    return [points[2 * k], points[2 * k + 1]];
  };
  let left = far;
  for (let i = 1; i < n; i++) {
    const [p, q] = [at(i - 1), at(i)];
    const d = Math.hypot(q[0] - p[0], q[1] - p[1]);
    if (d >= left && d > 0) return [p[0] + ((q[0] - p[0]) * left) / d, p[1] + ((q[1] - p[1]) * left) / d];
    left -= d;
  }
  return at(n - 1);
}
