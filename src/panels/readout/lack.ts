/**
 * Lasers that are on and may expose nothing in a division: no zone names them, or they do not reach their zone.
 */
import { has } from '../../zoning/lasers';
import type { Division } from '../../zoning/types';

/** What keeps a laser that is on from exposing anything; null where it may expose something. */
export type Lack = 'no zone' | 'zone out of reach' | null;

export function lackOf(division: Division, laser: number): Lack {
  if (!has(division.on, laser) || division.cells.some(({ set }) => has(set, laser))) return null;
  return division.zones.some(({ lasers, region }) => has(lasers, laser) && region.length > 0)
    ? 'zone out of reach'
    : 'no zone';
}
