/**
 * GEOS as WebAssembly (npm geos-wasm): buffer, and its clip by a rectangle, the fastest of its ways to cut by an
 * upright zone. The geometries stand in its memory before the clock starts.
 */
import initGeos from 'geos-wasm';
import type { Point } from '../../../src/layout/types';
import { emptyAreas, meetings, type Library, type Plate, type ZoneAreas } from './types';

type Geos = Awaited<ReturnType<typeof initGeos>>;
const QUADRANT_SEGMENTS = 8;

const ringOf = (geos: Geos, ring: readonly Point[]): number => {
  const closed = [...ring, ring[0]!];
  const buffer = geos.Module._malloc(closed.length * 16);
  geos.Module.HEAPF64.set(closed.flat(), buffer / 8);
  const sequence = geos.GEOSCoordSeq_copyFromBuffer(buffer, closed.length, 0, 0);
  geos.Module._free(buffer);
  return geos.GEOSGeom_createLinearRing(sequence);
};
const polygonOf = (geos: Geos, [outer, ...holes]: readonly (readonly Point[])[]): number => {
  const pointers = holes.map((ring) => ringOf(geos, ring));
  const list = geos.Module._malloc(Math.max(1, pointers.length) * 4);
  new Int32Array(geos.Module.HEAPF64.buffer, list, pointers.length).set(pointers);
  const polygon = geos.GEOSGeom_createPolygon(ringOf(geos, outer!), list, pointers.length);
  geos.Module._free(list);
  return polygon;
};

export const geosLibrary = async (plate: Plate): Promise<Library> => {
  const geos = await initGeos();
  const polygons = plate.parts.map((rings) => polygonOf(geos, rings));
  const pairs = meetings(plate);
  const result = geos.Module._malloc(8);
  const areaOf = (geometry: number): number => {
    geos.GEOSArea(geometry, result);
    return geos.Module.HEAPF64[result / 8]!;
  };
  const cut = (geometry: number, part: number, areas: ZoneAreas): void => {
    for (const zone of pairs[part]!) {
      const [minX, minY, maxX, maxY] = plate.zones[zone]!;
      const piece = geos.GEOSClipByRect(geometry, minX, minY, maxX, maxY);
      areas[part]![zone] = areaOf(piece);
      geos.GEOSGeom_destroy(piece);
    }
  };
  const zonesOnly = (): ZoneAreas => {
    const areas = emptyAreas(plate);
    polygons.forEach((polygon, part) => cut(polygon, part, areas));
    return areas;
  };
  const insetAndZones = (): ZoneAreas => {
    const areas = emptyAreas(plate);
    polygons.forEach((polygon, part) => {
      const inset = geos.GEOSBuffer(polygon, -plate.inset_mm, QUADRANT_SEGMENTS);
      cut(inset, part, areas);
      geos.GEOSGeom_destroy(inset);
    });
    return areas;
  };
  return { name: 'geos-wasm', insetAndZones, zonesOnly };
};
