/**
 * Where a zone's number stands on the plate and what it says: in the middle of a strip's end, in the outer corner of a
 * quadrant, in the middle of any other outline, behind the platform where a laser's zone is all of it. Platform mm.
 */
import { area, boxOf } from '../../geometry/region';
import type { Box, Region } from '../../geometry/types';
import type { Platform } from '../../layout/types';
import type { Mm, PlatePoint } from '../../units/types';
import { membersOf } from '../../zoning/lasers';
import type { Division, Zone } from '../../zoning/types';

/** Centre of area of a region's first ring (the outer one). */
export const middleOf = (region: Region): PlatePoint => {
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
export const standsBehind = ({ lasers, region }: Zone, platform: Platform): boolean =>
  membersOf(lasers).length === 1 && spansPlatform(region, platform);

/** The lasers of a zone as its number says them; those that are off say so. */
export const zoneWords = (division: Division, lasers: readonly number[]): string =>
  lasers.map((i) => `${division.laserIds[i]}${(division.on >>> i) & 1 ? '' : ' off'}`).join(' ');
