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

/**
 * Whether a connected region that lies in one of several disjoint parts lies in this one: some middle of its edges is
 * inside. Edges along a common cut tell nothing, all others do.
 */
export function liesIn(region: Region, part: Region): boolean {
  if (!boxesMeet(boxOf(region), boxOf(part))) return false;
  return region.some((ring) => {
    for (let i = 0; i < ring.length; i += 2) {
      const j = i + 2 === ring.length ? 0 : i + 2;
      if (containsPoint(part, (ring[i] + ring[j]) / 2, (ring[i + 1] + ring[j + 1]) / 2)) return true;
    }
    return false;
  });
}
