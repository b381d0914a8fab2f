/**
 * How panels change the document: one entry per commit, one per held key or slider drag. A recipe may refuse what was
 * typed; then the layout stays as it is and the field says why.
 */
import { useMemo } from 'react';
import { useWorkbench } from '../canvas/bench';
import type { Fault, Result } from '../layout/result';
import type { Layout, LayoutAt } from '../layout/types';
import { onShown } from '../store/shown';
import type { Workbench } from '../store/types';

export type Recipe = (layout: Layout) => Layout | Result<Layout>;
export interface Edit {
  /** One history entry, or part of the open gesture; the fault where the recipe refuses. */
  change(label: string, recipe: Recipe): Fault | null;
  /** The same; a refusal becomes a notice. For buttons and lists, which have no place for a message. */
  press(label: string, recipe: Recipe): void;
  /** Begins and ends a gesture under this label, or takes it back. */
  hold(label: string): (phase: 'begin' | 'end' | 'cancel') => void;
}

/** Tries the recipe on the present layout and changes the document only where it is accepted. */
export function changeWith(bench: Workbench, label: string, recipe: Recipe): Fault | null {
  const next = recipe(bench.store.getState().layout);
  if ('ok' in next && !next.ok) return next.fault;
  const layout = 'ok' in next ? next.value : next;
  bench.change(label, () => layout);
  return null;
}

/** Turns changes of the plate's zones into changes of the document, at the height that is shown. */
export function useOnShown() {
  const bench = useWorkbench();
  return <A extends readonly unknown[]>(recipe: (plate: LayoutAt, ...args: A) => LayoutAt) =>
    onShown(bench, recipe);
}

export function useEdit(): Edit {
  const bench = useWorkbench();
  return useMemo(
    () => ({
      change: (label, recipe) => changeWith(bench, label, recipe),
      press: (label, recipe) => {
        const fault = changeWith(bench, label, recipe);
        if (fault !== null) bench.notify(fault);
      },
      hold: (label) => (phase) => {
        if (phase === 'begin') bench.beginGesture(label);
        else if (phase === 'end') bench.endGesture();
        else bench.cancelGesture();
      },
    }),
    [bench],
  );
}
