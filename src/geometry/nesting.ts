/**
 * Rings that do not cross → a region: which of them bound material, and which way each has to turn. Millimetres.
 */
import { boxOfRing } from './region';
import { reversed, ringInRing, signedArea } from './ring';
import type { Region, Ring } from './types';

/** Which winding numbers are material. */
export type Fill = 'evenOdd' | 'nonZero' | 'positive' | 'negative';

function isFilled(winding: number, fill: Fill): boolean {
  if (fill === 'evenOdd') return winding % 2 !== 0;
  if (fill === 'nonZero') return winding !== 0;
  return fill === 'positive' ? winding > 0 : winding < 0;
}

/**
 * Rings that bound material under the fill rule, outer ones counter-clockwise and holes clockwise. Rings with material
 * on both sides (non-zero) are left out.
 */
export function nested(rings: readonly Ring[], fill: Fill): Region {
  const areas = rings.map(signedArea);
  const boxes = rings.map(boxOfRing);
  const region: Ring[] = [];
  rings.forEach((ring, i) => {
    let outside = 0;
    rings.forEach((other, k) => {
      if (k === i || Math.abs(areas[k]) <= Math.abs(areas[i])) return;
      const a = boxes[i];
      const b = boxes[k];
      if (a.minX < b.minX || a.maxX > b.maxX || a.minY < b.minY || a.maxY > b.maxY) return;
      if (ringInRing(ring, other)) outside += Math.sign(areas[k]);
    });
    const inside = outside + Math.sign(areas[i]);
    if (isFilled(outside, fill) === isFilled(inside, fill)) return;
    region.push(areas[i] > 0 === isFilled(inside, fill) ? ring : reversed(ring));
  });
  return region;
}
