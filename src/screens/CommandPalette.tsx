/**
 * Every command by its name: type a few letters, Enter runs it. Made from the one list of commands; one that does not
 * apply says why. The dialog closes first, so that what the command opens stands alone.
 */
import { labelOf, wordsInEnglish } from '../commands/labels';
import { t } from '../language/index';
import { Command as Palette } from 'cmdk';
import { Dialog } from 'radix-ui';
import { useContext, useMemo } from 'react';
import { COMMANDS, runCommand } from '../commands/index';
import { CommandContext } from '../panels/commandContext';
import { keyText } from '../panels/useCommands';
import { GROUPS, listed, type Listed } from './commandGroups';
import { useReturnFocus } from './useReturnFocus';
import './dialogs.css';
import './palette.css';

interface EntryProps extends Listed {
  onChoose(id: string): void;
}

function Entry({ command, lack, onChoose }: EntryProps) {
  const [keys] = command.keys;
  return (
    <Palette.Item
      className="palette-entry"
      value={command.id}
      keywords={[labelOf(command), wordsInEnglish(command)]}
      disabled={lack !== null}
      data-testid={`palette-${command.id}`}
      onSelect={() => onChoose(command.id)}
    >
      <span>{labelOf(command)}</span>
      {lack !== null && <span className="palette-lack">{lack}</span>}
      {keys !== undefined && <kbd>{keyText(keys)}</kbd>}
    </Palette.Item>
  );
}

/** The better rank of the command's labels, in the language in force and in English. */
export const rank = (_id: string, search: string, labels: string[] = []): number =>
  Math.max(0, ...labels.map((label) => rankOf(label, search)));

/** Every word typed must stand in the label; words that begin with it come first. */
function rankOf(label: string, search: string): number {
  const name = label.toLowerCase();
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  if (!words.every((word) => name.includes(word))) return 0;
  const begins = words.filter((word) => ` ${name}`.includes(` ${word}`)).length;
  return 0.5 + (0.4 * begins) / Math.max(words.length, 1) + (name.startsWith(words[0] ?? '') ? 0.1 : 0);
}

/** Which of the commands apply is found once: the plate does not change while the list stands over it. */
function useEntries() {
  const context = useContext(CommandContext);
  if (context === null) throw new Error('CommandPalette: expected a CommandContext above, found none');
  const entries = useMemo(() => listed(COMMANDS, context), [context]);
  return { context, entries };
}

export default function CommandPalette({ onClose }: { onClose(): void }) {
  const { context, entries } = useEntries();
  const returnFocus = useReturnFocus();
  const choose = (id: string): void => {
    onClose();
    runCommand(id, context);
  };
  return (
    <Dialog.Root open onOpenChange={(open) => !open && onClose()}>
      <Dialog.Portal>
        <Dialog.Overlay className="overlay" />
        <Dialog.Content
          className="dialog palette"
          aria-describedby={undefined}
          onCloseAutoFocus={returnFocus}
        >
          <Dialog.Title className="visually-hidden">{t('Find a command')}</Dialog.Title>
          <Palette label={t('Find a command')} filter={rank} loop vimBindings={false}>
            <Palette.Input
              className="palette-input"
              placeholder={t('Find a command')}
              data-testid="palette-input"
            />
            <Palette.List className="palette-list" label={t('Commands')}>
              <Palette.Empty className="palette-empty">{t('No command of that name.')}</Palette.Empty>
              {GROUPS.map(({ group, title }) => (
                <Palette.Group key={group} heading={t(title)} className="palette-group">
                  {entries
                    .filter(({ command }) => command.group === group)
                    .map((entry) => (
                      <Entry key={entry.command.id} {...entry} onChoose={choose} />
                    ))}
                </Palette.Group>
              ))}
            </Palette.List>
          </Palette>
        </Dialog.Content>
      </Dialog.Portal>
    </Dialog.Root>
  );
}
