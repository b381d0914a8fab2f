/**
 * A button for one command: its label or picture, its keys in the title.
 */
import { labelOf } from '../../commands/labels';
import type { ReactNode } from 'react';
import { keyText, useCommand } from '../useCommands';

interface CommandButtonProps {
  readonly id: string;
  readonly children: ReactNode;
  /** Said instead of the command's own label. */
  readonly label?: string;
}

/** What is said begins with what is shown, so that a spoken word finds the button. */
function spokenName(shown: ReactNode, name: string): string {
  if (typeof shown !== 'string' || !/\p{L}/u.test(shown)) return name;
  return name.toLowerCase().includes(shown.toLowerCase()) ? name : `${shown}: ${name}`;
}

export function CommandButton({ id, children, label }: CommandButtonProps) {
  const { command, enabled, run } = useCommand(id);
  const keys = command.keys[0];
  const name = label ?? labelOf(command);
  return (
    <button
      type="button"
      className="button"
      disabled={!enabled}
      aria-label={spokenName(children, name)}
      aria-keyshortcuts={keys?.replace('Ctrl', 'Control')}
      title={keys === undefined ? name : `${name} (${keyText(keys)})`}
      data-testid={`command-${id}`}
      onClick={run}
    >
      {children}
    </button>
  );
}
