/**
 * A double click on a zone line's grip in the plan leads to the field that holds its number.
 */
import { useEffect } from 'react';

/** How many frames the field may take to appear; its panel may have to be loaded first. */
const MOST_FRAMES = 120;

/** The field of the division panel for a grip of the plan; null for anything else. */
export function fieldOfGrip(grip: string): string | null {
  const line = /^line-(quadrantX|quadrantY|strip-\d+)/.exec(grip)?.[1];
  if (line === undefined) return null;
  if (line === 'quadrantX') return 'crossing-x';
  return line === 'quadrantY' ? 'crossing-y' : line.replace('strip-', 'strip-line-');
}

function focusWhenThere(field: string, frames = MOST_FRAMES): void {
  const found = document.querySelector<HTMLInputElement>(`[data-testid="${field}"]`);
  if (found) found.focus();
  else if (frames > 0) requestAnimationFrame(() => focusWhenThere(field, frames - 1));
}

/** Calls `show` to bring the division panel up, then gives its field the focus. */
export function useTypedLine(show: () => void): void {
  useEffect(() => {
    const typed = (event: MouseEvent): void => {
      // The plan holds the pointer of a press on a grip, so the event's own target says nothing.
      const below = document.elementsFromPoint(event.clientX, event.clientY);
      const grips = below
        .map((element) => element.closest('[data-testid^="line-"]'))
        .filter((grip) => grip !== null);
      const field = fieldOfGrip(grips[0]?.getAttribute('data-testid') ?? '');
      if (field === null) return;
      show();
      focusWhenThere(field);
    };
    window.addEventListener('dblclick', typed);
    return () => window.removeEventListener('dblclick', typed);
  }, [show]);
}
