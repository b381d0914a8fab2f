/** Parts by name in a message: a few, and how many more. */
import { t } from '../../language/index';
import type { PartId } from '../../layout/types';

const MOST_NAMED = 4;

/** "P01, P02", "P01, P02, P03, P04 and 7 more". */
export function someParts(ids: readonly PartId[]): string {
  const named = ids.slice(0, MOST_NAMED).join(', ');
  return ids.length > MOST_NAMED
    ? t('{named} and {number} more', { named, number: ids.length - MOST_NAMED })
    : named;
}
