/**
 * Outlines that drawings are made of, as points: rounded rectangles, slots, rotors. Millimetres, counter-clockwise,
 * every point rounded to 1 µm. An arc of radius r keeps its chords within CHORD_ERROR_mm of it: a step of angle a
 * leaves r·(1 − cos(a/2)).
 */
import { roundMm } from '../units/round';
import type { Mm, Radians } from '../units/types';
import type { Circle, Outline, Point } from './types';

const CHORD_ERROR_mm = 0.005;

const point = (x: Mm, y: Mm): Point => [roundMm(x), roundMm(y)];
const polar = (radius: Mm, angle: Radians): Point =>
  point(radius * Math.cos(angle), radius * Math.sin(angle));

/** A circle, kept as one. */
export const circle = (x: Mm, y: Mm, radius: Mm): Circle => ({ circle_mm: [x, y, radius] });

/** Points of an arc about (x, y), both ends included. */
export function arc(x: Mm, y: Mm, radius: Mm, from: Radians, to: Radians): Outline {
  const step = 2 * Math.acos(1 - CHORD_ERROR_mm / radius);
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step));
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / count;
    return point(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  });
}

/** A rectangle about (x, y) whose corners are rounded by `radius`. */
export function roundedRectangle(x: Mm, y: Mm, width: Mm, depth: Mm, radius: Mm): Outline {
  const right = width / 2 - radius;
  const back = depth / 2 - radius;
  const corners: readonly Point[] = [
    [right, back],
    [-right, back],
    [-right, -back],
    [right, -back],
  ];
  return corners.flatMap(([cx, cy], quarter) => {
    const from = (quarter * Math.PI) / 2;
    return arc(x + cx, y + cy, radius, from, from + Math.PI / 2);
  });
}

/** A slot along x with round ends: `width` over all, `depth` across. */
export function slot(x: Mm, y: Mm, width: Mm, depth: Mm): Outline {
  const radius = depth / 2;
  const reach = width / 2 - radius;
  return [
    ...arc(x + reach, y, radius, -Math.PI / 2, Math.PI / 2),
    ...arc(x - reach, y, radius, Math.PI / 2, (3 * Math.PI) / 2),
  ];
}

export interface Rotor {
  readonly hubRadius: Mm;
  readonly tipRadius: Mm;
  readonly blades: number;
  readonly thickness: Mm;
  /** Angle by which a blade's tip trails its root. */
  readonly sweep: Radians;
}
/** Length of a blade's straight pieces, measured along the radius. */
const BLADE_STEP_mm = 1;

/** One side of a blade from hub to tip; `side` is −1 or +1. The middle line turns with the radius. */
function bladeSide(rotor: Rotor, root: Radians, side: -1 | 1): Outline {
  const span = rotor.tipRadius - rotor.hubRadius;
  const count = Math.ceil(span / BLADE_STEP_mm);
  return Array.from({ length: count + 1 }, (_, i) => {
    const radius = rotor.hubRadius + (span * i) / count;
    const middle = root - (rotor.sweep * i) / count;
    return polar(radius, middle + side * Math.asin(rotor.thickness / 2 / radius));
  });
}

/** Hub and swept blades as one outline. */
export function rotor(of: Rotor): Outline {
  const pitch = (2 * Math.PI) / of.blades;
  const half = Math.asin(of.thickness / 2 / of.hubRadius);
  return Array.from({ length: of.blades }, (_, i) => {
    const root = i * pitch;
    const hub = arc(0, 0, of.hubRadius, root + half, root + pitch - half).slice(1, -1);
    return [...bladeSide(of, root, -1), ...[...bladeSide(of, root, 1)].reverse(), ...hub];
  }).flat();
}

/** `count` circles evenly spread on a circle about the origin, the first at `from`. */
export const boltCircle = (
  pitchRadius: Mm,
  radius: Mm,
  count: number,
  from: Radians = 0,
): readonly Circle[] =>
  Array.from({ length: count }, (_, i) => {
    const [x, y] = polar(pitchRadius, from + (2 * Math.PI * i) / count);
    return circle(x, y, radius);
  });
