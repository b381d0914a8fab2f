/**
 * Lasers that are on and have nothing they may expose in the division shown, and how to give them something. They count
 * in the imbalance all the same.
 */
import { t, type Text } from '../../language/index';
import { MOST_STRIPS } from '../../commands/operations/strategy';
import type { LaserId, Zoning } from '../../layout/types';
import type { Division } from '../../zoning/types';
import type { Lack } from './lack';
import { lackOf } from './lack';

/** What to do about it, by the strategy in force. */
function remedy(zoning: Zoning): string {
  switch (zoning.strategy) {
    case 'quadrants':
      return t('Four quadrants serve four lasers: change one’s laser in Division, or take strips (W, E).');
    case 'strips':
      return zoning.lasers.length < MOST_STRIPS
        ? t('Add a strip in Division and choose its laser there.')
        : t(
            'Strips stop at {most}: change a strip’s laser in Division, or take drawn zones (A) or the whole field (R).',
            { most: MOST_STRIPS },
          );
    case 'drawn':
      return t('Name it in a drawn zone in Division.');
    default:
      return t('Switch it off, or widen its reach in Machine.');
  }
}

/** One sentence for all lasers without a zone, and one for those whose zone they do not reach; empty where there are none. */
export function withoutZone(division: Division, zoning: Zoning): readonly string[] {
  const lacking = (lack: Lack): readonly LaserId[] =>
    division.laserIds.filter((_, laser) => lackOf(division, laser) === lack);
  const said = (ids: readonly LaserId[], what: Text, advice: string): string[] =>
    ids.length === 0 ? [] : [`${t(what, { lasers: ids.join(' ') })} ${advice}`];
  return [
    ...said(lacking('no zone'), '{lasers}: on, no zone.', remedy(zoning)),
    ...said(
      lacking('zone out of reach'),
      '{lasers}: on, its zone is out of reach.',
      t('Move the zone or widen the reach in Machine.'),
    ),
  ];
}
