/** Renaming from the list: F2 leads from a row to the field of its id, Enter and Escape lead back to the row. */
import type { PartId } from '../../layout/types';
import { focusRow } from './focusRow';

let fromRow = false;
/** The list follows a change when there is time; a row that has not come by then is not shown at all. */
const MOST_FRAMES = 60;

/** To the field of the selected part's id, all of it marked. */
export function toIdField(): void {
  const field = document.querySelector<HTMLInputElement>('[data-renames] input');
  field?.focus();
  field?.select();
  fromRow = field !== null;
}
/** Back to the row that led here, as soon as the list shows it by that name; where the field was come to otherwise the focus stays. */
export function backToRow(id: PartId, frames = MOST_FRAMES): void {
  if (!fromRow || focusRow(document, id) || frames === 0) return;
  requestAnimationFrame(() => backToRow(id, frames - 1));
}
/** The field was left. */
export function leftIdField(): void {
  fromRow = false;
}
