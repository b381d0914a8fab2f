/** The focus to the row of a part, where the list shows it. */
import type { PartId } from '../../layout/types';

export function focusRow(list: ParentNode | null, id: PartId): void {
  list?.querySelector<HTMLElement>(`[data-part="${CSS.escape(id)}"] .row-button`)?.focus();
}
