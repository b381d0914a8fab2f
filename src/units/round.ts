/**
 * How lengths and angles are kept: lengths in whole micrometres, angles in whole thousandths of a degree within one
 * turn. Everything that enters a layout passes through here once, so a file or link that carries the printed decimal
 * numbers loses nothing.
 */
import type { Degrees, Mm } from './types';

const STEPS_PER_MM = 1000;
const STEPS_PER_DEG = 1000;
const TURN_deg = 360;

/** Nearest multiple of 1/steps, halves away from zero; never −0. */
const roundTo = (value: number, steps: number): number =>
  (Math.sign(value) * Math.round(Math.abs(value) * steps)) / steps + 0;

/** Millimetres to the nearest micrometre; never −0. */
export const roundMm = (value: Mm): Mm => roundTo(value, STEPS_PER_MM);

/** Degrees to the nearest 0.001, brought to 0 ≤ a < 360. */
export function roundDeg(value: Degrees): Degrees {
  const steps = Math.round((value % TURN_deg) * STEPS_PER_DEG);
  const turn = TURN_deg * STEPS_PER_DEG;
  return (((steps % turn) + turn) % turn) / STEPS_PER_DEG;
}
