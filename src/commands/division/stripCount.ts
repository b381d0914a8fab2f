/** How many strips the platform is divided into at the height shown; 0 where it is divided otherwise. */
import { plateIn, where } from '../make';
import type { Context } from '../types';

/** The strips at the height shown. */
export function stripCount(context: Context): number {
  const { zoning } = plateIn(context);
  return zoning.strategy === 'strips' ? zoning.lasers.length : 0;
}

/** True where the division at the height shown is one by strips. */
export const hasStrips = where('not divided into strips', (context) => stripCount(context) > 0);
