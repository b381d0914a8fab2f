/**
 * Numbers of the zones in a picture of the plan, each clear of the names of the parts and of the other numbers.
 * Platform mm in, picture px out.
 */
import { containsPoint } from '../../geometry/region';
import type { Px, ScreenPoint } from '../../units/types';
import { has, membersOf } from '../../zoning/lasers';
import type { Division, Zone } from '../../zoning/types';
import { boxAround, boxesMeet, clearPlace, type ScreenBox } from './clearPlace';
import { toPicture, type Frame } from './frame';
import type { PlanInk } from './ink';
import { box, write } from './marks';
import { standsBehind, zoneNumberPlace, zoneWords } from './numberPlace';
import { THIN_PX } from './palette';
import type { PlanPicture } from './planPicture';

const INSET_PX: Px = 17;
/** Between the balloon and the edge of the zone. */
const GAP_PX: Px = 7;
const COLUMN_PX: Px = 32;
const HALF_HEIGHT_PX: Px = 10;
/** Half the balloon's width: letters of 12 px as they are at most. */
const halfWidth = (text: string): Px => Math.max(10, text.length * 3.8 + 5);

/** A balloon with words, as drawings number what they point to. */
export function balloon(text: string, at: ScreenPoint, fill: string, stroke: string, ink: string): string {
  const half = halfWidth(text);
  const frame = box(
    at.left - half,
    at.top - HALF_HEIGHT_PX,
    2 * half,
    2 * HALF_HEIGHT_PX,
    fill,
    { colour: stroke, width_px: THIN_PX },
    HALF_HEIGHT_PX,
  );
  return frame + write(text, at, { colour: ink, bold: true });
}

interface Standing {
  readonly frame: Frame;
  readonly picture: PlanPicture;
  /** There is room behind the platform. */
  readonly roomBehind: boolean;
}

function wanted({ frame, picture, roomBehind }: Standing, zone: Zone, text: string) {
  const { platform } = picture.layout.machine;
  const { at, sideX, sideY } = zoneNumberPlace(zone.region, platform);
  const edge = toPicture(frame, at.x, at.y);
  const behind = roomBehind && standsBehind(zone, platform);
  const place = {
    left: edge.left - sideX * Math.max(INSET_PX, halfWidth(text) + GAP_PX),
    top: edge.top + (behind ? -1 : 1) * sideY * INSET_PX,
  };
  return { place, behind };
}

function placed(standing: Standing, zone: Zone, text: string, taken: readonly ScreenBox[]): ScreenPoint {
  const { place, behind } = wanted(standing, zone, text);
  const half = { width: halfWidth(text), height: HALF_HEIGHT_PX + 1 };
  if (!behind) {
    const { frame } = standing;
    const centre = toPicture(frame, 0, 0);
    const inZone = ({ left, top }: ScreenPoint): boolean =>
      containsPoint(zone.region, (left - centre.left) / frame.pxPerMm, (centre.top - top) / frame.pxPerMm);
    return clearPlace(place, half, taken, inZone);
  }
  let at = place;
  while (taken.some((other) => boxesMeet(boxAround(at, half.width, half.height), other)))
    at = { left: at.left + COLUMN_PX, top: at.top };
  return at;
}

/** On the tint of its laser where it has only one and that one is on; else on paper. */
function numberMark(ink: PlanInk, division: Division, zone: Zone, text: string, at: ScreenPoint): string {
  const members = membersOf(zone.lasers);
  const { paper, line, ink: strong } = ink.ground;
  const own = members.length === 1 && has(division.on, members[0]) ? ink.laser(members[0]) : null;
  return balloon(text, at, own?.tint ?? paper, own?.stroke ?? line, strong);
}

/** The numbers of all zones. `legible`: what they must not cover. */
export function zoneNumberMarks(
  frame: Frame,
  ink: PlanInk,
  picture: PlanPicture,
  legible: readonly ScreenBox[],
  roomBehind: boolean,
): string[] {
  const taken = [...legible];
  const { division } = picture;
  return division.zones.flatMap((zone) => {
    const members = membersOf(zone.lasers);
    if (zone.region.length === 0 || members.length === 0) return [];
    const text = zoneWords(division, members);
    const at = placed({ frame, picture, roomBehind }, zone, text, taken);
    taken.push(boxAround(at, halfWidth(text), HALF_HEIGHT_PX + 1));
    return [numberMark(ink, division, zone, text, at)];
  });
}
