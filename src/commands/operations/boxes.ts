/**
 * Parts with the boxes around all their sections, and moving parts by steps of their own. Platform millimetres.
 */
import type { Box } from '../../geometry/types';
import type { Layout, Part, PartId } from '../../layout/types';
import type { Mm } from '../../units/types';
import { changeParts } from './edit';
import { movedTo } from './parts';
import { partBox } from './place';

export interface Boxed {
  readonly part: Part;
  readonly box: Box;
}
/** How far a part is to be moved. */
export interface Step {
  readonly dx: Mm;
  readonly dy: Mm;
}

/** The parts named, in the layout's order, with their boxes. */
export function boxedParts(layout: Layout, ids: readonly PartId[]): Boxed[] {
  const chosen = new Set(ids);
  return layout.parts
    .filter((part) => chosen.has(part.id))
    .map((part) => ({ part, box: partBox(layout, part) }));
}

/** The box around several boxes. */
export const boxAroundAll = (boxes: readonly Box[]): Box => ({
  minX: Math.min(...boxes.map((box) => box.minX)),
  minY: Math.min(...boxes.map((box) => box.minY)),
  maxX: Math.max(...boxes.map((box) => box.maxX)),
  maxY: Math.max(...boxes.map((box) => box.maxY)),
});

/** Moves every part that has a step by it; the layout itself where none leads anywhere. */
export function moveEach(layout: Layout, steps: ReadonlyMap<PartId, Step>): Layout {
  return changeParts(layout, [...steps.keys()], (part) => {
    const { dx, dy } = steps.get(part.id)!;
    return movedTo(part, part.at_mm[0] + dx, part.at_mm[1] + dy);
  });
}
