/**
 * Parts as seen from the front: per slab, the ranges of x that its section covers, joined where they overlap. Drawn
 * from the rear part to the front one, as a drawing hides what stands behind. Millimetres; x as on the plan, z upward.
 */
import type { PartView } from '../build/types';
import { boxOf } from '../geometry/region';
import type { Region } from '../geometry/types';
import type { Mm } from '../units/types';

export interface Block {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly left_mm: Mm;
  readonly right_mm: Mm;
}
export interface Silhouette {
  readonly view: PartView;
  readonly blocks: readonly Block[];
}

/** Ranges of x covered by a region, ascending, touching ones joined. Holes never uncover x: their rim surrounds them. */
export const rangesOfX = (region: Region): readonly (readonly [Mm, Mm])[] => {
  const ranges = region
    .map((ring) => boxOf([ring]))
    .map((box): [Mm, Mm] => [box.minX, box.maxX])
    .sort((a, b) => a[0] - b[0]);
  const joined: [Mm, Mm][] = [];
  for (const [from, to] of ranges) {
    const last = joined.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
};

const blocksOf = (view: PartView): readonly Block[] =>
  view.sections.flatMap(({ from_mm, to_mm, section }) =>
    rangesOfX(section).map(([left_mm, right_mm]) => ({ from_mm, to_mm, left_mm, right_mm })),
  );

const kept = new WeakMap<PartView, Silhouette>();
const silhouetteOf = (view: PartView): Silhouette => {
  const made = kept.get(view) ?? { view, blocks: blocksOf(view) };
  kept.set(view, made);
  return made;
};

const frontOf = (view: PartView): Mm => boxOf(view.footprint).minY;

/** All parts, rear first. */
export const silhouettes = (parts: readonly PartView[]): readonly Silhouette[] =>
  parts
    .map((view) => ({ view, front: frontOf(view) }))
    .sort((a, b) => b.front - a.front)
    .map(({ view }) => silhouetteOf(view));

export interface NamePlace {
  readonly x: Mm;
  /** The name's box, at the top of the part. */
  readonly box: Block;
  /** Too little room for a name. */
  readonly narrow: boolean;
}

/** Where a part's name stands: in its highest, leftmost block. Null where the part has no section. */
export const namePlace = (
  { view, blocks }: Silhouette,
  least_mm: Mm,
  leastHeight_mm: Mm,
): NamePlace | null => {
  const top = blocks.find((block) => block.to_mm >= view.height_mm - 1e-9);
  if (!top) return null;
  const x = (top.left_mm + top.right_mm) / 2;
  const box = {
    from_mm: view.height_mm - leastHeight_mm / 2,
    to_mm: view.height_mm,
    left_mm: x - least_mm / 2,
    right_mm: x + least_mm / 2,
  };
  return { x, box, narrow: top.right_mm - top.left_mm < least_mm || view.height_mm < leastHeight_mm };
};

/** True where a part nearer to the front hides a name. */
export const covers = ({ blocks }: Silhouette, { box }: NamePlace): boolean =>
  blocks.some(
    (block) =>
      block.left_mm < box.right_mm &&
      block.right_mm > box.left_mm &&
      block.from_mm < box.to_mm &&
      block.to_mm > box.from_mm,
  );
