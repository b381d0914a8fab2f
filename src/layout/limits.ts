/**
 * How much a layout may hold and how far its lengths may go. The schema checks them on entry; operations stay within
 * them. Millimetres.
 */

/** No coordinate lies further out than this: 100 m. */
export const COORDINATE_LIMIT_mm = 100_000;
/** No platform, part or radius is larger than this: 10 m. */
export const SIZE_LIMIT_mm = 10_000;
/** Sets of lasers are bit masks of 31 bits. */
export const MOST_LASERS = 31;
export const MOST_PARTS = 5_000;
/** Slabs of a shape, outlines of one slab, points of one outline. */
export const MOST_SLABS = 10_000;
export const MOST_RINGS = 10_000;
export const MOST_RING_POINTS = 1_000_000;
