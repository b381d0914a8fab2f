// The nearest points of two regions. Sources: worked out by hand, and jsts (a port of JTS) as a second library.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPoints, type Nearest } from '../../src/geometry/nearest';
import { rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import type { Mm, PlatePoint } from '../../src/units/types';
import { SEED, jsts, starRegion } from './shapes';

const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];
/** Tip at (12, 5), two edges of slope ±1. */
const wedge: Region = [Float64Array.of(12, 5, 22, -5, 22, 15)];
const swapped = ({ distance_mm, from, to }: Nearest): Nearest => ({ distance_mm, from: to, to: from });
const speck = ({ x, y }: PlatePoint, half: Mm): Region => rectangle(x - half, y - half, x + half, y + half);

describe('the nearest points of two regions', () => {
  it('are two corners, 3 and 4 apart, 5 in all', () => {
    const found = nearestPoints(rectangle(0, 0, 10, 10), rectangle(13, 14, 20, 20));
    expect(found).toEqual({ distance_mm: 5, from: { x: 10, y: 10 }, to: { x: 13, y: 14 } });
  });
  it('are a corner and the foot of its perpendicular on an edge, whichever region comes first', () => {
    const expected = { distance_mm: 2, from: { x: 10, y: 5 }, to: { x: 12, y: 5 } };
    expect(nearestPoints(rectangle(0, 0, 10, 10), wedge)).toEqual(expected);
    expect(nearestPoints(wedge, rectangle(0, 0, 10, 10))).toEqual(swapped(expected));
  });
  it('lie on the edge of a hole where one region stands free in it', () => {
    const found = nearestPoints(frame, rectangle(7, 8, 11, 11))!;
    expect(found.distance_mm).toBe(2);
    expect([found.from.x, found.to.x]).toEqual([5, 7]);
  });
  it('are none where one region lies in the material of the other', () => {
    expect(nearestPoints(frame, rectangle(20, 5, 22, 6))).toBeNull();
    expect(nearestPoints(rectangle(20, 5, 22, 6), frame)).toBeNull();
    expect(nearestPoints(frame, [])).toBeNull();
  });
  it('are as far apart as jsts finds random regions, and each lies on its own region', () => {
    const shift = fc.double({ min: -150, max: 150, noNaN: true });
    let apart = 0;
    fc.assert(
      fc.property(starRegion, starRegion, shift, shift, (a, b, x, y) => {
        const moved = turnAndMove(b, 0, x, y);
        const least = jsts(a).distance(jsts(moved));
        const found = nearestPoints(a, moved);
        expect(found?.distance_mm ?? 0).toBeCloseTo(least, 9);
        if (found === null) return;
        apart++;
        expect(Math.hypot(found.to.x - found.from.x, found.to.y - found.from.y)).toBeCloseTo(least, 9);
        expect(jsts(speck(found.from, 1e-6)).distance(jsts(a))).toBe(0);
        expect(jsts(speck(found.to, 1e-6)).distance(jsts(moved))).toBe(0);
      }),
      { seed: SEED, numRuns: 200 },
    );
    expect(apart).toBeGreaterThan(20);
  });
});
