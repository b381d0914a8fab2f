/**
 * The lasers of each zone, by number: in the middle of a strip's end, in the outer corner of a quadrant, in the middle of
 * any other outline, in a row behind the platform where a laser's zone is all of it; inside the canvas while the zone is in
 * sight; and beside a part's name where it would cover it. Platform mm, screen px.
 */
import { boxAround, boxesMeet, clearPlace, type ScreenBox } from '../../export/plan/clearPlace';
import { standsBehind, zoneNumberPlace, zoneWords } from '../../export/plan/numberPlace';
import { boxOf, containsPoint } from '../../geometry/region';
import type { Platform } from '../../layout/types';
import type { Px, ScreenPoint } from '../../units/types';
import type { Division, Zone } from '../../zoning/types';
import { keepInside, toPlate, toScreen } from '../camera';
import { laserStyle, type Theme } from '../../export/plan/palette';
import { lasersOf } from './ground';
import { balloon, type Ctx, type Sheet } from './pen';

const INSET_PX: Px = 17;
/** Between the balloon and the edge of the zone. */
const GAP_PX: Px = 7;
const COLUMN_PX: Px = 32;
/** Half the balloon's width: letters of 12 px as they are at most. */
const halfWidth = (text: string): Px => Math.max(10, text.length * 3.8 + 5);

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
    const text = zoneWords(division, lasers);
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
