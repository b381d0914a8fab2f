/**
 * Clipper2 as WebAssembly (npm clipper2-wasm), 64-bit integers at 1e6 a millimetre: offset with round joins, and its
 * clip by a rectangle. The paths stand in its memory before the clock starts.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { MainModule, Paths64 } from 'clipper2-wasm/dist/clipper2z';
import type { Point } from '../../../src/layout/types';
import { emptyAreas, meetings, type Library, type Plate, type ZoneAreas } from './types';

const SCALE = 1e6;
const ARC_MM = 0.0005;
const require = createRequire(import.meta.url);

const load = async (): Promise<MainModule> => {
  const factory = require('clipper2-wasm/dist/umd/clipper2z.js') as (options: object) => Promise<MainModule>;
  const wasmBinary = readFileSync(require.resolve('clipper2-wasm/dist/umd/clipper2z.wasm'));
  return factory({ wasmBinary });
};
const pathsOf = (clipper: MainModule, rings: readonly (readonly Point[])[]): Paths64 => {
  const paths = new clipper.Paths64();
  for (const [index, ring] of rings.entries()) {
    const forward = index === 0 ? ring : ring.toReversed();
    const coordinates = forward.flatMap(([x, y]) => [
      BigInt(Math.round(x * SCALE)),
      BigInt(Math.round(y * SCALE)),
    ]);
    paths.push_back(clipper.MakePath64(coordinates));
  }
  return paths;
};

export const clipper2Library = async (plate: Plate): Promise<Library> => {
  const clipper = await load();
  const subjects = plate.parts.map((rings) => pathsOf(clipper, rings));
  const zones = plate.zones.map((zone) => {
    const [minX, minY, maxX, maxY] = zone.map((value) => BigInt(Math.round(value * SCALE)));
    return new clipper.Rect64(minX!, minY!, maxX!, maxY!);
  });
  const pairs = meetings(plate);
  const cut = (paths: Paths64, part: number, areas: ZoneAreas): void => {
    for (const zone of pairs[part]!) {
      const piece = clipper.RectClipPaths64(zones[zone]!, paths);
      areas[part]![zone] = clipper.AreaPaths64(piece) / (SCALE * SCALE);
      piece.delete();
    }
  };
  const zonesOnly = (): ZoneAreas => {
    const areas = emptyAreas(plate);
    subjects.forEach((paths, part) => cut(paths, part, areas));
    return areas;
  };
  const insetAndZones = (): ZoneAreas => {
    const areas = emptyAreas(plate);
    const { JoinType, EndType } = clipper;
    subjects.forEach((paths, part) => {
      const delta = -plate.inset_mm * SCALE;
      const inset = clipper.InflatePaths64(paths, delta, JoinType.Round, EndType.Polygon, 2, ARC_MM * SCALE);
      cut(inset, part, areas);
      inset.delete();
    });
    return areas;
  };
  return { name: 'clipper2-wasm', insetAndZones, zonesOnly };
};
