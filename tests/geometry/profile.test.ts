// Sweep profiles. Sources: mathematics (closed forms), and the half-plane cut as an independent second way.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { cutByLine, untagged } from '../../src/geometry/halfPlane';
import { sweepProfile } from '../../src/geometry/profile';
import { area, rectangle } from '../../src/geometry/region';
import { reversed, ringOf } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { SEED, halfPlane, halfPlaneRectangle, jsts, starRegion } from './shapes';

describe('a sweep profile', () => {
  it('of a frame is piecewise exact, with jumps of the outline at edges across the sweep', () => {
    const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];
    const profile = sweepProfile(untagged(frame), 1, 0);
    expect([profile.min, profile.max]).toEqual([0, 30]);
    expect([profile.area(-1), profile.area(5), profile.area(10), profile.area(30)]).toEqual([
      0, 100, 150, 500,
    ]);
    expect([profile.outline(-1), profile.outline(0), profile.outline(4)]).toEqual([0, 20, 28]);
    expect([profile.outline(5), profile.outline(30)]).toEqual([40, 140]);
    expect([profile.chord(3), profile.chord(5), profile.chord(10), profile.chord(20)]).toEqual([
      20, 20, 10, 20,
    ]);
  });
  it('of a triangle grows with the square of the way', () => {
    const profile = sweepProfile(
      untagged([
        ringOf([
          [0, 0],
          [10, -5],
          [10, 5],
        ]),
      ]),
      1,
      0,
    );
    for (const c of [1, 2.5, 7]) {
      expect(profile.area(c)).toBeCloseTo((c * c) / 2, 12);
      expect(profile.chord(c)).toBeCloseTo(c, 12);
      expect(profile.outline(c)).toBeCloseTo(2 * c * Math.sqrt(1.25), 12);
      expect(profile.atArea((c * c) / 2)).toBeCloseTo(c, 12);
    }
  });
  it('leaves cut edges out of the outline', () => {
    const half = cutByLine(untagged(rectangle(0, 0, 10, 4)), { nx: 1, ny: 0, c: 6 }).inside;
    expect(sweepProfile(half, 1, 0).outline(6)).toBe(16);
    expect(sweepProfile(half, 0, 1).outline(4)).toBe(16);
  });
  it('of a disc follows the circular segment', () => {
    const profile = sweepProfile(untagged([circleRing(0, 0, 50)]), 0, 1);
    for (const c of [-40, -10, 0, 25, 49]) {
      const segment = 2500 * Math.acos(-c / 50) + c * Math.sqrt(2500 - c * c);
      expect(Math.abs(profile.area(c) - segment)).toBeLessThan(0.3);
    }
  });
  it('agrees with jsts and with its own inverse on random regions', () => {
    fc.assert(
      fc.property(starRegion, halfPlane, (region, h) => {
        const profile = sweepProfile(untagged(region), h.nx, h.ny);
        const inside = jsts(region).intersection(jsts(halfPlaneRectangle(h)));
        expect(Math.abs(profile.area(h.c) - inside.getArea())).toBeLessThan(1e-7);
        const outlineAndChord = inside.getArea() === 0 ? 0 : inside.getLength();
        expect(Math.abs(profile.outline(h.c) + profile.chord(h.c) - outlineAndChord)).toBeLessThan(1e-6);
        for (const share of [0, 0.1, 0.5, 0.99, 1]) {
          const wanted = share * area(region);
          expect(profile.area(profile.atArea(wanted))).toBeCloseTo(wanted, 7);
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
