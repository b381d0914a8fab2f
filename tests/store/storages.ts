/** Storages and pages for tests: in memory, with a limit like a browser's quota, and answering when the test says so. */
import { openWorkbench, type VisitOptions } from '../../src/store/open';
import type { PageEvents } from '../../src/store/persist';
import type { LargeStorage, LoadLarge, WorkStorage } from '../../src/store/savedForm';

/** A storage in memory with room for so many characters, like a browser's quota. */
export function memory(room = Infinity): WorkStorage & { readonly map: Map<string, string> } {
  const map = new Map<string, string>();
  const used = (except: string) =>
    [...map].reduce((sum, [key, text]) => sum + (key === except ? 0 : key.length + text.length), 0);
  return {
    map,
    getItem: (key) => map.get(key) ?? null,
    removeItem: (key) => void map.delete(key),
    setItem: (key, text) => {
      if (used(key) + key.length + text.length > room) throw new DOMException('full', 'QuotaExceededError');
      map.set(key, text);
    },
  };
}

/** A browser without a large storage, as in some private windows. */
export const noLarge: LoadLarge = () => Promise.reject(new DOMException('denied', 'InvalidStateError'));

/** A large storage in memory. While `held` is true a writing does not end. */
export function largeMemory() {
  const map = new Map<string, string>();
  const waiting: (() => void)[] = [];
  const state = { held: false, refuses: false, writings: 0 };
  const storage: LargeStorage = {
    read: async (name) => map.get(name) ?? null,
    remove: async (name) => void map.delete(name),
    names: async () => [...map.keys()],
    write: async (name, text) => {
      state.writings++;
      if (state.held) await new Promise<void>((resolve) => waiting.push(resolve));
      if (state.refuses) throw new DOMException('full', 'QuotaExceededError');
      map.set(name, text);
    },
  };
  return {
    map,
    state,
    load: async () => storage,
    letGo: () => {
      state.held = false;
      waiting.splice(0).forEach((go) => go());
    },
  };
}

/** A page whose leaving a test can announce, what another window has written, and that a handler has failed. */
export function fakePage(): PageEvents & {
  leave(): void;
  fail(): void;
  hear(news: Pick<StorageEvent, 'key' | 'newValue'>): void;
  readonly listeners: Set<(event: Event) => void>;
} {
  const listeners = new Set<(event: Event) => void>();
  const hearing = new Set<(event: Event) => void>();
  const failing = new Set<(event: Event) => void>();
  const of = (type: string) =>
    type === 'storage' ? hearing : type === 'error' || type === 'unhandledrejection' ? failing : listeners;
  return {
    listeners,
    addEventListener: (type, listener) => void of(type).add(listener),
    removeEventListener: (type, listener) => void of(type).delete(listener),
    leave: () => listeners.forEach((listener) => listener(new Event('pagehide'))),
    fail: () => failing.forEach((listener) => listener(new Event('error'))),
    hear: (news) => hearing.forEach((listener) => listener(news as StorageEvent)),
  };
}

/**
 * One browser's storage as windows share it: what one of them changes, every other one hears of (HTML standard, "The
 * storage event": not the window that wrote, and not where the text stays the same).
 */
export function browser(room = Infinity) {
  const storage = memory(room);
  const windows: ReturnType<typeof fakePage>[] = [];
  const changing = (page: ReturnType<typeof fakePage>, key: string, change: () => void): void => {
    const before = storage.getItem(key);
    change();
    const newValue = storage.getItem(key);
    if (newValue === before) return;
    for (const other of windows) if (other !== page) other.hear({ key, newValue });
  };
  const window = () => {
    const page = fakePage();
    windows.push(page);
    const own: WorkStorage = {
      getItem: storage.getItem,
      setItem: (key, text) => changing(page, key, () => storage.setItem(key, text)),
      removeItem: (key) => changing(page, key, () => storage.removeItem(key)),
    };
    return { page, storage: own };
  };
  return { map: storage.map, window };
}

/** A visit whose saving has begun. */
export async function opened(options: VisitOptions) {
  const visit = await openWorkbench(options);
  await visit.saving;
  return visit;
}
