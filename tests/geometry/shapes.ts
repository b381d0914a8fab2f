/**
 * Polygons for the geometry tests: seeded random stars with holes, and a second general-purpose library (jsts, a port
 * of JTS) to hold areas against. Millimetres.
 */
import fc from 'fast-check';
import GeoJSONReader from 'jsts/org/locationtech/jts/io/GeoJSONReader.js';
import GeoJSONWriter from 'jsts/org/locationtech/jts/io/GeoJSONWriter.js';
import 'jsts/org/locationtech/jts/monkey.js';
import { reversed, signedArea } from '../../src/geometry/ring';
import { componentRings } from '../../src/geometry/region';
import type { HalfPlane, Region, Ring, TaggedRegion } from '../../src/geometry/types';

export const SEED = 20261125;

/** What the tests use of a jsts geometry. */
export interface JstsGeometry {
  getArea(): number;
  getLength(): number;
  getNumGeometries(): number;
  getGeometryN(i: number): JstsGeometry;
  distance(other: JstsGeometry): number;
  intersection(other: JstsGeometry): JstsGeometry;
  union(other: JstsGeometry): JstsGeometry;
  difference(other: JstsGeometry): JstsGeometry;
  buffer(distance: number, quadrantSegments: number): JstsGeometry;
}

/** The package's own types ask for a factory that its code supplies by itself. */
const reader = new (GeoJSONReader as unknown as new () => { read(geometry: object): JstsGeometry })();
const writer = new (
  GeoJSONWriter as unknown as new () => {
    write(geometry: JstsGeometry): { type: string; coordinates: unknown };
  }
)();

const closed = (ring: Ring): number[][] => {
  const points: number[][] = [];
  for (let i = 0; i < ring.length; i += 2) points.push([ring[i], ring[i + 1]]);
  points.push([ring[0], ring[1]]);
  return points;
};

/** The region as a jsts multipolygon; outer rings and holes are matched by this project's componentRings. */
export function jsts(region: Region): JstsGeometry {
  const coordinates = componentRings(region).map((group: number[]) =>
    group.map((i: number) => closed(region[i])),
  );
  return reader.read({ type: 'MultiPolygon', coordinates });
}

/** A big rectangle on the inside of a half-plane. */
export function halfPlaneRectangle(h: HalfPlane, size = 1000): Region {
  const at = (along: number, deep: number): readonly [number, number] => [
    h.nx * (h.c - deep) - h.ny * along,
    h.ny * (h.c - deep) + h.nx * along,
  ];
  const corners = [at(-size, size), at(-size, 0), at(size, 0), at(size, size)];
  const ring = Float64Array.from(corners.flat());
  return [signedArea(ring) > 0 ? ring : reversed(ring)];
}

const star = (x: number, y: number, radii: readonly number[]): Ring =>
  Float64Array.from(
    radii.flatMap((r, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    }),
  );

const radii = (least: number, most: number, points: number): fc.Arbitrary<number[]> =>
  fc.array(fc.double({ min: least, max: most, noNaN: true }), { minLength: 3, maxLength: points });

/** Stars of radius 10 … 60 with up to two holes or nothing inside; about one in two has a hole. */
export const starRegion: fc.Arbitrary<Region> = fc
  .record({
    x: fc.double({ min: -50, max: 50, noNaN: true }),
    y: fc.double({ min: -50, max: 50, noNaN: true }),
    outer: radii(25, 60, 60).filter((r) => r.length >= 8),
    holes: fc.array(radii(1, 9, 12), { maxLength: 2 }),
  })
  .map(({ x, y, outer, holes }) => [
    star(x, y, outer),
    ...holes.map((hole, i) => reversed(star(x + (i === 0 ? -10 : 10), y, hole))),
  ]);

export const halfPlane: fc.Arbitrary<HalfPlane> = fc
  .record({
    angle: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
    c: fc.double({ min: -60, max: 60, noNaN: true }),
  })
  .map(({ angle, c }) => ({ nx: Math.cos(angle), ny: Math.sin(angle), c }));

/** Which unit cells of a 6 × 6 grid are material. */
export type Cells = readonly (readonly boolean[])[];
export const gridCells: fc.Arbitrary<Cells> = fc.array(
  fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
  { minLength: 6, maxLength: 6 },
);

/** The outline of unit cells (cell [j][i] covers i … i+1, j … j+1), joined by jsts: vertices lie on the grid. */
export function cellRegion(cells: Cells): Region {
  let all = jsts([]);
  cells.forEach((row, j) =>
    row.forEach((full, i) => {
      if (full) all = all.union(jsts([Float64Array.of(i, j, i + 1, j, i + 1, j + 1, i, j + 1)]));
    }),
  );
  return regionOf(all);
}

/** A jsts geometry as a region: first ring of each polygon counter-clockwise, the others clockwise. */
export function regionOf(geometry: JstsGeometry): Region {
  const rings: Ring[] = [];
  const written = writer.write(geometry);
  const polygons: number[][][][] =
    written.type === 'Polygon'
      ? [written.coordinates as number[][][]]
      : (written.coordinates as number[][][][]);
  for (const polygon of polygons)
    polygon.forEach((points, k) => {
      const ring = Float64Array.from(points.slice(0, -1).flat());
      if (ring.length > 0) rings.push(signedArea(ring) > 0 === (k === 0) ? ring : reversed(ring));
    });
  return rings;
}

/** Length of the edges with the given tag. */
export function taggedLength(t: TaggedRegion, tag: number): number {
  let sum = 0;
  t.rings.forEach((ring, r) => {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      if (t.cut[r][i >> 1] === tag) sum += Math.hypot(ring[j] - ring[i], ring[j + 1] - ring[i + 1]);
    }
  });
  return sum;
}
