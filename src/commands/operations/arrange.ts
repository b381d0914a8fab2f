/**
 * Aligning and distributing parts by the boxes around all their sections (what the footprint covers). Platform
 * millimetres, +x right, +y to the back. Formulas: mathematics. Positions end on whole micrometres, each computed
 * from the ends, so that nothing adds up along a row.
 */
import type { Box } from '../../geometry/types';
import type { Layout, PartId } from '../../layout/types';
import type { Mm } from '../../units/types';
import { boxAroundAll, boxedParts, moveEach, type Boxed, type Step } from './boxes';

export type Axis = 'x' | 'y';
/** Along x: left, centre, right; along y: front, middle, back. */
export type Edge = 'left' | 'centre' | 'right' | 'front' | 'middle' | 'back';

/** Parts it takes for a line, and for a row with something between its ends. */
export const FEWEST_ALIGNED = 2;
export const FEWEST_DISTRIBUTED = 3;

const AXIS_OF: Readonly<Record<Edge, Axis>> = {
  left: 'x',
  centre: 'x',
  right: 'x',
  front: 'y',
  middle: 'y',
  back: 'y',
};

const low = (box: Box, axis: Axis): Mm => (axis === 'x' ? box.minX : box.minY);
const high = (box: Box, axis: Axis): Mm => (axis === 'x' ? box.maxX : box.maxY);
const centre = (box: Box, axis: Axis): Mm => (low(box, axis) + high(box, axis)) / 2;
const length = (box: Box, axis: Axis): Mm => high(box, axis) - low(box, axis);
const along = (axis: Axis, by: Mm): Step => (axis === 'x' ? { dx: by, dy: 0 } : { dx: 0, dy: by });

/** Where a box stands as far as an edge is concerned. */
function placeOf(box: Box, edge: Edge): Mm {
  const axis = AXIS_OF[edge];
  if (edge === 'left' || edge === 'front') return low(box, axis);
  return edge === 'right' || edge === 'back' ? high(box, axis) : centre(box, axis);
}

/**
 * Brings an edge, or the centre, of every part to where the common box has it; where some of them are fixed, to where
 * the box of those has it. Fewer than two parts stay.
 */
export function alignParts(
  layout: Layout,
  ids: readonly PartId[],
  edge: Edge,
  fixed: readonly PartId[] = [],
): Layout {
  const parts = boxedParts(layout, ids);
  if (parts.length < FEWEST_ALIGNED) return layout;
  const anchors = parts.filter(({ part }) => fixed.includes(part.id));
  const guide = anchors.length > 0 ? anchors : parts;
  const target = placeOf(boxAroundAll(guide.map(({ box }) => box)), edge);
  const loose = parts.filter((entry) => !anchors.includes(entry));
  const step = ({ part, box }: Boxed) =>
    [part.id, along(AXIS_OF[edge], target - placeOf(box, edge))] as const;
  return moveEach(layout, new Map(loose.map(step)));
}

const byPlace =
  (axis: Axis) =>
  (a: Boxed, b: Boxed): number =>
    centre(a.box, axis) - centre(b.box, axis) || (a.part.id < b.part.id ? -1 : 1);

/** Centres at equal distances between the first and the last, which stay. */
function equalCentres(row: readonly Boxed[], axis: Axis): Mm[] {
  const [first, last] = [centre(row[0]!.box, axis), centre(row.at(-1)!.box, axis)];
  return row.map((_, i) => first + ((last - first) * i) / (row.length - 1));
}

/** Centres with equal gaps between the boxes, within what they span together; too little room makes the gaps negative. */
function equalGaps(row: readonly Boxed[], axis: Axis): Mm[] {
  const start = Math.min(...row.map(({ box }) => low(box, axis)));
  const end = Math.max(...row.map(({ box }) => high(box, axis)));
  const filled = row.reduce((sum, { box }) => sum + length(box, axis), 0);
  const gap = (end - start - filled) / (row.length - 1);
  let from = start;
  return row.map(({ box }) => {
    const middle = from + length(box, axis) / 2;
    from += length(box, axis) + gap;
    return middle;
  });
}

/** Spreads parts in the order of their centres. Fewer than three stay. */
export function distributeParts(
  layout: Layout,
  ids: readonly PartId[],
  axis: Axis,
  equal: 'gaps' | 'centres',
): Layout {
  const row = boxedParts(layout, ids).sort(byPlace(axis));
  if (row.length < FEWEST_DISTRIBUTED) return layout;
  const centres = equal === 'gaps' ? equalGaps(row, axis) : equalCentres(row, axis);
  const step = ({ part, box }: Boxed, i: number) =>
    [part.id, along(axis, centres[i]! - centre(box, axis))] as const;
  return moveEach(layout, new Map(row.map(step)));
}
