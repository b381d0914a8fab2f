/** A portion of the whole height in a thread of its own: binds the mate to the worker's messages. */
import { HeightMate } from './heightMate';
import type { PortionAnswer, PortionWord } from './heightMessages';
import { pauser } from './pauser';

const page = self as unknown as {
  postMessage(answer: PortionAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<PortionWord>) => void) | null;
};
const mate = new HeightMate({
  tell: (answer, handOver) => page.postMessage(answer, handOver),
  pause: pauser(),
  now: () => performance.now(),
  wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
});
page.onmessage = ({ data }) => void mate.hear(data);
