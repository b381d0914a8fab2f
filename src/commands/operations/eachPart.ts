/**
 * Several parts changed at once, each from its own value: what a sum typed for all of them does. Platform millimetres,
 * degrees counter-clockwise from +x. And the distance between two parts: the moved one goes along the line of the nearest
 * points until their footprints are that far apart.
 */
import { nearestPoints } from '../../geometry/nearest';
import type { Region } from '../../geometry/types';
import type { Layout, Part, PartId } from '../../layout/types';
import type { Mm } from '../../units/types';
import { changeParts } from './edit';
import { setPartHeight } from './height';
import type { Axis } from './arrange';
import { moveParts, placePart } from './parts';
import { setPartFields, setPartTurn } from './partFields';

/** From a part's value to its next one. */
export type To = (now: number) => number;

const eachOf = (
  layout: Layout,
  ids: readonly PartId[],
  change: (layout: Layout, part: Part) => Layout,
): Layout => {
  const chosen = new Set(ids);
  // A part's own change touches no other part, so what was read before stays true.
  return layout.parts.filter(({ id }) => chosen.has(id)).reduce(change, layout);
};

/** Moves each part along one axis. */
export const placeEach = (layout: Layout, ids: readonly PartId[], axis: Axis, to: To): Layout =>
  eachOf(layout, ids, (next, { id, at_mm: [x, y] }) =>
    axis === 'x' ? placePart(next, id, to(x), y) : placePart(next, id, x, to(y)),
  );

/** Turns each part about its own origin. */
export const turnEach = (layout: Layout, ids: readonly PartId[], to: To): Layout =>
  eachOf(layout, ids, (next, { id, turn_deg }) => setPartTurn(next, [id], to(turn_deg)));

/** Changes each part's time factor. */
export const timeFactorEach = (layout: Layout, ids: readonly PartId[], to: To): Layout =>
  eachOf(layout, ids, (next, { id, timeFactor }) =>
    setPartFields(next, [id], { timeFactor: to(timeFactor) }),
  );

/** Raises each part from its height; parts of one shape go on sharing it. */
export function heightEach(
  layout: Layout,
  ids: readonly PartId[],
  heightOf: (id: PartId) => Mm,
  to: To,
): Layout {
  const heights = [...new Set(ids.map(heightOf))];
  return heights.reduce(
    (next, height) =>
      setPartHeight(
        next,
        ids.filter((id) => heightOf(id) === height),
        to(height),
      ),
    layout,
  );
}

/** Renames a part; the same layout where the id is taken. The caller has checked its form. */
export const renamePart = (layout: Layout, id: PartId, name: PartId): Layout =>
  layout.parts.some((part) => part.id === name)
    ? layout
    : changeParts(layout, [id], (part) => ({ ...part, id: name }));

const MOST_ROUNDS = 20;
const NEAR_ENOUGH_MM = 0.0005;

const shiftedRegion = (region: Region, dx: Mm, dy: Mm): Region =>
  region.map((ring) => ring.map((value, i) => value + (i % 2 === 0 ? dx : dy)));

/**
 * Moves part `id` so that its footprint is `wanted` millimetres from `other`, along the line that joins their nearest
 * points. Outlines that are not convex meet other corners on the way, so the step is repeated until the distance is right
 * to half a micrometre; null where it is not, or where the footprints overlap.
 */
export function setDistance(
  layout: Layout,
  id: PartId,
  own: Region,
  other: Region,
  wanted: Mm,
): Layout | null {
  let [dx, dy] = [0, 0];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const near = nearestPoints(other, shiftedRegion(own, dx, dy));
    if (near === null || near.distance_mm === 0) return null;
    const short = wanted - near.distance_mm;
    if (Math.abs(short) <= NEAR_ENOUGH_MM) return moveParts(layout, [id], dx, dy);
    dx += ((near.to.x - near.from.x) / near.distance_mm) * short;
    dy += ((near.to.y - near.from.y) / near.distance_mm) * short;
  }
  return null;
}
