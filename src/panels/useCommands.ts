/**
 * Commands for buttons: the one list of src/commands, run with the page's own ports. A button shows its command's keys
 * and is off where the command does not apply.
 */
import { t, type Text } from '../language/index';
import { useContext } from 'react';
import { command, runCommand } from '../commands/index';
import type { Command } from '../commands/types';
import { CommandContext } from './commandContext';

export interface BoundCommand {
  readonly command: Command;
  readonly enabled: boolean;
  run(): void;
}

/** The command of that id, ready to be pressed. Whoever uses it re-renders by what the command's `when` reads. */
export function useCommand(id: string): BoundCommand {
  const context = useContext(CommandContext);
  if (context === null) throw new Error('useCommand: expected a CommandContext above, found none');
  const found = command(id);
  return { command: found, enabled: found.when(context), run: () => void runCommand(id, context) };
}

/** Runs the command of an id, for lists each of whose entries is a command. */
export function useRunCommand(): (id: string) => void {
  const context = useContext(CommandContext);
  if (context === null) throw new Error('useRunCommand: expected a CommandContext above, found none');
  return (id) => void runCommand(id, context);
}

const SIGNS: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
};
/** Keys that a keyboard of another language names otherwise. */
const KEY_NAMES: Readonly<Record<string, Text>> = {
  Ctrl: 'Ctrl ¦ key',
  Shift: 'Shift ¦ key',
  Delete: 'Del ¦ key',
  Home: 'Home ¦ key',
  Backspace: 'Backspace ¦ key',
  PageUp: 'PgUp ¦ key',
  PageDown: 'PgDn ¦ key',
};
const keyName = (key: string): string => {
  const named = KEY_NAMES[key];
  return named ? t(named) : (SIGNS[key] ?? (key.length === 1 ? key.toUpperCase() : key));
};

/** A key as it is written on buttons: "Ctrl+Z", "Q", "PgUp". */
export function keyText(keys: string): string {
  if (keys === '+') return keys;
  return keys
    .split(/(?<=.)\+/)
    .map(keyName)
    .join('+');
}
