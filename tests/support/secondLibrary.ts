/**
 * Plates as a second general-purpose library sees them: jsts, a port of JTS. Sections, zones and reach are set up here from
 * the layout's own words, without the engine. Outlines must hold points, not circles. Millimetres.
 */
import GeoJSONReader from 'jsts/org/locationtech/jts/io/GeoJSONReader.js';
import GeoJSONWriter from 'jsts/org/locationtech/jts/io/GeoJSONWriter.js';
import 'jsts/org/locationtech/jts/monkey.js';
import type { Layout, LayoutRing, Part, Zoning } from '../../src/layout/types';
import type { Region } from '../../src/geometry/types';

/** What the tests use of a jsts geometry. */
export interface Geometry {
  getArea(): number;
  getLength(): number;
  isEmpty(): boolean;
  getNumGeometries(): number;
  getGeometryN(i: number): Geometry;
  getBoundary(): Geometry;
  intersection(other: Geometry): Geometry;
  union(other: Geometry): Geometry;
  difference(other: Geometry): Geometry;
  buffer(distance: number, quadrantSegments: number): Geometry;
}
type Points = readonly (readonly [number, number])[];

const reader = new (GeoJSONReader as unknown as new () => { read(geometry: object): Geometry })();
const writer = new (
  GeoJSONWriter as unknown as new () => {
    write(geometry: Geometry): { type: string; coordinates: unknown[] };
  }
)();
const closed = (points: Points): Points => [...points, points[0]];

/** A polygon: its outline, then its holes. */
export const polygon = (...outlines: readonly Points[]): Geometry =>
  reader.read({ type: 'Polygon', coordinates: outlines.map(closed) });
export const line = (from: readonly [number, number], to: readonly [number, number]): Geometry =>
  reader.read({ type: 'LineString', coordinates: [from, to] });
export const nothing = (): Geometry => reader.read({ type: 'MultiPolygon', coordinates: [] });

const pointsOf = (ring: LayoutRing): Points => {
  if ('circle_mm' in ring) throw new Error('circles are not polygons');
  return ring;
};

const ringsOf = (region: Region): Points[] =>
  region.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i], ring[2 * i + 1]] as const),
  );

/** Area of an engine region by Gauss's formula. */
export const areaOf = (region: Region): number =>
  ringsOf(region).reduce((sum, ring) => sum + shoelace(ring), 0);
/** Length of all outlines of an engine region. */
export const perimeterOf = (region: Region): number =>
  ringsOf(region).reduce(
    (sum, ring) =>
      sum +
      ring.reduce((length, [x, y], i) => {
        const [u, v] = ring[(i + 1) % ring.length];
        return length + Math.hypot(u - x, v - y);
      }, 0),
    0,
  );

const crosses = (points: Points, px: number, py: number): boolean =>
  points.reduce((inside, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length];
    return y > py !== v > py && px < x + ((u - x) * (py - y)) / (v - y) ? !inside : inside;
  }, false);
const insideAll = (rings: readonly Points[], px: number, py: number): boolean =>
  rings.reduce((inside, ring) => (crosses(ring, px, py) ? !inside : inside), false);

/** Whether a point lies inside, by the number of edges to its right (even-odd). */
export const holds = (region: Region, px: number, py: number): boolean => insideAll(ringsOf(region), px, py);
/** The same for a geometry of this library. */
export function holder(geometry: Geometry): (px: number, py: number) => boolean {
  const { type, coordinates } = writer.write(geometry);
  const rings = (type === 'Polygon' ? coordinates : coordinates.flat()) as Points[];
  return (px, py) => insideAll(rings, px, py);
}

/** Gauss's area formula, positive for counter-clockwise. */
export function shoelace(points: Points): number {
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length];
    return sum + (x * v - u * y) / 2;
  }, 0);
}

