/**
 * Free places on the platform, judged by upright boxes around footprints: quick, and on the safe side. What really
 * touches what is decided by the engine's own check. Platform millimetres.
 */
import { boxOf, turnAndMove } from '../../geometry/region';
import { ringFromLayout } from '../../geometry/ring';
import type { Box } from '../../geometry/types';
import type { Layout, LayoutRing, Part, Point, Shape } from '../../layout/types';
import type { Degrees, Mm } from '../../units/types';
import { roundMm } from '../../units/round';

export interface Standing {
  readonly at_mm: Point;
  readonly turn_deg: Degrees;
}

const ringsBox = (rings: readonly LayoutRing[], { at_mm, turn_deg }: Standing): Box =>
  boxOf(turnAndMove(rings.map(ringFromLayout), turn_deg, at_mm[0], at_mm[1]));

const NOTHING: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

/** Box around a turned shape at the origin; straight over its points, as sections of a mesh hold millions. */
function boxAround({ slabs }: Shape, turn_deg: Degrees): Box {
  let { minX, minY, maxX, maxY } = NOTHING;
  const [cos, sin] = [Math.cos((turn_deg * Math.PI) / 180), Math.sin((turn_deg * Math.PI) / 180)];
  for (const { rings } of slabs)
    for (const ring of rings) {
      const [points, r] = 'circle_mm' in ring ? [[ring.circle_mm], ring.circle_mm[2]] : [ring, 0];
      for (const point of points) {
        const x = cos * point[0] - sin * point[1];
        const y = sin * point[0] + cos * point[1];
        if (x - r < minX) minX = x - r;
        if (x + r > maxX) maxX = x + r;
        if (y - r < minY) minY = y - r;
        if (y + r > maxY) maxY = y + r;
      }
    }
  return { minX, minY, maxX, maxY };
}

const turnedBoxes = new WeakMap<Shape, Map<Degrees, Box>>();

function turnedBox(shape: Shape, turn_deg: Degrees): Box {
  const known = turnedBoxes.get(shape) ?? new Map<Degrees, Box>();
  turnedBoxes.set(shape, known);
  const box = known.get(turn_deg) ?? boxAround(shape, turn_deg);
  known.set(turn_deg, box);
  return box;
}

/** Box around all sections of a shape where it stands. */
const shapeBox = (shape: Shape, { at_mm: [x, y], turn_deg }: Standing): Box =>
  shifted(turnedBox(shape, turn_deg), x, y);

/** Box around all sections of a part where it stands, in plate millimetres. */
export const partBox = (layout: Layout, part: Part): Box => shapeBox(layout.shapes[part.shape]!, part);

/** A box grown on every side. */
export const grown = (box: Box, by: Mm): Box => ({
  minX: box.minX - by,
  minY: box.minY - by,
  maxX: box.maxX + by,
  maxY: box.maxY + by,
});

/** Boxes that share less than this touch only. */
const SLACK_MM: Mm = 1e-9;

const meet = (a: Box, b: Box): boolean =>
  a.minX < b.maxX - SLACK_MM &&
  b.minX < a.maxX - SLACK_MM &&
  a.minY < b.maxY - SLACK_MM &&
  b.minY < a.maxY - SLACK_MM;

/** What is taken: boxes of parts and keep-outs, grown by the spacing. */
export function takenBoxes(layout: Layout): Box[] {
  const { keepOuts } = layout.machine.platform;
  const nowhere: Standing = { at_mm: [0, 0], turn_deg: 0 };
  return [
    ...layout.parts.map((part) => grown(partBox(layout, part), layout.limits.spacing_mm)),
    ...keepOuts.map((ring) => ringsBox([ring], nowhere)),
  ];
}

/** The platform inside its margin. */
function usable(layout: Layout): Box {
  const { width_mm, depth_mm, margin_mm } = layout.machine.platform;
  return {
    minX: margin_mm - width_mm / 2,
    minY: margin_mm - depth_mm / 2,
    maxX: width_mm / 2 - margin_mm,
    maxY: depth_mm / 2 - margin_mm,
  };
}

/** True where a box lies on the platform inside its margin and meets none of the boxes taken; touching is free. */
export function isFree(layout: Layout, taken: readonly Box[], box: Box): boolean {
  const field = usable(layout);
  const inside =
    box.minX >= field.minX - SLACK_MM &&
    box.minY >= field.minY - SLACK_MM &&
    box.maxX <= field.maxX + SLACK_MM &&
    box.maxY <= field.maxY + SLACK_MM;
  return inside && !taken.some((other) => meet(box, other));
}

