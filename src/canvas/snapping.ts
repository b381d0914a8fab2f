/**
 * Steps that a drag keeps to, and the rounding of what is committed: lengths 1 µm, angles 0.001° (the file's own
 * resolution). Positions step by 0.1 mm unless Alt is held; turns are free to 0.1° and step by 15° with Shift.
 */
import type { Degrees, Mm, PlatePoint } from '../units/types';

export interface Modifiers {
  readonly shift: boolean;
  readonly alt: boolean;
  readonly ctrl: boolean;
}
export const NO_MODIFIERS: Modifiers = { shift: false, alt: false, ctrl: false };

const DRAG_STEP_MM: Mm = 0.1;
export const TURN_STEP_DEG: Degrees = 15;
const FINE_MM: Mm = 0.001;
const FREE_TURN_DEG: Degrees = 0.1;

/** Steps are written as parts of one (1/0.1 = 10), so that results are the nearest decimals. */
const toStep = (value: number, step: number): number => {
  const perUnit = Math.round(1 / step);
  return (perUnit > 1 ? Math.round(value * perUnit) / perUnit : Math.round(value / step) * step) + 0;
};

/** A length on the 0.1 mm steps, or with Alt on whole micrometres. */
export const snapMm = (value: Mm, held: Modifiers): Mm => toStep(value, held.alt ? FINE_MM : DRAG_STEP_MM);

export const snapPoint = (p: PlatePoint, held: Modifiers): PlatePoint => ({
  x: snapMm(p.x, held),
  y: snapMm(p.y, held),
});

/** An angle in 0 ≤ a < 360: 15° steps with Shift, else 0.1°. */
export const snapTurn = (angle: Degrees, held: Modifiers): Degrees => {
  const within = ((angle % 360) + 360) % 360;
  return toStep(within, held.shift ? TURN_STEP_DEG : FREE_TURN_DEG) % 360;
};

/** Direction from `from` to `to`, counter-clockwise from +x, 0 ≤ a < 360. */
export const directionOf = (from: PlatePoint, to: PlatePoint): Degrees => {
  const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return angle < 0 ? angle + 360 : angle;
};
