/** After a failure a plate is written over the saved one only if it can be opened again. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Layout } from '../../src/layout/types';
import { noteCrash } from '../../src/store/crashes';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { LAYOUT_KEY } from '../../src/store/savedForm';
import { countingAnalyse, smallPlate } from './plates';
import { fakePage, memory, noLarge, opened } from './storages';

const named =
  (name: string) =>
  (layout: Layout): Layout => ({ ...layout, name });
/** What a failing gesture might leave behind. */
const spoiled = (layout: Layout): Layout => ({
  ...layout,
  parts: layout.parts.map((part) => ({ ...part, at_mm: [Number.NaN, 0] })),
});

async function saving(analyse = countingAnalyse().analyse) {
  const storage = memory();
  const page = fakePage();
  const visit = await opened({ first: smallPlate, analyse, storage, loadLarge: noLarge, pages: [page] });
  const { bench } = visit;
  bench.change('Name', named('sound'));
  vi.advanceTimersByTime(SAVE_DELAY_MS);
  const codes = () => bench.store.getState().view.notices.map(({ fault }) => fault.code);
  return { bench, page, codes, text: () => storage.map.get(LAYOUT_KEY) };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('after a failure', () => {
  test('a plate that cannot be read again is not written, and that is said once', async () => {
    const { bench, codes, text } = await saving();
    const before = text();
    expect(before).toContain('sound');
    noteCrash(bench);
    for (const name of ['one', 'two']) {
      bench.change('Spoil', (layout) => spoiled(named(name)(layout)));
      vi.advanceTimersByTime(SAVE_DELAY_MS);
    }
    expect(text()).toBe(before);
    expect(codes()).toEqual(['work-not-saved-doubtful']);
  });
  test('it is not written on leaving the page either', async () => {
    const { bench, page, text } = await saving();
    const before = text();
    bench.change('Spoil', spoiled);
    page.fail();
    page.leave();
    expect(text()).toBe(before);
  });
  test('a plate that the engine fails on is not written', async () => {
    const { analyse } = countingAnalyse();
    const place = await saving((layout) => {
      if (layout.name === 'too much') throw new Error('no such layer');
      return analyse(layout);
    });
    const before = place.text();
    noteCrash(place.bench);
    place.bench.change('Name', named('too much'));
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    expect(place.text()).toBe(before);
  });
  test('undo leads back to a plate that is written again', async () => {
    const { bench, text } = await saving();
    noteCrash(bench);
    bench.change('Spoil', spoiled);
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    bench.undo();
    bench.change('Name', named('sound again'));
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    expect(text()).toContain('sound again');
  });
  test('a sound plate is written as before', async () => {
    const { bench, page, text, codes } = await saving();
    page.fail();
    bench.change('Name', named('still sound'));
    vi.advanceTimersByTime(SAVE_DELAY_MS);
    expect(text()).toContain('still sound');
    expect(codes()).toEqual([]);
  });
});
