/**
 * Which edges of a piece are true outline and which were made by cutting, for pieces that come out of the polygon
 * engine (half-plane cuts tag their own). Millimetres.
 */
import type { Mm } from '../units/types';
import { EdgeIndex } from './edgeIndex';
import type { Region, Ring, TaggedRegion } from './types';

/** A few units of the polygon engine's grid on the largest platforms. */
export const OUTLINE_TOLERANCE_MM: Mm = 5e-5;
/** Places along an edge that have to lie on the outline for the edge to count as outline. */
const PLACES = [0.29, 0.5, 0.73];

/**
 * The piece with its edges tagged: 1 (cut) unless the edge lies on the original's outline. Edges are first divided at
 * the original's vertices, since a cut may continue an outline edge in its line.
 */
export function tagCutEdges(piece: Region, original: Region): TaggedRegion {
  const index = new EdgeIndex(original);
  const rings: Ring[] = [];
  const cut: Uint8Array[] = [];
  for (const ring of piece) {
    const divided = divideAtVertices(ring, index);
    rings.push(divided);
    cut.push(tagsOf(divided, index));
  }
  return { rings, cut };
}

function tagsOf(ring: Ring, index: EdgeIndex): Uint8Array {
  const n = ring.length;
  const tags = new Uint8Array(n >> 1);
  for (let i = 0; i < n; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    tags[i >> 1] = onOutline(ring, i, j, index) ? 0 : 1;
  }
  return tags;
}

const onOutline = (ring: Ring, i: number, j: number, index: EdgeIndex): boolean =>
  PLACES.every((s) =>
    index.passes(
      ring[i] + s * (ring[j] - ring[i]),
      ring[i + 1] + s * (ring[j + 1] - ring[i + 1]),
      OUTLINE_TOLERANCE_MM,
    ),
  );

function divideAtVertices(ring: Ring, index: EdgeIndex): Ring {
  const out: number[] = [];
  const n = ring.length;
  for (let i = 0; i < n; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    out.push(ring[i], ring[i + 1]);
    for (const place of index.verticesAlong(ring[i], ring[i + 1], ring[j], ring[j + 1], OUTLINE_TOLERANCE_MM))
      out.push(place.x, place.y);
  }
  return out.length === n ? ring : Float64Array.from(out);
}
