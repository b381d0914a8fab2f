/**
 * The whole height in a thread of its own: binds the engine to the worker's messages, and makes the threads that share
 * high builds out with it, as many as the processor has cores to spare beside this one and the page's.
 */
import { HeightEngine } from './heightEngine';
import type { HeightAnswer, HeightQuestion, PortionAnswer } from './heightMessages';
import { Mates, type MakeMate } from './mates';
import { pauser } from './pauser';
import { Worker } from './boundWorker';

const page = self as unknown as {
  postMessage(answer: HeightAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<HeightQuestion>) => void) | null;
};

/** More threads wait for memory rather than compute. */
const MOST_MATES = 3;
/** With two cores the one mate computes while the page rests. */
const matesFor = (cores: number): number => (cores < 2 ? 0 : Math.min(MOST_MATES, Math.max(1, cores - 2)));

const makeMate: MakeMate = (hear) => {
  const worker = new Worker(new URL('./mate.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  worker.onmessage = ({ data }: MessageEvent<PortionAnswer>) => hear(data);
  worker.onerror = () => hear({ id: asked, stretches: null });
  return {
    say: (word) => {
      if (word.kind === 'question') asked = word.question.id;
      worker.postMessage(word);
    },
  };
};

/** null where the browser allows no worker in a worker: this thread computes all. */
function makeMates(): Mates | null {
  try {
    const count = matesFor(navigator.hardwareConcurrency);
    return count > 0 ? new Mates(count, makeMate) : null;
  } catch {
    return null;
  }
}

const ports = {
  tell: (answer: HeightAnswer, handOver: ArrayBuffer[]) => page.postMessage(answer, handOver),
  pause: pauser(),
  now: () => performance.now(),
};
const engine = new HeightEngine(ports, makeMates());
page.onmessage = ({ data }) => void engine.ask(data);
