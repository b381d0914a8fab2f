/**
 * Turning what is seen: a further turn about an axis of the platform, put back into the three angles that a mesh is turned
 * by (about x, then y, then z; Rz·Ry·Rx). Degrees counter-clockwise seen against the axis. Where y is ±90° only x and z
 * together are told: z is 0 then. Mathematics (Euler angles).
 */
import { roundDeg } from '../../units/round';
import type { Degrees } from '../../units/types';

export interface Turns {
  readonly turnX_deg: Degrees;
  readonly turnY_deg: Degrees;
  readonly turnZ_deg: Degrees;
}
export type Axis = 'x' | 'y' | 'z';
export const UNTURNED: Turns = { turnX_deg: 0, turnY_deg: 0, turnZ_deg: 0 };

type Matrix = readonly (readonly number[])[];

const RADIANS = Math.PI / 180;

function about(axis: Axis, deg: Degrees): Matrix {
  const [c, s] = [Math.cos(deg * RADIANS), Math.sin(deg * RADIANS)];
  if (axis === 'x') return [[1, 0, 0], [0, c, -s], [0, s, c]]; // prettier-ignore
  if (axis === 'y') return [[c, 0, s], [0, 1, 0], [-s, 0, c]]; // prettier-ignore
  return [[c, -s, 0], [s, c, 0], [0, 0, 1]]; // prettier-ignore
}

const times = (a: Matrix, b: Matrix): Matrix =>
  a.map((row) => [0, 1, 2].map((k) => row.reduce((sum, value, i) => sum + value * b[i]![k]!, 0)));

const matrixOf = ({ turnX_deg, turnY_deg, turnZ_deg }: Turns): Matrix =>
  times(about('z', turnZ_deg), times(about('y', turnY_deg), about('x', turnX_deg)));

/** Below this the cosine of y is a rounding error: half of 0.001 degrees. */
const UPRIGHT = 1e-5;

function anglesOf(m: Matrix): Turns {
  const at = (row: number, column: number): number => m[row]![column]!;
  const cosY = Math.hypot(at(0, 0), at(1, 0));
  const angle = (sine: number, cosine: number): Degrees => roundDeg(Math.atan2(sine, cosine) / RADIANS);
  const turnY_deg = angle(-at(2, 0), cosY);
  if (cosY < UPRIGHT) return { turnX_deg: angle(-at(1, 2), at(1, 1)), turnY_deg, turnZ_deg: 0 };
  return { turnX_deg: angle(at(2, 1), at(2, 2)), turnY_deg, turnZ_deg: angle(at(1, 0), at(0, 0)) };
}

/** `turns`, and after them one more about an axis of the platform. */
export const turnedFurther = (turns: Turns, axis: Axis, by_deg: Degrees): Turns =>
  anglesOf(times(about(axis, by_deg), matrixOf(turns)));
