/**
 * Transforms of ISO/IEC 25422: twelve numbers m00 m01 m02 m10 … m32, a point is a row in front of them:
 * x' = x·m00 + y·m10 + z·m20 + m30 and so on (3MF Core Specification, 3.3 "3D Matrices" [memory]).
 */
import { roundDeg } from '../../../units/round';
import type { Degrees } from '../../../units/types';

export type Transform = readonly number[];

export const UNMOVED: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** The transform of an attribute; null where it is not twelve numbers or flattens space. */
export function readTransform(text: string | undefined): Transform | null {
  if (text === undefined) return UNMOVED;
  const numbers = text.trim().split(/\s+/).map(readNumber);
  const sound = numbers.length === 12 && numbers.every(Number.isFinite);
  return sound && Number.isFinite(determinant(numbers)) && determinant(numbers) !== 0 ? numbers : null;
}

/** A decimal number as XML Schema has it; NaN for anything else, "" and "0x10" too. */
export const readNumber = (text: string | undefined): number =>
  text !== undefined && /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(text) ? Number(text) : NaN;

/** First `inner`, then `outer`. */
export function compose(inner: Transform, outer: Transform): Transform {
  const made: number[] = [];
  for (let row = 0; row < 4; row++)
    for (let column = 0; column < 3; column++) {
      let sum = row === 3 ? outer[9 + column] : 0;
      for (let k = 0; k < 3; k++) sum += inner[3 * row + k] * outer[3 * k + column];
      made.push(sum);
    }
  return made;
}

/**
 * What turning about z after a transform leaves as it is, as text: how it maps to z, the lengths and angles it gives to
 * what it maps to x and y, and whether it mirrors.
 */
export function exceptTurn(m: Transform): string {
  const flat = (i: number, j: number): number => m[3 * i] * m[3 * j] + m[3 * i + 1] * m[3 * j + 1];
  const kept = [m[2], m[5], m[8], flat(0, 0), flat(1, 1), flat(2, 2), flat(0, 1), flat(0, 2), flat(1, 2)];
  // 0 and −0 are one number
  return [...kept, Math.sign(determinant(m))]
    .map((value) => (value + 0).toFixed(9).replace(/^-(?=[0.]+$)/, ''))
    .join(' ');
}

/** The turn about z that leads from one transform to another that is the same but for it; counter-clockwise. */
export function turnBetween(from: Transform, to: Transform): Degrees {
  let [cos, sin] = [0, 0];
  for (let row = 0; row < 3; row++) {
    const [ax, ay, bx, by] = [from[3 * row], from[3 * row + 1], to[3 * row], to[3 * row + 1]];
    cos += ax * bx + ay * by;
    sin += ax * by - ay * bx;
  }
  return roundDeg((Math.atan2(sin, cos) * 180) / Math.PI);
}

/** Negative where the transform mirrors, so that triangles turn inside out. */
export const determinant = ([a, b, c, d, e, f, g, h, i]: Transform): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

/** One coordinate (0 x, 1 y, 2 z) of a moved point. */
export const moved = (m: Transform, axis: number, x: number, y: number, z: number): number =>
  x * m[axis] + y * m[3 + axis] + z * m[6 + axis] + m[9 + axis];
