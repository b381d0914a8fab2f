/**
 * What a visit begins with: the work of the last visit, or the layout given for a first one, saved from here on. Saved
 * work that the engine fails on is set aside like text that cannot be read, so that a reload always gets one going.
 */
import type { Analysis } from '../build/types';
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import { keepSaved, type PageEvents, type Saving, type WorkStorage } from './persist';
import { savedWork, setAside } from './saved';
import type { Heights } from '../worker/heights';
import type { Workbench } from './types';
import { createWorkbench } from './workbench';

export interface VisitOptions {
  /** Opened where nothing readable is saved. */
  readonly first: () => Layout;
  /** The engine's own where not given. */
  readonly analyse?: (layout: Layout) => Analysis;
  /** Computes the whole height of high plates; everything at once where not given. */
  readonly heights?: Heights;
  readonly storage: WorkStorage | null;
  /** Window and document: where leaving the page is heard. */
  readonly pages?: readonly PageEvents[];
}

/** True where the engine can work on the open layout. The analysis is kept, so nothing is computed twice. */
function works(bench: Workbench): boolean {
  try {
    bench.analysis();
    return true;
  } catch {
    return false;
  }
}

interface Begun {
  readonly bench: Workbench;
  readonly fault: Fault | null;
}

async function begin({ first, analyse, heights, storage }: VisitOptions): Promise<Begun> {
  const { layout, view, fault } = await savedWork(storage);
  const fresh = () => createWorkbench({ layout: first(), analyse, heights, view });
  if (!layout || !storage) return { bench: fresh(), fault };
  const bench = createWorkbench({ layout, analyse, heights, view });
  if (works(bench)) return { bench, fault };
  return { bench: fresh(), fault: setAside(storage, 'the figures of this plate could not be computed.') };
}

export interface Visit {
  readonly bench: Workbench;
  readonly saving: Saving;
}

/**
 * Opens the saved work; what could not be opened is reported as a notice and kept aside. Rejected where the code that
 * reads saved work cannot be loaded: nothing is opened then, and nothing is written over the saved work.
 */
export async function openWorkbench(options: VisitOptions): Promise<Visit> {
  const { bench, fault } = await begin(options);
  if (fault) bench.notify(fault);
  return { bench, saving: keepSaved(bench, options.storage, options.pages) };
}
