/**
 * A visit that holds back what the first paint does not need: nothing that was done meanwhile is lost.
 */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openWorkbench } from '../../src/store/open';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { countingAnalyse, smallPlate } from './plates';
import { memory, noLarge, opened } from './storages';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('what was done before the first paint is saved after it', async () => {
  const storage = memory();
  const { analyse } = countingAnalyse();
  const visit = { first: smallPlate, analyse, storage, loadLarge: noLarge };
  let paint: () => void = () => undefined;
  const painted = new Promise<void>((resolve) => (paint = resolve));
  const { bench, saving } = await openWorkbench({ ...visit, later: (load) => painted.then(load) });
  bench.change('Name', (layout) => ({ ...layout, name: 'before the first paint' }));
  await vi.advanceTimersByTimeAsync(10 * SAVE_DELAY_MS);
  expect(storage.map.size).toBe(0);
  paint();
  await saving;
  vi.advanceTimersByTime(SAVE_DELAY_MS);
  expect((await opened(visit)).bench.store.getState().layout.name).toBe('before the first paint');
});
