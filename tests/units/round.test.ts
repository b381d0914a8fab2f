// Lengths are kept to 1 µm and angles to 0.001°.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundDeg, roundMm } from '../../src/units/round';

test.each<[number, number]>([
  [1.23449, 1.234],
  [1.2346, 1.235],
  [-1.2346, -1.235],
  [0.0005, 0.001],
  [-0.0005, -0.001],
  [1e5, 1e5],
])('%d mm is kept as %d', (value, kept) => {
  expect(roundMm(value)).toBe(kept);
});

test('no −0 comes out', () => {
  expect(Object.is(roundMm(-0.0001), 0)).toBe(true);
  expect(Object.is(roundDeg(-0.0001), 0)).toBe(true);
  expect(Object.is(roundDeg(-360), 0)).toBe(true);
});

test.each<[number, number]>([
  [0, 0],
  [360, 0],
  [-90, 270],
  [359.9996, 0],
  [725.25, 5.25],
  [-0.001, 359.999],
])('%d° is kept as %d°', (value, kept) => {
  expect(roundDeg(value)).toBe(kept);
});

test('a kept value is within half a step and is not changed by keeping it again', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (value) => {
      const mm = roundMm(value);
      expect(Math.abs(mm - value)).toBeLessThanOrEqual(0.0005 + 1e-10);
      expect(roundMm(mm)).toBe(mm);
      expect(Number(mm.toFixed(3))).toBe(mm);
      const deg = roundDeg(value);
      expect(deg).toBeGreaterThanOrEqual(0);
      expect(deg).toBeLessThan(360);
      expect(roundDeg(deg)).toBe(deg);
      const apart = Math.abs(Math.cos((deg * Math.PI) / 180) - Math.cos((value * Math.PI) / 180));
      expect(apart).toBeLessThan(1e-5);
    }),
    { seed: 23, numRuns: 2000 },
  );
});
