/**
 * The page's own storage as two windows of one browser share it: it remembers what this window last saw or wrote, so that a
 * plate which another one has saved meanwhile is known, and kept aside before it is written over. No units.
 */
import { drop, held, OTHER_KEY, put, type WorkStorage } from './savedForm';
import { KEYS, seenIn, type Seen } from './shared';

/** True for news that a window has saved a plate; giving one up is no such news. */
export const savesPlate = ({ key, newValue }: Pick<StorageEvent, 'key' | 'newValue'>): boolean =>
  KEYS.some((known) => known === key) && newValue !== null;

export class SharedStorage implements WorkStorage {
  private readonly seen: Map<string, string | null>;
  /** @param seen what this window knows; what `storage` holds now where not given */
  constructor(
    private readonly storage: WorkStorage,
    seen: Seen = seenIn(storage),
  ) {
    this.seen = new Map(seen);
  }
  getItem(key: string): string | null {
    return this.storage.getItem(key);
  }
  setItem(key: string, text: string): void {
    this.storage.setItem(key, text);
    this.seen.set(key, text);
  }
  removeItem(key: string): void {
    this.storage.removeItem(key);
    this.seen.set(key, null);
  }

  private others(): string | null {
    const key = KEYS.find((known) => {
      const text = held(this.storage, known);
      return text !== null && text !== this.seen.get(known);
    });
    return key ?? null;
  }

  /** True where what is saved is another window's plate. */
  overtaken(): boolean {
    return this.others() !== null;
  }

  /** Keeps another window's plate aside, in place of an older one of the kind. 'no room': it must not be written over. */
  keepOthers(): 'none' | 'kept' | 'no room' {
    const key = this.others();
    if (key === null) return 'none';
    const before = held(this.storage, OTHER_KEY);
    drop(this.storage, OTHER_KEY);
    if (!put(this.storage, OTHER_KEY, held(this.storage, key) ?? '')) {
      if (before !== null) put(this.storage, OTHER_KEY, before);
      return 'no room';
    }
    for (const known of KEYS) this.seen.set(known, held(this.storage, known));
    return 'kept';
  }
}
