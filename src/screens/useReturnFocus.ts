/**
 * Where the focus goes when a dialog closes: back to what had it, or to the plan where that is gone (an entry of a menu)
 * or was nothing. The dialogs have no button of their own that they could return to: keys and menus open them.
 */
import { useState } from 'react';

const plan = (): HTMLElement | null => document.querySelector<HTMLElement>('.plan-canvas');

/** True where an element is on the page and no menu that is about to go. */
const stays = (element: HTMLElement): boolean =>
  element.isConnected && element !== document.body && element.closest('[role=menu]') === null;

/** The handler for `onCloseAutoFocus`; what has the focus now is remembered. */
export function useReturnFocus(): (event: Event) => void {
  const [before] = useState(() => document.activeElement);
  return (event) => {
    event.preventDefault();
    const back = before instanceof HTMLElement && stays(before) ? before : plan();
    // Another dialog may have been opened in the place of this one.
    if (document.querySelector('[role=dialog], [role=alertdialog]') === null)
      back?.focus({ preventScroll: true });
  };
}
