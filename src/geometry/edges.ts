/**
 * The edges of rings in one flat array, for whoever compares edges rather than walks rings. Millimetres.
 */
import type { Ring } from './types';

/** Edges ring after ring, each from its vertex to the next one; the closing edge of a ring is its last. */
export interface Edges {
  /** x0, y0, x1, y1 per edge. */
  readonly ends: Float64Array;
  /** Index of the edge after it on the same ring. */
  readonly next: Int32Array;
}

/** All edges of some rings. */
export function edgesOf(rings: readonly Ring[]): Edges {
  let count = 0;
  for (const ring of rings) count += ring.length >> 1;
  const ends = new Float64Array(4 * count);
  const next = new Int32Array(count);
  let e = 0;
  for (const ring of rings) {
    const first = e;
    for (let i = 0; i < ring.length; i += 2, e++) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      ends[4 * e] = ring[i];
      ends[4 * e + 1] = ring[i + 1];
      ends[4 * e + 2] = ring[j];
      ends[4 * e + 3] = ring[j + 1];
      next[e] = j === 0 ? first : e + 1;
    }
  }
  return { ends, next };
}
