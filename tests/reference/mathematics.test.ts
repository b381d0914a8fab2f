// Geometry held against mathematics: closed forms that anyone can check. Each source stands beside its check.
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { inset, outset, intersect } from '../../src/geometry/clipper';
import { areaInConvex, chords } from '../../src/geometry/halfPlane';
import { area, outlineLength, rectangle } from '../../src/geometry/region';
import { ringOf } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';

const regular = (n: number, r: number): Region => [
  ringOf(
    Array.from({ length: n }, (_, i) => [
      r * Math.cos((2 * Math.PI * i) / n),
      r * Math.sin((2 * Math.PI * i) / n),
    ]),
  ),
];
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
const channel: Region = [
  ringOf([
    [0, 0],
    [30, 0],
    [30, 30],
    [20, 30],
    [20, 10],
    [10, 10],
    [10, 30],
    [0, 30],
  ]),
];

describe('segment of a circle', () => {
  it('of chord 21 and height 6 has radius 12.1875 and area 89.254148', () => {
    // [published: help.matheass.eu, Circular sections]. The circle is a polygon within 0.005 mm: the chord alone
    // (21 mm long) may differ by half of 0.005 × 21 mm².
    const disc: Region = [circleRing(0, 0, 12.1875)];
    const line = { nx: 0, ny: -1, c: -(12.1875 - 6) };
    expect(Math.abs(areaInConvex(disc, [line]) - 89.254148)).toBeLessThan(0.0525);
    const [from, to] = chords(disc, { nx: 0, ny: 1, c: 12.1875 - 6 });
    expect(Math.abs(to - from - 21)).toBeLessThan(0.02);
  });
});

describe('offsets', () => {
  it('of a convex shape by r give A + P·r + π·r² outside; 30 × 20 by 2 gives 812.56637, and 416 inside', () => {
    // Steiner's formula [mathematics].
    expect(area(outset(rectangle(-15, -10, 15, 10), 2)) / 812.56637).toBeCloseTo(1, 5);
    expect(area(inset(rectangle(-15, -10, 15, 10), 2)) / 416).toBeCloseTo(1, 6);
    const hexagon = regular(6, 20);
    const steiner = area(hexagon) + outlineLength(hexagon) * 5 + 25 * Math.PI;
    expect(area(outset(hexagon, 5)) / steiner).toBeCloseTo(1, 5);
  });
  it('of an L and a U stay below that outside', () => {
    for (const shape of [ell, channel])
      for (const r of [0.5, 2, 4]) {
        const grown = area(outset(shape, r));
        expect(grown).toBeLessThan(area(shape) + outlineLength(shape) * r + Math.PI * r * r);
        // Five corners outward (quarter discs), one inward (two strips overlap in a square): the L exactly.
        if (shape === ell)
          expect(grown).toBeCloseTo(
            area(shape) + outlineLength(shape) * r + (5 * Math.PI * r * r) / 4 - r * r,
            2,
          );
      }
  });
});

describe('regular polygons', () => {
  it.each([
    [64, 0.9983944],
    [128, 0.9995985],
    [256, 0.9998996],
  ])('with %d sides fill %d of their circle', (n, ratio) => {
    // n/(2π)·sin(2π/n) [mathematics]; here measured as what the polygon and the disc have in common.
    expect(area(regular(n, 100)) / (Math.PI * 1e4)).toBeCloseTo(ratio, 7);
    expect(area(intersect(regular(n, 100), [circleRing(0, 0, 100.1)])) / (Math.PI * 1e4)).toBeCloseTo(
      ratio,
      6,
    );
  });
});

describe('parallel lines over all turns', () => {
  it('at spacing h meet a convex outline of length P on average P/(π·h) times', () => {
    // Cauchy-Crofton [mathematics].
    const h = 0.37;
    for (const shape of [rectangle(0, 0, 30, 5), regular(5, 12)]) {
      let met = 0;
      const turns = 720;
      for (let k = 0; k < turns; k++) {
        const angle = (Math.PI * k) / turns;
        const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
        const offset = ((k * 0.6180339887) % 1) * h;
        for (let c = offset - 60; c < 60; c += h) met += chords(shape, { nx, ny, c }).length / 2;
      }
      expect(met / turns / (outlineLength(shape) / (Math.PI * h))).toBeCloseTo(1, 2);
    }
  });
});
