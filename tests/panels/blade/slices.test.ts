// A computation in slices, on a clock of our own.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { runInSlices } from '../../../src/panels/blade/slices';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** Every step takes 3 ms. */
function* slow(steps: number): Generator<number, string> {
  for (let i = 1; i <= steps; i++) {
    vi.setSystemTime(Date.now() + 3);
    yield i / steps;
  }
  return 'done';
}
const clock = () => vi.spyOn(performance, 'now').mockImplementation(() => Date.now());

test('tells how far it is after each slice and the result once', () => {
  clock();
  const progress: number[] = [];
  const done = vi.fn<(result: string) => void>();
  runInSlices(slow(8), (now) => progress.push(now), done);
  expect(progress).toEqual([]);
  vi.runAllTimers();
  // Three steps of 3 ms fill a slice of 8 ms.
  expect(progress).toEqual([3 / 8, 6 / 8]);
  expect(done.mock.calls).toEqual([['done']]);
});

test('once dropped it goes no further', () => {
  clock();
  const done = vi.fn<(result: string) => void>();
  const progress = vi.fn<(now: number) => void>();
  const drop = runInSlices(slow(100), progress, done);
  vi.runOnlyPendingTimers();
  drop();
  vi.runAllTimers();
  expect(progress).toHaveBeenCalledTimes(1);
  expect(done).not.toHaveBeenCalled();
});
