/**
 * Copies and removal. Copies share the shape of their original and stand turned as it stands. Platform millimetres.
 */
import type { Box } from '../../geometry/types';
import type { Layout, Part, PartId, Point } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import { allFinite } from './edit';
import { nextPartIds, roomFor } from './names';
import { FreePlaces, isFree, partBox, shifted, takenBoxes } from './place';

/** Copies at once along one direction. */
export const MOST_COPIES = 100;

function chosenParts(layout: Layout, ids: readonly PartId[]): Part[] {
  const chosen = new Set(ids);
  return layout.parts.filter((part) => chosen.has(part.id));
}

/** The layout with copies of `originals` at `places`; itself where a layout may not hold them. */
function withCopies(layout: Layout, originals: readonly Part[], places: readonly Point[]): Layout {
  const near = places.every(([x, y]) => Math.max(Math.abs(x), Math.abs(y)) <= COORDINATE_LIMIT_mm);
  if (originals.length === 0 || !roomFor(layout, originals.length) || !near) return layout;
  const ids = nextPartIds(layout, originals.length);
  const copies = originals.map((part, i): Part => {
    const [x, y] = places[i]!;
    return { ...part, id: ids[i]!, at_mm: [roundMm(x), roundMm(y)] };
  });
  return { ...layout, parts: [...layout.parts, ...copies] };
}

const around = (boxes: readonly Box[]): Box => ({
  minX: Math.min(...boxes.map((box) => box.minX)),
  minY: Math.min(...boxes.map((box) => box.minY)),
  maxX: Math.max(...boxes.map((box) => box.maxX)),
  maxY: Math.max(...boxes.map((box) => box.maxY)),
});

/** A step right, back, left or front by the group's own size that lands on free ground; null where none does. */
export function groupStep(layout: Layout, boxes: readonly Box[], taken: readonly Box[]): Point | null {
  const { minX, minY, maxX, maxY } = around(boxes);
  const gap = layout.limits.spacing_mm;
  const dx = Math.ceil((maxX - minX + gap) * 10) / 10;
  const dy = Math.ceil((maxY - minY + gap) * 10) / 10;
  const steps: Point[] = [
    [dx, 0],
    [0, dy],
    [-dx, 0],
    [0, -dy],
  ];
  return steps.find((step) => boxes.every((box) => isFree(layout, taken, shifted(box, ...step)))) ?? null;
}

function scattered(layout: Layout, parts: readonly Part[]): Point[] {
  const places = new FreePlaces(layout);
  return parts.map(({ shape: name, at_mm, turn_deg }) => {
    const shape = layout.shapes[name]!;
    const at: Point = places.find(shape, turn_deg) ?? [at_mm[0] + 10, at_mm[1] + 10];
    places.take(shape, { at_mm: at, turn_deg });
    return at;
  });
}

/**
 * One copy of each part named: as a group beside the originals where there is room, else each at a free place, else
 * 10 mm off its original (and the list of problems says that they overlap). The layout itself where it may not hold them.
 */
export function duplicateParts(layout: Layout, ids: readonly PartId[]): Layout {
  const parts = chosenParts(layout, ids);
  if (parts.length === 0 || !roomFor(layout, parts.length)) return layout;
  const boxes = parts.map((part) => partBox(layout, part));
  const step = groupStep(layout, boxes, takenBoxes(layout));
  const places = step
    ? parts.map(({ at_mm: [x, y] }): Point => [x + step[0], y + step[1]])
    : scattered(layout, parts);
  return withCopies(layout, parts, places);
}

/** A copy of each part named on the very place of its original. The layout itself where it may not hold them. */
export const copyInPlace = (layout: Layout, ids: readonly PartId[]): Layout => {
  const parts = chosenParts(layout, ids);
  return withCopies(
    layout,
    parts,
    parts.map(({ at_mm }) => at_mm),
  );
};

export interface Rows {
  /** How many in x and in y, the original included: 1 to 100. */
  readonly countX: number;
  readonly countY: number;
  /** From one to the next; negative runs left or to the front. */
  readonly pitchX_mm: Mm;
  readonly pitchY_mm: Mm;
}

const validCount = (count: number): boolean => Number.isInteger(count) && count >= 1 && count <= MOST_COPIES;

/**
 * Rows of copies of the parts named, at a pitch. The layout itself where a count is not 1 to 100, a pitch longer than
 * 1 m, or the plate would hold more parts than a layout may.
 */
export function copyInRows(layout: Layout, ids: readonly PartId[], rows: Rows): Layout {
  const { countX, countY, pitchX_mm, pitchY_mm } = rows;
  const pitches =
    allFinite(pitchX_mm, pitchY_mm) && Math.max(Math.abs(pitchX_mm), Math.abs(pitchY_mm)) <= 1000;
  if (!validCount(countX) || !validCount(countY) || !pitches) return layout;
  const chosen = chosenParts(layout, ids);
  if (!roomFor(layout, chosen.length * (countX * countY - 1))) return layout;
  const originals: Part[] = [];
  const places: Point[] = [];
  for (let row = 0; row < countY; row++)
    for (let column = row === 0 ? 1 : 0; column < countX; column++)
      for (const part of chosen) {
        originals.push(part);
        places.push([part.at_mm[0] + column * pitchX_mm, part.at_mm[1] + row * pitchY_mm]);
      }
  return withCopies(layout, originals, places);
}

/** Names that `addDrawnPart` gives: such a shape goes with its last part, an opened one stays in the list. */
const DRAWN_NAME = /^(rectangle|disc|ring|polygon)-\d+$/;

/** Takes parts off the plate, and drawn shapes that nothing uses any more. */
export function removeParts(layout: Layout, ids: readonly PartId[]): Layout {
  const removed = new Set(ids);
  const parts = layout.parts.filter((part) => !removed.has(part.id));
  if (parts.length === layout.parts.length) return layout;
  const used = new Set(parts.map((part) => part.shape));
  const gone = new Set(chosenParts(layout, ids).map((part) => part.shape));
  const kept = ([name]: readonly [string, unknown]) =>
    used.has(name) || !gone.has(name) || !DRAWN_NAME.test(name);
  return { ...layout, parts, shapes: Object.fromEntries(Object.entries(layout.shapes).filter(kept)) };
}
