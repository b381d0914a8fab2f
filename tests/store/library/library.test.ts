/** Entries are copies, windows never write over one another's, and a browser that refuses is told as a fault. */
import { describe, expect, test } from 'vitest';
import { checksum } from '../../../src/layout/checksum';
import { DEFAULT_MACHINE, DEFAULT_PROCESS } from '../../../src/layout/defaults';
import { roundMm } from '../../../src/units/round';
import type { Layout } from '../../../src/layout/types';
import { readContent } from '../../../src/store/library/content';
import {
  code,
  freshBrowser,
  layoutContent,
  names,
  plate,
  refusing,
  saveLayout,
  value,
  window,
} from './libraries';

describe('an entry', () => {
  test('comes back equal, under the name it was saved by, in another window', async () => {
    const browser = freshBrowser();
    const { head } = await saveLayout(browser(), '  Night   shift ');
    const read = value(await browser().readEntry(head.id));
    expect(read.content).toEqual({ ...plate(), name: 'Night shift' });
    expect(head).toMatchObject({ kind: 'layout', name: 'Night shift', checksum: checksum(plate()) });
    expect(head.facts).toEqual({
      parts: 3,
      lasers: 4,
      machine: DEFAULT_MACHINE.name,
      process: DEFAULT_PROCESS.name,
      revision: null,
    });
  });

  test('of each kind says what it is and is listed among its own kind only', async () => {
    const library = freshBrowser()();
    const shape = plate().shapes['stepped']!;
    value(await library.saveEntry({ kind: 'machine', content: DEFAULT_MACHINE, name: 'Hall 2' }));
    value(await library.saveEntry({ kind: 'process', content: DEFAULT_PROCESS, name: 'Thin' }));
    const saved = value(await library.saveEntry({ kind: 'shape', content: shape, name: 'Step' }));
    // two squares, of half-width 15 and 5, one upon the other up to 50 mm
    expect(saved.head.facts).toEqual({ width_mm: 30, depth_mm: 30, height_mm: 50, slabs: 2 });
    expect(value(await library.readEntry(saved.head.id)).content).toEqual(shape);
    const [machine] = value(await library.listEntries('machine'));
    expect(machine).toMatchObject({ name: 'Hall 2', facts: { lasers: 4, width_mm: 340 } });
    expect(value(await library.readEntry(machine!.id)).content).toEqual({
      ...DEFAULT_MACHINE,
      name: 'Hall 2',
    });
    expect(value(await library.listEntries('process'))).toHaveLength(1);
    expect(value(await library.listEntries('layout'))).toEqual([]);
  });

  test('a machine of any number of lasers, with any ids, is one', () => {
    const [laser] = DEFAULT_MACHINE.lasers;
    const other = { ...DEFAULT_MACHINE, lasers: [{ ...laser!, id: 'A' }] };
    expect(readContent('machine', other)).toEqual({ ok: true, value: { kind: 'machine', content: other } });
    expect(code(readContent('machine', { ...other, lasers: [] }))).toBe('layout-wrong-value');
    expect(code(readContent('process', { ...DEFAULT_PROCESS, layer_mm: -1 }))).toBe('layout-wrong-value');
    expect(code(readContent('shape', { slabs: [{ to_mm: 1, rings: [] }] }))).toBe('layout-empty-shape');
  });

  test('changing what was saved, or the entry, changes neither the other one nor an earlier copy', async () => {
    const library = freshBrowser()();
    const layout = plate();
    const { head } = await saveLayout(library, 'Plate', layout);
    const copy = value(await library.readEntry(head.id)).content as Layout;
    (layout as { note: string }).note = 'changed after saving';
    await library.saveEntry({ ...layoutContent(plate('', 10)), name: 'Plate', replaces: head });
    expect(copy).toEqual({ ...plate(), name: 'Plate' });
    const now = value(await library.readEntry(head.id)).content as Layout;
    expect(now).toEqual({ ...plate('', 10), name: 'Plate' });
  });

  test('is renamed, keeps its content, and never takes the name of another one', async () => {
    const library = freshBrowser()();
    const { head } = await saveLayout(library, 'One');
    await saveLayout(library, 'Two', plate('', 10));
    const renamed = value(await library.renameEntry(head, 'Two'));
    expect(renamed.name).toBe('Two (2)');
    expect((value(await library.readEntry(head.id)).content as Layout).name).toBe('Two (2)');
    expect(code(await library.renameEntry(renamed, ' '))).toBe('library-name');
    expect(code(await library.renameEntry(renamed, 'x'.repeat(191)))).toBe('library-name');
    expect(await names(library)).toEqual(['Two', 'Two (2)']);
  });

  test('that was deleted or replaced can be put back', async () => {
    const library = freshBrowser()();
    const { head } = await saveLayout(library, 'Plate');
    const deleted = value(await library.deleteEntry(head));
    expect(await names(library)).toEqual([]);
    expect(code(await library.readEntry(head.id))).toBe('library-entry-gone');
    const back = value(await library.restoreEntry(deleted));
    expect(value(await library.readEntry(head.id)).content).toEqual({ ...plate(), name: 'Plate' });
    const over = value(
      await library.saveEntry({ ...layoutContent(plate('', 10)), name: 'Plate', replaces: back }),
    );
    expect(over.outcome).toBe('replaced');
    value(await library.restoreEntry(over.before!, over.head));
    expect(value(await library.readEntry(head.id)).content).toEqual({ ...plate(), name: 'Plate' });
    expect(await names(library)).toEqual(['Plate']);
  });
});

