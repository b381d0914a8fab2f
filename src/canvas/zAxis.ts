/**
 * The upward axis that elevation and time per layer share: same heights at the same px in both, so that one height line
 * runs through them. Millimetres above the platform; CSS px from the top of the view.
 */
import type { Mm, Px } from '../units/types';

/** Above the highest part, and below the platform for the other axis and a line of words. */
const Z_TOP_PX: Px = 18;
const Z_BOTTOM_PX: Px = 44;
/** Left of the z axis: its numbers. */
export const Z_LEFT_PX: Px = 40;

export interface ZAxis {
  readonly top_mm: Mm;
  readonly pxPerMm: number;
  toPx(z: Mm): Px;
  toMm(top: Px): Mm;
}

/** From the platform to the top of the build; an empty build shows 10 mm. */
export const zAxis = (buildTop_mm: Mm, height: Px): ZAxis => {
  const top_mm = buildTop_mm > 0 ? buildTop_mm : 10;
  const base = height - Z_BOTTOM_PX;
  const pxPerMm = Math.max(1, base - Z_TOP_PX) / top_mm;
  return {
    top_mm,
    pxPerMm,
    toPx: (z) => base - z * pxPerMm,
    toMm: (top) => Math.min(top_mm, Math.max(0, (base - top) / pxPerMm)),
  };
};
