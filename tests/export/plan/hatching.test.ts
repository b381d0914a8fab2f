/**
 * The hatching that tells lasers apart. Expected values: mathematics (inside the outline, Cavalieri's sum of chords). Plate
 * millimetres, degrees counter-clockwise from +x; 6 to 10 px between lines is our own choice (no source).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hatchSegments, hatchSpacing } from '../../../src/export/plan/hatching';
import { laserStyle } from '../../../src/export/plan/palette';

const ring = (...points: readonly (readonly [number, number])[]) => Float64Array.from(points.flat());
const square = (x: number, y: number, side: number) =>
  ring([x, y], [x + side, y], [x + side, y + side], [x, y + side]);
const hole = (x: number, y: number, side: number) =>
  ring([x, y], [x, y + side], [x + side, y + side], [x + side, y]);

const segmentsOf = (flat: Float64Array) =>
  Array.from({ length: flat.length / 4 }, (_, i) => [...flat.subarray(4 * i, 4 * i + 4)] as number[]);
const lengthOf = ([x0 = 0, y0 = 0, x1 = 0, y1 = 0]: number[]) => Math.hypot(x1 - x0, y1 - y0);
const total = (flat: Float64Array) => segmentsOf(flat).reduce((sum, s) => sum + lengthOf(s), 0);
const inSquare = (x: number, y: number, [sx, sy, side]: readonly [number, number, number]) =>
  x >= sx - 1e-9 && x <= sx + side + 1e-9 && y >= sy - 1e-9 && y <= sy + side + 1e-9;

describe('hatching', () => {
  it('lies inside a square with a square hole at every angle', () => {
    const region = [square(-20, -20, 40), hole(-8, -5, 12)];
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 180, noNaN: true }),
        fc.double({ min: 0.3, max: 9, noNaN: true }),
        (angle, spacing) => {
          for (const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] of segmentsOf(hatchSegments(region, angle, spacing))) {
            for (const t of [0.001, 0.25, 0.5, 0.75, 0.999]) {
              const x = x0 + t * (x1 - x0);
              const y = y0 + t * (y1 - y0);
              expect(inSquare(x, y, [-20, -20, 40])).toBe(true);
              const deepInHole = x > -8 + 1e-6 && x < 4 - 1e-6 && y > -5 + 1e-6 && y < 7 - 1e-6;
              expect(deepInHole).toBe(false);
            }
          }
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it('covers the region: total length × spacing tends to the area', () => {
    // mathematics: the sum of chord lengths times their distance is a Riemann sum of the area (Cavalieri)
    const region = [square(-20, -20, 40), hole(-8, -5, 12)];
    for (const angle of [0, 20, 45, 90, 135, 165]) {
      const area = total(hatchSegments(region, angle, 0.01)) * 0.01;
      expect(Math.abs(area / (1600 - 144) - 1)).toBeLessThan(1e-3);
    }
  });

  it('leaves no gap wider than the spacing: lines stand at whole multiples of it', () => {
    const lines = segmentsOf(hatchSegments([square(-10, -10, 20)], 0, 3)).map(([, y]) => y ?? NaN);
    expect(lines).toEqual([-9, -6, -3, 0, 3, 6, 9]);
  });

  it('hatches through from one piece to its neighbour', () => {
    const whole = total(hatchSegments([square(0, 0, 20)], 33, 1.7));
    const left = ring([0, 0], [7.3, 0], [7.3, 20], [0, 20]);
    const right = ring([7.3, 0], [20, 0], [20, 20], [7.3, 20]);
    const parts = total(hatchSegments([left], 33, 1.7)) + total(hatchSegments([right], 33, 1.7));
    expect(parts).toBeCloseTo(whole, 9);
  });

  it('is empty where the region is empty or lies between two lines', () => {
    expect(hatchSegments([], 45, 1)).toHaveLength(0);
    expect(hatchSegments([square(0.2, 0.2, 0.5)], 0, 1)).toHaveLength(0);
  });

  it('keeps lines 6 to 10 px apart at every zoom for every laser', () => {
    for (let index = 0; index < 31; index++) {
      const wanted = laserStyle(index, 'light').hatching.spacing_px;
      for (let zoom = 0.02; zoom <= 400; zoom *= 1.043) {
        const px = hatchSpacing(wanted, zoom) * zoom;
        expect(px).toBeGreaterThanOrEqual(6);
        expect(px).toBeLessThanOrEqual(10);
      }
    }
  });
});
