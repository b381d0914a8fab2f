/** All of the library in one file: nothing is lost on the way, nothing comes twice, a bad file changes nothing. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_MACHINE, DEFAULT_PROCESS } from '../../../src/layout/defaults';
import type { Layout } from '../../../src/layout/types';
import { KINDS } from '../../../src/store/library/types';
import {
  code,
  exported,
  fileOf,
  freshBrowser,
  layoutContent,
  names,
  plate,
  saveLayout,
  value,
} from './libraries';

type Library = ReturnType<ReturnType<typeof freshBrowser>>;
/** A browser of its own each: the databases do not know each other. */
const fresh = async (): Promise<Library> => {
  const library = freshBrowser()();
  await library.database.heads();
  return library;
};
const heads = async (library: Library) => {
  const all = [];
  for (const kind of KINDS) all.push(...value(await library.listEntries(kind)));
  return all;
};

/** One entry of each kind. */
async function full(): Promise<Library> {
  const library = await fresh();
  await saveLayout(library, 'Plate “A”', plate('a note'));
  value(await library.saveEntry({ kind: 'machine', content: DEFAULT_MACHINE, name: 'Hall 2' }));
  value(await library.saveEntry({ kind: 'process', content: DEFAULT_PROCESS, name: 'Thin' }));
  value(await library.saveEntry({ kind: 'shape', content: plate().shapes['block']!, name: 'Block' }));
  return library;
}

