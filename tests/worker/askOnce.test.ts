/** A worker that is asked once ends with its answer, and also where it never gets its question. */
import { expect, test } from 'vitest';
import { askOnce } from '../../src/worker/askOnce';

interface Fake {
  onmessage?: (event: { data: unknown }) => void;
  onerror?: () => void;
  onmessageerror?: () => void;
  postMessage(question: unknown): void;
  terminate(): void;
}

/** A worker that does `act` when it is asked, and counts how often it was ended. */
function worker(act: (fake: Fake, question: unknown) => void) {
  let ended = 0;
  const fake: Fake = {
    postMessage: (question) => act(fake, question),
    terminate: () => void ended++,
  };
  return { make: () => fake as unknown as Worker, ended: () => ended };
}

test('the answer comes back, and the worker is ended', async () => {
  const { make, ended } = worker((fake, question) =>
    queueMicrotask(() => fake.onmessage?.({ data: [question] })),
  );
  expect(await askOnce(make, 'how many')).toEqual(['how many']);
  expect(ended()).toBe(1);
});

test.each<[string, (fake: Fake) => void]>([
  ['fails', (fake) => queueMicrotask(() => fake.onerror?.())],
  ['gives an answer that cannot be read', (fake) => queueMicrotask(() => fake.onmessageerror?.())],
  [
    'cannot be given the question',
    () => {
      throw new DOMException('could not be cloned', 'DataCloneError');
    },
  ],
])('one that %s is ended and gives null', async (_, act) => {
  const { make, ended } = worker(act);
  expect(await askOnce(make, 1)).toBeNull();
  expect(ended()).toBe(1);
});

test('where none can be made, null', async () => {
  const none = (): Worker => {
    throw new Error('no threads here');
  };
  expect(await askOnce(none, 1)).toBeNull();
});
