// Half-plane cuts along slits that the polygon engine's grid leaves in outlines. Expected areas: mathematics.
import { describe, expect, it } from 'vitest';
import { clipToConvex, untagged } from '../../src/geometry/halfPlane';
import { area } from '../../src/geometry/region';
import { ringOf } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';

describe('an outline that touches itself and, by rounding, runs past itself', () => {
  // A bar 0 ≤ x ≤ 10, −20 ≤ y ≤ 100 and a block left of it; a notch through the whole bar leaves its two ends joined by
  // a slit that the first edge, off by 1e-7 mm, turns inside out. The notch is a trapezoid of 50 and 30 mm by 10 mm.
  const slit: Region = [
    ringOf([
      [0, 100],
      [1e-7, 0],
      [-50, 0],
      [-50, -20],
      [10, -20],
      [10, 20],
      [0, 30],
      [0, 60],
      [10, 70],
      [10, 100],
    ]),
  ];
  const bar = 10 * 120 - 400;
  it.each([
    ['right of it', { nx: -1, ny: 0, c: 0 }, bar],
    ['left of it', { nx: 1, ny: 0, c: 0 }, 50 * 20],
  ])('is cut along the slit without losing a corner: %s', (_, plane, expected) => {
    expect(area(clipToConvex(untagged(slit), [plane]).rings)).toBeCloseTo(expected, 4);
  });
  it('keeps the edge along the slit as outline', () => {
    const { rings, cut } = clipToConvex(untagged(slit), [{ nx: -1, ny: 0, c: 0 }]);
    const tags = rings.flatMap((ring, r) =>
      [...cut[r]].map((tag, i) => [ring[2 * i], ring[2 * i + 1], tag] as const),
    );
    expect(tags).toContainEqual([0, 30, 0]);
  });
});
