/**
 * A gesture that changes only the view: panning.
 */
import { panBy } from '../camera';
import type { Gesture, Input, PlanHost } from './gesture';

/** What is grabbed follows the pointer. */
export const panGesture = (host: PlanHost, start: Input): Gesture => {
  const before = host.bench.store.getState().view.camera;
  let last = start.screen;
  return {
    move(to) {
      const camera = panBy(host.camera(), to.screen.left - last.left, to.screen.top - last.top);
      last = to.screen;
      host.bench.setView({ camera });
    },
    end: () => undefined,
    cancel: () => host.bench.setView({ camera: before }),
  };
};
