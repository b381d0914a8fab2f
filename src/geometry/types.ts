/**
 * Shapes of the polygon engine. Millimetres; +x right, +y back.
 */
import type { Mm } from '../units/types';

/** A closed ring, flat x0, y0, x1, y1 …; the first point is not repeated at the end. */
export type Ring = Float64Array;
/** A clean area: outer rings counter-clockwise, holes clockwise, nothing crosses, so Σ signed ring areas = area. */
export type Region = readonly Ring[];

/** A rectangle along the axes; inside out (min > max) where it holds nothing. */
export interface Box {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}
/** The half-plane nx·x + ny·y ≤ c; (nx, ny) has length 1. */
export interface HalfPlane {
  readonly nx: number;
  readonly ny: number;
  readonly c: Mm;
}
/** A region that remembers which edges were made by cutting: cut[i][k] = 1 where edge k → k+1 of ring i is a cut edge. */
export interface TaggedRegion {
  readonly rings: Region;
  readonly cut: readonly Uint8Array[];
}
