/**
 * Section of a placed part at a height. A middle exactly on a slab's top belongs to the slab above. Millimetres,
 * platform coordinates.
 */
import type { Region } from '../geometry/types';
import type { Mm } from '../units/types';
import type { PartView } from './types';

const EMPTY: Region = [];

/** A middle exactly on a slab's top, but for a rounding error, belongs to the slab above. */
const ROUNDING_MM = 1e-9;

/** Section of a part at a layer's middle; empty above the part. */
export const sectionAt = ({ sections }: PartView, middle_mm: Mm): Region => {
  let [low, high] = [0, sections.length];
  while (low < high) {
    const half = (low + high) >> 1;
    if (middle_mm + ROUNDING_MM < sections[half]!.to_mm) high = half;
    else low = half + 1;
  }
  return sections[low]?.section ?? EMPTY;
};
