/**
 * How slantwise the lasers strike the parts of one layer: the largest angle of incidence of every part and laser, with the
 * spot's length there as a multiple of its length straight below the scanner, 1 / cos θ. Degrees.
 */
import { largestIncidence, spotStretch } from '../exposure/incidence';
import type { Region } from '../geometry/types';
import type { Layout } from '../layout/types';
import type { Degrees } from '../units/types';
import type { Piece } from './types';

export interface Incidence {
  /** Indices into layout.parts and layout.machine.lasers. */
  readonly part: number;
  readonly laser: number;
  readonly angle_deg: Degrees;
  /** Length of the spot as a multiple of its length straight below. */
  readonly spot: number;
}

/** The largest angle per part and laser over some pieces, the steepest first; unassigned pieces have none. */
export function incidences({ machine }: Layout, pieces: readonly Piece[]): readonly Incidence[] {
  const regions = new Map<string, { part: number; laser: number; regions: Region[] }>();
  for (const { part, laser, region } of pieces) {
    if (laser < 0) continue;
    const key = `${part} ${laser}`;
    const entry = regions.get(key) ?? { part, laser, regions: [] };
    entry.regions.push(region);
    regions.set(key, entry);
  }
  return [...regions.values()]
    .map(({ part, laser, regions: own }) => {
      const angle_deg = largestIncidence(machine.lasers[laser], own) ?? 0;
      return { part, laser, angle_deg, spot: spotStretch(angle_deg) };
    })
    .sort((a, b) => b.angle_deg - a.angle_deg);
}
