/**
 * All of the library out as one file and in from one: in one writing, or not at all.
 */
import { fail, ok, type Result } from '../../layout/result';
import type { LibraryDatabase } from './database';
import { LIBRARY_LIMIT_MB, libraryText, readLibraryText } from './file';
import { readFileBeside } from './beside';
import { guarded } from './library';
import { merge, type Imported } from './merge';
import type { StoredEntry } from './types';

const BYTES_PER_MB = 1_000_000;

export interface Transfer {
  /** The library's file, in pieces that stand one behind the other. */
  exportLibrary(): Promise<Result<readonly string[]>>;
  /** Faults: library-too-large, file-unreadable, those of readLibraryText. */
  importLibrary(file: GivenFile): Promise<Result<Imported>>;
}

type GivenFile = Pick<File, 'name' | 'size' | 'text'>;

async function readHere(file: GivenFile): Promise<Result<readonly StoredEntry[]>> {
  const text = await file.text().catch(() => null);
  return text === null ? fail('file-unreadable', { name: file.name }) : readLibraryText(text);
}

async function readFile(file: GivenFile): Promise<Result<readonly StoredEntry[]>> {
  const found = Math.ceil(file.size / BYTES_PER_MB);
  if (found > LIBRARY_LIMIT_MB) return fail('library-too-large', { found, limit: LIBRARY_LIMIT_MB });
  return (await readFileBeside(file)) ?? readHere(file);
}

export const transferOf = (database: LibraryDatabase, changed: () => void = () => undefined): Transfer => ({
  exportLibrary: () => guarded(async () => ok(libraryText(await database.entries()))),
  importLibrary: async (file) => {
    const entries = await readFile(file);
    if (!entries.ok) return entries;
    const done = await guarded(async () => ok(await database.change((heads) => merge(heads, entries.value))));
    if (done.ok) changed();
    return done;
  },
});
