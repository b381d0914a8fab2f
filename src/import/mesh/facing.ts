/**
 * Triangles of a connected surface made to face the same way: from one triangle over every edge that has exactly two.
 * Where the smaller part of a surface faces the other way, that part is turned. Then sides are paired over the edges, one
 * that runs a → b with one that runs b → a.
 */
import { from, NONE, type Edges } from './edges';

/** Turned over: the second and third corner change places, so side k runs the other way as side 2 − k. */
const turnedSide = (side: number): number => side - (side % 3) + (2 - (side % 3));

/** The sides of edges with exactly two triangles, each one's partner; −1 for all others. */
function plainPartners(edges: Edges): Int32Array {
  const partner = new Int32Array(edges.edgeOf.length).fill(NONE);
  for (let edge = 0; edge < edges.count.length; edge++) {
    if (edges.count[edge] !== 2) continue;
    const a = edges.first[edge];
    const b = edges.next[a];
    partner[a] = b;
    partner[b] = a;
  }
  return partner;
}

/** For each triangle 1 where it faces the other way than the larger part of its surface. */
export function turnedTriangles(triangles: Uint32Array, edges: Edges): Uint8Array {
  const count = triangles.length / 3;
  const partner = plainPartners(edges);
  const turned = new Uint8Array(count);
  const seen = new Uint8Array(count);
  const queue = new Int32Array(count);
  for (let seed = 0; seed < count; seed++) {
    if (seen[seed] === 1) continue;
    seen[seed] = 1;
    queue[0] = seed;
    let end = 1;
    let others = 0;
    for (let at = 0; at < end; at++) {
      const t = queue[at];
      others += turned[t];
      for (let side = 3 * t; side < 3 * t + 3; side++) {
        const across = partner[side];
        if (across === NONE) continue;
        const neighbour = Math.floor(across / 3);
        if (seen[neighbour] === 1) continue;
        seen[neighbour] = 1;
        const sameWay = from(triangles, side) === from(triangles, across);
        turned[neighbour] = sameWay ? 1 - turned[t] : turned[t];
        queue[end] = neighbour;
        end += 1;
      }
    }
    if (2 * others > end) for (let at = 0; at < end; at++) turned[queue[at]] = 1 - turned[queue[at]];
  }
  return turned;
}

/** The triangles with those marked turned over. */
export function withTurned(triangles: Uint32Array, turned: Uint8Array): Uint32Array {
  const made = triangles.slice();
  for (let t = 0; t < turned.length; t++) {
    if (turned[t] === 0) continue;
    made[3 * t + 1] = triangles[3 * t + 2];
    made[3 * t + 2] = triangles[3 * t + 1];
  }
  return made;
}

/**
 * For each side of the turned triangles the side across its edge, −1 where it is open. Sides of an edge with more than two
 * triangles are paired as they come; which of them meet does not change what a section encloses.
 */
export function pairedSides(triangles: Uint32Array, edges: Edges, turned: Uint8Array): Int32Array {
  const across = new Int32Array(triangles.length).fill(NONE);
  const forward: number[] = [];
  const backward: number[] = [];
  for (let edge = 0; edge < edges.first.length; edge++) {
    if (edges.count[edge] < 2) continue;
    forward.length = 0;
    backward.length = 0;
    let start = NONE;
    for (let given = edges.first[edge]; given !== NONE; given = edges.next[given]) {
      const side = turned[Math.floor(given / 3)] === 1 ? turnedSide(given) : given;
      if (start === NONE) start = triangles[side];
      (triangles[side] === start ? forward : backward).push(side);
    }
    for (let i = Math.min(forward.length, backward.length) - 1; i >= 0; i--) {
      across[forward[i]] = backward[i];
      across[backward[i]] = forward[i];
    }
  }
  return across;
}
