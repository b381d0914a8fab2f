/**
 * In what order and under what words commands are listed, by their groups; which of them a list offers.
 */
import { t, type Text } from '../language/index';
import { hasSelection, layoutOf } from '../commands/make';
import type { Command, CommandGroup, Context } from '../commands/types';

export const GROUPS: readonly { readonly group: CommandGroup; readonly title: Text }[] = [
  { group: 'division', title: 'Division' },
  { group: 'part', title: 'Parts' },
  { group: 'draw', title: 'Tools' },
  { group: 'edit', title: 'Edit' },
  { group: 'view', title: 'View' },
  { group: 'file', title: 'File' },
  { group: 'help', title: 'Help' },
];

/** A list that is open already, and what needs the key itself. */
const NOT_LISTED = ['palette', 'step-back'];

/** The number of the laser that a command is about; 0 where it is about none. */
const laserOf = ({ id }: Command): number => Number(/^(?:pin|switch|select)-laser-(\d+)$/.exec(id)?.[1] ?? 0);

export interface Listed {
  readonly command: Command;
  /** Why it does not apply now; null where it does. */
  readonly lack: string | null;
}

/** The condition's own words, else what can be said of any command of its group. */
function whyNot({ when, group }: Command, context: Context): string | null {
  if (when(context)) return null;
  if (when.lack) return when.lack(context);
  if (group === 'part' || group === 'edit')
    return hasSelection(context) ? t('not with these parts selected') : hasSelection.lack!(context);
  return t('not on this plate as it is');
}

/** The commands to choose from: none for lasers that the machine does not have. */
export function listed(commands: readonly Command[], context: Context): readonly Listed[] {
  const lasers = layoutOf(context).machine.lasers.length;
  return commands
    .filter((command) => !NOT_LISTED.includes(command.id) && laserOf(command) <= lasers)
    .map((command) => ({ command, lack: whyNot(command, context) }));
}
