/** A mesh file in a thread of its own: binds the engine to the worker's messages. */
import { MeshEngine } from './meshEngine';
import type { MeshAnswer, MeshQuestion } from './meshMessages';
import { pauser } from './pauser';

const page = self as unknown as {
  postMessage(answer: MeshAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<MeshQuestion>) => void) | null;
};
const engine = new MeshEngine({
  tell: (answer, handOver) => page.postMessage(answer, handOver),
  pause: pauser(),
  now: () => performance.now(),
});
page.onmessage = ({ data }) => void engine.ask(data);
