/**
 * Measures of regions that remember their cut edges. Millimetres.
 */
import { boxesMeet, boxOf, componentRings, containsPoint } from '../geometry/region';
import type { Region, TaggedRegion } from '../geometry/types';
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
      sum += Math.hypot(ring[2 * j] - ring[2 * i], ring[2 * j + 1] - ring[2 * i + 1]);
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

/** Middles of a region's edges that lie in a part: how surely it lies there. */
function middlesIn(region: Region, part: Region): number {
  if (!boxesMeet(boxOf(region), boxOf(part))) return 0;
  let count = 0;
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      if (containsPoint(part, (ring[i] + ring[j]) / 2, (ring[i + 1] + ring[j + 1]) / 2)) count++;
    }
  }
  return count;
}

/**
 * Shares connected regions out among the disjoint parts they lie in, each to one: to the part that holds most middles of
 * its edges, since a middle on a common cut may fall either way.
 */
export function shareOut(regions: readonly Region[], parts: readonly TaggedRegion[]): Region[][] {
  const shares: Region[][] = parts.map(() => []);
  for (const region of regions) {
    const votes = parts.map((part) => middlesIn(region, part.rings));
    shares[votes.indexOf(Math.max(...votes))].push(region);
  }
  return shares;
}
