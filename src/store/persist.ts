/**
 * The work survives a reload, also in mid-edit: the layout (a layout file on one line) and the lasting parts of the
 * view are written to a storage a moment after every change and at once when the page is hidden. What cannot be read
 * back is kept aside, never overwritten. The storage and the page are passed in; nothing here touches a global.
 */
import { messageText } from '../layout/messages';
import { readLayout } from '../layout/read';
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import type { View, Workbench } from './types';

export type WorkStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export const LAYOUT_KEY = 'evenplate.layout';
export const VIEW_KEY = 'evenplate.view';
/** Saved text that could not be read is moved here; older ones are numbered 2, 3 … */
export const ASIDE_KEY = 'evenplate.layout.unread';
/** Wait after a change before writing; a long drag is written as often as this. */
export const SAVE_DELAY_MS = 1000;
const MOST_ASIDE = 5;

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

/** Reads what a storage holds; null where it holds nothing or refuses (a browser may forbid it and throw). */
function held(storage: WorkStorage | null, key: string): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

/** The lasting parts of the view; a value that makes no sense is left out and the first view's stands. */
function savedView(storage: WorkStorage | null): Partial<View> {
  const { height_mm, theme, firstRunDismissed, drawHeight_mm } = parsed(held(storage, VIEW_KEY));
  const height = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
  return {
    ...(height(height_mm) ? { height_mm } : {}),
    ...(height(drawHeight_mm) && drawHeight_mm > 0 ? { drawHeight_mm } : {}),
    ...(theme === 'light' || theme === 'dark' || theme === 'system' ? { theme } : {}),
    ...(typeof firstRunDismissed === 'boolean' ? { firstRunDismissed } : {}),
  };
}

/**
 * Moves unreadable text out of autosave's way and gives the key it lies under now. It is taken away before it is put
 * down again, so a full storage has room for it; where even that fails it goes back to where it was.
 */
function keepAside(storage: WorkStorage, text: string): string {
  const keys = Array.from({ length: MOST_ASIDE }, (_, i) => (i === 0 ? ASIDE_KEY : `${ASIDE_KEY}.${i + 1}`));
  const key = keys.find((candidate) => held(storage, candidate) === null) ?? keys.at(-1)!;
  try {
    storage.removeItem(LAYOUT_KEY);
    storage.setItem(key, text);
    return key;
  } catch {
    return putBack(storage, text);
  }
}

function putBack(storage: WorkStorage, text: string): string {
  try {
    storage.setItem(LAYOUT_KEY, text);
  } catch {
    // A storage that no longer takes what it held before takes nothing; keepSaved reports that.
  }
  return LAYOUT_KEY;
}

export interface SavedWork {
  /** null: nothing was saved, or what was saved cannot be read. */
  readonly layout: Layout | null;
  readonly view: Partial<View>;
  /** What to tell the user; null where all is well. */
  readonly fault: Fault | null;
}

/** Moves the saved layout's text out of autosave's way; the fault to tell, with why it cannot be opened. */
export function setAside(storage: WorkStorage, detail: string): Fault {
  const text = held(storage, LAYOUT_KEY);
  const key = text === null ? LAYOUT_KEY : keepAside(storage, text);
  return { code: 'saved-work-unreadable', params: { detail, key } };
}

/** What the storage holds from the last visit. Never throws. */
export function savedWork(storage: WorkStorage | null): SavedWork {
  const view = savedView(storage);
  const text = held(storage, LAYOUT_KEY);
  if (text === null || storage === null) return { layout: null, view, fault: null };
  const read = readLayout(text);
  if (read.ok) return { layout: read.value, view, fault: null };
  const detail = messageText(read.fault.code, read.fault.params);
  return { layout: null, view, fault: setAside(storage, detail) };
}

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
