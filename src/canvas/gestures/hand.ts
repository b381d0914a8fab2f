/**
 * One gesture at a time, moved at most once per frame with the newest place of the pointer. Whatever ends a press in
 * another way (Escape, a cancelled touch, the window losing focus, the plan going away) cancels the gesture, so nothing
 * is left stuck.
 */
import type { Gesture, Input } from './gesture';
import type { PlanUiStore } from './planUi';

export interface Hand {
  /** Begins a gesture; one that was running is cancelled. */
  begin(gesture: Gesture): void;
  /** Notes where the pointer is; acts on it with the next frame. */
  move(input: Input): void;
  /** Takes the running gesture to its end. */
  release(input: Input): void;
  cancel(): void;
  /** Forgets a place that was noted and not acted on yet. */
  forget(): void;
  busy(): boolean;
}

/** Hands on the newest of what was noted, once per frame. */
const perFrame = (nextFrame: (run: () => void) => void, act: (input: Input) => void) => {
  let waiting: Input | null = null;
  let scheduled = false;
  const run = () => {
    const input = waiting;
    scheduled = false;
    waiting = null;
    if (input) act(input);
  };
  return {
    note: (input: Input) => {
      waiting = input;
      if (!scheduled) nextFrame(run);
      scheduled = true;
    },
    forget: () => {
      waiting = null;
    },
  };
};

/** `free` is called with the pointer's place when no gesture runs. */
export const createHand = (
  ui: PlanUiStore,
  nextFrame: (run: () => void) => void,
  free: (input: Input) => void,
): Hand => {
  let gesture: Gesture | null = null;
  const rest = () => {
    const running = gesture;
    gesture = null;
    ui.setState({ pressed: false, moving: [], tip: null, marks: null });
    return running;
  };
  const places = perFrame(nextFrame, (input) => {
    ui.setState({ pointer: input.at });
    if (!gesture) free(input);
    else if (gesture.move(input) === false) rest();
  });
  const cancel = () => {
    places.forget();
    rest()?.cancel();
  };
  return {
    begin(next) {
      if (gesture) cancel();
      places.forget();
      gesture = next;
      ui.setState({ pressed: true });
    },
    move: places.note,
    release(input) {
      places.forget();
      if (!gesture) return;
      const goesOn = gesture.move(input) !== false;
      const running = rest();
      if (goesOn) running?.end(input);
    },
    cancel,
    forget: places.forget,
    busy: () => gesture !== null,
  };
};
