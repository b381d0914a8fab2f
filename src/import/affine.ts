/**
 * Plane maps x' = a·x + c·y + e, y' = b·x + d·y + f, in the order of SVG's matrix(a b c d e f) (SVG 2, 8.3).
 */
import { cosSin } from '../geometry/region';

export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export const compose = (outer: Affine, inner: Affine): Affine => [
  outer[0] * inner[0] + outer[2] * inner[1],
  outer[1] * inner[0] + outer[3] * inner[1],
  outer[0] * inner[2] + outer[2] * inner[3],
  outer[1] * inner[2] + outer[3] * inner[3],
  outer[0] * inner[4] + outer[2] * inner[5] + outer[4],
  outer[1] * inner[4] + outer[3] * inner[5] + outer[5],
];

export const scaling = (sx: number, sy: number): Affine => [sx, 0, 0, sy, 0, 0];
export const translation = (x: number, y: number): Affine => [1, 0, 0, 1, x, y];

/** Counter-clockwise where y points up; exact for multiples of 90°. */
export function rotation(angle_deg: number): Affine {
  const [c, s] = cosSin(angle_deg);
  return [c, s, -s, c, 0, 0];
}

export const mapX = (m: Affine, x: number, y: number): number => m[0] * x + m[2] * y + m[4];
export const mapY = (m: Affine, x: number, y: number): number => m[1] * x + m[3] * y + m[5];
export const isFiniteMap = (m: Affine): boolean => m.every(Number.isFinite);
