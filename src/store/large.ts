/**
 * The large storage of the browser (IndexedDB): texts by name. Stands apart because most plates fit the page's own
 * storage and never load it.
 */
import { createStore, del, get, keys, promisifyRequest, type UseStore } from 'idb-keyval';
import type { LargeStorage } from './savedForm';

const opened: { store: UseStore | null } = { store: null };
const store = (): UseStore => (opened.store ??= createStore('evenplate', 'shapes'));

/** Done once the text is safe. Committing at once helps where the page is going away. */
function write(name: string, text: string): Promise<void> {
  return store()('readwrite', async (texts) => {
    texts.put(text, name);
    texts.transaction.commit();
    await promisifyRequest(texts.transaction);
  });
}

/** Rejected, by every call, where the browser has no IndexedDB or forbids it. */
export const largeStorage: LargeStorage = {
  write,
  read: async (name) => (await get<string>(name, store())) ?? null,
  remove: (name) => del(name, store()),
  names: async () => (await keys(store())).map(String),
};
