/**
 * Two windows of one browser over one storage: whoever is written over is told so once, and no plate is lost unsaid: what is
 * written over was seen by the writer, or is kept aside.
 */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Layout } from '../../src/layout/types';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { LARGE_KEY, LAYOUT_KEY, OTHER_KEY, type LoadLarge } from '../../src/store/savedForm';
import { readLayout } from '../../src/layout/read';
import { roundMm } from '../../src/units/round';
import { countingAnalyse, part, smallPlate } from './plates';
import { browser, largeMemory, noLarge, opened } from './storages';

const named =
  (name: string) =>
  (layout: Layout): Layout => ({ ...layout, name });

async function open({ window }: ReturnType<typeof browser>, loadLarge: LoadLarge = noLarge) {
  const { page, storage } = window();
  const { analyse } = countingAnalyse();
  const { bench } = await opened({ first: smallPlate, analyse, storage, loadLarge, pages: [page] });
  return {
    bench,
    page,
    name: () => bench.store.getState().layout.name,
    codes: () => bench.store.getState().view.notices.map(({ fault }) => fault.code),
    async save(name: string) {
      bench.change('Name', named(name));
      await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
    },
  };
}
const nameIn = (text: string | undefined): string | null => {
  const read = readLayout(text ?? '');
  return read.ok ? read.value.name : null;
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('two windows that change one plate', () => {
  test('the one that is written over is told, once, and not again when the notice is dismissed', async () => {
    const shared = browser();
    const [left, right] = [await open(shared), await open(shared)];
    await left.save('left');
    expect(left.codes()).toEqual([]);
    expect(right.codes()).toEqual(['work-saved-elsewhere']);
    right.bench.dismissNotice(right.bench.store.getState().view.notices[0]!.id);
    await left.save('left again');
    expect(right.codes()).toEqual([]);
  });

  test('the other one’s plate is kept aside before it is written over, the newest one each time', async () => {
    const shared = browser();
    const [left, right] = [await open(shared), await open(shared)];
    await left.save('left 1');
    await right.save('right 1');
    expect(nameIn(shared.map.get(LAYOUT_KEY))).toBe('right 1');
    expect(nameIn(shared.map.get(OTHER_KEY))).toBe('left 1');
    await right.save('right 2');
    expect(nameIn(shared.map.get(OTHER_KEY))).toBe('left 1');
    await left.save('left 2');
    expect(nameIn(shared.map.get(LAYOUT_KEY))).toBe('left 2');
    expect(nameIn(shared.map.get(OTHER_KEY))).toBe('right 2');
  });

  test('a window opened on what the other saved has seen it: nothing is kept aside', async () => {
    const shared = browser();
    const left = await open(shared);
    await left.save('left');
    const right = await open(shared);
    expect(right.name()).toBe('left');
    await right.save('right');
    expect(shared.map.has(OTHER_KEY)).toBe(false);
    expect(left.codes()).toEqual(['work-saved-elsewhere']);
  });

  test('a plate saved while the other window was not listening is kept aside all the same, and said', async () => {
    const shared = browser();
    const left = await open(shared);
    shared.map.set(LAYOUT_KEY, JSON.stringify(named('unheard')(smallPlate())));
    await left.save('left');
    expect(nameIn(shared.map.get(OTHER_KEY))).toBe('unheard');
    expect(left.codes()).toEqual(['work-saved-elsewhere']);
  });

  test('looking around in a window writes nothing over the other’s plate, nor over what can be undone from it', async () => {
    const shared = browser();
    const [left, right] = [await open(shared), await open(shared)];
    await right.save('right 1');
    await left.save('left 1');
    await left.save('left 2');
    right.bench.setView({ height_mm: 7 });
    await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
    right.page.leave();
    const again = await open(shared);
    expect(again.name()).toBe('left 2');
    again.bench.undo();
    expect(again.name()).toBe('left 1');
  });

  test('where there is no room to keep the other’s plate it stays, and the storage is said to be full', async () => {
    const text = JSON.stringify(named('the other')(smallPlate()));
    const shared = browser(1.5 * text.length);
    const left = await open(shared);
    shared.map.set(LAYOUT_KEY, text);
    await left.save('left');
    expect(shared.map.get(LAYOUT_KEY)).toBe(text);
    expect(left.codes()).toContain('work-not-saved-full');
  });

  test('news of other keys, and of a plate given up, is none', async () => {
    const left = await open(browser());
    left.page.hear({ key: 'evenplate.view', newValue: '{}' });
    left.page.hear({ key: LAYOUT_KEY, newValue: null });
    left.page.hear({ key: null, newValue: null });
    expect(left.codes()).toEqual([]);
  });
});

/** 700 slabs of 100 points: too many for the page's own storage. */
const withMesh = (layout: Layout): Layout => {
  const ring = (r: number) =>
    Array.from({ length: 100 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 100;
      return [roundMm(r * Math.cos(angle)), roundMm(r * Math.sin(angle))] as const;
    });
  const slabs = Array.from({ length: 700 }, (_, k) => ({
    to_mm: (k + 1) / 10,
    rings: [ring(30 + k / 1000)],
  }));
  return {
    ...layout,
    name: 'mesh',
    shapes: { ...layout.shapes, mesh: { slabs } },
    parts: [...layout.parts, part('P04', 60, 60, 'mesh')],
  };
};

test('a large plate stays whole when the other window has given up the shapes that both began with', async () => {
  const large = largeMemory();
  const shared = browser();
  const left = await open(shared, large.load);
  left.bench.change('Open', withMesh);
  await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
  const right = await open(shared, large.load);
  expect(right.name()).toBe('mesh');
  right.bench.change('Small', () => named('small')(smallPlate()));
  await vi.advanceTimersByTimeAsync(SAVE_DELAY_MS);
  expect([shared.map.has(LARGE_KEY), large.map.size]).toEqual([false, 0]);
  await left.save('left');
  expect(nameIn(shared.map.get(OTHER_KEY))).toBe('small');
  const again = await open(shared, large.load);
  expect([again.name(), again.codes()]).toEqual(['left', []]);
  expect(again.bench.store.getState().layout.shapes).toEqual(left.bench.store.getState().layout.shapes);
});
