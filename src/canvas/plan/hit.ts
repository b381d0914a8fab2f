/**
 * What stands under the pointer. A zone line is caught within 5 px, but a part that is already selected comes first;
 * within 10 px of the quadrants' crossing both lines are caught. Millimetres on the platform, tolerances in screen px.
 */
import type { Analysis, LayerFigures, PartView } from '../../build/types';
import { boxOfRing, containsPoint } from '../../geometry/region';
import { ringFromLayout } from '../../geometry/ring';
import type { Box } from '../../geometry/types';
import { layoutAt } from '../../layout/steps';
import type { DrawnZone, LayoutAt, Platform, PartId } from '../../layout/types';
import type { View } from '../../store/types';
import type { Mm, PlatePoint, Px } from '../../units/types';
import type { Division, ZoneLine } from '../../zoning/types';
import { shownStep } from '../../store/shown';
import { divisionAt } from '../layerAt';
import { footprintBox } from './items';

export type Target =
  | { readonly kind: 'lines'; readonly lines: readonly ZoneLine[] }
  | { readonly kind: 'part'; readonly part: PartId }
  | { readonly kind: 'zone'; readonly zone: number }
  | { readonly kind: 'empty' };

const LINE_PX: Px = 5;
const CROSSING_PX: Px = 10;
const SEAM_PX: Px = 6;
const SMALL_HOLE_PX: Px = 64;

const inBox = (box: Box, { x, y }: PlatePoint): boolean =>
  x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;

const holds = (view: PartView, at: PlatePoint): boolean =>
  inBox(footprintBox(view), at) && containsPoint(view.footprint, at.x, at.y);

/** True inside a hole so small on screen that a hand means the part around it. */
const inSmallHole = (view: PartView, at: PlatePoint, pxPerMm: number): boolean =>
  inBox(footprintBox(view), at) &&
  view.footprint.some((ring) => {
    const box = boxOfRing(ring);
    const small = Math.max(box.maxX - box.minX, box.maxY - box.minY) * pxPerMm < SMALL_HOLE_PX;
    return small && inBox(box, at) && containsPoint([ring], at.x, at.y);
  });

/**
 * The part under a point: a selected one before others, the one drawn last before the rest; the part around a bore
 * where nothing else is meant; null where none is.
 */
export const partAt = (
  analysis: Analysis,
  selection: readonly PartId[],
  at: PlatePoint,
  pxPerMm: number,
): PartId | null => {
  const inside = analysis.parts.filter((view) => holds(view, at));
  const under = inside.length > 0 ? inside : analysis.parts.filter((view) => inSmallHole(view, at, pxPerMm));
  return under.findLast(({ id }) => selection.includes(id))?.id ?? under.at(-1)?.id ?? null;
};

const onPlatform = ({ width_mm, depth_mm }: Platform, { x, y }: PlatePoint, slack: Mm): boolean =>
  Math.abs(x) <= width_mm / 2 + slack && Math.abs(y) <= depth_mm / 2 + slack;

/** Zone lines under a point: one, or both of the quadrants at their crossing. */
export const linesAt = (
  platform: Platform,
  { lines }: Division,
  at: PlatePoint,
  pxPerMm: number,
): readonly ZoneLine[] => {
  if (!onPlatform(platform, at, LINE_PX / pxPerMm)) return [];
  const near = (line: ZoneLine, px: Px) => Math.abs(line.nx * at.x + line.ny * at.y - line.c) * pxPerMm <= px;
  const quadrants = lines.length === 2 && lines.every((line) => line.key.kind !== 'strip');
  if (quadrants && lines.every((line) => near(line, CROSSING_PX))) return lines;
  const caught = lines.find((line) => near(line, LINE_PX));
  return caught ? [caught] : [];
};

const distanceToSegment = (p: PlatePoint, path: Float64Array, i: number): Mm => {
  const [x0, y0, x1, y1] = [path[i], path[i + 1], path[i + 2], path[i + 3]];
  const [dx, dy] = [x1 - x0, y1 - y0];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - x0) * dx + (p.y - y0) * dy) / square));
  return Math.hypot(p.x - x0 - t * dx, p.y - y0 - t * dy);
};

const distanceToPath = (path: Float64Array, p: PlatePoint): Mm => {
  let least = Infinity;
  for (let i = 0; i + 3 < path.length; i += 2) least = Math.min(least, distanceToSegment(p, path, i));
  return least;
};

/** Index of the nearest seam within 6 px; −1 where none is. */
export const seamAt = (layer: LayerFigures | null, at: PlatePoint, pxPerMm: number): number => {
  const distances = (layer?.seams ?? []).map((seam) => distanceToPath(seam.path, at) * pxPerMm);
  const least = Math.min(...distances);
  return least <= SEAM_PX ? distances.indexOf(least) : -1;
};

/** A drawn zone's rings as closed paths, kept with the zone. */
const zonePaths = new WeakMap<DrawnZone, readonly Float64Array[]>();
const pathsOf = (zone: DrawnZone): readonly Float64Array[] => {
  const kept =
    zonePaths.get(zone) ??
    zone.rings.map((ring) => {
      const points = ringFromLayout(ring);
      return Float64Array.of(...points, points[0]!, points[1]!);
    });
  zonePaths.set(zone, kept);
  return kept;
};

/** The drawn zone whose outline lies within 5 px: the chosen one before others, else the last; −1 where none does. */
const zoneAt = ({ zoning }: LayoutAt, chosen: number | null, at: PlatePoint, pxPerMm: number): number => {
  if (zoning.strategy !== 'drawn') return -1;
  const near = (zone: DrawnZone | undefined): boolean =>
    zone !== undefined && pathsOf(zone).some((path) => distanceToPath(path, at) * pxPerMm <= LINE_PX);
  if (chosen !== null && near(zoning.zones[chosen])) return chosen;
  return zoning.zones.findLastIndex(near);
};

/**
 * What a press with the free hand would take hold of: a selected part first, then zone lines and the outline of the
 * chosen zone, then other parts, then outlines of other zones.
 */
export const targetAt = (
  analysis: Analysis,
  { selection, activeZone, height_mm }: Pick<View, 'selection' | 'activeZone' | 'height_mm'>,
  at: PlatePoint,
  pxPerMm: number,
): Target => {
  const part = partAt(analysis, selection, at, pxPerMm);
  if (part !== null && selection.includes(part)) return { kind: 'part', part };
  const { layout } = analysis;
  const lines = linesAt(layout.machine.platform, divisionAt(analysis, height_mm), at, pxPerMm);
  if (lines.length > 0) return { kind: 'lines', lines };
  const zone = zoneAt(layoutAt(layout, shownStep(layout, height_mm)), activeZone, at, pxPerMm);
  if (zone >= 0 && (zone === activeZone || part === null)) return { kind: 'zone', zone };
  return part === null ? { kind: 'empty' } : { kind: 'part', part };
};
