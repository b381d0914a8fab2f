/** How many strips the platform is divided into at the height shown; 0 where it is divided otherwise. */
import { plateIn } from '../make';
import type { Context } from '../types';

/** The strips at the height shown. */
export function stripCount(context: Context): number {
  const { zoning } = plateIn(context);
  return zoning.strategy === 'strips' ? zoning.lasers.length : 0;
}
