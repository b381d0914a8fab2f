/**
 * How slantwise a laser strikes: θ = atan(distance from its foot / working height); the spot is longer by
 * 1 / cos θ. Millimetres, degrees; platform coordinates.
 */
import type { Region } from '../geometry/types';
import type { Laser } from '../layout/types';
import type { Degrees, Mm } from '../units/types';

type Optics = Pick<Laser, 'foot_mm' | 'workingHeight_mm'>;

const DEG_PER_RAD = 180 / Math.PI;

/** Angle of incidence at a point of the platform; 0 straight below the scanner. */
export const incidenceAt = ({ foot_mm: [footX, footY], workingHeight_mm }: Optics, x: Mm, y: Mm): Degrees =>
  DEG_PER_RAD * Math.atan(Math.hypot(x - footX, y - footY) / workingHeight_mm);

/** Length of the spot at an angle of incidence as a multiple of its length straight below: 1 / cos θ. */
export const spotStretch = (angle_deg: Degrees): number => 1 / Math.cos(angle_deg / DEG_PER_RAD);

/** The largest angle of incidence over a laser's regions (always at a vertex); null where it exposes nothing. */
export function largestIncidence(laser: Optics, regions: readonly Region[]): Degrees | null {
  let most: Degrees | null = null;
  for (const region of regions)
    for (const ring of region)
      for (let i = 0; i < ring.length; i += 2)
        most = Math.max(most ?? 0, incidenceAt(laser, ring[i], ring[i + 1]));
  return most;
}
