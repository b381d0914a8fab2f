/** What a storage that several windows of one browser share held when this one looked. No units. */
import { held, LARGE_KEY, LAYOUT_KEY, type WorkStorage } from './savedForm';

/** Where a layout may stand, the one that counts first. */
export const KEYS = [LARGE_KEY, LAYOUT_KEY] as const;

/** Texts of the saved layout by key; null where there is none. */
export type Seen = ReadonlyMap<string, string | null>;
export const seenIn = (storage: WorkStorage | null): Seen =>
  new Map(KEYS.map((key) => [key, held(storage, key)]));
