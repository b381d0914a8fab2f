/**
 * The work survives a reload, also in mid-edit: the layout (a layout file on one line) and the lasting parts of the
 * view are written to a storage a moment after every change and at once when the page is hidden. The storage and the
 * page are passed in; nothing here touches a global.
 */
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import type { View, Workbench } from './types';

export type WorkStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export const LAYOUT_KEY = 'evenplate.layout';
export const VIEW_KEY = 'evenplate.view';
/** Wait after a change before writing; a long drag is written as often as this. */
export const SAVE_DELAY_MS = 1000;

/** The storage, or null where the browser forbids it (reading the property may throw). */
export function storageOf(get: () => WorkStorage): WorkStorage | null {
  try {
    return get();
  } catch {
    return null;
  }
}

type LastingView = Pick<View, 'height_mm' | 'theme' | 'firstRunDismissed' | 'drawHeight_mm'>;

const lasting = ({ height_mm, theme, firstRunDismissed, drawHeight_mm }: View): LastingView => ({
  height_mm,
  theme,
  firstRunDismissed,
  drawHeight_mm,
});

/** Writes layout and view; the fault where the storage refuses. */
function write(storage: WorkStorage, bench: Workbench, written: { layout: Layout | null }): Fault | null {
  const { layout, view } = bench.store.getState();
  try {
    if (layout !== written.layout) storage.setItem(LAYOUT_KEY, JSON.stringify(layout));
    written.layout = layout;
    storage.setItem(VIEW_KEY, JSON.stringify(lasting(view)));
    return null;
  } catch {
    return { code: 'work-not-saved-full', params: {} };
  }
}

/** The page's side of saving: when it is about to go away. */
export interface PageEvents {
  addEventListener(type: 'pagehide' | 'visibilitychange', listener: () => void): void;
  removeEventListener(type: 'pagehide' | 'visibilitychange', listener: () => void): void;
}
export interface Saving {
  /** Writes at once what is not written yet. */
  flush(): void;
  /** Flushes and stops watching. */
  stop(): void;
}

/** Says a thing once, until `again` is called. */
function once(say: (fault: Fault) => void) {
  let said = false;
  return {
    say: (fault: Fault) => {
      if (!said) say(fault);
      said = true;
    },
    again: () => {
      said = false;
    },
  };
}

/**
 * Keeps the work of `bench` in `storage` from here on; an open gesture's present state is saved like any other. A
 * storage that is full or missing is reported once (again only after a write that went well), and work goes on.
 * `pages`: where pagehide and visibilitychange are heard (window and document).
 */
export function keepSaved(
  bench: Workbench,
  storage: WorkStorage | null,
  pages: readonly PageEvents[] = [],
): Saving {
  const report = once(bench.notify);
  if (!storage) report.say({ code: 'work-not-saved-no-storage', params: {} });
  const written: { layout: Layout | null } = { layout: null };
  let waiting: ReturnType<typeof setTimeout> | null = null;
  const flush = () => {
    if (waiting === null) return;
    clearTimeout(waiting);
    waiting = null;
    const fault = storage && write(storage, bench, written);
    if (fault) report.say(fault);
    else report.again();
  };
  const changed = () => {
    if (storage) waiting ??= setTimeout(flush, SAVE_DELAY_MS);
  };
  const stopWatching = watchLasting(bench, changed);
  const types = ['pagehide', 'visibilitychange'] as const;
  for (const page of pages) for (const type of types) page.addEventListener(type, flush);
  return {
    flush,
    stop: () => {
      flush();
      stopWatching();
      for (const page of pages) for (const type of types) page.removeEventListener(type, flush);
    },
  };
}

/** Calls back when something that is saved has changed: not for hovering, selecting, zooming. */
function watchLasting(bench: Workbench, changed: () => void): () => void {
  return bench.store.subscribe((state, before) => {
    const keys = ['height_mm', 'theme', 'firstRunDismissed', 'drawHeight_mm'] as const;
    if (state.layout !== before.layout || keys.some((key) => state.view[key] !== before.view[key])) changed();
  });
}
