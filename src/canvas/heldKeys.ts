/**
 * Arrow keys as steps along the screen's axes, and the keys held with a key or the pointer.
 */
import type { Modifiers } from './snapping';

/** +1 or −1 along each screen axis for an arrow key; null for other keys. */
export const arrowOf = (key: string): { readonly x: number; readonly y: number } | null => {
  switch (key) {
    case 'ArrowLeft':
      return { x: -1, y: 0 };
    case 'ArrowRight':
      return { x: 1, y: 0 };
    case 'ArrowUp':
      return { x: 0, y: 1 };
    case 'ArrowDown':
      return { x: 0, y: -1 };
    default:
      return null;
  }
};

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
