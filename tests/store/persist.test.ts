/** The work survives: what was saved comes back, what cannot be read is kept aside, a full storage stops nothing. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { messageText } from '../../src/layout/messages';
import type { Layout } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import { openWorkbench, type Visit } from '../../src/store/open';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { savedWork } from '../../src/store/saved';
import { ASIDE_KEY, LAYOUT_KEY, storageOf, VIEW_KEY, type WorkStorage } from '../../src/store/savedForm';
import type { Heights } from '../../src/worker/heights';
import { countingAnalyse, smallPlate } from './plates';
import { fakePage, memory, noLarge, opened } from './storages';

const visit = (storage: WorkStorage | null, page = fakePage()) =>
  opened({
    first: smallPlate,
    analyse: countingAnalyse().analyse,
    storage,
    loadLarge: noLarge,
    pages: [page],
  });
const renamed =
  (name: string) =>
  (layout: Layout): Layout => ({ ...layout, name });
const nameOf = ({ bench }: Pick<Visit, 'bench'>): string => bench.store.getState().layout.name;
const codes = ({ bench }: Pick<Visit, 'bench'>): string[] =>
  bench.store.getState().view.notices.map((notice) => notice.fault.code);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a reload', () => {
  test('brings back layout, height, ground and the dismissed line', async () => {
    const storage = memory();
    const first = await visit(storage);
    first.bench.change('Name', renamed('Kept'));
    first.bench.setView({ height_mm: 12.5, theme: 'dark', firstRunDismissed: true, selection: ['P01'] });
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    const second = await visit(storage);
    expect(second.bench.store.getState().layout).toEqual(renamed('Kept')(smallPlate()));
    expect(second.bench.store.getState().view).toMatchObject({
      height_mm: 12.5,
      theme: 'dark',
      firstRunDismissed: true,
      selection: [],
    });
    expect(codes(second)).toEqual([]);
  });

  test('in the middle of a gesture brings back the plate from before it', async () => {
    const storage = memory();
    const page = fakePage();
    const first = await visit(storage, page);
    first.bench.change('Name', renamed('before'));
    first.bench.beginGesture('Drag');
    first.bench.change('frame', renamed('half way'));
    page.leave();
    expect(nameOf(await visit(storage))).toBe('before');
  });

  test('in a gesture that lasts longer than the delay saves nothing of it, and all of it once it has ended', async () => {
    const storage = memory();
    const { bench } = await visit(storage);
    bench.beginGesture('Drag');
    for (let frame = 1; frame <= 100; frame++) {
      bench.change('frame', renamed(`frame ${frame}`));
      vi.advanceTimersByTime(SAVE_DELAY_MS / 20);
    }
    expect(storage.map.has(LAYOUT_KEY)).toBe(false);
    bench.endGesture();
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    expect(nameOf(await visit(storage))).toBe('frame 100');
  });

  test('after a cancelled gesture, an undo and a redo brings back what they led to', async () => {
    const storage = memory();
    const page = fakePage();
    const { bench } = await visit(storage, page);
    bench.change('Name', renamed('kept'));
    bench.beginGesture('Drag');
    bench.change('frame', renamed('cancelled'));
    bench.cancelGesture();
    page.leave();
    expect(nameOf(await visit(storage))).toBe('kept');
    bench.undo();
    page.leave();
    expect(nameOf(await visit(storage))).toBe('Small plate');
    bench.redo();
    page.leave();
    expect(nameOf(await visit(storage))).toBe('kept');
  });

  test('hovering, selecting and zooming write nothing', async () => {
    const storage = memory();
    const { bench } = await visit(storage);
    bench.setView({ selection: ['P01'], camera: { centreX_mm: 1, centreY_mm: 2, pxPerMm: 3 }, tool: 'disc' });
    vi.advanceTimersByTime(10 * SAVE_DELAY_MS);
    expect(storage.map.size).toBe(0);
  });

  test('a stopped saving writes what is open and then no more', async () => {
    const storage = memory();
    const page = fakePage();
    const { bench, saving } = await visit(storage, page);
    bench.change('Name', renamed('last'));
    (await saving)?.stop();
    expect(page.listeners.size).toBe(0);
    bench.change('Name', renamed('later'));
    vi.advanceTimersByTime(10 * SAVE_DELAY_MS);
    expect(nameOf(await visit(storage))).toBe('last');
  });

  test('brings back what was done before saving had begun', async () => {
    const storage = memory();
    const { bench, saving } = await openWorkbench({
      first: smallPlate,
      analyse: countingAnalyse().analyse,
      storage,
    });
    bench.change('Name', renamed('in the first moment'));
    bench.setView({ theme: 'dark' });
    await saving;
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    const again = await visit(storage);
    expect(nameOf(again)).toBe('in the first moment');
    expect(again.bench.store.getState().view.theme).toBe('dark');
  });

  test('has the whole height computed by the same worker as a first visit', async () => {
    const storage = memory();
    for (const [name, found] of [
      ['first', 'Small plate'],
      ['again', 'first'],
    ] as const) {
      const heights = { ask: vi.fn<Heights['ask']>(), listen: vi.fn<Heights['listen']>() };
      const { bench, saving } = await openWorkbench({
        first: smallPlate,
        analyse: countingAnalyse().analyse,
        heights,
        storage,
      });
      await saving;
      expect(heights.listen).toHaveBeenCalledTimes(1);
      expect(nameOf({ bench })).toBe(found);
      bench.change('Name', renamed(name));
      vi.advanceTimersByTime(SAVE_DELAY_MS);
    }
  });

  test('opens what an older page saved: a version 1 text under the same key', async () => {
    const storage = memory();
    const text = writeLayout(renamed('older')(smallPlate()));
    expect(text).toContain('"version": 1');
    storage.map.set(LAYOUT_KEY, text);
    const again = await visit(storage);
    expect(again.bench.store.getState().layout).toEqual(renamed('older')(smallPlate()));
    expect(codes(again)).toEqual([]);
  });
});

describe('saved text that cannot be read', () => {
  const unreadable = {
    'not JSON': '{ "format": "evenplate-lay',
    'a newer version': writeLayout(smallPlate()).replace('"version": 1', '"version": 99'),
    'an unknown key': writeLayout(smallPlate()).replace('"version": 1', '"version": 1, "extra": 1'),
    empty: '',
  };
  test.each(Object.entries(unreadable))('is kept aside and named: %s', async (_, text) => {
    const storage = memory();
    storage.map.set(LAYOUT_KEY, text);
    const opened = await visit(storage);
    expect(nameOf(opened)).toBe('Small plate');
    expect(codes(opened)).toEqual(['saved-work-unreadable']);
    const { fault } = opened.bench.store.getState().view.notices[0]!;
    expect(messageText(fault.code, fault.params)).not.toContain('?');
    expect(fault.params['key']).toBe(ASIDE_KEY);
    opened.bench.change('Name', renamed('new work'));
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    expect(storage.map.get(ASIDE_KEY)).toBe(text);
    expect(nameOf(await visit(storage))).toBe('new work');
  });

  test('takes its padlocks and its height along, the ground stays', async () => {
    const storage = memory();
    storage.map.set(LAYOUT_KEY, 'torn');
    const saved = { locked: ['P01'], hidden: ['P02'], height_mm: 7, theme: 'dark' };
    storage.map.set(VIEW_KEY, JSON.stringify(saved));
    const { view } = (await visit(storage)).bench.store.getState();
    expect(view).toMatchObject({ locked: [], hidden: [], height_mm: 0, theme: 'dark' });
  });

  test('does not overwrite what was kept aside before', async () => {
    const storage = memory();
    for (const text of ['first', 'second', 'third']) {
      storage.map.set(LAYOUT_KEY, text);
      await visit(storage);
    }
    expect([...storage.map.values()]).toEqual(['first', 'second', 'third']);
  });

  test('is kept aside in a storage that has no room for a second copy', async () => {
    const text = 'x'.repeat(1000);
    const storage = memory(1000 + ASIDE_KEY.length);
    storage.map.set(LAYOUT_KEY, text);
    await visit(storage);
    expect(storage.map.get(ASIDE_KEY)).toBe(text);
  });

  test('saved work that the engine fails on is kept aside too', async () => {
    const storage = memory();
    const text = writeLayout(renamed('poison')(smallPlate()));
    storage.map.set(LAYOUT_KEY, text);
    const { analyse } = countingAnalyse();
    const { bench } = await opened({
      first: smallPlate,
      storage,
      loadLarge: noLarge,
      analyse: (layout) => {
        if (layout.name === 'poison') throw new Error('broken engine');
        return analyse(layout);
      },
    });
    expect(bench.store.getState().layout).toEqual(smallPlate());
    expect(bench.store.getState().view.notices.map(({ fault }) => fault.code)).toEqual([
      'saved-work-unreadable',
    ]);
    expect([...storage.map]).toEqual([[ASIDE_KEY, text]]);
  });

  test('a spoilt view is left out piece by piece', async () => {
    const storage = memory();
    storage.map.set(
      VIEW_KEY,
      JSON.stringify({ height_mm: 'high', theme: 'dark', firstRunDismissed: 1, drawHeight_mm: -4 }),
    );
    expect((await savedWork(storage, noLarge)).view).toEqual({ theme: 'dark' });
    storage.map.set(VIEW_KEY, 'null');
    expect((await savedWork(storage, noLarge)).view).toEqual({});
    storage.map.set(VIEW_KEY, '{{');
    expect((await savedWork(storage, noLarge)).view).toEqual({});
  });
});

describe('a storage that refuses', () => {
  test('is reported once while it is full, and work goes on', async () => {
    const opened = await visit(memory(100));
    for (const name of ['a', 'b', 'c']) {
      opened.bench.change('Name', renamed(name));
      await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
    }
    expect(codes(opened)).toEqual(['work-not-saved-full']);
    expect(nameOf(opened)).toBe('c');
  });

  test('that has room again takes the work, and a second filling is reported again', async () => {
    const storage = memory(20_000);
    const opened = await visit(storage);
    const filler = 'x'.repeat(19_900);
    const save = async (name: string) => {
      opened.bench.change('Name', renamed(name));
      await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
    };
    storage.map.set('other page', filler);
    await save('a');
    expect(codes(opened)).toEqual(['work-not-saved-full']);
    for (const { id } of opened.bench.store.getState().view.notices) opened.bench.dismissNotice(id);
    storage.map.delete('other page');
    await save('b');
    expect(nameOf(await visit(storage))).toBe('b');
    storage.map.clear();
    storage.map.set('other page', filler);
    await save('c');
    expect(codes(opened)).toEqual(['work-not-saved-full']);
  });

  test('or is missing is reported once, and work goes on', async () => {
    const opened = await visit(null);
    opened.bench.change('Name', renamed('a'));
    await vi.advanceTimersByTimeAsync(10 * SAVE_DELAY_MS);
    expect(codes(opened)).toEqual(['work-not-saved-no-storage']);
    expect(nameOf(opened)).toBe('a');
  });

  test('or throws when it is only looked at counts as missing', async () => {
    const forbidden = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    expect(storageOf(forbidden)).toBeNull();
    const throwing: WorkStorage = { getItem: forbidden, setItem: forbidden, removeItem: forbidden };
    const opened = await visit(throwing);
    opened.bench.change('Name', renamed('a'));
    await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
    expect(codes(opened)).toEqual(['work-not-saved-full']);
  });
});
