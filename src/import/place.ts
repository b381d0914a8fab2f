/**
 * An import made ready for a layout. Millimetres, +y up. Every shape gets the centre of its own box as origin and
 * coordinates in whole micrometres; where it stood within the drawing is kept beside it.
 */
import { ringFromLayout, signedArea } from '../geometry/ring';
import type { LayoutRing, Point } from '../layout/types';
import { roundMm } from '../units/round';
import { compose, isFiniteMap, mapX, mapY, rotation, scaling, translation, type Affine } from './affine';
import { layoutBox } from './rings';
import type { ImportShape, OutlineImport, PlacedShape, Placement } from './types';

/** The import's shapes scaled, mirrored and turned (in this order) about the centre of the import's box. */
export function placeImport(imported: OutlineImport, placement: Placement = {}): PlacedShape[] {
  const { minX, minY, maxX, maxY } = imported.box;
  const { scale = 1, mirrorX = false, mirrorY = false, turn_deg = 0 } = placement;
  const toCentre = translation(-(minX + maxX) / 2, -(minY + maxY) / 2);
  const mirrored = scaling(mirrorX ? -scale : scale, mirrorY ? -scale : scale);
  const map = compose(rotation(turn_deg), compose(mirrored, toCentre));
  if (!(scale > 0) || !isFiniteMap(map))
    throw new Error(`placeImport: scale ${scale} and turn ${turn_deg} have to be finite, the scale above 0`);
  return imported.shapes.map((shape) => placeShape(shape, map, scale)).filter((shape) => shape !== null);
}

function placeShape(shape: ImportShape, map: Affine, scale: number): PlacedShape | null {
  const rings = shape.rings.map((ring) => mapRing(ring, map, scale));
  const box = layoutBox('circle_mm' in rings[0] ? rings[0] : null, ringFromLayout(rings[0]));
  const at: Point = [roundMm((box.minX + box.maxX) / 2), roundMm((box.minY + box.maxY) / 2)];
  const [outer, ...holes] = rings.map((ring) => rounded(ring, at));
  if (outer === null) return null;
  const kept = [outer, ...holes.filter((ring) => ring !== null)];
  const areas = kept.map((ring) => Math.abs(signedArea(ringFromLayout(ring))));
  return {
    name: shape.name,
    rings: kept,
    area_mm2: areas.reduce((sum, area, i) => (i === 0 ? area : sum - area), 0),
    width_mm: roundMm(box.maxX - box.minX),
    height_mm: roundMm(box.maxY - box.minY),
    at_mm: at,
  };
}

function mapRing(ring: LayoutRing, map: Affine, scale: number): LayoutRing {
  if ('circle_mm' in ring) {
    const [x, y, r] = ring.circle_mm;
    return { circle_mm: [mapX(map, x, y), mapY(map, x, y), r * scale] };
  }
  return ring.map(([x, y]): Point => [mapX(map, x, y), mapY(map, x, y)]);
}

/** From the new origin, in whole micrometres, without repeated points; null where nothing is left of it. */
function rounded(ring: LayoutRing, [ox, oy]: Point): LayoutRing | null {
  if ('circle_mm' in ring) {
    const [x, y, r] = ring.circle_mm;
    const radius = roundMm(r);
    return radius > 0 ? { circle_mm: [roundMm(x - ox), roundMm(y - oy), radius] } : null;
  }
  const points: Point[] = [];
  for (const [x, y] of ring) {
    const point: Point = [roundMm(x - ox), roundMm(y - oy)];
    const last = points[points.length - 1];
    if (last === undefined || last[0] !== point[0] || last[1] !== point[1]) points.push(point);
  }
  while (points.length > 1 && samePoint(points[0], points[points.length - 1])) points.pop();
  return points.length < 3 || signedArea(ringFromLayout(points)) === 0 ? null : points;
}

const samePoint = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];
