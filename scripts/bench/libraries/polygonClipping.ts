/** polygon-clipping in plain JavaScript: boolean intersection of doubles; it has no inset. */
import polygonClipping, { type MultiPolygon, type Polygon, type Ring } from 'polygon-clipping';
import { emptyAreas, meetings, type Library, type Plate, type Rectangle, type ZoneAreas } from './types';

const zoneOf = ([minX, minY, maxX, maxY]: Rectangle): Polygon => [
  [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY],
  ],
];
const ringArea = (ring: Ring): number => {
  let twice = 0;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++)
    twice += ring[j]![0] * ring[i]![1] - ring[i]![0] * ring[j]![1];
  return Math.abs(twice) / 2;
};
const areaOf = (result: MultiPolygon): number =>
  result.reduce(
    (sum, [outer, ...holes]) =>
      sum + ringArea(outer!) - holes.reduce((total, ring) => total + ringArea(ring), 0),
    0,
  );

export const polygonClippingLibrary = (plate: Plate): Library => {
  const subjects = plate.parts.map((rings) =>
    rings.map((ring) => ring.map(([x, y]): [number, number] => [x, y])),
  );
  const zones = plate.zones.map(zoneOf);
  const pairs = meetings(plate);
  const zonesOnly = (): ZoneAreas => {
    const areas = emptyAreas(plate);
    subjects.forEach((subject, part) => {
      for (const zone of pairs[part]!)
        areas[part]![zone] = areaOf(polygonClipping.intersection(subject, zones[zone]!));
    });
    return areas;
  };
  return { name: 'polygon-clipping', insetAndZones: null, zonesOnly };
};
