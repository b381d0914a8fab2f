/**
 * How much a mesh file may hold. The limits stop files made to exhaust memory; meshes of parts stay far below them.
 */

/** Bytes of the largest file that is read. */
export const MOST_BYTES = 100_000_000;
/** Bytes a 3MF may unpack to, all of its model parts together. */
export const MOST_UNPACKED_BYTES = 300_000_000;
/** Triangles of a file, repeated components written out. */
export const MOST_TRIANGLES = 2_000_000;
/** Solids of an STL, objects and build items of a 3MF. */
export const MOST_BODIES = 1_000;
/** Components within components. */
export const MOST_LEVELS = 32;
/** Components visited while objects are written out. */
export const MOST_COMPONENTS = 100_000;
/** Largest coordinate of a file, in its own unit. */
export const FURTHEST = 1e8;
/** Largest coordinate in millimetres: 100 m. */
export const FURTHEST_mm = 100_000;
/** Layers that a mesh is cut into. */
export const MOST_LAYERS = 100_000;
/** Points of all sections of one mesh. */
export const MOST_SECTION_POINTS = 10_000_000;

export const BYTES_PER_MB = 1_000_000;
