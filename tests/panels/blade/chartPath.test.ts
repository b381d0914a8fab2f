// The met length as a line on screen. Expected values: by hand, on a scale of one pixel a millimetre.
import { describe, expect, test } from 'vitest';
import type { MetProfile } from '../../../src/build/bladeProfile';
import { metPath, stretchOf } from '../../../src/panels/blade/chartPath';

const SCALE = { toX: (place: number) => 100 + place, toY: (met: number) => 50 - met };
const profile = (...points: readonly (readonly [number, number, number])[]): MetProfile => ({
  at_mm: Float64Array.from(points, ([place]) => place),
  below_mm: Float64Array.from(points, ([, below]) => below),
  above_mm: Float64Array.from(points, ([, , above]) => above),
});
/** Jumps to 40 at −10, falls to 20 at 10, drops to 0 there. */
const wedge = profile([-10, 0, 40], [10, 20, 0]);

describe('the path of the met length', () => {
  test('goes up a jump, along a slope and down again', () => {
    expect(metPath(wedge, SCALE)).toBe(
      'M90.0 50.0L90.0 10.0L90.0 50.0L90.0 10.0L110.0 30.0L110.0 30.0L110.0 50.0L110.0 50.0',
    );
  });
  test('is empty where nothing is met', () => {
    expect(metPath(profile(), SCALE)).toBe('');
  });
  test('keeps the least and the largest of what falls into one column of pixels', () => {
    const crowd = Array.from({ length: 1000 }, (_, i) => [i / 1e5, (i * 7) % 31, (i * 7) % 31] as const);
    const path = metPath(profile(...crowd), SCALE);
    expect(path.length).toBeLessThan(60);
    expect(path).toContain('100.0 50.0');
    expect(path).toContain('100.0 20.0');
  });
});

describe('a stretch of it', () => {
  const rise = (from_mm: number, to_mm: number) => ({ rise_mm: 0, from_mm, to_mm, back: from_mm > to_mm });
  test('ends between vertices where the rise does', () => {
    expect(stretchOf(wedge, rise(-10, -9))).toEqual(profile([-10, 0, 40], [-9, 39, 39]));
    expect(stretchOf(wedge, rise(0, -10))).toEqual(profile([-10, 0, 40], [0, 30, 30]));
  });
  test('of a jump is the jump', () => {
    expect(stretchOf(wedge, rise(10, 10))).toEqual(profile([10, 20, 0]));
  });
});
