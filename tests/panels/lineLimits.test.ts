/** Limits of a typed zone line [mathematics]: half of the platform's extent along the line's normal, 1 mm kept free. */
import { describe, expect, test } from 'vitest';
import { crossingLimits, stripLineLimits } from '../../src/panels/division/lineLimits';
import type { StripsZoning } from '../../src/layout/types';

const platform = { width_mm: 340, depth_mm: 200, margin_mm: 8, keepOuts: [] };
const strips = (run_deg: number, lines_mm: readonly number[]): StripsZoning => ({
  strategy: 'strips',
  run_deg,
  lines_mm,
  sharedBand_mm: 0,
  lasers: ['L1', 'L2', 'L3'],
});

describe('a zone line', () => {
  test('of the quadrants stays 1 mm inside the platform', () => {
    expect(crossingLimits(platform, 'x')).toEqual({ min: -169, max: 169 });
    expect(crossingLimits(platform, 'y')).toEqual({ min: -99, max: 99 });
  });
  test('between strips stays 1 mm from its neighbours', () => {
    expect(stripLineLimits(platform, strips(90, [-50, 60]), 0)).toEqual({ min: -169, max: 59 });
    expect(stripLineLimits(platform, strips(0, [-50, 60]), 1)).toEqual({ min: -49, max: 99 });
  });
  test('at 45° reaches to the platform’s corner: (340 + 200)/(2√2) = 190.919', () => {
    expect(stripLineLimits(platform, strips(45, [0]), 0).max).toBeCloseTo(189.919, 3);
  });
});
