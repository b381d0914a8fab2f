/**
 * How the work lies in the browser between two visits. A plate of ordinary size is one text in the page's own storage,
 * which can be written while the page is going away. Sections of a fine mesh are too large for it (browsers give about
 * five million characters): they go to a large storage under a stamp, and the page's storage keeps all the rest with
 * that stamp. Moving a part then writes the rest only. The storages are passed in; nothing here touches a global.
 */
import type { Layout, Shape } from '../layout/types';

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

/** Characters that one layout may take in the page's own storage. */
const MOST_CHARACTERS = 1_000_000;
/** What a point takes as text: "[-123.456,-123.456],". */
const CHARACTERS_PER_POINT = 20;

/** About how many characters a shape takes as text; counted by its points, not written out. */
export function charactersOf({ slabs }: Shape): number {
  let points = 0;
  for (const { rings } of slabs) for (const ring of rings) points += 'circle_mm' in ring ? 2 : ring.length;
  return points * CHARACTERS_PER_POINT;
}

/** True where the shapes are too much for the page's own storage. */
export const isLarge = ({ shapes }: Layout): boolean =>
  Object.values(shapes).reduce((sum, shape) => sum + charactersOf(shape), 0) > MOST_CHARACTERS;

/** What LARGE_KEY holds. */
export interface Apart {
  /** Under which the shapes lie in the large storage. */
  readonly stamp: string;
  /** The layout with no shapes. */
  readonly layout: Layout;
  /** What LARGE_KEY held before, as long as it is not certain that the shapes have arrived. */
  readonly before?: string;
}

export const apartText = (stamp: string, layout: Layout, before: string | null = null): string => {
  const apart: Apart = { stamp, layout: { ...layout, shapes: {} }, ...(before === null ? {} : { before }) };
  return JSON.stringify(apart);
};

/** What a text of LARGE_KEY says; null where it is none. */
export function readApart(text: string): Apart | null {
  try {
    const value = JSON.parse(text) as Partial<Apart> | null;
    if (typeof value?.stamp !== 'string' || typeof value.layout !== 'object') return null;
    return value as Apart;
  } catch {
    return null;
  }
}

/** A new stamp: the time in ms, and what keeps two pages apart that write in the same one. */
export const newStamp = (): string => `${Date.now()}-${Math.random().toString(36).slice(2, 8)}`;

/** When a stamp was made, in ms since 1970; NaN where it is no stamp. */
export const stampTime = (stamp: string): number => Number(/^(\d+)-/.exec(stamp)?.[1] ?? NaN);

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
