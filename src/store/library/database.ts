/**
 * The library's own database in the browser (IndexedDB): per entry a head and a text, so that lists read heads only. A
 * change reads all heads, decides and writes within one transaction: what another window writes comes before or after
 * it, never in between, and where one part of it does not fit nothing is written.
 */
import { createStore, promisifyRequest, type UseStore } from 'idb-keyval';
import type { EntryHead, EntryId, StoredEntry } from './types';

/** What a change writes. */
export interface Writing {
  /** Whole entries. */
  readonly put?: readonly StoredEntry[];
  /** Heads of entries whose content stays. */
  readonly heads?: readonly EntryHead[];
  readonly remove?: readonly EntryId[];
}
/** Every promise is rejected where the browser refuses. */
export interface LibraryDatabase {
  heads(): Promise<readonly EntryHead[]>;
  /** null: there is no such entry. */
  entry(id: EntryId): Promise<StoredEntry | null>;
  /** All of them, with their contents, at one moment. */
  entries(): Promise<readonly StoredEntry[]>;
  /** Writes what `decide` says, which sees the heads as they are then; gives back what it answers. */
  change<T>(decide: (heads: readonly EntryHead[]) => readonly [Writing, T]): Promise<T>;
}

const HEAD = 'head:';
const TEXT = 'text:';
const headKey = (id: EntryId): string => HEAD + id;
const textKey = (id: EntryId): string => TEXT + id;
/** All keys that begin so: no id holds a character above the last one. */
const keysOf = (prefix: string): IDBKeyRange => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

const readHeads = (entries: IDBObjectStore): Promise<EntryHead[]> =>
  promisifyRequest(entries.getAll(keysOf(HEAD)) as IDBRequest<EntryHead[]>);

function write(entries: IDBObjectStore, { put = [], heads = [], remove = [] }: Writing): void {
  for (const { head, text } of put) {
    entries.put(head, headKey(head.id));
    entries.put(text, textKey(head.id));
  }
  for (const head of heads) entries.put(head, headKey(head.id));
  for (const id of remove) {
    entries.delete(headKey(id));
    entries.delete(textKey(id));
  }
}

/** Done once all of it is safe. What breaks off in the middle is taken back. */
async function written(entries: IDBObjectStore, writing: Writing): Promise<void> {
  try {
    write(entries, writing);
  } catch (error) {
    entries.transaction.abort();
    throw error;
  }
  await promisifyRequest(entries.transaction);
}

async function readEntry(entries: IDBObjectStore, id: EntryId): Promise<StoredEntry | null> {
  const [head, text] = await Promise.all([
    promisifyRequest(entries.get(headKey(id)) as IDBRequest<EntryHead | undefined>),
    promisifyRequest(entries.get(textKey(id)) as IDBRequest<string | undefined>),
  ]);
  return head && text !== undefined ? { head, text } : null;
}

/** Heads and texts come in the order of their keys, which is the ids' for both. */
async function readAll(entries: IDBObjectStore): Promise<StoredEntry[]> {
  const [heads, texts] = await Promise.all([
    readHeads(entries),
    promisifyRequest(entries.getAll(keysOf(TEXT)) as IDBRequest<string[]>),
  ]);
  return heads.map((head, i) => ({ head, text: texts[i] ?? '' }));
}

/** The database that `store` opens. */
export const databaseOn = (store: UseStore): LibraryDatabase => ({
  heads: async () => store('readonly', readHeads),
  entry: async (id) => store('readonly', (entries) => readEntry(entries, id)),
  entries: async () => store('readonly', readAll),
  change: async (decide) =>
    store('readwrite', async (entries) => {
      const [writing, answer] = decide(await readHeads(entries));
      await written(entries, writing);
      return answer;
    }),
});

/** The browser's own; opened with the first question. */
export const browserDatabase = (): LibraryDatabase => databaseOn(createStore('evenplate-library', 'entries'));
