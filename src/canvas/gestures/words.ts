/**
 * Words beside the pointer: coordinates and sizes as they change, at a fixed number of decimals so that they do not
 * jump in width while dragging. Millimetres, degrees.
 */
import { withDecimalSign } from '../../language/index';
import { NARROW_SPACE } from '../../units/format';
import type { Degrees, Mm, PlatePoint } from '../../units/types';
import type { Modifiers } from '../snapping';

const signed = (value: number, decimals: number): string =>
  withDecimalSign((value + 0).toFixed(decimals)).replace(/^-/, '−');

const decimals = (held: Modifiers): number => (held.alt ? 3 : 1);

export const mmWords = (value: Mm, held: Modifiers): string =>
  `${signed(value, decimals(held))}${NARROW_SPACE}mm`;

export const placeWords = (p: PlatePoint, held: Modifiers): string =>
  `x ${signed(p.x, decimals(held))}  y ${signed(p.y, decimals(held))}${NARROW_SPACE}mm`;

export const sizeWords = (width: Mm, depth: Mm, held: Modifiers): string =>
  `${signed(width, decimals(held))} × ${signed(depth, decimals(held))}${NARROW_SPACE}mm`;

export const turnWords = (angle: Degrees): string => `${signed(angle, 1)}°`;
