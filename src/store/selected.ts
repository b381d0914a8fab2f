/** Whether a part is selected, asked by thousands of rows at once: each selection is made a set once. No units. */
import type { PartId } from '../layout/types';

const sets = new WeakMap<readonly PartId[], ReadonlySet<PartId>>();

export function isSelected(selection: readonly PartId[], id: PartId): boolean {
  let set = sets.get(selection);
  if (!set) sets.set(selection, (set = new Set(selection)));
  return set.has(id);
}
