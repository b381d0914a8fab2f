/** Renaming from the list: F2 leads from a row to the field of its id, Enter and Escape lead back to the row. */
import type { PartId } from '../../layout/types';
import { focusRow } from './focusRow';

let fromRow = false;

/** To the field of the selected part's id, all of it marked. */
export function toIdField(): void {
  const field = document.querySelector<HTMLInputElement>('[data-renames] input');
  field?.focus();
  field?.select();
  fromRow = field !== null;
}
/** Back to the row that led here, by the first of its names that the list shows; where the field was come to otherwise the focus stays. */
export function backToRow(...names: readonly PartId[]): void {
  if (fromRow) names.some((name) => focusRow(document, name));
}
/** The field was left. */
export function leftIdField(): void {
  fromRow = false;
}
