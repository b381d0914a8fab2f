/**
 * One question to a worker that lives as long as its answer. Null where no worker can be made, it fails, or question or
 * answer cannot go over; the worker is then ended as well.
 */
import type { Text } from '../language/index';
import type { Worker } from './boundWorker';

/** What is said of a script that could not be loaded: the browser says nothing. */
export const NOT_LOADED: Text = 'a part of the page could not be loaded';

export function askOnce<Question, Answer>(
  make: () => Worker,
  question: Question,
  handOver: ArrayBuffer[] = [],
): Promise<Answer | null> {
  return new Promise((resolve) => {
    let worker: Worker | null = null;
    const done = (answer: Answer | null): void => {
      worker?.terminate();
      resolve(answer);
    };
    try {
      worker = make();
      worker.onmessage = ({ data }: MessageEvent<Answer>) => done(data);
      worker.onerror = () => done(null);
      worker.onmessageerror = () => done(null);
      worker.postMessage(question, handOver);
    } catch {
      done(null);
    }
  });
}
