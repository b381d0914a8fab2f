// Distances and overlaps. Sources: mathematics, and jsts (a port of JTS) as a second library.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { gap, overlapArea } from '../../src/geometry/distance';
import { rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { SEED, jsts, starRegion } from './shapes';

const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];

describe('gap', () => {
  it('is the least distance, and Infinity past the limit', () => {
    expect(gap(rectangle(0, 0, 10, 10), rectangle(13, 14, 20, 20), 6)).toBe(5);
    expect(gap(rectangle(0, 0, 10, 10), rectangle(13, 14, 20, 20), 5)).toBe(5);
    expect(gap(rectangle(0, 0, 10, 10), rectangle(13, 14, 20, 20), 4.9)).toBe(Infinity);
    expect(gap([circleRing(0, 0, 10)], [circleRing(25, 0, 10)], 6)).toBeCloseTo(5, 2);
  });
  it('is 0 where regions touch, cross or lie in one another, but not for a part standing free in a hole', () => {
    expect(gap(rectangle(0, 0, 10, 10), rectangle(10, 3, 20, 6), 5)).toBe(0);
    expect(gap(rectangle(0, 0, 10, 2), rectangle(4, -5, 6, 5), 5)).toBe(0);
    expect(gap(frame, rectangle(20, 5, 22, 6), 5)).toBe(0);
    expect(gap(rectangle(20, 5, 22, 6), frame, 5)).toBe(0);
    expect(gap(frame, rectangle(8, 8, 12, 12), 5)).toBe(3);
  });
  it('agrees with jsts on random regions', () => {
    fc.assert(
      fc.property(starRegion, starRegion, fc.double({ min: -100, max: 100, noNaN: true }), (a, b, x) => {
        const moved = turnAndMove(b, 0, x, 60);
        expect(gap(a, moved, 1000)).toBeCloseTo(jsts(a).distance(jsts(moved)), 9);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe('overlapArea', () => {
  it('is the common area', () => {
    expect(overlapArea(frame, rectangle(10, 10, 20, 30))).toBeCloseTo(100 - 25, 6);
    expect(overlapArea(frame, rectangle(31, 10, 40, 30))).toBe(0);
  });
  it('agrees with jsts on random regions', () => {
    fc.assert(
      fc.property(starRegion, starRegion, (a, b) => {
        expect(overlapArea(a, b)).toBeCloseTo(jsts(a).intersection(jsts(b)).getArea(), 2);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
