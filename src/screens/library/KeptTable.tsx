/**
 * What autosave has kept aside: another window's plate, and saved work that could not be opened. Each can be opened or
 * moved into the library where it can be read, saved as text where it cannot, and put away.
 */
import { t, type Text } from '../../language/index';
import { useContext } from 'react';
import { useWorkbench } from '../../canvas/bench';
import { openLayout } from '../../commands/file/openLayout';
import { messageText } from '../../layout/messages';
import { fail, ok, type Result } from '../../layout/result';
import { CommandContext } from '../../panels/commandContext';
import { putAway, type Kept } from '../../store/library/keptAside';
import { save } from './actions';
import { pageStorage, type Done, type LibraryState } from './useLibrary';

interface KeptProps {
  readonly kept: Kept;
  readonly library: LibraryState;
  onClose(): void;
}

const TITLES: Readonly<Record<Kept['from'], Text>> = {
  'another window': 'From another window',
  unread: 'Could not be opened',
};

function aboutKept({ read }: Kept): string {
  if (!read.ok) return messageText(read.fault.code, read.fault.params);
  const { name, parts, machine } = read.value;
  return t('{name}, {count} [part|parts], {machine}', { name, count: parts.length, machine: machine.name });
}

/** Puts it away for good; the words say so. */
const putAwayNow = (kept: Kept, text: string): Result<Done> =>
  putAway(pageStorage(), kept) ? ok({ text, undo: null }) : fail('kept-plate-changed');

/** Into the library first, and only then out of where it was. */
async function moved(kept: Kept): Promise<Result<Done>> {
  if (!kept.read.ok) return kept.read;
  const { value: content } = kept.read;
  const saved = await save({ kind: 'layout', content, name: content.name });
  if (saved.ok) putAway(pageStorage(), kept);
  return saved;
}

function KeptRow({ kept, library, onClose }: KeptProps) {
  const bench = useWorkbench();
  const ports = useContext(CommandContext)?.ports;
  const { read } = kept;
  const open = (): void => {
    if (!read.ok) return;
    openLayout(bench, t('Open “{name}”, kept aside', { name: read.value.name }), read.value);
    onClose();
  };
  const button = (word: string, press: () => void) => (
    <button type="button" className="button" disabled={library.busy} onClick={press}>
      {word}
    </button>
  );
  const away = async () => putAwayNow(kept, t('It is put away for good.'));
  return (
    <li className="library-kept" data-testid="library-kept">
      <span>
        <b>{t(TITLES[kept.from])}:</b> {aboutKept(kept)}
      </span>
      {read.ok && button(t('Open'), open)}
      {read.ok && button(t('Move into the library'), () => void library.act(() => moved(kept)))}
      {!read.ok &&
        button(t('Save its text'), () => ports?.download('kept-aside.json', kept.text, 'application/json'))}
      {button(t('Put away for good'), () => void library.act(away))}
    </li>
  );
}

export function KeptTable({ library, onClose }: Omit<KeptProps, 'kept'>) {
  if (library.kept.length === 0) return null;
  return (
    <section className="library-aside" aria-label={t('Kept aside')}>
      <h3>{t('Kept aside')}</h3>
      <ul>
        {library.kept.map((kept) => (
          <KeptRow key={kept.key} kept={kept} library={library} onClose={onClose} />
        ))}
      </ul>
    </section>
  );
}