describe('a library file', () => {
  test('brings every entry into another browser, with id, name, date and content', async () => {
    const from = await full();
    const text = await exported(from);
    const to = await fresh();
    expect(value(await to.importLibrary(fileOf(text)))).toEqual({
      added: 4,
      beside: 0,
      renamed: 0,
      known: 0,
    });
    const [before, after] = [await heads(from), await heads(to)];
    const stampless = before.map((head) => ({ ...head, stamp: '' }));
    expect(after.map((head) => ({ ...head, stamp: '' }))).toEqual(stampless);
    for (const { id } of before)
      expect(value(await to.readEntry(id)).content).toEqual(value(await from.readEntry(id)).content);
    expect(await exported(to)).toBe(text);
  });

  test('brings nothing the second time', async () => {
    const library = await full();
    const text = await exported(library);
    expect(value(await library.importLibrary(fileOf(text)))).toEqual({
      added: 0,
      beside: 0,
      renamed: 0,
      known: 4,
    });
    expect(await exported(library)).toBe(text);
  });

  test('of an empty library is read', async () => {
    const text = await exported(await fresh());
    expect(value(await (await full()).importLibrary(fileOf(text))).added).toBe(0);
  });

  test('brings another state of an entry as a second one, once', async () => {
    const library = await fresh();
    const { head } = await saveLayout(library, 'Plate');
    const older = await exported(library);
    value(await library.saveEntry({ ...layoutContent(plate('', 10)), name: 'Plate', replaces: head }));
    expect(value(await library.importLibrary(fileOf(older)))).toMatchObject({ added: 1, beside: 1 });
    expect(value(await library.importLibrary(fileOf(older)))).toMatchObject({ added: 0, known: 1 });
    expect(await names(library)).toEqual(['Plate', 'Plate (2)']);
    const x = async (name: string) => {
      const { id } = value(await library.listEntries('layout')).find((entry) => entry.name === name)!;
      return (value(await library.readEntry(id)).content as Layout).parts[0]!.at_mm[0];
    };
    expect([await x('Plate'), await x('Plate (2)')]).toEqual([10, -60]);
  });

  test('brings a newer name, never an older one', async () => {
    const library = await fresh();
    const { head } = await saveLayout(library, 'Old name');
    const file = JSON.parse(await exported(library)) as { entries: { name: string; saved: string }[] };
    const dated = (name: string, ms: number) => {
      const [entry] = file.entries;
      return JSON.stringify({ ...file, entries: [{ ...entry, name, saved: new Date(ms).toISOString() }] });
    };
    const newer = dated('New name', head.saved_ms + 1000);
    const older = dated('Oldest name', head.saved_ms - 1000);
    expect(value(await library.importLibrary(fileOf(older))).known).toBe(1);
    expect(await names(library)).toEqual(['Old name']);
    expect(value(await library.importLibrary(fileOf(newer))).renamed).toBe(1);
    expect(await names(library)).toEqual(['New name']);
  });

  test('merging in any order keeps every content of every file', async () => {
    const step = fc.record({ id: fc.integer({ min: 1, max: 3 }), x: fc.integer({ min: 0, max: 3 }) });
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.uniqueArray(step, { selector: ({ id }) => id }), { maxLength: 4 }),
        async (files) => {
          const library = await fresh();
          const front = '{"format":"evenplate-library","version":1,"entries":[';
          for (const file of files) {
            const entries = file.map(({ id, x }) =>
              JSON.stringify({
                id: `entry-${id}`,
                kind: 'layout',
                name: `Plate ${id}`,
                saved: '2026-11-25T12:00:00.000Z',
                content: plate('', x),
              }),
            );
            value(await library.importLibrary(fileOf(`${front}${entries.join()}]}`)));
          }
          const kept = new Set<string>();
          for (const { id } of await heads(library)) {
            const { content } = value(await library.readEntry(id));
            kept.add(`${id.split('~')[0]} ${(content as Layout).parts[0]!.at_mm[0]}`);
          }
          const given = new Set(files.flat().map(({ id, x }) => `entry-${id} ${x}`));
          expect(kept).toEqual(given);
          expect(new Set(await names(library)).size).toBe((await heads(library)).length);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a bad file is refused in one sentence and nothing changes', () => {
  const entry = {
    id: 'a',
    kind: 'layout',
    name: 'Plate',
    saved: '2026-11-25T12:00:00.000Z',
    content: plate() as unknown,
  };
  const file = (...entries: unknown[]) => ({ format: 'evenplate-library', version: 1, entries });
  test.each([
    ['no JSON', 'not json', 'library-not-json'],
    ['cut off', JSON.stringify(file(entry)).slice(0, -20), 'library-not-json'],
    ['a list', '[]', 'library-wrong-format'],
    ['null', 'null', 'library-wrong-format'],
    ['a layout', JSON.stringify(plate()), 'library-wrong-format'],
    ['newer', JSON.stringify({ ...file(), version: 2 }), 'library-newer-version'],
    ['version 0', JSON.stringify({ ...file(), version: 0 }), 'library-wrong-value'],
    ['an extra key', JSON.stringify({ ...file(), more: 1 }), 'library-wrong-value'],
    ['no entries', JSON.stringify({ ...file(), entries: undefined }), 'library-wrong-value'],
    ['another kind', JSON.stringify(file({ ...entry, kind: 'laser' })), 'library-wrong-value'],
    ['no date', JSON.stringify(file({ ...entry, saved: 'yesterday' })), 'library-wrong-value'],
    ['an id with signs', JSON.stringify(file({ ...entry, id: 'a\uffff' })), 'library-wrong-value'],
    ['an id twice', JSON.stringify(file(entry, entry)), 'library-wrong-value'],
    ['no name', JSON.stringify(file({ ...entry, name: ' ' })), 'library-entry-bad'],
    ['a bad layout', JSON.stringify(file(entry, { ...entry, id: 'b', content: {} })), 'library-entry-bad'],
    [
      'a key twice',
      '{"format":"evenplate-library","version":1,"version":1,"entries":[]}',
      'layout-repeated-key',
    ],
  ])('%s', async (_, text, fault) => {
    const library = await full();
    const before = await exported(library);
    expect(code(await library.importLibrary(fileOf(text)))).toBe(fault);
    expect(await exported(library)).toBe(before);
  });

  test('too large, or not there any more', async () => {
    const library = await full();
    const huge = { ...fileOf(''), size: 200_000_001 };
    expect(code(await library.importLibrary(huge))).toBe('library-too-large');
    const lost = { ...fileOf(''), text: () => Promise.reject(new DOMException('gone', 'NotFoundError')) };
    expect(code(await library.importLibrary(lost))).toBe('file-unreadable');
  });
});
