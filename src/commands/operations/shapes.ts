/**
 * New shapes and parts on a plate: drawn ones and opened ones. Shape coordinates are relative to the shape's origin;
 * a drawn shape has its origin in the middle of its box, which is where the part is placed and turned.
 */
import type { Layout, LayoutRing, Part, PartId, Point, Shape, ShapeId } from '../../layout/types';
import type { Degrees, Mm } from '../../units/types';
import { MOST_PARTS } from '../../layout/limits';
import { fail, ok, type Result } from '../../layout/result';
import { roundDeg, roundMm } from '../../units/round';
import { roundPoint } from './edit';
import { freshShapeName, nextPartIds, roomFor, shapeStem } from './names';
import { freePlace, FreePlaces, takenBoxes } from './place';
import { orUnchanged, withAddition } from './review';

/** What a drawing tool hands over, in platform coordinates. */
export type Drawing =
  | { readonly kind: 'rectangle'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'disc'; readonly centre: Point; readonly radius_mm: Mm }
  | { readonly kind: 'ring'; readonly centre: Point; readonly outer_mm: Mm; readonly inner_mm: Mm }
  | { readonly kind: 'polygon'; readonly points: readonly Point[] };

/** Smaller things than this are slips of the hand. */
const SMALLEST_DRAWN_MM = 0.1;

interface Drawn {
  readonly at_mm: Point;
  readonly rings: readonly LayoutRing[];
}

function drawnRectangle(from: Point, to: Point): Drawn | null {
  const [w, h] = [roundMm(Math.abs(to[0] - from[0])), roundMm(Math.abs(to[1] - from[1]))];
  if (!(w >= SMALLEST_DRAWN_MM && h >= SMALLEST_DRAWN_MM)) return null;
  const [left, front] = [roundMm(-w / 2), roundMm(-h / 2)];
  const [right, back] = [roundMm(left + w), roundMm(front + h)];
  return {
    at_mm: [Math.min(from[0], to[0]) - left, Math.min(from[1], to[1]) - front],
    rings: [
      [
        [left, front],
        [right, front],
        [right, back],
        [left, back],
      ],
    ],
  };
}

function drawnPolygon(points: readonly Point[]): Drawn | null {
  const corners = points.map(roundPoint);
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const [left, right, front, back] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (!(right - left >= SMALLEST_DRAWN_MM && back - front >= SMALLEST_DRAWN_MM)) return null;
  const at: Point = [roundMm((left + right) / 2), roundMm((front + back) / 2)];
  return { at_mm: at, rings: [corners.map(([x, y]): Point => [x - at[0], y - at[1]])] };
}

function drawn(drawing: Drawing): Drawn | null {
  switch (drawing.kind) {
    case 'rectangle':
      return drawnRectangle(drawing.from, drawing.to);
    case 'polygon':
      return drawnPolygon(drawing.points);
    case 'disc': {
      const { centre, radius_mm } = drawing;
      if (!(2 * radius_mm >= SMALLEST_DRAWN_MM)) return null;
      return { at_mm: centre, rings: [{ circle_mm: [0, 0, radius_mm] }] };
    }
    case 'ring': {
      const { centre, outer_mm, inner_mm } = drawing;
      const sane = 2 * inner_mm >= SMALLEST_DRAWN_MM && 2 * (outer_mm - inner_mm) >= SMALLEST_DRAWN_MM;
      const circle = (r: Mm): LayoutRing => ({ circle_mm: [0, 0, r] });
      return sane ? { at_mm: centre, rings: [circle(outer_mm), circle(inner_mm)] } : null;
    }
  }
}

export const newPart = (id: PartId, shape: ShapeId, at_mm: Point, turn_deg: Degrees): Part => ({
  id,
  shape,
  at_mm: roundPoint(at_mm),
  turn_deg: roundDeg(turn_deg),
  seams: 'free',
  laser: null,
  timeFactor: 1,
});

/**
 * A drawn shape of one slab and a part of it. The layout itself where the drawing is a slip: narrower than 0.1 mm,
 * without area, or out of range.
 */
export function addDrawnPart(layout: Layout, drawing: Drawing, height_mm: Mm): Layout {
  const made = drawn(drawing);
  if (!made || !roomFor(layout, 1)) return layout;
  const name = freshShapeName(layout, drawing.kind);
  const shape: Shape = { slabs: [{ to_mm: height_mm, rings: made.rings }] };
  const part = newPart(nextPartIds(layout, 1)[0]!, name, made.at_mm, 0);
  return orUnchanged(layout, withAddition(layout, { shapes: { [name]: shape }, parts: [part] }));
}

