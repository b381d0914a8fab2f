/**
 * A plate whose sections do not fit the page's own storage (browsers give about 5 million characters, common practice):
 * its shapes go to the large storage, the rest is written at once. At every moment a whole layout is saved.
 */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Layout, Point, Slab } from '../../src/layout/types';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { ASIDE_KEY, LARGE_KEY, LAYOUT_KEY, type WorkStorage } from '../../src/store/savedForm';
import { isLarge } from '../../src/store/apartForm';
import { roundMm } from '../../src/units/round';
import { countingAnalyse, part, smallPlate } from './plates';
import { fakePage, largeMemory, memory, noLarge, opened } from './storages';

const ROOM = 300_000;
/** 700 slabs of 100 points, each a little wider than the one below. */
const mesh = (width: number): { slabs: Slab[] } => ({
  slabs: Array.from({ length: 700 }, (_, k) => {
    const r = width + k / 1000;
    const ring = Array.from({ length: 100 }, (_, i): Point => {
      const angle = (2 * Math.PI * i) / 100;
      return [roundMm(r * Math.cos(angle)), roundMm(r * Math.sin(angle))];
    });
    return { to_mm: (k + 1) / 10, rings: [ring] };
  }),
});
const withMesh =
  (width: number) =>
  (layout: Layout): Layout => ({
    ...layout,
    name: `mesh ${width}`,
    shapes: { ...layout.shapes, mesh: mesh(width) },
    parts: [...smallPlate().parts, part('P04', 60, 60, 'mesh')],
  });
const renamed =
  (name: string) =>
  (layout: Layout): Layout => ({ ...layout, name });

let large: ReturnType<typeof largeMemory>;
let storage: ReturnType<typeof memory>;
const visit = async (page = fakePage(), on: WorkStorage = storage, load = large.load) => {
  const { analyse } = countingAnalyse();
  const { bench } = await opened({
    first: smallPlate,
    analyse,
    storage: on,
    loadLarge: load,
    pages: [page],
  });
  const state = () => bench.store.getState();
  return {
    bench,
    layout: () => state().layout,
    name: () => state().layout.name,
    codes: () => state().view.notices.map(({ fault }) => fault.code),
  };
};
const pause = () => vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);

beforeEach(() => {
  vi.useFakeTimers();
  large = largeMemory();
  storage = memory(ROOM);
});
afterEach(() => void vi.useRealTimers());

test('the plate of these tests is a large one, an ordinary plate is none', () => {
  expect(JSON.stringify(withMesh(30)(smallPlate())).length).toBeGreaterThan(1_000_000);
  expect(isLarge(withMesh(30)(smallPlate()))).toBe(true);
  expect(isLarge(smallPlate())).toBe(false);
});

test('a large plate comes back, and its shapes are written once, not with every part that moves', async () => {
  const first = await visit();
  first.bench.change('Open', withMesh(30));
  await pause();
  for (const name of ['a', 'b', 'c']) {
    first.bench.change('Name', renamed(name));
    await pause();
  }
  expect(large.state.writings).toBe(1);
  expect([...storage.map.values()].join('').length).toBeLessThan(20_000);
  const second = await visit();
  expect(second.layout()).toEqual(renamed('c')(withMesh(30)(smallPlate())));
  second.bench.change('Name', renamed('d'));
  await pause();
  expect(large.state.writings).toBe(1);
  expect((await visit()).name()).toBe('d');
  expect(first.codes()).toEqual([]);
});

test('a change of a large plate is saved while the page goes away', async () => {
  const page = fakePage();
  const { bench } = await visit(page);
  bench.change('Open', withMesh(30));
  await pause();
  bench.change('Name', renamed('at the last moment'));
  page.leave();
  expect((await visit()).name()).toBe('at the last moment');
});

test('shapes that have not arrived when the page is gone leave the state before them, whole', async () => {
  const { bench } = await visit();
  bench.change('Name', renamed('before'));
  await pause();
  large.state.held = true;
  bench.change('Open', withMesh(30));
  await pause();
  expect((await visit()).name()).toBe('before');
  // and where an older large plate was saved
  large = largeMemory();
  storage = memory(ROOM);
  const again = await visit();
  again.bench.change('Open', withMesh(30));
  await pause();
  large.state.held = true;
  again.bench.change('Open', withMesh(40));
  await pause();
  again.bench.change('Name', renamed('not certain'));
  await pause();
  expect((await visit()).layout()).toEqual(withMesh(30)(smallPlate()));
  large.letGo();
  await pause();
  expect((await visit()).name()).toBe('not certain');
  expect(large.map.size).toBe(1);
});

test('a plate that is small again is one text, and the large storage is empty', async () => {
  const { bench } = await visit();
  bench.change('Open', withMesh(30));
  await pause();
  bench.undo();
  await pause();
  expect([...storage.map.keys()]).toContain(LAYOUT_KEY);
  expect(storage.map.has(LARGE_KEY)).toBe(false);
  expect(large.map.size).toBe(0);
  expect((await visit()).layout()).toEqual(smallPlate());
});

describe('a large storage that refuses', () => {
  test.each([
    ['is missing', noLarge],
    [
      'is full',
      async () => ({ ...(await largeMemory().load()), write: () => Promise.reject(new Error('full')) }),
    ],
  ])('or %s is reported once, and the last plate that could be saved stays saved', async (_, load) => {
    const first = await visit(fakePage(), storage, load);
    first.bench.change('Name', renamed('small'));
    await pause();
    for (const width of [30, 31, 32]) {
      first.bench.change('Open', withMesh(width));
      await pause();
    }
    expect(first.codes()).toEqual(['work-not-saved-full']);
    expect(first.name()).toBe('mesh 32');
    expect((await visit(fakePage(), storage, load)).name()).toBe('small');
  });

  test('takes what no longer fits a page storage that others have filled', async () => {
    storage.map.set('other page', 'x'.repeat(ROOM - 1500));
    const first = await visit();
    first.bench.change('Name', renamed('a'));
    await pause();
    expect(first.codes()).toEqual(['work-not-saved-full']);
    storage.map.set('other page', 'x'.repeat(ROOM - 5000));
    first.bench.change('Name', renamed('b'));
    await pause();
    expect((await visit()).name()).toBe('b');
  });
});

test('shapes that are gone are named, what is left is kept aside, and new work is saved', async () => {
  const first = await visit();
  first.bench.change('Open', withMesh(30));
  await pause();
  const kept = storage.map.get(LARGE_KEY);
  large.map.clear();
  const second = await visit();
  expect(second.codes()).toEqual(['saved-work-unreadable']);
  expect(storage.map.get(ASIDE_KEY)).toBe(kept);
  second.bench.change('Name', renamed('new work'));
  await pause();
  expect((await visit()).name()).toBe('new work');
});

test('shapes that nothing names are given up after a week, named ones never', async () => {
  const first = await visit();
  first.bench.change('Open', withMesh(30));
  await pause();
  const day = 24 * 3600 * 1000;
  large.map.set(`${Date.now() - 6 * day}-yester`, '{}');
  large.map.set(`${Date.now() - 8 * day}-longago`, '{}');
  vi.setSystemTime(Date.now() + day / 2);
  await visit();
  await vi.advanceTimersByTimeAsync(0);
  expect([...large.map.keys()].filter((name) => /yester|longago/.test(name))).toHaveLength(1);
  vi.setSystemTime(Date.now() + 100 * day);
  await visit();
  await vi.advanceTimersByTimeAsync(0);
  expect(large.map.size).toBe(1);
  expect((await visit()).name()).toBe('mesh 30');
});
