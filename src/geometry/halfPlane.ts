/**
 * Cutting regions by straight lines. Millimetres; a half-plane is nx·x + ny·y ≤ c and the line's own coordinate t runs
 * along (−ny, nx), with the inside on its left.
 *
 * How a side is built: chains of vertices strictly on that side are kept; where a chain leaves the side it goes along
 * the line to the chain that comes in next. Crossings are those of a line an infinitely small step into the side, in
 * order along it; between a leaving crossing and the next entering one lies material. So vertices on the line, tips
 * touching it and edges along it need no special case, and rings come out separated as the material is.
 * Vertices nearer to the line than SNAP_MM count as on it.
 */
import { LineCrossings } from './lineCrossings';
import type { HalfPlane, Region, TaggedRegion } from './types';

export { areaInConvex, planesOfBox } from './convexArea';
export { chords } from './chords';

const NOTHING: TaggedRegion = { rings: [], cut: [] };

/** A region none of whose edges were made by cutting. */
export function untagged(region: Region): TaggedRegion {
  return { rings: region, cut: region.map((ring) => new Uint8Array(ring.length >> 1)) };
}

const crossings = new LineCrossings();

/**
 * Both sides of a cut. New edges along the line are tagged 1 on both sides; an outline edge that already lay on the line
 * keeps its tag on the side its material is on and appears on no other. A side that is everything is the given object
 * itself.
 */
export function cutByLine(t: TaggedRegion, h: HalfPlane): { inside: TaggedRegion; outside: TaggedRegion } {
  const where = crossings.measure(t, h);
  if (where === 'inside') return { inside: t, outside: NOTHING };
  if (where === 'outside') return { inside: NOTHING, outside: t };
  return { inside: crossings.side(t, 1), outside: crossings.side(t, -1) };
}

/** The part of a region inside one half-plane. */
function clipToHalfPlane(t: TaggedRegion, h: HalfPlane): TaggedRegion {
  const where = crossings.measure(t, h);
  if (where === 'inside') return t;
  return where === 'outside' ? NOTHING : crossings.side(t, 1);
}

/** The part of a region inside every one of the half-planes. */
export function clipToConvex(t: TaggedRegion, planes: readonly HalfPlane[]): TaggedRegion {
  let rest = t;
  for (const plane of planes) {
    rest = clipToHalfPlane(rest, plane);
    if (rest.rings.length === 0) return NOTHING;
  }
  return rest;
}
