/** clipper-lib in plain JavaScript, integers at 1e5 a millimetre: offset with round joins, boolean intersection. */
import ClipperLib from 'clipper-lib';
import type { Point } from '../../../src/layout/types';
import { emptyAreas, meetings, type Library, type Plate, type Rectangle, type ZoneAreas } from './types';

type Paths = ClipperLib.IntPoint[][];
const SCALE = 1e5;
const ARC_MM = 0.0005;

const ringOf = (ring: readonly Point[]): ClipperLib.IntPoint[] =>
  ring.map(([x, y]) => ({ X: Math.round(x * SCALE), Y: Math.round(y * SCALE) }));
const pathsOf = (rings: readonly (readonly Point[])[]): Paths =>
  rings.map((ring, index) => ringOf(index === 0 ? ring : ring.toReversed()));
const zoneOf = ([minX, minY, maxX, maxY]: Rectangle): ClipperLib.IntPoint[] =>
  ringOf([
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY],
  ]);
const areaOf = (paths: Paths): number =>
  paths.reduce((sum, path) => sum + ClipperLib.Clipper.Area(path), 0) / (SCALE * SCALE);

const intersection = (subject: Paths, zone: ClipperLib.IntPoint[]): Paths => {
  const { PolyType, ClipType, PolyFillType } = ClipperLib;
  const clipper = new ClipperLib.Clipper();
  clipper.AddPaths(subject, PolyType.ptSubject, true);
  clipper.AddPath(zone, PolyType.ptClip, true);
  const solution: Paths = [];
  clipper.Execute(ClipType.ctIntersection, solution, PolyFillType.pftNonZero, PolyFillType.pftNonZero);
  return solution;
};
const insetOf = (paths: Paths, inset_mm: number): Paths => {
  const offset = new ClipperLib.ClipperOffset(2, ARC_MM * SCALE);
  offset.AddPaths(paths, ClipperLib.JoinType.jtRound, ClipperLib.EndType.etClosedPolygon);
  const solution: Paths = [];
  offset.Execute(solution, -inset_mm * SCALE);
  return solution;
};

export const clipperLibrary = (plate: Plate): Library => {
  const subjects = plate.parts.map(pathsOf);
  const zones = plate.zones.map(zoneOf);
  const pairs = meetings(plate);
  const run = (prepare: (paths: Paths) => Paths): ZoneAreas => {
    const areas = emptyAreas(plate);
    subjects.forEach((subject, part) => {
      const paths = prepare(subject);
      for (const zone of pairs[part]!) areas[part]![zone] = areaOf(intersection(paths, zones[zone]!));
    });
    return areas;
  };
  return {
    name: 'clipper-lib',
    insetAndZones: () => run((paths) => insetOf(paths, plate.inset_mm)),
    zonesOnly: () => run((paths) => paths),
  };
};
