// Cut edges and shared borders. Source of the expected values: mathematics.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sharedBorder } from '../../src/geometry/borders';
import { circleRing } from '../../src/geometry/circle';
import { intersect, subtract } from '../../src/geometry/clipper';
import { clipToConvex, cutByLine, untagged } from '../../src/geometry/halfPlane';
import { outlineLength, rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed, ringOf } from '../../src/geometry/ring';
import { tagCutEdges } from '../../src/geometry/tag';
import type { Region, TaggedRegion } from '../../src/geometry/types';
import { SEED, halfPlane, starRegion, taggedLength } from './shapes';

/** Random regions on a busy machine. */
const TIMEOUT = { timeout: 60_000 };

const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];
const left = (c: number) => ({ nx: 1, ny: 0, c });
const right = (c: number) => ({ nx: -1, ny: 0, c: -c });

function length(segments: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < segments.length; i += 4)
    sum += Math.hypot(segments[i + 2] - segments[i], segments[i + 3] - segments[i + 1]);
  return sum;
}

describe('tagCutEdges', () => {
  it('calls the new edges of a clipped piece cut, and no others', () => {
    const other: Region = [
      ringOf([
        [-5, 3],
        [10, 3],
        [10, 12],
        [-5, 12],
      ]),
    ];
    const piece = tagCutEdges(intersect(frame, other), frame);
    // Outline: left side 3 … 12, hole's lower side 5 … 10 and its left side 5 … 12. Cut: below 10, right of the hole 2,
    // above 5.
    expect(taggedLength(piece, 0)).toBeCloseTo(9 + 5 + 7, 6);
    expect(taggedLength(piece, 1)).toBeCloseTo(10 + 2 + 5, 6);
  });
  it('divides an edge that is outline first and cut further on', () => {
    const ell: Region = [
      ringOf([
        [0, 0],
        [30, 0],
        [30, 10],
        [10, 10],
        [10, 30],
        [0, 30],
      ]),
    ];
    const piece = tagCutEdges(intersect(ell, rectangle(-1, -1, 40, 10)), ell);
    expect(taggedLength(piece, 1)).toBeCloseTo(10, 6);
    expect(taggedLength(piece, 0)).toBeCloseTo(30 + 10 + 20 + 10, 6);
  });
  it('agrees with the exact cut on random regions and lines', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, halfPlane, (region, h) => {
        const exact = cutByLine(untagged(region), h).inside;
        const box = turnAndMove(
          rectangle(-500, -500, 0, 500),
          (Math.atan2(h.ny, h.nx) * 180) / Math.PI,
          h.nx * h.c,
          h.ny * h.c,
        );
        const tagged = tagCutEdges(intersect(region, box), region);
        expect(taggedLength(tagged, 0)).toBeCloseTo(taggedLength(exact, 0), 2);
        expect(taggedLength(tagged, 1)).toBeCloseTo(taggedLength(exact, 1), 2);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe('sharedBorder', () => {
  it('is the overlap of the cut edges only', () => {
    const plate = untagged(rectangle(0, 0, 20, 10));
    const { inside, outside } = cutByLine(plate, left(8));
    const [low] = [clipToConvex(outside, [{ nx: 0, ny: 1, c: 4 }])];
    expect([...sharedBorder(inside, outside)]).toEqual([8, 0, 8, 10]);
    expect([...sharedBorder(outside, inside)]).toEqual([8, 10, 8, 0]);
    expect(length(sharedBorder(inside, low))).toBe(4);
  });
  it('is empty for pieces that lie side by side by their outlines, apart, or meet in a corner', () => {
    const a = untagged(rectangle(0, 0, 10, 10));
    expect(sharedBorder(a, untagged(rectangle(10, 0, 20, 10)))).toHaveLength(0);
    const quarters = (x: TaggedRegion) => clipToConvex(x, [left(5), { nx: 0, ny: 1, c: 5 }]);
    const opposite = (x: TaggedRegion) => clipToConvex(x, [right(5), { nx: 0, ny: -1, c: -5 }]);
    expect(sharedBorder(quarters(a), opposite(a))).toHaveLength(0);
    expect(sharedBorder(clipToConvex(a, [left(3)]), clipToConvex(a, [right(5)]))).toHaveLength(0);
  });
  it('of two arms of a ring are the two cuts through its wall', () => {
    const ring: Region = [circleRing(0, 0, 150), reversed(circleRing(0, 0, 120))];
    const { inside, outside } = cutByLine(untagged(ring), { nx: 0.6, ny: 0.8, c: 10 });
    const border = sharedBorder(inside, outside);
    expect(border).toHaveLength(8);
    expect(length(border)).toBeCloseTo(2 * (Math.sqrt(150 ** 2 - 100) - Math.sqrt(120 ** 2 - 100)), 1);
  });
  it('finds rounded borders of the polygon engine as well as exact ones', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, fc.double({ min: 5, max: 40, noNaN: true }), (region, r) => {
        const disc: Region = [circleRing(13.37, -4.2, r)];
        const a = tagCutEdges(intersect(region, disc), region);
        const b = tagCutEdges(subtract(region, disc), region);
        const border = length(sharedBorder(a, b));
        expect(Math.abs(border - taggedLength(a, 1))).toBeLessThan(0.02);
        expect(Math.abs(taggedLength(a, 1) - taggedLength(b, 1))).toBeLessThan(0.02);
        expect(Math.abs(taggedLength(a, 0) + taggedLength(b, 0) - outlineLength(region))).toBeLessThan(0.02);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});
