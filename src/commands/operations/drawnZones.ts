/**
 * Reshaping drawn zones by hand: a whole zone moved, its corners moved, added and taken away. Platform millimetres. What
 * would leave a zone without area, or out of a layout's range, leaves the layout as it is.
 */
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import { differentPoints, enclosesArea } from '../../layout/outlineChecks';
import type { DrawnZone, LayoutAt, LayoutRing, Outline, Point } from '../../layout/types';
import type { Mm } from '../../units/types';
import { allFinite, roundPoint, roundRing, withZoning } from './edit';

/** One corner of a drawn zone: indices of the zone, of its ring, of the ring's point. */
export interface ZoneCorner {
  readonly zone: number;
  readonly ring: number;
  readonly corner: number;
}

/** The drawn zones of a plate; none where it is divided otherwise. */
export const drawnZones = ({ zoning }: LayoutAt): readonly DrawnZone[] =>
  zoning.strategy === 'drawn' ? zoning.zones : [];

const inRange = (values: readonly number[]): boolean =>
  allFinite(...values) && values.every((value) => Math.abs(value) <= COORDINATE_LIMIT_mm);

function sound(ring: LayoutRing): boolean {
  if ('circle_mm' in ring) return inRange(ring.circle_mm) && ring.circle_mm[2] > 0;
  return inRange(ring.flat()) && differentPoints(ring) >= 3 && enclosesArea(ring);
}

/** The layout with other zones where every changed ring is sound. */
function withZones(layout: LayoutAt, zones: readonly DrawnZone[]): LayoutAt {
  const before = drawnZones(layout);
  const changed = zones.flatMap((zone, i) => (zone === before[i] ? [] : zone.rings));
  const ok = changed.length > 0 && changed.every(sound);
  return ok ? withZoning(layout, { strategy: 'drawn', zones }) : layout;
}

const withRing = (zone: DrawnZone, ring: number, outline: LayoutRing): DrawnZone => ({
  ...zone,
  rings: zone.rings.with(ring, outline),
});

/** The outline a corner belongs to; null where there is none, or a circle. */
export function outlineOf(layout: LayoutAt, { zone, ring }: Omit<ZoneCorner, 'corner'>): Outline | null {
  const found = drawnZones(layout)[zone]?.rings[ring];
  return found === undefined || 'circle_mm' in found ? null : found;
}

/** Moves a zone by (dx, dy). */
export function moveDrawnZone(layout: LayoutAt, index: number, dx_mm: Mm, dy_mm: Mm): LayoutAt {
  const zone = drawnZones(layout)[index];
  if (!zone || (dx_mm === 0 && dy_mm === 0)) return layout;
  const moved = ([x, y]: Point): Point => [x + dx_mm, y + dy_mm];
  const rings = zone.rings.map((ring): LayoutRing => {
    if (!('circle_mm' in ring)) return roundRing(ring.map(moved));
    const [x, y, r] = ring.circle_mm;
    return roundRing({ circle_mm: [x + dx_mm, y + dy_mm, r] });
  });
  return withZones(layout, drawnZones(layout).with(index, { ...zone, rings }));
}

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** The corner named and those of other zones that stand on the same point, the one named first. */
export function cornersTogether(layout: LayoutAt, place: ZoneCorner): readonly ZoneCorner[] {
  const here = outlineOf(layout, place)?.[place.corner];
  if (!here) return [];
  const others = drawnZones(layout).flatMap(({ rings }, zone) =>
    rings.flatMap((outline, ring) =>
      'circle_mm' in outline || zone === place.zone
        ? []
        : outline.flatMap((p, corner) => (same(p, here) ? [{ zone, ring, corner }] : [])),
    ),
  );
  return [place, ...others];
}

const withCorner = (zones: readonly DrawnZone[], { zone, ring, corner }: ZoneCorner, to: Point) => {
  const outline = zones[zone]?.rings[ring];
  const there = outline !== undefined && !('circle_mm' in outline) ? outline[corner] : undefined;
  if (!there || same(there, to)) return zones;
  return zones.with(zone, withRing(zones[zone]!, ring, (outline as Outline).with(corner, to)));
};

/** Puts corners at (x, y): one, or several that go together so that neighbouring zones stay neighbours. */
export function moveZoneCorners(layout: LayoutAt, places: readonly ZoneCorner[], to_mm: Point): LayoutAt {
  const to = roundPoint(to_mm);
  const zones = places.reduce((so, place) => withCorner(so, place, to), drawnZones(layout));
  return withZones(layout, zones);
}

/** Adds a corner at (x, y) after the one named. */
export function addZoneCorner(layout: LayoutAt, place: ZoneCorner, at_mm: Point): LayoutAt {
  const outline = outlineOf(layout, place);
  const zone = drawnZones(layout)[place.zone];
  if (!outline || !zone || !(place.corner in outline)) return layout;
  const next = withRing(zone, place.ring, outline.toSpliced(place.corner + 1, 0, roundPoint(at_mm)));
  return withZones(layout, drawnZones(layout).with(place.zone, next));
}

/** Takes a corner away; three remain, and an area. */
export function removeZoneCorner(layout: LayoutAt, place: ZoneCorner): LayoutAt {
  const outline = outlineOf(layout, place);
  const zone = drawnZones(layout)[place.zone];
  if (!outline || !zone || !(place.corner in outline)) return layout;
  const next = withRing(zone, place.ring, outline.toSpliced(place.corner, 1));
  return withZones(layout, drawnZones(layout).with(place.zone, next));
}

/** Gives a zone's circle another radius. */
export function setZoneRadius(layout: LayoutAt, index: number, ring: number, radius_mm: Mm): LayoutAt {
  const zone = drawnZones(layout)[index];
  const found = zone?.rings[ring];
  if (!zone || !found || !('circle_mm' in found)) return layout;
  const [x, y, before] = found.circle_mm;
  const next = roundRing({ circle_mm: [x, y, radius_mm] });
  if ('circle_mm' in next && next.circle_mm[2] === before) return layout;
  return withZones(layout, drawnZones(layout).with(index, withRing(zone, ring, next)));
}
