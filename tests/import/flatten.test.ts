// Curves to points: the 0.005 mm of the design, measured point by point against the curve itself [mathematics].
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc, bezier, mapCurve, type ArcCurve, type Curve } from '../../src/import/curve';
import { flatten } from '../../src/import/flatten';

const LIMIT_mm = 0.005;

/** The curve's own points, by its definition. */
function exact(curve: Curve, share: number): [number, number] {
  if (curve.kind === 'arc') {
    const t = curve.from + share * (curve.to - curve.from);
    return [
      curve.cx + curve.ux * Math.cos(t) + curve.vx * Math.sin(t),
      curve.cy + curve.uy * Math.cos(t) + curve.vy * Math.sin(t),
    ];
  }
  if (curve.kind === 'line') throw new Error('not needed');
  const [ax, ay, bx, by, cx, cy, dx, dy] = curve.points;
  const [s, t] = [1 - share, share];
  const w = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return [w[0] * ax + w[1] * bx + w[2] * cx + w[3] * dx, w[0] * ay + w[1] * by + w[2] * cy + w[3] * dy];
}

function distanceToPolyline(flat: readonly number[], x: number, y: number): number {
  let least = Infinity;
  for (let i = 2; i < flat.length; i += 2) {
    const [px, py, dx, dy] = [flat[i - 2], flat[i - 1], flat[i] - flat[i - 2], flat[i + 1] - flat[i - 1]];
    const length = dx * dx + dy * dy;
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - px) * dx + (y - py) * dy) / length));
    least = Math.min(least, Math.hypot(x - px - t * dx, y - py - t * dy));
  }
  return least;
}

/** Largest distance either way: curve points from the polygon, polygon vertices from the curve. */
function deviation(curve: Curve): number {
  const flat = flatten(curve);
  const dense = Array.from({ length: 4001 }, (_, i) => exact(curve, i / 4000));
  const away = dense.filter((_, i) => i % 4 === 0).map(([x, y]) => distanceToPolyline(flat, x, y));
  const line = dense.flat();
  for (let i = 0; i < flat.length; i += 2) away.push(distanceToPolyline(line, flat[i], flat[i + 1]));
  return Math.max(...away);
}

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('points stay within 0.005 mm of the curve', () => {
  test('arcs of circles and ellipses, whatever map they went through', () => {
    const map = fc.tuple(
      number(-3, 3),
      number(-3, 3),
      number(-3, 3),
      number(-3, 3),
      number(-9, 9),
      number(-9, 9),
    );
    fc.assert(
      fc.property(number(0.05, 100), number(0, 6), number(-6.28, 6.28), map, (r, from, sweep, m) => {
        expect(deviation(mapCurve(m, arc(1, 2, r, r, from, from + sweep)))).toBeLessThan(LIMIT_mm);
      }),
      { seed: 20261129, numRuns: 60 },
    );
  });

  test('cubic curves', () => {
    fc.assert(
      fc.property(fc.array(number(-60, 60), { minLength: 8, maxLength: 8 }), (points) => {
        expect(deviation(bezier(points))).toBeLessThan(LIMIT_mm + 1e-4);
      }),
      { seed: 20261130, numRuns: 60 },
    );
  });
});

/** Area between the curve and its chord, by Green's theorem on the points. */
function chordArea(flat: readonly number[]): number {
  let twice = 0;
  for (let i = 0; i < flat.length; i += 2) {
    const j = (i + 2) % flat.length;
    twice += flat[i] * flat[j + 1] - flat[j] * flat[i + 1];
  }
  return twice / 2;
}

test('arcs keep their area to rounding: the segment r²(θ − sin θ)/2', () => {
  for (const r of [0.3, 2, 12.1875, 400])
    for (const sweep of [0.4, 1, Math.PI / 2, 3, 6])
      for (const from of [0, 0.7, 4]) {
        const flat = flatten(arc(3, -8, r, r, from, from + sweep));
        const segment = (r * r * (sweep - Math.sin(sweep))) / 2;
        expect(Math.abs(chordArea(flat) / segment - 1)).toBeLessThan(1e-9);
      }
});

test('the polygon of an arc has the arc’s own box', () => {
  const turned: ArcCurve = { ...arc(0, 0, 1, 1), ux: 30, uy: 10, vx: -4, vy: 12 };
  const flat = flatten(turned);
  const xs = flat.filter((_, i) => i % 2 === 0);
  const ys = flat.filter((_, i) => i % 2 === 1);
  // Extremes of c + u cos t + v sin t are ±√(u² + v²) in each coordinate.
  expect(Math.max(...xs)).toBeCloseTo(Math.hypot(30, 4), 9);
  expect(Math.min(...ys)).toBeCloseTo(-Math.hypot(10, 12), 9);
});

test('points are few: a circle of 100 mm needs no more than twice the fewest possible', () => {
  // Fewest sides for a chord error e on either side of a circle r: π / √(2e/r) · √½ (outside and inside alike).
  const fewest = (Math.PI / Math.sqrt((2 * LIMIT_mm) / 50)) * Math.SQRT1_2;
  expect(flatten(arc(0, 0, 50, 50)).length / 2).toBeLessThan(2 * fewest);
});
