/**
 * What is worth a second look in shapes that were read: very small ones, and those that overlap. Millimetres, mm².
 */
import { intersect } from '../geometry/clipper';
import { area, boxesMeet, boxOf } from '../geometry/region';
import { reversed, ringFromLayout, signedArea } from '../geometry/ring';
import type { Box, Region } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';
import type { ImportShape, Remark } from './types';

/** Common practice, no source: about the width of one track of a laser; nothing smaller is meant as a part. */
export const SMALL_mm: Mm = 0.1;
/** Less is rounding along a common side. */
const OVERLAP_mm2: Mm2 = 0.001;
/** Points of shapes intersected with each other; further pairs are not looked at. */
const MOST_COMPARED = 300_000;
/** Pairs of boxes looked at. */
const MOST_PAIRS = 2_000_000;

/** Shapes narrower or shallower than SMALL_mm. */
export function smallShapes(shapes: readonly ImportShape[]): Remark {
  const small = shapes.filter(({ width_mm, height_mm }) => Math.min(width_mm, height_mm) < SMALL_mm);
  return { count: small.length, first: small.slice(0, 1).map(({ name }) => name) };
}

interface Laid {
  readonly name: string;
  readonly region: Region;
  readonly box: Box;
  readonly points: number;
}

/** Outer rings counter-clockwise, holes clockwise. */
function laid({ name, rings }: ImportShape): Laid {
  const region = rings.map((given, i) => {
    const ring = ringFromLayout(given);
    return signedArea(ring) > 0 === (i === 0) ? ring : reversed(ring);
  });
  return { name, region, box: boxOf(region), points: region.reduce((sum, ring) => sum + ring.length / 2, 0) };
}

/** Pairs whose boxes meet, by a sweep along x. */
function* meetingPairs(shapes: readonly Laid[]): Generator<readonly [Laid, Laid]> {
  const order = [...shapes].sort((a, b) => a.box.minX - b.box.minX);
  let looked = 0;
  for (const [i, a] of order.entries())
    for (let k = i + 1; k < order.length && order[k].box.minX < a.box.maxX; k++) {
      if (++looked > MOST_PAIRS) return;
      if (boxesMeet(a.box, order[k].box)) yield [a, order[k]];
    }
}

/** Pairs of shapes that share area; in drawings with very many pairs those that were looked at. */
export function overlappingShapes(shapes: readonly ImportShape[]): Remark {
  let count = 0;
  let compared = 0;
  let first: readonly string[] = [];
  for (const [a, b] of meetingPairs(shapes.map(laid))) {
    compared += a.points + b.points;
    if (compared > MOST_COMPARED) break;
    if (area(intersect(a.region, b.region)) <= OVERLAP_mm2) continue;
    if (++count === 1) first = [a.name, b.name];
  }
  return { count, first };
}
