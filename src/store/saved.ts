/**
 * What the last visit left in the storage: the layout and the lasting parts of the view. What cannot be read back is
 * kept aside, never overwritten.
 */
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import { LAYOUT_KEY, VIEW_KEY, type WorkStorage } from './persist';
import type { View } from './types';

/** Saved text that could not be read is moved here; older ones are numbered 2, 3 … */
export const ASIDE_KEY = 'evenplate.layout.unread';
const MOST_ASIDE = 5;

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

/**
 * What the storage holds from the last visit. What reads a layout is loaded only where there is one; where that fails
 * the promise is rejected and the storage stays as it is.
 */
export async function savedWork(storage: WorkStorage | null): Promise<SavedWork> {
  const view = savedView(storage);
  const text = held(storage, LAYOUT_KEY);
  if (text === null || storage === null) return { layout: null, view, fault: null };
  const { messageText, readLayout } = await import('./reading');
  const read = readLayout(text);
  if (read.ok) return { layout: read.value, view, fault: null };
  const detail = messageText(read.fault.code, read.fault.params);
  return { layout: null, view, fault: setAside(storage, detail) };
}
