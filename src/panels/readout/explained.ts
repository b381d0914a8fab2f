/**
 * Which figure is being explained: the one under the pointer or with the focus. One explanation stands at a time, so
 * that forty figures cost no more than one.
 */
import { createContext, useContext, useRef } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import { createStore } from 'zustand/vanilla';
import type { FigureName } from './figureNames';

export interface Explained {
  readonly name: FigureName;
  readonly anchor: HTMLElement;
}
export type ExplainedStore = StoreApi<{ readonly at: Explained | null }>;

/** The pointer rests this long before an explanation opens; the focus does not wait. */
const REST_MS = 400;
/** The id that a figure's aria-describedby names. */
export const EXPLANATION_ID = 'explanation';

export const createExplained = (): ExplainedStore => createStore(() => ({ at: null as Explained | null }));

export const ExplainedContext = createContext<ExplainedStore | null>(null);

export function useExplained(): ExplainedStore {
  const store = useContext(ExplainedContext);
  if (store === null) throw new Error('useExplained: expected an ExplainedContext above, found none');
  return store;
}

/** True while this figure's explanation is open. */
export function useIsExplained(name: FigureName): boolean {
  return useStore(useExplained(), (state) => state.at?.name === name);
}

/** Opens and closes the explanation of one figure. */
export function useExplainHandlers(name: FigureName) {
  const store = useExplained();
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const open = (anchor: HTMLElement): void => store.setState({ at: { name, anchor } });
  return {
    open,
    rest: (anchor: HTMLElement): void => {
      clearTimeout(timer.current);
      timer.current = setTimeout(() => open(anchor), store.getState().at === null ? REST_MS : 0);
    },
    close: (): void => {
      clearTimeout(timer.current);
      if (store.getState().at?.name === name) store.setState({ at: null });
    },
  };
}