/** The part's section at a height: first ring the outline, the others its holes; empty above the part. */
export function sectionAt(layout: Layout, part: Part, z: number): Geometry {
  const slab = layout.shapes[part.shape].slabs.find(({ to_mm }) => to_mm > z + 1e-9);
  if (!slab) return nothing();
  const angle = (part.turn_deg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [x0, y0] = part.at_mm;
  const place = (ring: LayoutRing): Points =>
    pointsOf(ring).map(([x, y]) => [c * x - s * y + x0, s * x + c * y + y0] as const);
  return polygon(...slab.rings.map(place));
}

export function platformOf({ machine: { platform } }: Layout): Geometry {
  const [x, y] = [platform.width_mm / 2, platform.depth_mm / 2];
  return polygon([
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ]);
}

const FAR = 1000;
/** Everything between two parallel lines n·p = from and n·p = to. */
function stripe(nx: number, ny: number, from: number, to: number): Geometry {
  const at = (along: number, c: number) => [nx * c - ny * along, ny * c + nx * along] as const;
  return polygon([at(-FAR, from), at(-FAR, to), at(FAR, to), at(FAR, from)]);
}

/** Normal of strips that run along run_deg, pointing to +x, to +y where it has no x. */
export function stripNormal(run_deg: number): readonly [number, number] {
  const angle = (run_deg * Math.PI) / 180;
  return run_deg === 0 ? [0, 1] : [Math.sin(angle), -Math.cos(angle)];
}

export interface ZoneSeen {
  readonly lasers: readonly string[];
  readonly region: Geometry;
}
/** The division at a height: the last one that starts there or below. */
export const zoningAt = ({ zoning }: Layout, z: number): Zoning =>
  zoning.reduce((held, step) => (step.from_mm <= z + 1e-9 ? step : held)).zoning;

/** Zones at a height, before platform, reach and switches. */
export function zonesOf(layout: Layout, z = 0): ZoneSeen[] {
  const { machine } = layout;
  const zoning = zoningAt(layout, z);
  if (zoning.strategy === 'wholeField')
    return [{ lasers: machine.lasers.map(({ id }) => id), region: stripe(1, 0, -FAR, FAR) }];
  if (zoning.strategy === 'drawn')
    return zoning.zones.map(({ lasers, rings }) => ({ lasers, region: polygon(...rings.map(pointsOf)) }));
  const half = zoning.sharedBand_mm / 2;
  const regions: Geometry[] = [];
  if (zoning.strategy === 'quadrants') {
    const [x, y] = zoning.at_mm;
    const [front, rear] = [stripe(0, 1, -FAR, y + half), stripe(0, 1, y - half, FAR)];
    const [left, right] = [stripe(1, 0, -FAR, x + half), stripe(1, 0, x - half, FAR)];
    regions.push(...[front, rear].flatMap((b) => [left, right].map((a) => a.intersection(b))));
  } else {
    const [nx, ny] = stripNormal(zoning.run_deg);
    const lines = zoning.lines_mm;
    for (let i = 0; i <= lines.length; i++) {
      const from = i === 0 ? -FAR : lines[i - 1] - half;
      const to = i === lines.length ? FAR : lines[i] + half;
      regions.push(stripe(nx, ny, from, to));
    }
  }
  return regions.map((region, i) => ({ lasers: [zoning.lasers[i]], region }));
}

/**
 * A measure of the platform by the set of lasers whose zones lie there: of every intersection of zones, then by inclusion
 * and exclusion of what lies in these zones and no others. Lasers as bit masks; set 0 is in no zone.
 */
export function bySetOfZones(
  platform: Geometry,
  zones: readonly { readonly set: number; readonly region: Geometry }[],
  measure: (region: Geometry) => number,
): Map<number, number> {
  let common: Geometry[] = [platform];
  for (const { region } of zones) common = [...common, ...common.map((one) => one.intersection(region))];
  const exactly = common.map((one) => (one.isEmpty() ? 0 : measure(one)));
  zones.forEach((_, z) =>
    exactly.forEach((_m, t) => {
      if (((t >> z) & 1) === 0) exactly[t] -= exactly[t | (1 << z)];
    }),
  );
  const sums = new Map<number, number>();
  exactly.forEach((value, t) => {
    const set = zones.reduce((all, zone, z) => ((t >> z) & 1 ? all | zone.set : all), 0);
    sums.set(set, (sums.get(set) ?? 0) + value);
  });
  return sums;
}

/** Per laser of the machine, what it may expose of a part: zone or whole platform where pinned, in reach, on. */
export function allowedFor(layout: Layout, z = 0): (part: Part) => Geometry[] {
  const platform = platformOf(layout);
  const zones = zonesOf(layout, z);
  const { lasers } = layout.machine;
  const reach = lasers.map((l) => (l.reach ? platform.intersection(polygon(pointsOf(l.reach))) : platform));
  const own = lasers.map((l, k) =>
    zones
      .filter((zone) => zone.lasers.includes(l.id))
      .reduce((sum, zone) => sum.union(zone.region), nothing())
      .intersection(reach[k]),
  );
  return (part) =>
    lasers.map((laser, k) => {
      if (!laser.on || (part.laser !== null && part.laser !== laser.id)) return nothing();
      return part.laser === laser.id ? reach[k] : own[k];
    });
}

const GRID = 1e7;
/**
 * The polygons of an overlay's result, on a grid of 1e-7 mm: lines and points it may hold besides are left out, and edges
 * that meet up to rounding meet exactly, which this library's overlays need.
 */
function settled(geometry: Geometry): Geometry {
  const parts = Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i));
  const round = (value: number): number => Math.round(value * GRID) / GRID;
  const coordinates = parts
    .filter((part) => part.getArea() > 1e-9)
    .map((part) => writer.write(part).coordinates as Points[])
    .map((outlines) => outlines.map((points) => points.map(([x, y]) => [round(x), round(y)])));
  return reader.read({ type: 'MultiPolygon', coordinates });
}

/** A region divided by the set of lasers that may expose it, as bit masks; set 0 is unassigned. */
export function bySet(region: Geometry, allowed: readonly Geometry[]): { set: number; region: Geometry }[] {
  let parts = [{ set: 0, region: settled(region) }];
  allowed.map(settled).forEach((own, k) => {
    parts = parts
      .flatMap(({ set, region: part }) => [
        { set, region: settled(part.difference(own)) },
        { set: set | (1 << k), region: settled(part.intersection(own)) },
      ])
      .filter((piece) => piece.region.getArea() > 1e-9);
  });
  return parts;
}
