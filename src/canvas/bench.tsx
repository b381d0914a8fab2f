/**
 * The thin binding of the workbench to React: a provider, and hooks that re-render only when what they read changes.
 */
import { createContext, useContext, useDeferredValue, useSyncExternalStore, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Analysis } from '../build/types';
import type { Workbench, WorkbenchState } from '../store/types';

const BenchContext = createContext<Workbench | null>(null);

export function BenchProvider({ bench, children }: { bench: Workbench; children: ReactNode }) {
  return <BenchContext value={bench}>{children}</BenchContext>;
}

/** The workbench itself, for handlers; reading from it does not re-render. */
export function useWorkbench(): Workbench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('useWorkbench: expected a BenchProvider above, found none');
  return bench;
}

/** What `select` reads from the state; it must return the same reference while nothing it reads has changed. */
export function useBench<T>(select: (state: WorkbenchState) => T): T {
  return useStore(useWorkbench().store, select);
}

/** The analysis of the present layout; re-renders when the layout, what is known of its height, or who finds problems changes. */
export function useAnalysis(): Analysis {
  useBench((state) => state.layout);
  useBench((state) => state.height.known);
  useBench((state) => state.find);
  return useWorkbench().analysis();
}

/**
 * The same a moment later, in a task of its own: for views beside plan and readout, so that the frame of a drag holds
 * only what must change together.
 */
export function useAnalysisLater(): Analysis {
  return useDeferredValue(useAnalysis());
}

/** Labels for undo and redo; null where there is nothing to undo or redo. */
export function useHistory(): { readonly undo: string | null; readonly redo: string | null } {
  const bench = useWorkbench();
  const undo = useSyncExternalStore(bench.onHistory, () => bench.history().undo);
  const redo = useSyncExternalStore(bench.onHistory, () => bench.history().redo);
  return { undo, redo };
}