/** The box moved by dx, dy. */
export const shifted = (box: Box, dx: Mm, dy: Mm): Box => ({
  minX: box.minX + dx,
  minY: box.minY + dy,
  maxX: box.maxX + dx,
  maxY: box.maxY + dy,
});

const ascending = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

/** Up to the next micrometre, so that rounding never brings a box back over its neighbour. */
const upToMicrometre = (value: Mm): Mm => roundMm(Math.ceil(value * 1000 - 1e-6) / 1000);

/**
 * The leftmost origin at which `own` (a box around the origin) is free with its front edge at y + own.minY: one walk
 * over what stands in its way from left to right. Boxes that were passed stay passed, as the origin only moves right.
 */
function leftmost(own: Box, y: Mm, startX: Mm, taken: readonly Box[]): Mm {
  const row = shifted(own, 0, y);
  const inTheWay = taken
    .filter((box) => box.minY < row.maxY - SLACK_MM && row.minY < box.maxY - SLACK_MM)
    .sort((a, b) => a.minX - b.minX);
  let x = startX;
  for (const box of inTheWay) {
    if (box.minX >= x + own.maxX - SLACK_MM) break;
    if (box.maxX > x + own.minX + SLACK_MM) x = upToMicrometre(box.maxX - own.minX);
  }
  return x;
}

/** The first of the ascending fronts, none of them before `from`, at which `own` finds a place, and that place. */
function placeFrom(
  layout: Layout,
  own: Box,
  taken: readonly Box[],
  fronts: readonly Mm[],
  from: Mm,
): { readonly at: Point; readonly front: Mm } | null {
  const startX = upToMicrometre(usable(layout).minX - own.minX);
  for (const front of fronts) {
    if (front < from) continue;
    const y = upToMicrometre(front - own.minY);
    const at: Point = [leftmost(own, y, startX, taken), y];
    if (isFree(layout, taken, shifted(own, at[0], at[1]))) return { at, front };
  }
  return null;
}

const frontsOf = (layout: Layout, taken: readonly Box[]): Mm[] =>
  ascending([usable(layout).minY, ...taken.map((box) => box.maxY)]);

/**
 * Where the origin of a shape may stand so that its box is free: front to back, then left to right; null where
 * nothing fits. Rows begin at the field's front edge and at the far sides of what is taken.
 */
export function freePlace(
  layout: Layout,
  shape: Shape,
  turn_deg: Degrees,
  taken: readonly Box[],
): Point | null {
  const own = turnedBox(shape, turn_deg);
  return placeFrom(layout, own, taken, frontsOf(layout, taken), -Infinity)?.at ?? null;
}

/**
 * Free places for many parts, one after the other. What is taken only grows, and a box that stood free before the front
 * where the last one of its kind found room could have been pushed forward to an earlier front; so the search for the next
 * one goes on from there, and ends for good where it found none.
 */
export class FreePlaces {
  private readonly taken: Box[];
  private readonly fronts: Mm[];
  private readonly reached = new Map<Shape, Map<Degrees, Mm>>();
  constructor(private readonly layout: Layout) {
    this.taken = takenBoxes(layout);
    this.fronts = frontsOf(layout, this.taken);
  }

  /** A free place for one more of a shape; null where none is left. `take` it, or another. */
  find(shape: Shape, turn_deg: Degrees): Point | null {
    const turns = this.reached.get(shape) ?? new Map<Degrees, Mm>();
    this.reached.set(shape, turns);
    const from = turns.get(turn_deg) ?? -Infinity;
    const found = placeFrom(this.layout, turnedBox(shape, turn_deg), this.taken, this.fronts, from);
    turns.set(turn_deg, found?.front ?? Infinity);
    return found?.at ?? null;
  }

  take(shape: Shape, standing: Standing): void {
    const box = takenBy(this.layout, shape, standing);
    this.taken.push(box);
    const next = this.fronts.findIndex((front) => front >= box.maxY);
    if (next === -1) this.fronts.push(box.maxY);
    else if (this.fronts[next] !== box.maxY) this.fronts.splice(next, 0, box.maxY);
  }
}

/** Grown as `takenBoxes` grows them: what a new part will take. */
const takenBy = (layout: Layout, shape: Shape, standing: Standing): Box =>
  grown(shapeBox(shape, standing), layout.limits.spacing_mm);
