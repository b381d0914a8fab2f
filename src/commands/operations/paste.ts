/**
 * Puts copied parts on a plate. They keep their distances from each other, their turns and, where it is free, their
 * number; a shape that stands under its name with another content gets a new name. Platform millimetres.
 */
import { MOST_PARTS } from '../../layout/limits';
import { fail, ok, type Result } from '../../layout/result';
import { sameValue } from '../../layout/same';
import type { Layout, Part, Point, Shape, ShapeId } from '../../layout/types';
import { roundMm } from '../../units/round';
import type { Mm } from '../../units/types';
import { boxAroundAll } from './boxes';
import type { Clip } from './clip';
import { groupStep } from './copies';
import { freshShapeName, nextPartIds, roomFor, shapeStem } from './names';
import { isFree, partBox, takenBoxes } from './place';

/** 'inPlace': where they were; 'beside': where they were or, where that is taken, beside it; a point: their middle there. */
export type PastePlace = 'inPlace' | 'beside' | Point;

/** As a drag has it. */
const STEP_MM: Mm = 0.1;
/** What is pasted onto its own like goes so far to the right and to the front. */
const ASIDE_MM: Mm = 5;
const OFF_MM: Mm = 10;

interface Named {
  readonly shapes: Layout['shapes'];
  readonly nameOf: ReadonlyMap<ShapeId, ShapeId>;
}

/** The name under which the layout has, or gets, a shape. */
function nameFor(layout: Layout, wanted: ShapeId, shape: Shape): ShapeId {
  const has = (name: ShapeId): boolean => Object.hasOwn(layout.shapes, name);
  if (!has(wanted) || sameValue(layout.shapes[wanted], shape)) return wanted;
  const stem = `${shapeStem(wanted)}-`;
  const alike = Object.keys(layout.shapes).find(
    (name) => name.startsWith(stem) && sameValue(layout.shapes[name], shape),
  );
  return alike ?? freshShapeName(layout, wanted);
}

function named(layout: Layout, clip: Clip): Named {
  let so = layout;
  const nameOf = new Map<ShapeId, ShapeId>();
  for (const [wanted, shape] of Object.entries(clip.shapes)) {
    const name = nameFor(so, wanted, shape);
    nameOf.set(wanted, name);
    if (!Object.hasOwn(so.shapes, name)) so = { ...so, shapes: { ...so.shapes, [name]: shape } };
  }
  return { shapes: so.shapes, nameOf };
}

/** Numbers that are free stay; the others get the first free ones. */
function numbered(layout: Layout, parts: readonly Part[]): Part[] {
  const taken = new Set(layout.parts.map(({ id }) => id));
  const kept = parts.filter(({ id }) => !taken.has(id));
  const fresh = nextPartIds({ ...layout, parts: [...layout.parts, ...kept] }, parts.length - kept.length);
  return parts.map((part) => (taken.has(part.id) ? { ...part, id: fresh.shift()! } : part));
}

const onStep = (value: Mm): Mm => roundMm(Math.round(value / STEP_MM) * STEP_MM);

function stepTo(layout: Layout, parts: readonly Part[], place: PastePlace): Point {
  if (place === 'inPlace') return [0, 0];
  const boxes = parts.map((part) => partBox(layout, part));
  if (place === 'beside') {
    const taken = takenBoxes(layout);
    if (boxes.every((box) => isFree(layout, taken, box))) return [0, 0];
    return groupStep(layout, boxes, taken) ?? [OFF_MM, -OFF_MM];
  }
  const { minX, minY, maxX, maxY } = boxAroundAll(boxes);
  return [onStep(place[0] - (minX + maxX) / 2), onStep(place[1] - (minY + maxY) / 2)];
}

const moved = (parts: readonly Part[], [dx, dy]: Point): Part[] =>
  parts.map((part) => ({ ...part, at_mm: [roundMm(part.at_mm[0] + dx), roundMm(part.at_mm[1] + dy)] }));

const standing = ({ shape, at_mm: [x, y] }: Part): string => `${shape} ${x} ${y}`;

/** Away from where the very same stands already, so that pasting twice shows two. */
function aside(layout: Layout, parts: readonly Part[]): readonly Part[] {
  const there = new Set(layout.parts.map(standing));
  let now = parts;
  while (now.some((part) => there.has(standing(part)))) now = moved(now, [ASIDE_MM, -ASIDE_MM]);
  return now;
}

/** The layout with the parts of a clip, under the numbers and shapes they get. Fault: too-many-parts. */
export function pasteClip(layout: Layout, clip: Clip, place: PastePlace): Result<Layout> {
  const found = layout.parts.length + clip.parts.length;
  if (!roomFor(layout, clip.parts.length)) return fail('too-many-parts', { found, limit: MOST_PARTS });
  const { shapes, nameOf } = named(layout, clip);
  const renamed = clip.parts.map((part): Part => ({ ...part, shape: nameOf.get(part.shape)! }));
  const wide = { ...layout, shapes };
  const placed = moved(renamed, stepTo(wide, renamed, place));
  const parts = place === 'inPlace' ? placed : aside(layout, placed);
  return ok({ ...wide, parts: [...layout.parts, ...numbered(layout, parts)] });
}