test('a layout of a mesh’s many sections comes back equal, with its checksum', async () => {
  const slabs = Array.from({ length: 600 }, (_, k) => ({
    to_mm: (k + 1) / 10,
    rings: [
      Array.from(
        { length: 200 },
        (__, i) => [i, i % 2 === 0 ? roundMm(-k / 1000 - 1) : roundMm(k / 1000 + i)] as const,
      ),
    ],
  }));
  const layout = { ...plate(), shapes: { ...plate().shapes, mesh: { slabs } } };
  const library = freshBrowser()();
  const { head } = await saveLayout(library, 'Mesh', layout);
  expect(head.checksum).toBe(checksum(layout));
  expect(value(await library.readEntry(head.id)).content).toEqual({ ...layout, name: 'Mesh' });
});

describe('a name that is taken', () => {
  test('makes a second entry, unless the very content stands there', async () => {
    const library = freshBrowser()();
    const first = await saveLayout(library, 'Plate');
    expect((await saveLayout(library, 'Plate')).outcome).toBe('same');
    expect(await saveLayout(library, 'Plate', plate('', 10))).toMatchObject({
      outcome: 'beside',
      head: { name: 'Plate (2)' },
    });
    // a note is no part of the checksum, yet it is content
    const noted = await saveLayout(library, 'Plate', plate('with a note'));
    expect(noted).toMatchObject({ outcome: 'beside', head: { checksum: first.head.checksum } });
    expect(await names(library)).toEqual(['Plate', 'Plate (2)', 'Plate (3)']);
  });
});

