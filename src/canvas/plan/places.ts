/**
 * Where the handles stand on the canvas: flow and blade arrows outside the edge they come from, grips at both ends of
 * a zone line, the turn handle beyond the selected part. Screen px; always inside the canvas, so that they can be
 * reached at every zoom.
 */
import type { PartView } from '../../build/types';
import type { Box } from '../../geometry/types';
import type { Part, Platform } from '../../layout/types';
import type { Camera } from '../../store/types';
import type { Degrees, PlatePoint, Px, ScreenPoint } from '../../units/types';
import type { ZoneLine } from '../../zoning/types';
import { keepInside, RULER_BOTTOM_PX, RULER_LEFT_PX, toScreen, type Size } from '../camera';
import { edgePoint, lineEnds } from '../../export/plan/lineEnds';

/** Half of the smallest target (WCAG 2.2, 2.5.8: 24 px). */
const HALF_TARGET_PX: Px = 12;
const STREAM_OUT_PX: Px = 26;
const STREAM_ASIDE_PX: Px = 30;
const STREAM_HALF_PX: Px = 18;
const GRIP_OUT_PX: Px = 10;
const TURN_OUT_PX: Px = 26;

const radians = (angle: Degrees): number => (angle * Math.PI) / 180;

/** `side` +1 or −1 sets gas and blade apart where they come from the same edge. */
export const streamPlace = (
  towards: Degrees,
  side: 1 | -1,
  platform: Platform,
  camera: Camera,
  size: Size,
): ScreenPoint => {
  const from = radians(towards + 180);
  const edge = toScreen(edgePoint(towards + 180, platform), camera, size);
  const out = { x: Math.cos(from), y: Math.sin(from) };
  const outside = { left: edge.left + out.x * STREAM_OUT_PX, top: edge.top - out.y * STREAM_OUT_PX };
  // Kept inside before they are set apart, so that two arrows never stand on one another.
  const room = (share: number): Px => STREAM_HALF_PX + Math.abs(share) * STREAM_ASIDE_PX;
  const anchor = keepInside(outside, size, room(out.y), room(out.x));
  const aside = side * STREAM_ASIDE_PX;
  return { left: anchor.left - out.y * aside, top: anchor.top - out.x * aside };
};

/** On which side of an arrow its name stands: away from the middle of the edge. */
export const streamTagSide = (towards: Degrees, side: 1 | -1): 'above' | 'below' | 'left' | 'right' => {
  const from = radians(towards + 180);
  const alongX = Math.abs(Math.cos(from)) > 0.7;
  if (alongX) return Math.cos(from) * side > 0 ? 'above' : 'below';
  return Math.sin(from) * side > 0 ? 'left' : 'right';
};

/** The part of a segment that lies inside the canvas; null where none does (Liang and Barsky's clipping). */
const clipped = (a: ScreenPoint, b: ScreenPoint, size: Size): readonly [ScreenPoint, ScreenPoint] | null => {
  const [dx, dy] = [b.left - a.left, b.top - a.top];
  let [from, to] = [0, 1];
  const bounds: readonly (readonly [number, number])[] = [
    [-dx, a.left - RULER_LEFT_PX - HALF_TARGET_PX],
    [dx, size.width - HALF_TARGET_PX - a.left],
    [-dy, a.top - HALF_TARGET_PX],
    [dy, size.height - RULER_BOTTOM_PX - HALF_TARGET_PX - a.top],
  ];
  for (const [step, room] of bounds) {
    if (step === 0 && room < 0) return null;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  if (from > to) return null;
  const at = (t: number): ScreenPoint => ({ left: a.left + t * dx, top: a.top + t * dy });
  return [at(from), at(to)];
};

/** Both ends of a zone line, just outside the platform or at the canvas' edge; null where the line is out of sight. */
export const gripPlaces = (
  line: ZoneLine,
  platform: Platform,
  camera: Camera,
  size: Size,
): readonly [ScreenPoint, ScreenPoint] | null => {
  const ends = lineEnds(line, platform);
  if (!ends) return null;
  const [a, b] = ends.map((p) => toScreen(p, camera, size));
  const length = Math.hypot(b.left - a.left, b.top - a.top);
  const [ux, uy] = [((b.left - a.left) / length) * GRIP_OUT_PX, ((b.top - a.top) / length) * GRIP_OUT_PX];
  return clipped({ left: a.left - ux, top: a.top - uy }, { left: b.left + ux, top: b.top + uy }, size);
};

/** Furthest reach of a footprint from the part's origin along a direction. Millimetres. */
const reachAlong = (view: PartView, origin: PlatePoint, ux: number, uy: number): number => {
  let most = 0;
  for (const ring of view.footprint) {
    for (let i = 0; i < ring.length; i += 2) {
      most = Math.max(most, (ring[i] - origin.x) * ux + (ring[i + 1] - origin.y) * uy);
    }
  }
  return most;
};

export interface TurnPlace {
  /** Where the leader leaves the part. */
  readonly root: ScreenPoint;
  readonly handle: ScreenPoint;
}

/** Beyond the part's own rear side, so that it turns with the part. */
export const turnPlace = (part: Part, view: PartView, camera: Camera, size: Size): TurnPlace => {
  const angle = radians(part.turn_deg + 90);
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const origin = { x: part.at_mm[0], y: part.at_mm[1] };
  const reach = reachAlong(view, origin, ux, uy);
  const root = toScreen({ x: origin.x + ux * reach, y: origin.y + uy * reach }, camera, size);
  return { root, handle: { left: root.left + ux * TURN_OUT_PX, top: root.top - uy * TURN_OUT_PX } };
};

/** Behind the middle of a box around several parts: the handle that turns them together. */
export const groupTurnPlace = (box: Box, camera: Camera, size: Size): TurnPlace => {
  const root = toScreen({ x: (box.minX + box.maxX) / 2, y: box.maxY }, camera, size);
  return {
    root,
    handle: keepInside({ left: root.left, top: root.top - TURN_OUT_PX }, size, HALF_TARGET_PX),
  };
};
