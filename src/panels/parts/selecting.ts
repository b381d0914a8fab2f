/**
 * What a click or key in the list does to the selection: alone, with Ctrl one more or one less, with Shift everything
 * from the last one to this.
 */
import type { PartId } from '../../layout/types';

export interface Modifiers {
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

export function selectionAfter(
  order: readonly PartId[],
  selection: readonly PartId[],
  id: PartId,
  keys: Modifiers,
): readonly PartId[] {
  const anchor = selection.at(-1);
  if (keys.shiftKey && anchor !== undefined && order.includes(anchor)) {
    const [from, to] = [order.indexOf(anchor), order.indexOf(id)];
    const span = order.slice(Math.min(from, to), Math.max(from, to) + 1);
    const kept = selection.filter((other) => !span.includes(other));
    return [...kept, ...span.filter((other) => other !== anchor), anchor];
  }
  if (!keys.ctrlKey && !keys.metaKey) return [id];
  return selection.includes(id) ? selection.filter((other) => other !== id) : [...selection, id];
}
