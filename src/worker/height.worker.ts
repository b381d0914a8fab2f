/** The whole height in a thread of its own: binds the engine to the worker's messages. */
import { HeightEngine } from './heightEngine';
import type { HeightAnswer, HeightQuestion } from './heightMessages';
import { pauser } from './pauser';

const page = self as unknown as {
  postMessage(answer: HeightAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<HeightQuestion>) => void) | null;
};
const engine = new HeightEngine({
  tell: (answer, handOver) => page.postMessage(answer, handOver),
  pause: pauser(),
  now: () => performance.now(),
});
page.onmessage = ({ data }) => void engine.ask(data);
