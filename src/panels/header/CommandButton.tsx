/**
 * A button for one command: its label or picture, its keys in the title.
 */
import type { ReactNode } from 'react';
import { keyText, useCommand } from '../useCommands';

interface CommandButtonProps {
  readonly id: string;
  readonly children: ReactNode;
  /** Said instead of the command's own label. */
  readonly label?: string;
}

export function CommandButton({ id, children, label }: CommandButtonProps) {
  const { command, enabled, run } = useCommand(id);
  const keys = command.keys[0];
  const name = label ?? command.label;
  return (
    <button
      type="button"
      className="button"
      disabled={!enabled}
      aria-label={name}
      aria-keyshortcuts={keys?.replace('Ctrl', 'Control')}
      title={keys === undefined ? name : `${name} (${keyText(keys)})`}
      data-testid={`command-${id}`}
      onClick={run}
    >
      {children}
    </button>
  );
}
