/**
 * What figures leave out: area times height, by hand (mathematics). A layer of 100 mm² without a laser over 0.05 mm is
 * 5 mm³.
 */
import { describe, expect, test } from 'vitest';
import type { LayerTotals, Stretch } from '../../src/build/types';
import { leftOutOfLayer } from '../../src/panels/readout/leftOut';
import { leftOutHeights, leftOutOfBuild, leftOutVolume } from '../../src/panels/readout/leftOutBuild';

const layer = (unassigned_mm2: number) => ({ unassigned_mm2 }) as LayerTotals;
const stretch = (from_mm: number, to_mm: number, unassigned_mm2: number) =>
  ({ from_mm, to_mm, firstLayer: 1, lastLayer: 1, figures: layer(unassigned_mm2) }) as Stretch;

describe('what a layer leaves out', () => {
  test('is said as an area', () => {
    expect(leftOutOfLayer(layer(5494))).toBe('without 5494\u202fmm²');
  });
  test('is nothing where all is exposed, an outline’s rounding included, and on an empty plate', () => {
    expect(leftOutOfLayer(layer(0))).toBeUndefined();
    expect(leftOutOfLayer(layer(0.004))).toBeUndefined();
    expect(leftOutOfLayer(undefined)).toBeUndefined();
  });
});

describe('what the build leaves out', () => {
  const stretches = [stretch(0, 10, 100), stretch(10, 30, 50), stretch(30, 40, 0), stretch(40, 50, 200)];
  const left = leftOutOfBuild({ stretches })!;
  test('is area times height over the stretches: 100·10 + 50·20 + 200·10 = 4000 mm³', () => {
    expect(left.volume_cm3).toBeCloseTo(4, 12);
    expect(leftOutVolume(left)).toBe('without 4.00\u202fcm³');
  });
  test('lies at heights in a row, which are joined', () => {
    expect(left.ranges).toEqual([
      { from_mm: 0, to_mm: 30 },
      { from_mm: 40, to_mm: 50 },
    ]);
    expect(leftOutHeights(left)).toBe('z 0–50 mm in 2 ranges');
    expect(leftOutHeights({ ...left, ranges: left.ranges.slice(0, 1) })).toBe('z 0–30 mm');
  });
  test('is null where every layer is exposed whole', () => {
    expect(leftOutOfBuild({ stretches: [stretch(0, 10, 0)] })).toBeNull();
  });
});
