/**
 * What the division makes of one section: fragments (section ∩ cell, connected) and the borders between them.
 * Figures are there at once, outlines when somebody looks. Millimetres, platform coordinates.
 */
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';
import type { LaserSet } from '../zoning/types';
import type { IslandSweep, Keeps, PlacedIsland } from './placed';

/** A fragment that is a slice of an island: low ≤ n·p ≤ high in the island's own coordinates, ±∞ at its ends. */
export interface Between {
  readonly island: PlacedIsland;
  readonly sweep: IslandSweep;
  /** n·p on the platform less n·p on the island. */
  readonly offset: Mm;
  readonly low: Mm;
  readonly high: Mm;
}
/** A connected region of one section that the same set of lasers may expose. */
export interface Fragment {
  /** Lasers that may expose it; never 0. */
  readonly set: LaserSet;
  /** Index of the cell; −1 for a pinned part's own region. */
  readonly cell: number;
  /** Holds the fragment; may be larger. */
  readonly box: Box;
  readonly area_mm2: Mm2;
  /** Hatch area inside it, before any seam overlap. */
  readonly hatch_mm2: Mm2;
  /** True outline inside it: cut edges do not count. */
  readonly outline_mm: Mm;
  readonly region: TaggedRegion;
  /** The rings of `region` themselves where there is no inset. */
  readonly hatch: Region;
  /** Where figures alone made it; null otherwise. */
  readonly between: Between | null;
}
/** A line that a border lies on: nx·x + ny·y = c. */
export interface BorderLine {
  readonly nx: number;
  readonly ny: number;
  readonly c: Mm;
}
/** Where two fragments of one section touch. */
export interface Border {
  readonly a: number;
  readonly b: number;
  readonly length_mm: Mm;
  /** x0, y0, x1, y1 per segment. */
  readonly segments: Float64Array;
  /** The line it lies on where figures alone made it; null otherwise. */
  readonly line: BorderLine | null;
}
/** The section of one part in one layer, divided; borders count within `fragments`. */
export interface DividedSection extends Keeps {
  readonly fragments: readonly Fragment[];
  readonly borders: readonly Border[];
  readonly section: Region;
  readonly area_mm2: Mm2;
  /** Section area in no fragment. */
  readonly unassigned_mm2: Mm2;
}
