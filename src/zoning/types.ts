/**
 * What a strategy makes of the platform: zones as chosen, and cells, the regions that the same set of lasers may
 * expose once reach and switched-off lasers are taken into account. Millimetres, platform coordinates.
 */
import type { Box, HalfPlane, Region } from '../geometry/types';
import type { LaserId } from '../layout/types';
import type { Mm } from '../units/types';

/** A set of lasers: bit i stands for the machine's i-th laser (at most 31 lasers). */
export type LaserSet = number;

/** A region given to lasers by the strategy, before reach and switched-off lasers count. */
export interface Zone {
  /** Lasers that this zone is given to, switched off or not. */
  readonly lasers: LaserSet;
  /** Inside the platform, before reach. For drawing and for `holds a part whole`. */
  readonly region: Region;
}
/** A region that exactly the lasers of `set` may expose (on, in reach). Cells do not overlap; set is never 0. */
export interface Cell {
  readonly index: number;
  readonly set: LaserSet;
  readonly region: Region;
  readonly box: Box;
  /** The cell as an intersection of half-planes where it is convex and made by lines; null where it is not. */
  readonly convex: readonly HalfPlane[] | null;
}
/** A line a user can drag: the points with nx·x + ny·y = c. */
export interface ZoneLine {
  readonly key:
    { readonly kind: 'quadrantX' | 'quadrantY' } | { readonly kind: 'strip'; readonly index: number };
  readonly nx: number;
  readonly ny: number;
  readonly c: Mm;
}
/** What one step of the zoning makes of a machine's platform. */
export interface Division {
  readonly laserIds: readonly LaserId[];
  readonly platform: Region;
  /** Lasers that are on. */
  readonly on: LaserSet;
  readonly zones: readonly Zone[];
  readonly cells: readonly Cell[];
  readonly lines: readonly ZoneLine[];
  readonly sharedBand_mm: Mm;
  /** Per laser: platform ∩ reach (the whole platform where reach is null). */
  readonly reach: readonly Region[];
  /** Per laser: its zone ∩ its reach, empty where it is off. */
  readonly own: readonly Region[];
}
