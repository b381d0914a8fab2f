/**
 * Which triangles share an edge. A side is 3·t + k: from corner k of triangle t to the next corner. All sides between the
 * same two points make one edge.
 */

export interface Edges {
  /** For each side its edge. */
  readonly edgeOf: Int32Array;
  /** For each edge one of its sides, and how many it has. */
  readonly first: Int32Array;
  readonly count: Uint16Array;
  /** For each side the next one of the same edge; −1 after the last. */
  readonly next: Int32Array;
}

export const NONE = -1;
/** More sides than this are not counted apart. */
const MOST_COUNTED = 65_535;

/** The side after this one around its triangle. */
export const sideAfter = (side: number): number => (side % 3 === 2 ? side - 2 : side + 1);
export const from = (triangles: Uint32Array, side: number): number => triangles[side];
export const to = (triangles: Uint32Array, side: number): number => triangles[sideAfter(side)];

/** The edges of triangles (three different corners each), by a hash table of point pairs. */
export function edgesOf(triangles: Uint32Array): Edges {
  const sides = triangles.length;
  const slots = new Int32Array(2 ** Math.ceil(Math.log2(2 * sides + 2))).fill(NONE);
  const mask = slots.length - 1;
  const edgeOf = new Int32Array(sides);
  const next = new Int32Array(sides).fill(NONE);
  const first = new Int32Array(sides);
  const count = new Uint16Array(sides);
  let edges = 0;
  for (let side = 0; side < sides; side++) {
    const a = triangles[side];
    const b = triangles[sideAfter(side)];
    const low = a < b ? a : b;
    const high = a < b ? b : a;
    let slot = (Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b)) >>> 0;
    slot = (slot ^ (slot >>> 15)) & mask;
    for (; slots[slot] !== NONE; slot = (slot + 1) & mask) {
      const other = first[slots[slot]];
      const c = triangles[other];
      const d = triangles[sideAfter(other)];
      if ((c === low && d === high) || (c === high && d === low)) break;
    }
    if (slots[slot] === NONE) {
      slots[slot] = edges;
      edges += 1;
    } else next[side] = first[slots[slot]];
    const edge = slots[slot];
    first[edge] = side;
    edgeOf[side] = edge;
    if (count[edge] < MOST_COUNTED) count[edge] += 1;
  }
  return { edgeOf, next, first: first.subarray(0, edges), count: count.subarray(0, edges) };
}
