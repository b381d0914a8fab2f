/**
 * The work survives a reload: the layout with what can be undone, and the lasting parts of the view, are written a moment
 * after every change and at once when the page is hidden. What an open gesture has done so far is not saved before it ends: a reload in
 * mid-drag brings back the plate from before it. The storages and the page are passed in; nothing here touches a global.
 */
import type { Fault } from '../layout/result';
import { hasCrashed, noteCrash } from './crashes';
import { LayoutKeeper, type Known } from './keeper';
import { drop, OTHER_KEY, put, TIMELINE_KEY, VIEW_KEY, type LoadLarge, type WorkStorage } from './savedForm';
import type { Seen } from './shared';
import { savesPlate, SharedStorage } from './sharedStorage';
import { timelineText } from './timelineText';
import { isTrusted } from './trusted';
import type { View, Workbench, WorkbenchState } from './types';

/** Wait after a change before writing. */
export const SAVE_DELAY_MS = 1000;

const LASTING = [
  'height_mm',
  'theme',
  'language',
  'wheel',
  'firstRunDismissed',
  'drawHeight_mm',
  'locked',
  'hidden',
  'snapping',
  'grid_mm',
] as const;
type LastingView = Pick<View, (typeof LASTING)[number]>;

const lasting = ({
  height_mm,
  theme,
  language,
  wheel,
  firstRunDismissed,
  drawHeight_mm,
  locked,
  hidden,
  snapping,
  grid_mm,
}: View): LastingView => ({
  snapping,
  grid_mm,
  locked,
  hidden,
  height_mm,
  theme,
  language,
  wheel,
  firstRunDismissed,
  drawHeight_mm,
});

type PageEvent = 'pagehide' | 'visibilitychange' | 'storage' | 'error' | 'unhandledrejection';
/** The page's side of saving: when it is about to go away, and when another window has written to the storage. */
export interface PageEvents {
  addEventListener(type: PageEvent, listener: (event: Event) => void): void;
  removeEventListener(type: PageEvent, listener: (event: Event) => void): void;
}
export interface Saving {
  /** Writes at once what is not written yet. */
  flush(): void;
  /** Flushes and stops watching. */
  stop(): void;
}
export interface SavingOptions {
  readonly storage: WorkStorage | null;
  readonly loadLarge: LoadLarge;
  /** Where pagehide and visibilitychange are heard (window and document). */
  readonly pages?: readonly PageEvents[];
  /** What the storage holds already; null where the open layout is not saved yet. */
  readonly known?: Known | null;
  /** Texts of the saved layout that the visit began with; a plate that came later is another window's. */
  readonly seen?: Seen;
  /** The state that the visit began with: what has changed since is saved as well. */
  readonly begun?: WorkbenchState;
}

/** Says a fault once, until something is told to have gone well. */
function saidOnce(say: (fault: Fault) => void): (fault: Fault | null) => void {
  let said = false;
  return (fault) => {
    if (fault && !said) say(fault);
    said = fault !== null;
  };
}

/** Runs `write` once, a moment after the first `soon`; `now` runs it at once where it is waiting. */
function delayed(write: () => void): { soon(): void; now(): void } {
  let waiting: ReturnType<typeof setTimeout> | null = null;
  const now = () => {
    if (waiting === null) return;
    clearTimeout(waiting);
    waiting = null;
    write();
  };
  return {
    now,
    soon: () => {
      waiting ??= setTimeout(now, SAVE_DELAY_MS);
    },
  };
}

/** Calls back when the layout, without what an open gesture has done, is another one. */
function watchSettled(bench: Workbench, changed: () => void): () => void {
  let { layout } = bench.timeline().present;
  const look = () => {
    const present = bench.timeline().present.layout;
    if (present !== layout) changed();
    layout = present;
  };
  const stops = [bench.store.subscribe(look), bench.onHistory(look)];
  return () => stops.forEach((stop) => stop());
}

const lastingDiffers = (a: View, b: View): boolean => LASTING.some((key) => a[key] !== b[key]);

/** Calls back when something of the view that is saved has changed: not for hovering, selecting, zooming. */
const watchLasting = (bench: Workbench, changed: () => void): (() => void) =>
  bench.store.subscribe(({ view }, before) => {
    if (lastingDiffers(view, before.view)) changed();
  });

/** Calls back at events of the page; returns the way to stop. */
function watchPages(
  pages: readonly PageEvents[],
  types: readonly PageEvent[],
  heard: (event: Event) => void,
): () => void {
  for (const page of pages) for (const type of types) page.addEventListener(type, heard);
  return () => {
    for (const page of pages) for (const type of types) page.removeEventListener(type, heard);
  };
}

/** Says, once, that another window has saved its plate in this one's place. */
function overtakenOnce(say: (fault: Fault) => void): () => void {
  let said = false;
  return () => {
    if (!said) say({ code: 'work-saved-elsewhere', params: { key: OTHER_KEY } });
    said = true;
  };
}

const UNSAVED: Saving = { flush: () => undefined, stop: () => undefined };

/**
 * Keeps the work of `bench` from here on. A storage that is full or missing is reported once (again only after a write
 * that went well), and work goes on.
 */
export function keepSaved(bench: Workbench, options: SavingOptions): Saving {
  const { loadLarge, pages = [], known = null, begun, seen } = options;
  const told = saidOnce(bench.notify);
  const overtaken = overtakenOnce(bench.notify);
  if (!options.storage) {
    told({ code: 'work-not-saved-no-storage', params: {} });
    return UNSAVED;
  }
  const storage = new SharedStorage(options.storage, seen);
  const keeper = new LayoutKeeper({ storage, loadLarge, known, told, overtaken });
  const writing = delayed(() => {
    put(storage, VIEW_KEY, JSON.stringify(lasting(bench.store.getState().view)));
    const timeline = bench.timeline();
    // Another window's plate keeps what can be undone from it, until this one changes.
    if (keeper.overtaken(timeline.present.layout)) return;
    // What can be undone never takes the room of the plate, and never outlives the plate it belongs to.
    if (!isTrusted(bench, timeline.present.layout))
      return told({ code: 'work-not-saved-doubtful', params: {} });
    drop(storage, TIMELINE_KEY);
    keeper.keep(timeline.present.layout);
    const text = timelineText(hasCrashed(bench) ? { ...timeline, future: [] } : timeline);
    if (text !== null) put(storage, TIMELINE_KEY, text);
  });
  const stops = [
    watchSettled(bench, writing.soon),
    watchLasting(bench, writing.soon),
    watchPages(pages, ['pagehide', 'visibilitychange'], writing.now),
    watchPages(pages, ['error', 'unhandledrejection'], () => noteCrash(bench)),
    watchPages(pages, ['storage'], (event) => {
      if (savesPlate(event as StorageEvent)) overtaken();
    }),
  ];
  const now = bench.store.getState();
  if (begun && (begun.layout !== now.layout || lastingDiffers(begun.view, now.view))) writing.soon();
  return {
    flush: writing.now,
    stop: () => {
      writing.now();
      stops.forEach((stop) => stop());
    },
  };
}
