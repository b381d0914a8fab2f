/**
 * How the work lies in the browser between two visits. A plate of ordinary size is one text in the page's own storage,
 * which can be written while the page is going away. Sections of a fine mesh are too large for it (browsers give about
 * five million characters): they go to a large storage under a stamp, and the page's storage keeps all the rest with
 * that stamp. Moving a part then writes the rest only. The storages are passed in; nothing here touches a global.
 */
export type WorkStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Keeps texts that do not fit the page's own storage, by name. Every promise is rejected where the browser refuses. */
export interface LargeStorage {
  read(name: string): Promise<string | null>;
  write(name: string, text: string): Promise<void>;
  remove(name: string): Promise<void>;
  names(): Promise<readonly string[]>;
}
/** Loads the large storage's code. */
export type LoadLarge = () => Promise<LargeStorage>;

/** A whole layout, as one text. */
export const LAYOUT_KEY = 'evenplate.layout';
/** A layout whose shapes lie in the large storage; where there is one it is newer than what LAYOUT_KEY holds. */
export const LARGE_KEY = 'evenplate.layout.large';
export const VIEW_KEY = 'evenplate.view';
/** What can be undone and redone from the saved layout. */
export const TIMELINE_KEY = 'evenplate.timeline';
/** Saved text that could not be read is moved here; older ones are numbered 2, 3 … */
export const ASIDE_KEY = 'evenplate.layout.unread';
export const MOST_ASIDE = 5;
export const ASIDE_KEYS: readonly string[] = Array.from({ length: MOST_ASIDE }, (_, i) =>
  i === 0 ? ASIDE_KEY : `${ASIDE_KEY}.${i + 1}`,
);
/** The plate that another window of this browser had saved when this one saved its own in its place. */
export const OTHER_KEY = 'evenplate.layout.other';

/** The storage, or null where the browser forbids it (reading the property may throw). */
export function storageOf(get: () => WorkStorage): WorkStorage | null {
  try {
    return get();
  } catch {
    return null;
  }
}

/** Reads what a storage holds; null where it holds nothing or refuses (a browser may forbid it and throw). */
export function held(storage: WorkStorage | null, key: string): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

/** Writes where there is room; false where the storage refuses, which then holds what it held before. */
export function put(storage: WorkStorage, key: string, text: string): boolean {
  try {
    storage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** Takes away; a storage that refuses keeps it. */
export function drop(storage: WorkStorage, key: string): void {
  try {
    storage.removeItem(key);
  } catch {
    // What cannot be written cannot be removed either; writing has reported it.
  }
}
