/**
 * Parts as seen from the front: per slab, the ranges of x that its section covers, joined where they overlap. Drawn
 * from the rear part to the front one, as a drawing hides what stands behind. A shape of very many slabs is drawn in
 * rows of several: a row covers what any of its slabs covers. Millimetres; x as on the plan, z upward.
 */
import type { Layout, LayoutRing, Part, PartId, Shape, Slab } from '../layout/types';
import type { Degrees, Mm } from '../units/types';

export interface Block {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly left_mm: Mm;
  readonly right_mm: Mm;
}
export interface Silhouette {
  readonly id: PartId;
  readonly height_mm: Mm;
  /** y of its foremost point. */
  readonly front_mm: Mm;
  readonly blocks: readonly Block[];
  /** Its blocks are rows of several slabs. */
  readonly inRows: boolean;
}

/** Rows that the slabs of one shape are drawn in at most; the view is about 200 px high. */
const MOST_ROWS = 160;

type Range = readonly [from: Mm, to: Mm];

/** Extent of a ring along (ux, uy), a unit vector. */
function extentAlong(ring: LayoutRing, ux: number, uy: number): Range {
  if ('circle_mm' in ring) {
    const [x, y, r] = ring.circle_mm;
    const middle = ux * x + uy * y;
    return [middle - r, middle + r];
  }
  let [low, high] = [Infinity, -Infinity];
  for (const point of ring) {
    const along = ux * point[0] + uy * point[1];
    if (along < low) low = along;
    if (along > high) high = along;
  }
  return [low, high];
}

/** Ranges joined where they touch, ascending. */
export function joinRanges(ranges: readonly Range[]): readonly Range[] {
  const joined: [Mm, Mm][] = [];
  for (const [from, to] of [...ranges].sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
}

interface Front {
  readonly front_mm: Mm;
  readonly blocks: readonly Block[];
  readonly inRows: boolean;
}

/** Holes never uncover x: their rim surrounds them. */
function rowOf(slabs: readonly Slab[], from_mm: Mm, cos: number, sin: number): Block[] {
  const ranges = slabs.flatMap(({ rings }) => rings.map((ring) => extentAlong(ring, cos, -sin)));
  const to_mm = slabs.at(-1)!.to_mm;
  return joinRanges(ranges).map(([left_mm, right_mm]) => ({ from_mm, to_mm, left_mm, right_mm }));
}

/** A shape from the front, turned, about its own origin. */
function frontOf({ slabs }: Shape, turn_deg: Degrees): Front {
  const [cos, sin] = [Math.cos((turn_deg * Math.PI) / 180), Math.sin((turn_deg * Math.PI) / 180)];
  const perRow = Math.ceil(slabs.length / MOST_ROWS);
  const blocks: Block[] = [];
  for (let i = 0; i < slabs.length; i += perRow)
    blocks.push(...rowOf(slabs.slice(i, i + perRow), slabs[i - 1]?.to_mm ?? 0, cos, sin));
  let front_mm = Infinity;
  for (const { rings } of slabs)
    for (const ring of rings) front_mm = Math.min(front_mm, extentAlong(ring, sin, cos)[0]);
  return { front_mm, blocks, inRows: perRow > 1 };
}

const fronts = new WeakMap<Shape, Map<Degrees, Front>>();
function keptFront(shape: Shape, turn_deg: Degrees): Front {
  let byTurn = fronts.get(shape);
  if (!byTurn) fronts.set(shape, (byTurn = new Map()));
  let front = byTurn.get(turn_deg);
  if (!front) byTurn.set(turn_deg, (front = frontOf(shape, turn_deg)));
  return front;
}

const kept = new WeakMap<Part, { readonly shape: Shape; readonly silhouette: Silhouette }>();
function silhouetteOf(part: Part, shape: Shape): Silhouette {
  const known = kept.get(part);
  if (known?.shape === shape) return known.silhouette;
  const { front_mm, blocks, inRows } = keptFront(shape, part.turn_deg);
  const [x, y] = part.at_mm;
  const silhouette = {
    id: part.id,
    height_mm: shape.slabs.at(-1)?.to_mm ?? 0,
    front_mm: front_mm + y,
    blocks: blocks.map((block) => ({ ...block, left_mm: block.left_mm + x, right_mm: block.right_mm + x })),
    inRows,
  };
  kept.set(part, { shape, silhouette });
  return silhouette;
}

/** All parts, rear first. */
export const silhouettes = ({ parts, shapes }: Pick<Layout, 'parts' | 'shapes'>): readonly Silhouette[] =>
  parts
    .flatMap((part) => {
      const shape = shapes[part.shape];
      return shape ? [silhouetteOf(part, shape)] : [];
    })
    .sort((a, b) => b.front_mm - a.front_mm);

export interface NamePlace {
  readonly x: Mm;
  /** The name's box, at the top of the part. */
  readonly box: Block;
  /** Too little room for a name. */
  readonly narrow: boolean;
}

/** Where a part's name stands: in its highest, leftmost block. Null where the part has no section. */
export const namePlace = (
  { height_mm, blocks }: Pick<Silhouette, 'height_mm' | 'blocks'>,
  least_mm: Mm,
  leastHeight_mm: Mm,
): NamePlace | null => {
  const top = blocks.find((block) => block.to_mm >= height_mm - 1e-9);
  if (!top) return null;
  const x = (top.left_mm + top.right_mm) / 2;
  const box = {
    from_mm: height_mm - leastHeight_mm / 2,
    to_mm: height_mm,
    left_mm: x - least_mm / 2,
    right_mm: x + least_mm / 2,
  };
  return { x, box, narrow: top.right_mm - top.left_mm < least_mm || height_mm < leastHeight_mm };
};

/** True where a part nearer to the front hides a name. */
export const covers = ({ blocks }: Pick<Silhouette, 'blocks'>, { box }: NamePlace): boolean =>
  blocks.some(
    (block) =>
      block.left_mm < box.right_mm &&
      block.right_mm > box.left_mm &&
      block.from_mm < box.to_mm &&
      block.to_mm > box.from_mm,
  );
