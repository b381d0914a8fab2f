/**
 * Sets of lasers as bit masks (bit k: laser k, at most 31 lasers) and the two rules every comparison follows: loads
 * are equal within 1e-9 of themselves, and of equal sets the smaller one comes first, then the one whose lasers
 * come first in index order.
 */

/** Two loads closer than this part of the larger one are the same load. */
export const RELATIVE_TIE = 1e-9;
/** A mask is a positive 32-bit integer. */
export const MOST_LASERS = 31;

/** The number of lasers in a set. */
export function sizeOf(mask: number): number {
  let v = mask - ((mask >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return (((v + (v >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

/** The lowest index in a set that is not empty. */
export const lowestOf = (mask: number): number => 31 - Math.clz32(mask & -mask);

/** All lasers 0 … laserCount−1. */
export const allOf = (laserCount: number): number => 2 ** laserCount - 1;

/** True where set a is reported before set b: the smaller first, then {0, 3} before {1, 2}. */
export function comesBefore(a: number, b: number): boolean {
  const difference = sizeOf(a) - sizeOf(b);
  if (difference !== 0) return difference < 0;
  const unlike = a ^ b;
  return (unlike & -unlike & a) !== 0;
}

/** Throws where a mask is empty or names a laser that does not exist: a programmer's error. */
export function requireMask(mask: number, laserCount: number): void {
  if (!(mask > 0 && mask >>> laserCount === 0))
    throw new RangeError(`set of lasers ${mask}, expected 1 to ${allOf(laserCount)} (${laserCount} lasers)`);
}

/** Throws where the number of lasers is not 0 … 31: a programmer's error. */
export function requireLaserCount(laserCount: number): void {
  if (!(Number.isInteger(laserCount) && laserCount >= 0 && laserCount <= MOST_LASERS))
    throw new RangeError(`${laserCount} lasers, expected 0 to ${MOST_LASERS}`);
}
