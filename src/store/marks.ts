/**
 * Padlocks and outlines of parts that are gone: undo and redo bring a part back as it was marked when it went. Marks are no
 * part of the history (they are the viewer's); what a part had is kept with the very object that the history keeps.
 */
import type { StoreApi } from 'zustand/vanilla';
import type { Layout, Part, PartId } from '../layout/types';
import { renamed } from './locked';
import type { View, WorkbenchState } from './types';

type Mark = 'locked' | 'hidden';
const MARKS: readonly Mark[] = ['locked', 'hidden'];

const partsOf = ({ parts }: Layout, ids: readonly PartId[]): readonly Part[] =>
  parts.filter(({ id }) => ids.includes(id));

/** Follows a store; `step` is an undo or a redo, after which the marks of what came back are there again. */
export function rememberMarks(store: Pick<StoreApi<WorkbenchState>, 'getState' | 'setState' | 'subscribe'>) {
  const gone: Readonly<Record<Mark, WeakSet<Part>>> = { locked: new WeakSet(), hidden: new WeakSet() };
  store.subscribe((now, before) => {
    if (now.layout.parts === before.layout.parts) return;
    for (const mark of MARKS) {
      const lost = before.view[mark].filter((id) => !now.view[mark].includes(id));
      if (lost.length === 0) continue;
      const names = renamed(before.layout, now.layout);
      for (const part of partsOf(before.layout, lost)) if (!names.has(part.id)) gone[mark].add(part);
    }
  });
  const cameBack = ({ layout, view }: WorkbenchState, mark: Mark): readonly PartId[] => {
    const back = layout.parts.filter((part) => gone[mark].delete(part)).map(({ id }) => id);
    return back.length > 0 ? [...new Set([...view[mark], ...back])] : view[mark];
  };
  return {
    step: (take: () => void): void => {
      take();
      const now = store.getState();
      const marks = { locked: cameBack(now, 'locked'), hidden: cameBack(now, 'hidden') };
      if (MARKS.every((mark) => marks[mark] === now.view[mark])) return;
      const view: View = { ...now.view, ...marks };
      store.setState({ view });
    },
  };
}
