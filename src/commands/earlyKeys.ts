/**
 * Keys pressed before the shortcuts' code has arrived are noted in their order and handed over once it has. Those that
 * the browser would answer itself (Ctrl+S) are kept from it at once; all others stay what they are.
 */
import { keptByFocus, type KeyEvent } from './focus';

export type EarlyKey =
  | { readonly kind: 'down'; readonly event: KeyEvent }
  | { readonly kind: 'up'; readonly event: Pick<KeyEvent, 'key'> }
  | { readonly kind: 'blur' };

export interface EarlyKeys {
  /** Ends the noting and hands over what was noted; nothing the second time. */
  take(): readonly EarlyKey[];
}
export type KeyTarget = Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;

/** More than a hand presses in the first moment; what comes after is dropped. */
const MOST_NOTED = 100;
/** Letters that are commands with Ctrl and something else to a browser. */
export const CLAIMED_WITH_CTRL = 'adkopsyz';

const claimed = ({ key, ctrlKey, metaKey }: KeyEvent): boolean =>
  (ctrlKey || metaKey) && key.length === 1 && CLAIMED_WITH_CTRL.includes(key.toLowerCase());

/** The event as it is now: who had the focus, and whether someone has answered it already. */
const copyOf = (event: KeyEvent): KeyEvent => ({
  key: event.key,
  ctrlKey: event.ctrlKey,
  metaKey: event.metaKey,
  shiftKey: event.shiftKey,
  altKey: event.altKey,
  repeat: event.repeat,
  isComposing: event.isComposing,
  defaultPrevented: event.defaultPrevented,
  target: event.target,
});

/** Notes keys on the window from here on. */
export function noteKeys(target: KeyTarget): EarlyKeys {
  const noted: EarlyKey[] = [];
  const note = (key: EarlyKey) => {
    if (noted.length < MOST_NOTED) noted.push(key);
  };
  const down = (event: Event) => {
    const key = copyOf(event as KeyboardEvent);
    if (keptByFocus(key)) return;
    note({ kind: 'down', event: key });
    if (claimed(key)) event.preventDefault();
  };
  const up = (event: Event) => note({ kind: 'up', event: { key: (event as KeyboardEvent).key } });
  const blur = () => note({ kind: 'blur' });
  const heard = [
    ['keydown', down],
    ['keyup', up],
    ['blur', blur],
  ] as const;
  for (const [type, listener] of heard) target.addEventListener(type, listener);
  return {
    take: () => {
      for (const [type, listener] of heard) target.removeEventListener(type, listener);
      return noted.splice(0);
    },
  };
}
