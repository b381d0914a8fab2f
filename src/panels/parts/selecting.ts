/**
 * What a click or key in the list does to the selection. A click: this part alone, with Ctrl one more or one less, with
 * Shift everything from the last one to this. A step of the focus takes the selection along; with Shift it is everything
 * between where it began and the focus, with Ctrl it stays.
 */
import type { PartId } from '../../layout/types';

export interface Modifiers {
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

const spanOf = (order: readonly PartId[], a: PartId, b: PartId): readonly PartId[] => {
  const [from, to] = [order.indexOf(a), order.indexOf(b)];
  return order.slice(Math.min(from, to), Math.max(from, to) + 1);
};

export function selectionAfter(
  order: readonly PartId[],
  selection: readonly PartId[],
  id: PartId,
  keys: Modifiers,
): readonly PartId[] {
  const anchor = selection.at(-1);
  if (keys.shiftKey && anchor !== undefined && order.includes(anchor)) {
    const span = spanOf(order, anchor, id);
    const kept = selection.filter((other) => !span.includes(other));
    return [...kept, ...span.filter((other) => other !== anchor), anchor];
  }
  if (!keys.ctrlKey && !keys.metaKey) return [id];
  return selection.includes(id) ? selection.filter((other) => other !== id) : [...selection, id];
}

/** The selection after the focus has stepped to `id`. The part where a span began stays the last of the selection. */
export function selectionFollowing(
  order: readonly PartId[],
  selection: readonly PartId[],
  id: PartId,
  keys: Modifiers,
): readonly PartId[] {
  if (keys.ctrlKey || keys.metaKey) return selection;
  const anchor = selection.at(-1);
  if (!keys.shiftKey || anchor === undefined || !order.includes(anchor)) return [id];
  return [...spanOf(order, anchor, id).filter((other) => other !== anchor), anchor];
}