export interface CopyPlace {
  readonly at_mm: Point | null;
  readonly turn_deg: Degrees;
}
export interface NewShape {
  /** Wanted name; a number is added where it is taken. */
  readonly name: string;
  readonly shape: Shape;
  /** How many parts of it; 1 where not given, 0 for the shape alone. */
  readonly copies?: number;
  readonly turn_deg?: Degrees;
  /** Of the first copies, where they differ: where each stands (null: at a free place) and its turn. */
  readonly places?: readonly CopyPlace[];
  /** Of its parts; free where not given. */
  readonly seams?: Part['seams'];
  /** Sound by the way it was made (sections of a mesh, millions of points): taken over unread. */
  readonly sound?: boolean;
}

/**
 * A part of a known shape at a free place, or where told; at the centre where no place is free, for the list of
 * problems to say so. The layout itself where the shape is unknown.
 */
export function addPart(layout: Layout, name: ShapeId, at_mm?: Point, turn_deg: Degrees = 0): Layout {
  const shape = Object.hasOwn(layout.shapes, name) ? layout.shapes[name] : undefined;
  if (!shape || !roomFor(layout, 1)) return layout;
  const at = at_mm ?? freePlace(layout, shape, turn_deg, takenBoxes(layout)) ?? [0, 0];
  const part = newPart(nextPartIds(layout, 1)[0]!, name, at, turn_deg);
  return orUnchanged(layout, withAddition(layout, { shapes: { [name]: shape }, parts: [part] }));
}

/** Copies of one shape where told or at free places, the boxes taken being kept up to date from one to the next. */
function standing(
  layout: Layout,
  shape: Shape,
  wanted: readonly CopyPlace[],
): Pick<Part, 'at_mm' | 'turn_deg'>[] {
  const places = new FreePlaces(layout);
  return wanted.map((place) => {
    const { turn_deg } = place;
    const at_mm = place.at_mm ?? places.find(shape, turn_deg) ?? ([0, 0] as const);
    places.take(shape, { at_mm, turn_deg });
    return { at_mm, turn_deg };
  });
}

/** The layout with one more shape. */
const withShape = (layout: Layout, key: ShapeId, { shape, sound = false }: NewShape): Result<Layout> =>
  sound
    ? ok({ ...layout, shapes: { ...layout.shapes, [key]: shape } })
    : withAddition(layout, { shapes: { [key]: shape }, parts: [] });

function addShape(layout: Layout, added: NewShape): Result<Layout> {
  const { name, shape, copies = 1, turn_deg = 0, places = [], seams = 'free' } = added;
  const stem = shapeStem(name);
  const key = Object.hasOwn(layout.shapes, stem) ? freshShapeName(layout, stem) : stem;
  const alone = withShape(layout, key, added);
  if (!alone.ok || copies === 0) return alone;
  if (!roomFor(layout, copies))
    return fail('too-many-parts', { found: layout.parts.length + copies, limit: MOST_PARTS });
  const wanted = Array.from({ length: copies }, (_, i) => places[i] ?? { at_mm: null, turn_deg });
  const ids = nextPartIds(layout, copies);
  const parts = standing(alone.value, shape, wanted).map((place, i): Part => ({
    ...newPart(ids[i]!, key, place.at_mm, place.turn_deg),
    seams,
  }));
  return ok({ ...alone.value, parts: [...layout.parts, ...parts] });
}

/**
 * Shapes from opened files with parts where told or at free places. Faults: those of readLayoutValue for a shape that no
 * layout may hold, too-many-parts.
 */
export const addShapes = (layout: Layout, shapes: readonly NewShape[]): Result<Layout> =>
  shapes.reduce<Result<Layout>>((so, shape) => (so.ok ? addShape(so.value, shape) : so), ok(layout));

/** Takes a shape out of the list; the layout itself where a part still has it. */
export function removeShape(layout: Layout, name: ShapeId): Layout {
  if (!Object.hasOwn(layout.shapes, name) || layout.parts.some((part) => part.shape === name)) return layout;
  const { [name]: _, ...shapes } = layout.shapes;
  return { ...layout, shapes };
}
