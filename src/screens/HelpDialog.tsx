/**
 * The keys, made from the one list of commands, and what the pointer does.
 */
import { labelOf } from '../commands/labels';
import { t } from '../language/index';
import { COMMANDS } from '../commands/index';
import type { Command, CommandGroup } from '../commands/types';
import { keyText } from '../panels/useCommands';
import { Cautions } from './Cautions';
import { GROUPS } from './commandGroups';
import { Sheet } from './Sheet';

const withKeys = (group: CommandGroup): readonly Command[] =>
  COMMANDS.filter((entry) => entry.group === group && entry.keys.length > 0);

function Group({ group, title }: (typeof GROUPS)[number]) {
  return (
    <section>
      <h3>{t(title)}</h3>
      <dl className="keys">
        {withKeys(group).map((entry) => (
          <div key={entry.id}>
            <dt>
              {entry.keys.map((key) => (
                <kbd key={key}>{keyText(key)}</kbd>
              ))}
            </dt>
            <dd>{labelOf(entry)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

export default function HelpDialog({ onClose }: { onClose(): void }) {
  return (
    <Sheet title={t('Keys and help')} wide reading onClose={onClose}>
      <p className="hint">
        {t(
          'Every figure of the readout says what it means when the pointer rests on it or the Tab key reaches it. Fields read “25,4 mm”, “1 in” and “1/4 in”; Enter commits, Escape restores, the arrow keys step. The wheel zooms at the pointer; Shift adds to the selection; Alt drags a copy; Ctrl drags without snapping.',
        )}
      </p>
      <div className="key-groups">
        {GROUPS.map((entry) => (
          <Group key={entry.group} {...entry} />
        ))}
      </div>
      <Cautions />
    </Sheet>
  );
}
