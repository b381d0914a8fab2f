/**
 * What the division makes of one section: fragments (section ∩ cell, connected) and the borders between them.
 * Millimetres, platform coordinates.
 */
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';
import type { LaserSet } from '../zoning/types';

/** A connected region of one section that the same set of lasers may expose. */
export interface Fragment {
  /** Lasers that may expose it; never 0. */
  readonly set: LaserSet;
  /** Index of the cell; −1 for a pinned part's own region. */
  readonly cell: number;
  readonly region: TaggedRegion;
  readonly box: Box;
  readonly area_mm2: Mm2;
  /** Hatch area inside it, before any seam overlap. */
  readonly hatch: Region;
  readonly hatch_mm2: Mm2;
  /** True outline inside it: cut edges do not count. */
  readonly outline_mm: Mm;
}
/** Where two fragments of one section touch: x0, y0, x1, y1 per segment. */
export interface Border {
  readonly a: number;
  readonly b: number;
  readonly segments: Float64Array;
  readonly length_mm: Mm;
}
export interface DividedSection {
  readonly fragments: readonly Fragment[];
  readonly borders: readonly Border[];
  readonly section: Region;
  readonly area_mm2: Mm2;
  /** Section area in no fragment. */
  readonly unassigned_mm2: Mm2;
}
