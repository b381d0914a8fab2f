/**
 * Padlocks and outlines of parts that are gone: what brings a part back, undo and redo, brings it back as it was marked when
 * it went. Marks are no part of the history (they are the viewer's); what a part had is kept with the very object that the
 * history keeps.
 */
import type { StoreApi } from 'zustand/vanilla';
import type { Part, PartId } from '../layout/types';
import { renamed } from './locked';
import type { View, WorkbenchState } from './types';

type Marks = readonly [locked: readonly PartId[], hidden: readonly PartId[]];
const marksOf = ({ locked, hidden }: View): Marks => [locked, hidden];

/** Follows a store; returns the way to stop. */
export function rememberMarks(store: Pick<StoreApi<WorkbenchState>, 'setState' | 'subscribe'>): () => void {
  const gone = [new WeakSet<Part>(), new WeakSet<Part>()] as const;
  const keep = (now: WorkbenchState, before: WorkbenchState): void => {
    const left = marksOf(now.view);
    const lost = marksOf(before.view).map((ids, k) => ids.filter((id) => !left[k]!.includes(id)));
    if (lost.every((ids) => ids.length === 0)) return;
    const names = renamed(before.layout, now.layout);
    for (const part of before.layout.parts)
      for (const [k, ids] of lost.entries())
        if (ids.includes(part.id) && !names.has(part.id)) gone[k]!.add(part);
  };
  const bringBack = ({ layout, view }: WorkbenchState): void => {
    const [locked, hidden] = marksOf(view).map((ids, k) => {
      const back = layout.parts.filter((part) => gone[k]!.delete(part)).map(({ id }) => id);
      return back.length > 0 ? [...new Set([...ids, ...back])] : ids;
    }) as unknown as Marks;
    if (locked !== view.locked || hidden !== view.hidden)
      store.setState({ view: { ...view, locked, hidden } });
  };
  return store.subscribe((now, before) => {
    if (now.layout.parts === before.layout.parts) return;
    bringBack(now);
    keep(now, before);
  });
}
