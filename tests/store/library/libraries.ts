/** Libraries for tests: one database in memory as several windows share it (fake-indexeddb), and databases that refuse. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import type { Result } from '../../../src/layout/result';
import type { Layout } from '../../../src/layout/types';
import { browserDatabase, databaseOn, type LibraryDatabase } from '../../../src/store/library/database';
import { createLibrary } from '../../../src/store/library/library';
import { transferOf } from '../../../src/store/library/transfer';
import { smallPlate } from '../plates';

/** A browser without any entry; every call opens a window of it. */
export function freshBrowser() {
  Object.assign(globalThis, { indexedDB: new IDBFactory(), IDBKeyRange });
  return () => window(browserDatabase());
}

export const window = (database: LibraryDatabase) => ({
  database,
  ...createLibrary(database),
  ...transferOf(database),
});

/** A browser that refuses every question, as some private windows do. */
export const refusing = (name: string) =>
  window(databaseOn(() => Promise.reject(new DOMException('refused', name))));

export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`expected a value, got the fault ${result.fault.code}`);
  return result.value;
}
export const code = (result: Result<unknown>): string => (result.ok ? 'no fault' : result.fault.code);

export const plate = (note = '', x = -60): Layout => {
  const layout = smallPlate();
  const [first, ...rest] = layout.parts;
  return { ...layout, note, parts: [{ ...first!, at_mm: [x, -60] }, ...rest] };
};
export const layoutContent = (layout: Layout = plate()) => ({ kind: 'layout', content: layout }) as const;

type Window = ReturnType<typeof window>;
export const saveLayout = async (library: Window, name: string, layout: Layout = plate()) =>
  value(await library.saveEntry({ ...layoutContent(layout), name }));
export const names = async (library: Window): Promise<string[]> =>
  value(await library.listEntries('layout'))
    .map(({ name }) => name)
    .toSorted();

/** A file as the page hands it over. */
export const fileOf = (text: string) => ({
  name: 'library.json',
  size: text.length,
  text: async () => text,
});
export const exported = async (library: Window): Promise<string> =>
  value(await library.exportLibrary()).join('');
