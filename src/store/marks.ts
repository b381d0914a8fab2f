/**
 * Padlocks and outlines of parts that are gone: undo and redo bring a part back as it was marked when it went. Marks are no
 * part of the history (they are the viewer's); what a part had is kept with the very object that the history keeps.
 */
import type { StoreApi } from 'zustand/vanilla';
import type { Part, PartId } from '../layout/types';
import { renamed } from './locked';
import type { View, WorkbenchState } from './types';

type Marks = readonly [locked: readonly PartId[], hidden: readonly PartId[]];
const marksOf = ({ locked, hidden }: View): Marks => [locked, hidden];

/** Follows a store; `step` takes an undo or a redo, after which the marks of what came back are there again. */
export function rememberMarks(store: Pick<StoreApi<WorkbenchState>, 'getState' | 'setState' | 'subscribe'>) {
  const gone = [new WeakSet<Part>(), new WeakSet<Part>()] as const;
  store.subscribe(({ layout, view }, before) => {
    if (layout.parts === before.layout.parts) return;
    const now = marksOf(view);
    const lost = marksOf(before.view).map((ids, k) => ids.filter((id) => !now[k]!.includes(id)));
    if (lost.every((ids) => ids.length === 0)) return;
    const names = renamed(before.layout, layout);
    for (const part of before.layout.parts)
      for (const [k, ids] of lost.entries())
        if (ids.includes(part.id) && !names.has(part.id)) gone[k]!.add(part);
  });
  return {
    step: (take: () => void): void => {
      take();
      const { layout, view } = store.getState();
      const [locked, hidden] = marksOf(view).map((ids, k) => {
        const back = layout.parts.filter((part) => gone[k]!.delete(part)).map(({ id }) => id);
        return back.length > 0 ? [...new Set([...ids, ...back])] : ids;
      }) as unknown as Marks;
      if (locked !== view.locked || hidden !== view.hidden)
        store.setState({ view: { ...view, locked, hidden } });
    },
  };
}
