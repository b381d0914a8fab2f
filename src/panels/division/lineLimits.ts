/**
 * Between which values a zone line may be typed: on the platform, and a narrowest zone away from its neighbours.
 * Millimetres along the line's normal.
 */
import { NARROWEST_ZONE_MM } from '../../commands/operations';
import type { Platform, StripsZoning } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { stripNormal } from '../../zoning/lines';

export interface LineLimits {
  readonly min: Mm;
  readonly max: Mm;
}

const within = (low: Mm, high: Mm): LineLimits => ({
  min: roundMm(low + NARROWEST_ZONE_MM),
  max: roundMm(high - NARROWEST_ZONE_MM),
});

/** For a line of the quadrants: along x or y. */
export function crossingLimits(platform: Platform, axis: 'x' | 'y'): LineLimits {
  const half = (axis === 'x' ? platform.width_mm : platform.depth_mm) / 2;
  return within(-half, half);
}

/** For the strip line of that index, between its neighbours. */
export function stripLineLimits(platform: Platform, zoning: StripsZoning, index: number): LineLimits {
  const [nx, ny] = stripNormal(zoning.run_deg);
  const half = (platform.width_mm * Math.abs(nx) + platform.depth_mm * Math.abs(ny)) / 2;
  const low = Math.max(zoning.lines_mm[index - 1] ?? -half, -half);
  const high = Math.min(zoning.lines_mm[index + 1] ?? half, half);
  return within(low, high);
}
