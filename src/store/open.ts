/**
 * What a visit begins with: the work of the last visit, or the layout given for a first one, saved from here on.
 */
import type { Analysis } from '../build/types';
import type { Layout } from '../layout/types';
import { keepSaved, savedWork, type PageEvents, type Saving, type WorkStorage } from './persist';
import type { Workbench } from './types';
import { createWorkbench } from './workbench';

export interface VisitOptions {
  /** Opened where nothing readable is saved. */
  readonly first: () => Layout;
  readonly analyse: (layout: Layout) => Analysis;
  readonly storage: WorkStorage | null;
  /** Window and document: where leaving the page is heard. */
  readonly pages?: readonly PageEvents[];
}

/** Opens the saved work; what could not be read is reported as a notice and kept aside. */
export function openWorkbench({ first, analyse, storage, pages }: VisitOptions): {
  readonly bench: Workbench;
  readonly saving: Saving;
} {
  const saved = savedWork(storage);
  const bench = createWorkbench({ layout: saved.layout ?? first(), analyse, view: saved.view });
  if (saved.fault) bench.notify(saved.fault);
  return { bench, saving: keepSaved(bench, storage, pages) };
}
