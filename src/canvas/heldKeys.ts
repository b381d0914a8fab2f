/** The keys held with a key or the pointer. */
import type { Modifiers } from './snapping';

interface KeyState {
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}
export const heldOf = (event: KeyState): Modifiers => ({
  shift: event.shiftKey,
  alt: event.altKey,
  ctrl: event.ctrlKey || event.metaKey,
});
