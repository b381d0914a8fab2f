/**
 * Lasers that are on and have nothing they may expose in the division shown, and how to give them something. They count
 * in the imbalance all the same.
 */
import { MOST_STRIPS } from '../../commands/operations/strategy';
import type { LaserId, Zoning } from '../../layout/types';
import type { Division } from '../../zoning/types';
import type { Lack } from './lack';
import { lackOf } from './lack';

/** What to do about it, by the strategy in force. */
function remedy(zoning: Zoning): string {
  switch (zoning.strategy) {
    case 'quadrants':
      return 'Four quadrants serve four lasers: change one’s laser in Division, or take strips (W, E).';
    case 'strips':
      return zoning.lasers.length < MOST_STRIPS
        ? 'Add a strip in Division and choose its laser there.'
        : `Strips stop at ${MOST_STRIPS}: change a strip’s laser in Division, or take drawn zones (A) or the whole field (R).`;
    case 'drawn':
      return 'Name it in a drawn zone in Division.';
    default:
      return 'Switch it off, or widen its reach in Machine.';
  }
}

/** One sentence for all lasers without a zone, and one for those whose zone they do not reach; empty where there are none. */
export function withoutZone(division: Division, zoning: Zoning): readonly string[] {
  const lacking = (lack: Lack): readonly LaserId[] =>
    division.laserIds.filter((_, laser) => lackOf(division, laser) === lack);
  const said = (ids: readonly LaserId[], what: string, advice: string): string[] =>
    ids.length === 0 ? [] : [`${ids.join(' ')}: on, ${what}. ${advice}`];
  return [
    ...said(lacking('no zone'), 'no zone', remedy(zoning)),
    ...said(
      lacking('zone out of reach'),
      'its zone is out of reach',
      'Move the zone or widen the reach in Machine.',
    ),
  ];
}
