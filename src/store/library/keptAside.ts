/**
 * What autosave has kept aside in the page's own storage: another window's plate, and saved work that could not be read.
 * It is shown beside the library's entries and stays until somebody puts it away.
 */
import type { Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { readSavedText } from '../saved';
import { ASIDE_KEYS, drop, held, OTHER_KEY, type LoadLarge, type WorkStorage } from '../savedForm';

export interface Kept {
  readonly key: string;
  readonly text: string;
  readonly from: 'another window' | 'unread';
  readonly read: Result<Layout>;
}

/** All that is kept aside, another window's plate first. */
export async function keptAside(storage: WorkStorage | null, load: LoadLarge): Promise<readonly Kept[]> {
  const kept: Kept[] = [];
  for (const key of [OTHER_KEY, ...ASIDE_KEYS]) {
    const text = held(storage, key);
    if (text === null) continue;
    const from = key === OTHER_KEY ? 'another window' : 'unread';
    kept.push({ key, text, from, read: await readSavedText(text, load) });
  }
  return kept;
}

/** Puts it away where it is still what was seen; false where it is not. */
export function putAway(storage: WorkStorage | null, { key, text }: Pick<Kept, 'key' | 'text'>): boolean {
  if (!storage || held(storage, key) !== text) return false;
  drop(storage, key);
  return held(storage, key) === null;
}
