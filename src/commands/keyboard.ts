/**
 * From keys to commands. A key that the focused field, widget or dialog keeps for itself is none. A held key is one gesture, ended when it is let go or the
 * window loses the focus.
 */
import { labelOf } from './labels';
import { listenToClipboard } from './clipboard/events';
import type { EarlyKey, EarlyKeys, KeyTarget } from './earlyKeys';
import { keptByFocus, type KeyEvent } from './focus';
import { COMMANDS } from './index';
import type { Command, Context } from './types';

export type { KeyEvent };

/** "Ctrl+Shift+Z", "Shift+T", "t", "?": Cmd counts as Ctrl, Shift counts only with letters and named keys. */
export function chordOf({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyEvent): string {
  const letter = key.length === 1 && key.toLowerCase() !== key.toUpperCase();
  const shift = shiftKey && (letter || key.length > 1);
  const ctrl = ctrlKey || metaKey;
  const name = letter ? (ctrl || shift ? key.toUpperCase() : key.toLowerCase()) : key;
  return `${ctrl ? 'Ctrl+' : ''}${altKey ? 'Alt+' : ''}${shift ? 'Shift+' : ''}${name}`;
}

/** A drag of the pointer is not disturbed by keys, except to cancel it or to look closer. */
const disturbs = (command: Command): boolean => command.group !== 'view' && command.id !== 'step-back';

/** The command that a key stands for here and now; null where there is none. */
export function commandForKey(event: KeyEvent, context: Context): Command | null {
  if (event.isComposing || event.defaultPrevented || keptByFocus(event)) return null;
  const chord = chordOf(event);
  const found = COMMANDS.find((command) => command.keys.includes(chord));
  return found?.when(context) ? found : null;
}

export interface Keyboard {
  /** True where the key was a command, so that the browser's own meaning is to be prevented. */
  down(event: KeyEvent): boolean;
  up(event: Pick<KeyEvent, 'key'>): void;
  /** The window lost the focus: no key is held any more. */
  blur(): void;
}

/** A keyboard for one workbench. */
export function createKeyboard(context: Context): Keyboard {
  const { bench } = context;
  let held: { readonly key: string; readonly id: string } | null = null;
  const release = () => {
    if (held) bench.endGesture();
    held = null;
  };
  const hold = (command: Command, key: string) => {
    if (held?.id === command.id) return;
    release();
    bench.beginGesture(labelOf(command));
    held = { key: key.toLowerCase(), id: command.id };
  };
  return {
    down: (event) => {
      const command = commandForKey(event, context);
      if (command?.native) release();
      if (!command || command.native) return false;
      if (!held && bench.gestureOpen() && disturbs(command)) return true;
      if (event.repeat && !command.repeats && !command.whileHeld) return true;
      if (command.repeats) hold(command, event.key);
      else if (command.id === 'step-back') held = null;
      else release();
      void command.run(context);
      return true;
    },
    up: ({ key }) => {
      // while Cmd is held, macOS tells of no other key that it was let go
      if (key === 'Meta' || held?.key === key.toLowerCase()) release();
    },
    blur: release,
  };
}

function replay(keyboard: Keyboard, noted: readonly EarlyKey[]): void {
  for (const key of noted) {
    if (key.kind === 'down') keyboard.down(key.event);
    else if (key.kind === 'up') keyboard.up(key.event);
    else keyboard.blur();
  }
}

/** Listens on the window to keys and to the clipboard's events, after the keys that were noted before; returns the way to stop. */
export function listenToKeys(target: KeyTarget, context: Context, early?: EarlyKeys): () => void {
  const keyboard = createKeyboard(context);
  const down = (event: Event) => {
    if (keyboard.down(event as KeyboardEvent)) event.preventDefault();
  };
  const up = (event: Event) => keyboard.up(event as KeyboardEvent);
  target.addEventListener('keydown', down);
  target.addEventListener('keyup', up);
  target.addEventListener('blur', keyboard.blur);
  if (early) replay(keyboard, early.take());
  const stopClipboard = listenToClipboard(target, context);
  return () => {
    stopClipboard();
    keyboard.blur();
    target.removeEventListener('keydown', down);
    target.removeEventListener('keyup', up);
    target.removeEventListener('blur', keyboard.blur);
  };
}