describe('two windows of one browser', () => {
  test('that replace one entry both keep what they saved', async () => {
    const browser = freshBrowser();
    const [left, right] = [browser(), browser()];
    const { head } = await saveLayout(left, 'Plate');
    const save = (library: typeof left, x: number) =>
      library.saveEntry({ ...layoutContent(plate('', x)), name: 'Plate', replaces: head });
    const [one, two] = await Promise.all([save(left, 10), save(right, 20)]);
    expect([value(one).outcome, value(two).outcome].toSorted()).toEqual(['beside', 'replaced']);
    expect(await names(left)).toEqual(['Plate', 'Plate (2)']);
    const places = [];
    for (const { id } of value(await left.listEntries('layout')))
      places.push((value(await right.readEntry(id)).content as Layout).parts[0]!.at_mm[0]);
    expect(places.toSorted((a, b) => a - b)).toEqual([10, 20]);
  });

  test('refuse to rename or delete what the other one has changed or deleted', async () => {
    const browser = freshBrowser();
    const [left, right] = [browser(), browser()];
    const { head } = await saveLayout(left, 'Plate');
    const renamed = value(await left.renameEntry(head, 'Left'));
    expect(code(await right.renameEntry(head, 'Right'))).toBe('library-entry-changed');
    expect(code(await right.deleteEntry(head))).toBe('library-entry-changed');
    expect(await names(right)).toEqual(['Left']);
    value(await left.deleteEntry(renamed));
    expect(code(await right.renameEntry(renamed, 'Right'))).toBe('library-entry-gone');
    expect(code(await right.deleteEntry(renamed))).toBe('library-entry-gone');
    const saved = value(
      await right.saveEntry({ ...layoutContent(plate('', 10)), name: 'Left', replaces: renamed }),
    );
    expect(saved.outcome).toBe('new');
  });

  test('that save at the same moment under one name both find their entry', async () => {
    const browser = freshBrowser();
    const windows = [browser(), browser(), browser()];
    await Promise.all(windows.map((library, i) => saveLayout(library, 'Plate', plate('', i))));
    expect(await names(windows[0]!)).toEqual(['Plate', 'Plate (2)', 'Plate (3)']);
  });

  test('undoing a deletion puts the entry beside what has come in its place', async () => {
    const library = freshBrowser()();
    const { head } = await saveLayout(library, 'Plate');
    const deleted = value(await library.deleteEntry(head));
    value(await library.restoreEntry(deleted));
    value(await library.restoreEntry(deleted));
    expect(await names(library)).toEqual(['Plate', 'Plate (2)']);
  });
});

describe('a browser that refuses', () => {
  test.each([
    ['InvalidStateError', 'library-unavailable'],
    ['SecurityError', 'library-unavailable'],
    ['QuotaExceededError', 'library-full'],
  ])('with %s: every question is answered by the fault %s', async (refusal, fault) => {
    const library = refusing(refusal);
    const seen = { id: 'x', stamp: 'y', name: 'Plate' };
    const answers = [
      await library.listEntries('layout'),
      await library.readEntry('x'),
      await library.saveEntry({ ...layoutContent(), name: 'Plate' }),
      await library.renameEntry(seen, 'Other'),
      await library.deleteEntry(seen),
      await library.exportLibrary(),
    ];
    expect(answers.map(code)).toEqual(answers.map(() => fault));
  });

  test('and one without any database', async () => {
    const browser = freshBrowser();
    Object.assign(globalThis, { indexedDB: undefined });
    const library = browser();
    expect(code(await library.listEntries('layout'))).toBe('library-unavailable');
    expect(code(await library.saveEntry({ ...layoutContent(), name: 'Plate' }))).toBe('library-unavailable');
  });

  test('a writing that breaks off in the middle leaves the library as it was', async () => {
    const library = freshBrowser()();
    await saveLayout(library, 'Plate');
    // the head is in, then the browser has no room for the text
    const broken = window({
      ...library.database,
      change: (decide) =>
        library.database.change((heads) => {
          const [writing, answer] = decide(heads);
          const put = writing.put?.map((entry) => ({ ...entry, text: (() => 0) as unknown as string }));
          return [{ ...writing, put }, answer];
        }),
    });
    expect(code(await broken.saveEntry({ ...layoutContent(plate('', 10)), name: 'Other' }))).toBe(
      'library-unavailable',
    );
    expect(await names(library)).toEqual(['Plate']);
  });

  test('an entry whose text is damaged says so and stays', async () => {
    const library = freshBrowser()();
    const { head } = await saveLayout(library, 'Plate');
    await library.database.change(() => [{ put: [{ head, text: '{"format"' }] }, null]);
    expect(code(await library.readEntry(head.id))).toBe('library-entry-unreadable');
    await library.database.change(() => [{ put: [{ head, text: '{"format":"other"}' }] }, null]);
    expect(code(await library.readEntry(head.id))).toBe('library-entry-unreadable');
    expect(await names(library)).toEqual(['Plate']);
  });
});
