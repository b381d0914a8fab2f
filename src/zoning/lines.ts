/**
 * Zone lines: where they stand, which way their normal points. Millimetres, platform coordinates.
 * A strip's normal points to +x, to +y where it has no x; lines ascend along it.
 */
import type { HalfPlane } from '../geometry/types';
import type { StripsZoning, Zoning } from '../layout/types';
import type { Degrees, Mm } from '../units/types';
import type { ZoneLine } from './types';

const EXACT: Readonly<Record<number, readonly [number, number]>> = { 0: [0, 1], 90: [1, 0] };

/** Unit normal of strips that run along run_deg (0 ≤ run_deg < 180). */
export function stripNormal(run_deg: Degrees): readonly [number, number] {
  const exact = EXACT[run_deg];
  if (exact) return exact;
  const a = (run_deg * Math.PI) / 180;
  return [Math.sin(a), -Math.cos(a)];
}

/** The lines a user can drag. */
export function zoneLines(zoning: Zoning): ZoneLine[] {
  if (zoning.strategy === 'quadrants') {
    const [x, y] = zoning.at_mm;
    return [
      { key: { kind: 'quadrantX' }, nx: 1, ny: 0, c: x },
      { key: { kind: 'quadrantY' }, nx: 0, ny: 1, c: y },
    ];
  }
  if (zoning.strategy !== 'strips') return [];
  const [nx, ny] = stripNormal(zoning.run_deg);
  return zoning.lines_mm.map((c, index) => ({ key: { kind: 'strip', index }, nx, ny, c }));
}

/** nx·x + ny·y ≤ c */
export const below = (nx: number, ny: number, c: Mm): HalfPlane => ({ nx, ny, c });
/** nx·x + ny·y ≥ c */
export const above = (nx: number, ny: number, c: Mm): HalfPlane => ({ nx: -nx, ny: -ny, c: -c });

/** Half-planes of strip `index`, widened by half the shared band past each inner line. */
export function stripPlanes(zoning: StripsZoning, index: number): HalfPlane[] {
  const [nx, ny] = stripNormal(zoning.run_deg);
  const half = zoning.sharedBand_mm / 2;
  const planes: HalfPlane[] = [];
  const low = zoning.lines_mm[index - 1];
  const high = zoning.lines_mm[index];
  if (low !== undefined) planes.push(above(nx, ny, low - half));
  if (high !== undefined) planes.push(below(nx, ny, high + half));
  return planes;
}
