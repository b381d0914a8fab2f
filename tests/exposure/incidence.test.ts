// Incidence. Expected values: 1/cos θ from a table of cosines [mathematics].
import { describe, expect, it } from 'vitest';
import { incidenceAt, largestIncidence, spotStretch } from '../../src/exposure/incidence';
import { rectangle } from '../../src/geometry/region';

const laser = { foot_mm: [-75, -75] as const, workingHeight_mm: 540 };

describe('incidence', () => {
  it('is 0 below the scanner and 45° one working height away', () => {
    expect(incidenceAt(laser, -75, -75)).toBe(0);
    expect(spotStretch(0)).toBe(1);
    expect(incidenceAt(laser, -75 + 540, -75)).toBeCloseTo(45, 12);
    expect(spotStretch(45)).toBeCloseTo(Math.SQRT2, 12);
  });
  it.each([
    [10, 1.015427],
    [20, 1.064178],
  ])('of %d° makes the spot longer by %d', (angle, factor) => {
    // 1/cos θ: 10° 1.015427, 20° 1.064178 [mathematics].
    const away = 540 * Math.tan((angle * Math.PI) / 180);
    expect(incidenceAt(laser, -75 + away * 0.6, -75 + away * 0.8)).toBeCloseTo(angle, 9);
    expect(spotStretch(angle)).toBeCloseTo(factor, 6);
  });
  it('is largest at the corner farthest from the foot', () => {
    const farthest = (Math.atan(Math.hypot(175, 95) / 540) * 180) / Math.PI;
    expect(largestIncidence(laser, [rectangle(0, 0, 10, 10), rectangle(90, -5, 100, 20)])).toBeCloseTo(
      farthest,
      9,
    );
    expect(largestIncidence(laser, [])).toBeNull();
  });
});
