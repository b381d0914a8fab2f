/**
 * Measures of regions that remember their cut edges. Millimetres.
 */
import { boxesMeet, boxOf, componentRings, containsPoint } from '../geometry/region';
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Mm } from '../units/types';

/** Length of the true outline: cut edges do not count. */
export function outlineOf(region: TaggedRegion): Mm {
  let sum = 0;
  for (let r = 0; r < region.rings.length; r++) {
    const ring = region.rings[r];
    const cut = region.cut[r];
    const n = ring.length >> 1;
    for (let i = 0; i < n; i++) {
      if (cut[i]) continue;
      const j = i + 1 === n ? 0 : i + 1;
      const dx = ring[2 * j] - ring[2 * i];
      const dy = ring[2 * j + 1] - ring[2 * i + 1];
      // Math.hypot costs ten times as much and leaves garbage, here in the innermost loop of every cut
      sum += Math.sqrt(dx * dx + dy * dy);
    }
  }
  return sum;
}

/** Connected parts, each with its own tags. */
export function taggedComponents(region: TaggedRegion): TaggedRegion[] {
  if (region.rings.length <= 1) return region.rings.length === 0 ? [] : [region];
  return componentRings(region.rings).map((rings) => ({
    rings: rings.map((r) => region.rings[r]),
    cut: rings.map((r) => region.cut[r]),
  }));
}

/** Who holds the middle of an edge: the part that held the one before it is asked first; -1 where none does. */
function holderOf(parts: readonly Region[], x: Mm, y: Mm, before: number): number {
  if (before >= 0 && containsPoint(parts[before], x, y)) return before;
  return parts.findIndex((part, p) => p !== before && containsPoint(part, x, y));
}

/** The part that holds most middles of a region's edges; told as soon as no other can reach as many. */
function mostMiddles(region: Region, parts: readonly Region[]): number {
  const votes = parts.map(() => 0);
  let left = region.reduce((sum, ring) => sum + ring.length / 2, 0);
  let holder = -1;
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2, left--) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      holder = holderOf(parts, (ring[i] + ring[j]) / 2, (ring[i + 1] + ring[j + 1]) / 2, holder);
      if (holder < 0) continue;
      votes[holder]++;
      if (votes.every((count, p) => p === holder || votes[holder] - count >= left)) return holder;
    }
  }
  return votes.indexOf(Math.max(...votes));
}

/** Rounding of a clipped place. */
const ROUNDING: Mm = 1e-6;

/** The boxes that hold all of a box; where none does, those that meet it. */
function boxesAround(box: Box, boxes: readonly Box[]): readonly number[] {
  const all = boxes.map((_, b) => b);
  const holding = all.filter((b) => {
    const { minX, minY, maxX, maxY } = boxes[b];
    const inX = box.minX >= minX - ROUNDING && box.maxX <= maxX + ROUNDING;
    return inX && box.minY >= minY - ROUNDING && box.maxY <= maxY + ROUNDING;
  });
  return holding.length > 0 ? holding : all.filter((b) => boxesMeet(box, boxes[b]));
}

/**
 * Shares connected regions out among the disjoint parts they lie in, each to one: to the part that holds most middles of
 * its edges, since a middle on a common cut may fall either way.
 */
export function shareOut(regions: readonly Region[], parts: readonly TaggedRegion[]): Region[][] {
  const shares: Region[][] = parts.map(() => []);
  const boxes = parts.map((part) => boxOf(part.rings));
  for (const region of regions) {
    const box = boxOf(region);
    const near = boxesAround(box, boxes);
    const own =
      near.length === 1
        ? 0
        : mostMiddles(
            region,
            near.map((p) => parts[p].rings),
          );
    shares[near[own] ?? 0].push(region);
  }
  return shares;
}
