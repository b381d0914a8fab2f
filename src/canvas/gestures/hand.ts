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

/** `free` is called with the pointer's place when no gesture runs. */
export const createHand = (
  ui: PlanUiStore,
  nextFrame: (run: () => void) => void,
  free: (input: Input) => void,
): Hand => {
  let gesture: Gesture | null = null;
  let waiting: Input | null = null;
  let scheduled = false;

  const rest = () => {
    gesture = null;
    ui.setState({ moving: [], tip: null });
  };
  const cancel = () => {
    waiting = null;
    const running = gesture;
    rest();
    running?.cancel();
  };
  const act = () => {
    scheduled = false;
    const input = waiting;
    waiting = null;
    if (!input) return;
    ui.setState({ pointer: input.at });
    if (!gesture) free(input);
    else if (gesture.move(input) === false) rest();
  };
  return {
    begin(next) {
      if (gesture) cancel();
      waiting = null;
      gesture = next;
    },
    move(input) {
      waiting = input;
      if (scheduled) return;
      scheduled = true;
      nextFrame(act);
    },
    release(input) {
      waiting = null;
      const running = gesture;
      if (!running) return;
      const goesOn = running.move(input) !== false;
      rest();
      if (goesOn) running.end(input);
    },
    cancel,
    forget: () => void (waiting = null),
    busy: () => gesture !== null,
  };
};
