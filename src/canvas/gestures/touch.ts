/**
 * Fingers and pens. One finger works like the mouse; a second one gives up what the first began, and both zoom and pan
 * the view until all are lifted. A press that rests opens the menu. Screen px.
 */
import type { ScreenPoint } from '../../units/types';
import { panBy, zoomAt } from '../camera';
import type { Input, PlanHost } from './gesture';
import { askMenu } from './menu';

const LONG_PRESS_MS = 500;
/** A resting finger trembles so much. */
const TREMBLE_PX = 8;

export interface Touch {
  /** Each says whether it took the pointer over, so that nobody else acts on it. */
  down(id: number, input: Input, client: ScreenPoint): boolean;
  move(id: number, input: Input): boolean;
  up(id: number): boolean;
}

interface Spread {
  readonly middle: ScreenPoint;
  readonly apart: number;
}
const spreadOf = ([a, b]: readonly ScreenPoint[]): Spread => ({
  middle: { left: (a!.left + b!.left) / 2, top: (a!.top + b!.top) / 2 },
  apart: Math.hypot(a!.left - b!.left, a!.top - b!.top),
});

/** The view follows two fingers: what lies under them stays under them. */
const follow = ({ bench, camera, size }: PlanHost, from: Spread, to: Spread): void => {
  const moved = panBy(camera(), to.middle.left - from.middle.left, to.middle.top - from.middle.top);
  const factor = from.apart > 0 ? to.apart / from.apart : 1;
  bench.setView({ camera: zoomAt(moved, to.middle, factor, size()) });
};

/** Waits for a press to rest; `started` again or stopped, it forgets the former one. */
const createRest = (act: () => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = () => clearTimeout(timer);
  return {
    stop,
    start: () => {
      stop();
      timer = setTimeout(act, LONG_PRESS_MS);
    },
  };
};

/** `giveUp` cancels what a single pointer has begun. */
export const createTouch = (host: PlanHost, giveUp: () => void): Touch => {
  const fingers = new Map<number, ScreenPoint>();
  /** From the second finger, or the menu, on: until all are lifted nothing else is begun. */
  let taken = false;
  let pressed: { readonly input: Input; readonly client: ScreenPoint } | null = null;
  const rest = createRest(() => {
    if (!pressed) return;
    taken = true;
    giveUp();
    askMenu(host, pressed.input.at, pressed.client);
  });
  const pinch = (id: number, screen: ScreenPoint) => {
    const before = [...fingers.values()];
    fingers.set(id, screen);
    if (before.length >= 2) follow(host, spreadOf(before), spreadOf([...fingers.values()]));
  };
  return {
    down(id, input, client) {
      fingers.set(id, input.screen);
      if (fingers.size === 1) {
        pressed = { input, client };
        rest.start();
        return false;
      }
      rest.stop();
      if (!taken) giveUp();
      taken = true;
      return true;
    },
    move(id, { screen }) {
      if (!fingers.has(id)) return false;
      const start = pressed?.input.screen ?? screen;
      if (Math.hypot(screen.left - start.left, screen.top - start.top) > TREMBLE_PX) rest.stop();
      if (taken) pinch(id, screen);
      return taken;
    },
    up(id) {
      rest.stop();
      const was = taken;
      if (fingers.delete(id) && fingers.size === 0) {
        taken = false;
        pressed = null;
      }
      return was;
    },
  };
};
