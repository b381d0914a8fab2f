/** What the units of a mesh file are worth. Apart from the readers, so that the check page needs none of them. */
import type { MeshUnit } from './types';

/** Millimetres in one unit (ISO/IEC 25422 [memory]; the inch of 1959). */
export const MM_PER_MESH_UNIT: Readonly<Record<MeshUnit, number>> = {
  micron: 0.001,
  millimeter: 1,
  centimeter: 10,
  inch: 25.4,
  foot: 304.8,
  meter: 1000,
};
