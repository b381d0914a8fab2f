/**
 * The browser's copy, cut and paste events. A field that has the focus, a dialog, and text that is marked on the page keep
 * them; Shift with paste puts parts where they were.
 */
import type { KeyTarget } from '../earlyKeys';
import { keptByFocus } from '../focus';
import type { Context } from '../types';
import { copied, paste, takeAway } from './exchange';

const TEXT = 'text/plain';

/** True where text on the page is marked, which a copy then means. */
const textMarked = (): boolean => document.getSelection()?.isCollapsed === false;

/** Listens on the window; returns the way to stop. */
export function listenToClipboard(target: KeyTarget, context: Context): () => void {
  const { bench } = context;
  let shift = false;
  const ours = ({ target: at, defaultPrevented }: Event): boolean =>
    !defaultPrevented && !bench.gestureOpen() && !keptByFocus({ key: 'v', target: at });
  const take = (event: Event): boolean => {
    const text = ours(event) && !textMarked() ? copied(bench) : null;
    const { clipboardData } = event as ClipboardEvent;
    if (text === null || !clipboardData) return false;
    clipboardData.setData(TEXT, text);
    event.preventDefault();
    return true;
  };
  const listeners = {
    // Shift with Insert is an ordinary paste
    keydown: (event: Event) => {
      const { key, shiftKey } = event as KeyboardEvent;
      shift = shiftKey && key.toLowerCase() === 'v';
    },
    // the browser's own menu pastes too, long after a key was let go
    keyup: () => {
      shift = false;
    },
    copy: take,
    cut: (event: Event) => {
      if (take(event)) takeAway(bench, bench.store.getState().view.selection);
    },
    paste: (event: Event) => {
      if (!ours(event)) return;
      event.preventDefault();
      paste(context, (event as ClipboardEvent).clipboardData?.getData(TEXT) ?? '', shift);
    },
  };
  const all = Object.entries(listeners);
  for (const [type, listener] of all) target.addEventListener(type, listener);
  return () => {
    for (const [type, listener] of all) target.removeEventListener(type, listener);
  };
}
