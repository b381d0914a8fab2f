/**
 * Outlines where three or more lines meet. Millimetres. Edges are ordered by direction around each node and the faces
 * between them are walked; the face with the most negative area is the outer one (turning clockwise seen from inside,
 * so it runs against the clock negatively). Its walk, cut at nodes it visits twice, gives loops; edges it passes on both
 * sides are bridges. What remains is pruned and walked again until nothing closes any more.
 */
import { append } from './append';
import {
  connected,
  deadEnds,
  edgeLength,
  isPlain,
  plainLoop,
  pointAlong,
  type Graph,
  type Step,
} from './graph';

/** A tangle larger than this is not untied. */
const MOST_TANGLED = 20_000;

/** A directed edge: 2e along it, 2e + 1 against it. */
type Dart = number;
const startNode = (graph: Graph, dart: Dart): number => graph.node[dart];
const endNode = (graph: Graph, dart: Dart): number => graph.node[dart ^ 1];

/** Loops of a group in which every edge has a neighbour at both ends; `rest`: edges that are on none. */
export function branchLoops(graph: Graph, group: readonly number[]): { loops: Step[][]; rest: number[] } {
  const loops: Step[][] = [];
  const rest: number[] = [];
  const waiting: (readonly number[])[] = [group];
  for (let edges = waiting.pop(); edges !== undefined; edges = waiting.pop()) {
    const dead = deadEnds(graph, edges);
    append(rest, dead);
    for (const part of connected(
      graph,
      edges.filter((e) => !dead.has(e)),
    )) {
      if (isPlain(graph, part)) {
        loops.push(plainLoop(graph, part));
        continue;
      }
      if (part.length > MOST_TANGLED) {
        append(rest, part);
        continue;
      }
      const contour = outerLoops(graph, part);
      for (const loop of contour) loops.push(loop.map((dart) => stepOf(graph, dart)));
      const used = new Set(contour.flat().map((dart) => dart >> 1));
      if (used.size === 0) append(rest, part);
      else waiting.push(part.filter((e) => !used.has(e)));
    }
  }
  return { loops, rest };
}

const stepOf = (graph: Graph, dart: Dart): Step => ({ edge: graph.edges[dart >> 1], back: (dart & 1) === 1 });

/** Directions are taken at this share of the shortest edge at the node, so that tangent edges still differ. */
const LOOK_AHEAD = 0.25;

/** For every dart the one that follows it around the face on its left. */
function followers(graph: Graph, part: readonly number[]): Map<Dart, Dart> {
  const leaving = new Map<number, Dart[]>();
  for (const e of part) {
    for (const dart of [2 * e, 2 * e + 1]) {
      const list = leaving.get(startNode(graph, dart));
      if (list === undefined) leaving.set(startNode(graph, dart), [dart]);
      else list.push(dart);
    }
  }
  const next = new Map<Dart, Dart>();
  for (const darts of leaving.values()) {
    const shortest = darts.reduce(
      (least, d) => Math.min(least, edgeLength(graph.edges[d >> 1].points)),
      Infinity,
    );
    const far = LOOK_AHEAD * shortest;
    const angles = new Map(darts.map((d) => [d, direction(graph, d, far)]));
    const order = darts.sort((a, b) => (angles.get(a) ?? 0) - (angles.get(b) ?? 0) || a - b);
    order.forEach((dart, i) => next.set(dart ^ 1, order[(i + order.length - 1) % order.length]));
  }
  return next;
}

function direction(graph: Graph, dart: Dart, far: number): number {
  const edge = graph.edges[dart >> 1];
  const back = (dart & 1) === 1;
  const start = pointAlong(edge, back, 0);
  const ahead = pointAlong(edge, back, far);
  return Math.atan2(ahead[1] - start[1], ahead[0] - start[0]);
}

/** Twice the area left of an edge seen from a point near it; the shoelace sum over the dart's points. */
function sweptArea(graph: Graph, dart: Dart, x0: number, y0: number): number {
  const { points } = graph.edges[dart >> 1];
  let twice = 0;
  for (let i = 2; i < points.length; i += 2)
    twice += (points[i - 2] - x0) * (points[i + 1] - y0) - (points[i] - x0) * (points[i - 1] - y0);
  return (dart & 1) === 1 ? -twice : twice;
}

function outerFace(graph: Graph, part: readonly number[]): Dart[] {
  const next = followers(graph, part);
  const [x0, y0] = graph.edges[part[0]].points;
  const seen = new Set<Dart>();
  let outer: Dart[] = [];
  let least = Infinity;
  for (const first of next.keys()) {
    if (seen.has(first)) continue;
    const face: Dart[] = [];
    let area = 0;
    for (let dart = first; !seen.has(dart); dart = next.get(dart) ?? first) {
      seen.add(dart);
      face.push(dart);
      area += sweptArea(graph, dart, x0, y0);
    }
    if (area < least) [least, outer] = [area, face];
  }
  return outer;
}

/** Loops on the outer contour: bridges dropped, cut wherever a node is visited again. */
function outerLoops(graph: Graph, part: readonly number[]): Dart[][] {
  const face = outerFace(graph, part);
  const on = new Set(face);
  const loops: Dart[][] = [];
  const walk: Dart[] = [];
  const place = new Map<number, number>();
  for (const dart of face) {
    if (on.has(dart ^ 1)) continue;
    const from = startNode(graph, dart);
    if (!place.has(from)) place.set(from, walk.length);
    walk.push(dart);
    const again = place.get(endNode(graph, dart));
    if (again === undefined) continue;
    const loop = walk.splice(again);
    for (const d of loop) place.delete(startNode(graph, d));
    loops.push(loop);
  }
  return loops;
}
