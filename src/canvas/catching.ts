/**
 * What a place that is measured from, or to, is caught by: corners and centres first, then outlines, zone lines and the edges of
 * the platform, then the grid. Outlines are those of the sections shown and of the footprints. Platform millimetres.
 */
import type { PartView } from '../build/types';
import { nearestOnEdge } from '../geometry/nearest';
import type { Region, Ring } from '../geometry/types';
import type { Mm, PlatePoint } from '../units/types';
import type { ZoneLine } from '../zoning/types';

export type CaughtBy = 'corner' | 'centre' | 'edge' | 'line' | 'grid';
export interface Caught {
  readonly at: PlatePoint;
  readonly by: CaughtBy;
}
export interface CatchField {
  /** Sections shown and footprints. */
  readonly regions: readonly Region[];
  readonly lines: readonly ZoneLine[];
  /** Of the platform and of its margin. */
  readonly edges: readonly Region[];
  /** 0: no grid. */
  readonly grid_mm: Mm;
}

/** Where an outline turns by less, it is a curve drawn by short lines, not a corner. */
const CORNER_DEG = 15;
/** Of a circle drawn by short lines, all corners lie so near to one radius. */
const ROUND_mm = 0.02;
const FEWEST_OF_CIRCLE = 12;

const pointsOf = (ring: Ring): PlatePoint[] =>
  Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i]!, y: ring[2 * i + 1]! }));

function turnAt(before: PlatePoint, at: PlatePoint, after: PlatePoint): number {
  const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
  return (Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) * 180) / Math.PI;
}

/** Corners of an outline. */
const cornersOf = (points: readonly PlatePoint[]): PlatePoint[] =>
  points.filter((at, i) => turnAt(points.at(i - 1)!, at, points[(i + 1) % points.length]!) >= CORNER_DEG);

/** The middle of an outline that is a circle; null where it is none. */
function centreOf(points: readonly PlatePoint[]): PlatePoint | null {
  if (points.length < FEWEST_OF_CIRCLE) return null;
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  const centre = { x: sum.x / points.length, y: sum.y / points.length };
  const radii = points.map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y));
  return Math.max(...radii) - Math.min(...radii) <= ROUND_mm ? centre : null;
}

interface Outline {
  readonly points: readonly PlatePoint[];
  readonly corners: readonly PlatePoint[];
  readonly centre: PlatePoint | null;
}
const known = new WeakMap<Region, readonly Outline[]>();
function outlinesOf(region: Region): readonly Outline[] {
  const kept =
    known.get(region) ??
    region.map((ring) => {
      const points = pointsOf(ring);
      return { points, corners: cornersOf(points), centre: centreOf(points) };
    });
  known.set(region, kept);
  return kept;
}

const distance = (a: PlatePoint, b: PlatePoint): Mm => Math.hypot(a.x - b.x, a.y - b.y);

function nearest(at: PlatePoint, places: readonly Caught[], reach: Mm): Caught | null {
  const inReach = places.filter((place) => distance(at, place.at) <= reach);
  return inReach.reduce<Caught | null>(
    (best, place) => (best && distance(at, best.at) <= distance(at, place.at) ? best : place),
    null,
  );
}

const onEdges = (at: PlatePoint, { points }: Outline): PlatePoint[] =>
  points.map((from, i) => {
    const to = points[(i + 1) % points.length]!;
    return nearestOnEdge([from.x, from.y, to.x, to.y], at);
  });
const onLine = (at: PlatePoint, { nx, ny, c }: ZoneLine): PlatePoint => {
  const off = nx * at.x + ny * at.y - c;
  return { x: at.x - off * nx, y: at.y - off * ny };
};

/** What catches a place within reach; null where nothing does. */
export function caughtAt(at: PlatePoint, field: CatchField, reach: Mm): Caught | null {
  const outlines = field.regions.flatMap(outlinesOf);
  const frames = field.edges.flatMap(outlinesOf);
  const named = [...outlines, ...frames].flatMap(({ corners, centre }): Caught[] => [
    ...corners.map((corner): Caught => ({ at: corner, by: 'corner' })),
    ...(centre ? [{ at: centre, by: 'centre' } as const] : []),
  ]);
  const along = [
    ...[...outlines, ...frames].flatMap((outline) =>
      onEdges(at, outline).map((place): Caught => ({ at: place, by: 'edge' })),
    ),
    ...field.lines.map((line): Caught => ({ at: onLine(at, line), by: 'line' })),
  ];
  const { grid_mm } = field;
  const cross = { x: Math.round(at.x / grid_mm) * grid_mm, y: Math.round(at.y / grid_mm) * grid_mm };
  const grid: readonly Caught[] = grid_mm > 0 ? [{ at: cross, by: 'grid' }] : [];
  return nearest(at, named, reach) ?? nearest(at, along, reach) ?? nearest(at, grid, reach);
}

/** Parts whose footprint comes within reach of a place. */
export const near = (
  parts: readonly PartView[],
  at: PlatePoint,
  reach: Mm,
  box: (view: PartView) => { minX: Mm; maxX: Mm; minY: Mm; maxY: Mm },
): readonly PartView[] =>
  parts.filter((view) => {
    const { minX, maxX, minY, maxY } = box(view);
    return at.x >= minX - reach && at.x <= maxX + reach && at.y >= minY - reach && at.y <= maxY + reach;
  });
