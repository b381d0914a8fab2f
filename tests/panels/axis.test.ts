/**
 * The one time axis [mathematics]: steps of 1, 2 or 5 times a power of ten, no more than asked for, and everything on it.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { share, tickStep, timeAxis } from '../../src/panels/readout/axis';
import type { LayerFigures } from '../../src/build/types';

const figures = (exposure_s: number, bestPossible_s: number): LayerFigures =>
  ({ exposure_s, bestPossible_s }) as LayerFigures;

describe('the time axis', () => {
  test('holds the slowest laser and the best possible', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (exposure) => {
        const axis = timeAxis(figures(exposure, exposure / 2));
        expect(axis.end_s).toBeGreaterThanOrEqual(exposure);
        expect(axis.ticks_s.at(-1)!).toBeLessThanOrEqual(axis.end_s);
        expect(axis.ticks_s.length).toBeLessThanOrEqual(6);
      }),
      { seed: 20 },
    );
  });
  test.each([
    [70.546, 4, 20],
    [17.85, 4, 5],
    [40, 4, 10],
    [0.4, 4, 0.1],
  ])('cuts %f s into at most %i steps of %f s', (span, most, step) => {
    expect(tickStep(span, most)).toBeCloseTo(step, 12);
  });
  test('stands at a second where nothing is exposed', () => {
    expect(timeAxis(undefined).ticks_s).toEqual([0, 1]);
  });
  test('places half of its end at 50 %', () => {
    expect(share({ end_s: 10, ticks_s: [] }, 5)).toBe('50.00%');
  });
});
