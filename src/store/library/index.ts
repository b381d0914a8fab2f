/**
 * The library of this browser. Loaded when it is first asked for.
 */
import { browserDatabase, type LibraryDatabase } from './database';
import { createLibrary, type Library } from './library';
import { tellChanged } from './news';
import { transferOf, type Transfer } from './transfer';

export type { Library, Saved, SaveRequest, Seen } from './library';
export { onLibraryChange } from './news';
export * from './types';
export type { Imported } from './merge';

const opened: { database: LibraryDatabase | null } = { database: null };
/** Opened with the first question, so that a browser that refuses says so in its answer. */
const database = (): LibraryDatabase => (opened.database ??= browserDatabase());
const later: LibraryDatabase = {
  heads: async () => database().heads(),
  entry: async (id) => database().entry(id),
  entries: async () => database().entries(),
  change: async (decide) => database().change(decide),
};

const library: Library & Transfer = {
  ...createLibrary(later, tellChanged),
  ...transferOf(later, tellChanged),
};

export const {
  listEntries,
  readEntry,
  saveEntry,
  renameEntry,
  deleteEntry,
  restoreEntry,
  exportLibrary,
  importLibrary,
} = library;
