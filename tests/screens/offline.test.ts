/** Asking the browser to keep the page: with a relative address, and silent wherever that is not allowed. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepForOffline } from '../../src/screens/offline';

const page = (baseURI: string) => ({ baseURI }) as Document;
const container = (register: (...given: unknown[]) => unknown) =>
  ({ register }) as unknown as ServiceWorkerContainer;
const asked = vi.fn<(...given: unknown[]) => Promise<undefined>>(async () => undefined);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  asked.mockClear();
  vi.useRealTimers();
});

async function kept(baseURI: string, by?: ServiceWorkerContainer): Promise<boolean> {
  const answer = keepForOffline(page(baseURI), by);
  await vi.runAllTimersAsync();
  return answer;
}

test('the address is beside the page, under any path', async () => {
  expect(await kept('https://yard.example/tools/plates/#abc', container(asked))).toBe(true);
  expect(String(asked.mock.calls[0]![0])).toBe('https://yard.example/tools/plates/sw.js');
});
test('not before the plate has stood for a while', () => {
  void keepForOffline(page('https://yard.example/'), container(asked));
  vi.advanceTimersByTime(500);
  expect(asked).not.toHaveBeenCalled();
});
test('a file opened from a disk asks for nothing', async () => {
  expect(await kept('file:///home/yard/index.html', container(asked))).toBe(false);
  expect(asked).not.toHaveBeenCalled();
});
test('a browser without service workers, or one that refuses, is no fault', async () => {
  expect(await kept('http://yard.example/')).toBe(false);
  const refuses = () => Promise.reject(new DOMException('insecure', 'SecurityError'));
  expect(await kept('https://yard.example/', container(refuses))).toBe(false);
});
