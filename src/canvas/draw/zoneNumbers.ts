/**
 * The lasers of each zone, by number: in the middle of a strip's end, in the outer corner of a quadrant, in the middle of
 * any other outline, in a row behind the platform where a laser's zone is all of it; inside the canvas while the zone is in
 * sight; and beside a part's name where it would cover it. Platform mm, screen px.
 */
import { area, boxOf, containsPoint } from '../../geometry/region';
import type { Box, Region } from '../../geometry/types';
import type { Platform } from '../../layout/types';
import type { Mm, PlatePoint, Px, ScreenPoint } from '../../units/types';
import type { Division, Zone } from '../../zoning/types';
import { keepInside, toPlate, toScreen } from '../camera';
import { laserStyle, type Theme } from '../palette';
import { boxAround, boxesMeet, clearPlace, type ScreenBox } from './clearPlace';
import { lasersOf } from './ground';
import { balloon, type Ctx, type Sheet } from './pen';

const INSET_PX: Px = 17;
/** Between the balloon and the edge of the zone. */
const GAP_PX: Px = 7;
const COLUMN_PX: Px = 32;
/** Half the balloon's width: letters of 12 px as they are at most. */
const halfWidth = (text: string): Px => Math.max(10, text.length * 3.8 + 5);

/** Centre of area of a region's first ring (the outer one). */
const middleOf = (region: Region): PlatePoint => {
  const ring = region[0];
  let [x, y, doubled] = [0, 0, 0];
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const cross = ring[i] * ring[j + 1] - ring[j] * ring[i + 1];
    x += (ring[i] + ring[j]) * cross;
    y += (ring[i + 1] + ring[j + 1]) * cross;
    doubled += cross;
  }
  return { x: x / (3 * doubled), y: y / (3 * doubled) };
};

/** −1: at the low edge, +1: at the high edge, 0: in the middle. */
const sideOf = (low: Mm, high: Mm, half: Mm, along: boolean, whole: -1 | 1): number => {
  if (low <= -half + 1e-6 && high >= half - 1e-6) return whole;
  return along ? 0 : Math.sign(low + high);
};

export interface NumberPlace {
  readonly at: PlatePoint;
  /** Away from which edge the number is set: −1, 0 or 1 along x and y. */
  readonly sideX: number;
  readonly sideY: number;
}

/** Where a zone's number belongs on the plate. */
export const zoneNumberPlace = (region: Region, { width_mm, depth_mm }: Platform): NumberPlace => {
  const box: Box = boxOf(region);
  const boxed = (box.maxX - box.minX) * (box.maxY - box.minY);
  if (Math.abs(area(region) / boxed - 1) > 1e-6) return { at: middleOf(region), sideX: 0, sideY: 0 };
  const [halfX, halfY] = [width_mm / 2, depth_mm / 2];
  const spansX = box.minX <= -halfX + 1e-6 && box.maxX >= halfX - 1e-6;
  const spansY = box.minY <= -halfY + 1e-6 && box.maxY >= halfY - 1e-6;
  const sideX = sideOf(box.minX, box.maxX, halfX, spansY, -1);
  const sideY = sideOf(box.minY, box.maxY, halfY, spansX, 1);
  const pick = (low: Mm, high: Mm, side: number) => (side < 0 ? low : side > 0 ? high : (low + high) / 2);
  return { at: { x: pick(box.minX, box.maxX, sideX), y: pick(box.minY, box.maxY, sideY) }, sideX, sideY };
};

const spansPlatform = (region: Region, { width_mm, depth_mm }: Platform): boolean =>
  Math.abs(area(region) / (width_mm * depth_mm) - 1) < 1e-6;

/**
 * Around the whole platform a laser's zone has no end of its own: the numbers stand in a row behind it, clear of the parts.
 * One zone of several lasers has one number, which stands in it.
 */
const standsBehind = ({ lasers, region }: Zone, platform: Platform): boolean =>
  lasersOf(lasers).length === 1 && spansPlatform(region, platform);

const onScreen = (zone: Zone, platform: Platform, sheet: Sheet, text: string): ScreenPoint => {
  const { at, sideX, sideY } = zoneNumberPlace(zone.region, platform);
  const edge = toScreen(at, sheet.camera, sheet.size);
  const out = standsBehind(zone, platform) ? -1 : 1;
  const place = {
    left: edge.left - sideX * Math.max(INSET_PX, halfWidth(text) + GAP_PX),
    top: edge.top + out * sideY * INSET_PX,
  };
  if (out < 0) return keepInside(place, sheet.size, INSET_PX);
  const seen = keepInside(place, sheet.size, INSET_PX);
  const { x, y } = toPlate(seen, sheet.camera, sheet.size);
  const box = boxOf(zone.region);
  return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY ? seen : place;
};

const words = (division: Division, lasers: readonly number[]): string =>
  lasers.map((i) => `${division.laserIds[i]}${(division.on >>> i) & 1 ? '' : ' off'}`).join(' ');

const HALF_HEIGHT_PX: Px = 11;

/** Around the whole platform: the next free place of the row. Elsewhere: the nearest place in the zone that is clear. */
const clearOf = (taken: readonly ScreenBox[], zone: Zone, platform: Platform, sheet: Sheet, text: string) => {
  const half = { width: halfWidth(text), height: HALF_HEIGHT_PX };
  let at = onScreen(zone, platform, sheet, text);
  if (standsBehind(zone, platform)) {
    while (taken.some((other) => boxesMeet(boxAround(at, half.width, half.height), other)))
      at = { left: at.left + COLUMN_PX, top: at.top };
    return at;
  }
  const inZone = (place: ScreenPoint): boolean => {
    const { x, y } = toPlate(place, sheet.camera, sheet.size);
    return containsPoint(zone.region, x, y);
  };
  return clearPlace(at, half, taken, inZone);
};

/**
 * Numbers of all zones, each clear of the others and of what must stay legible.
 * @param legible names of parts and numbers of problems
 */
export const drawZoneNumbers = (
  ctx: Ctx,
  sheet: Sheet,
  theme: Theme,
  division: Division,
  platform: Platform,
  legible: readonly ScreenBox[],
): void => {
  const taken = [...legible];
  for (const zone of division.zones) {
    const lasers = lasersOf(zone.lasers);
    if (zone.region.length === 0 || lasers.length === 0) continue;
    const text = words(division, lasers);
    const at = clearOf(taken, zone, platform, sheet, text);
    taken.push(boxAround(at, halfWidth(text), HALF_HEIGHT_PX));
    const style = laserStyle(lasers[0], theme);
    const on = lasers.some((i) => (division.on >>> i) & 1);
    const { paper, line, ink } = sheet.ground;
    // Of several lasers no colour is the zone's own.
    const tinted = on && lasers.length === 1;
    balloon(ctx, text, at, tinted ? style.tint : paper, tinted ? style.stroke : line, ink);
  }
};
