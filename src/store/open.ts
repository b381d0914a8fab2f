/**
 * What a visit begins with: the work of the last visit, or the layout given for a first one, saved from here on. Saved
 * work that the engine fails on is set aside like text that cannot be read, so that a reload always gets one going.
 */
import type { Analysis } from '../build/types';
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import type { Known } from './keeper';
import type { PageEvents, Saving, SavingOptions } from './persist';
import { held, LARGE_KEY, LAYOUT_KEY, VIEW_KEY, type LoadLarge, type WorkStorage } from './savedForm';
import { seenIn } from './shared';
import type { Heights } from '../worker/heights';
import type { Workbench } from './types';
import { createWorkbench, loadFindProblems } from './workbench';

type LoadLater = <T>(load: () => Promise<T>) => Promise<T>;
const atOnce: LoadLater = (load) => load();

export interface VisitOptions {
  /** Opened where nothing readable is saved. */
  readonly first: () => Layout;
  /** The engine's own where not given. */
  readonly analyse?: (layout: Layout) => Analysis;
  /** Loads what the first paint does not need (finding problems, saving) when its time has come; at once where not given. */
  readonly later?: LoadLater;
  /** Computes the whole height of high plates; everything at once where not given. */
  readonly heights?: Heights;
  readonly storage: WorkStorage | null;
  /** For plates that do not fit the page's own storage; the browser's where not given. */
  readonly loadLarge?: LoadLarge;
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

const browserLarge: LoadLarge = async () => (await import('./large')).largeStorage;

interface Begun {
  readonly bench: Workbench;
  /** What is saved of what is open. */
  readonly known: Known | null;
  readonly fault: Fault | null;
}

const anythingSaved = (storage: WorkStorage): boolean =>
  [LAYOUT_KEY, LARGE_KEY, VIEW_KEY].some((key) => held(storage, key) !== null);

async function begin(options: VisitOptions): Promise<Begun> {
  const { first, analyse, heights, storage, loadLarge = browserLarge, later = atOnce } = options;
  const bare = { layout: first(), analyse, heights, loadFinder: () => later(loadFindProblems) };
  if (!storage || !anythingSaved(storage)) return { bench: createWorkbench(bare), known: null, fault: null };
  const { ofAnyPlate, savedWork, setAside, WITHOUT_FIGURES } = await import('./saved');
  const { known, timeline, view, fault } = await savedWork(storage, loadLarge);
  if (!known) return { bench: createWorkbench({ ...bare, view }), known, fault };
  const bench = createWorkbench({ ...bare, layout: known.layout, timeline, view });
  if (works(bench)) return { bench, known, fault };
  const broken = setAside(storage, WITHOUT_FIGURES);
  return { bench: createWorkbench({ ...bare, view: ofAnyPlate(view) }), known: null, fault: broken };
}

/** Saves what changes from here on, as soon as the code for it has come; says so where it does not come. */
async function save(
  bench: Workbench,
  later: LoadLater,
  options: Omit<SavingOptions, 'begun'>,
): Promise<Saving | null> {
  const begun = bench.store.getState();
  try {
    const { keepSaved } = await later(() => import('./persist'));
    return keepSaved(bench, { ...options, begun });
  } catch {
    bench.notify({ code: 'work-not-saved-unloaded', params: {} });
    return null;
  }
}

export interface Visit {
  readonly bench: Workbench;
  /** Once saving has begun; null where it could not. */
  readonly saving: Promise<Saving | null>;
}

/**
 * Opens the saved work; what could not be opened is reported as a notice and kept aside. Rejected where the code that
 * reads saved work cannot be loaded: nothing is opened then, and nothing is written over the saved work.
 */
export async function openWorkbench(options: VisitOptions): Promise<Visit> {
  const { storage, loadLarge = browserLarge, pages, later = atOnce } = options;
  const seen = seenIn(storage);
  const { bench, known, fault } = await begin(options);
  if (fault) bench.notify(fault);
  return { bench, saving: save(bench, later, { storage, loadLarge, pages, known, seen }) };
}
