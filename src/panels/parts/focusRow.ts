/** The focus to the row of a part; false where the list does not show it. */
import type { PartId } from '../../layout/types';

export function focusRow(list: ParentNode | null, id: PartId): boolean {
  const row = list?.querySelector<HTMLElement>(`[data-part="${CSS.escape(id)}"] .row-button`);
  row?.focus();
  return row !== null && row !== undefined;
}
