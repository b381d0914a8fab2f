/**
 * What this browser keeps: layouts, machines, processes and shapes, each in a list of its own. What is used is copied into
 * the open plate; what is saved is copied out of it.
 */
import { t } from '../language/index';
import { Tabs } from 'radix-ui';
import { useState } from 'react';
import { messageAdvice, messageText } from '../layout/messages';
import { KINDS, type EntryKind } from '../store/library';
import { EntryTable } from './library/EntryTable';
import { KeptTable } from './library/KeptTable';
import { useSaid } from '../panels/spoken/say';
import { SaveForm } from './library/SaveForm';
import { Transfer } from './library/Transfer';
import { useLibrary, type LibraryState } from './library/useLibrary';
import { KIND_WORDS } from './library/words';
import { Sheet } from './Sheet';
import './library/library.css';

/** What was done last, with the way back. */
function DoneLine({ library }: { readonly library: LibraryState }) {
  const { done, busy, act } = library;
  const undo = done?.undo ?? null;
  useSaid(done?.text ?? null);
  return (
    <div className="library-done" data-testid="library-done">
      {done?.text}
      {undo !== null && (
        <button type="button" className="button" disabled={busy} onClick={() => void act(undo)}>
          {t('Undo')}
        </button>
      )}
    </div>
  );
}

interface PanelProps {
  readonly kind: EntryKind;
  readonly library: LibraryState;
  onClose(): void;
}

function Panel({ kind, library, onClose }: PanelProps) {
  const { lists, refused } = library;
  if (refused !== null)
    return (
      <p className="field-fault" role="alert">
        {messageText(refused.code, refused.params)} {messageAdvice(refused.code, refused.params)}
      </p>
    );
  if (lists === null) return <p className="hint">{t('Reading the library …')}</p>;
  return (
    <>
      <SaveForm kind={kind} heads={lists[kind]} library={library} />
      <EntryTable kind={kind} heads={lists[kind]} library={library} onClose={onClose} />
    </>
  );
}

export default function LibraryDialog({ onClose }: { onClose(): void }) {
  const [kind, setKind] = useState<EntryKind>('layout');
  const library = useLibrary();
  return (
    <Sheet title={t('Library')} wide onClose={onClose}>
      <Tabs.Root value={kind} onValueChange={(next) => setKind(next as EntryKind)}>
        <Tabs.List className="library-tabs" aria-label={t('Kinds of entries')}>
          {KINDS.map((each) => (
            <Tabs.Trigger key={each} className="library-tab" value={each} data-testid={`library-${each}`}>
              {t(KIND_WORDS[each].many)}
              <span className="key">{library.lists?.[each].length ?? ''}</span>
            </Tabs.Trigger>
          ))}
        </Tabs.List>
        <DoneLine library={library} />
        {KINDS.map((each) => (
          <Tabs.Content key={each} value={each} className="library-panel" tabIndex={-1}>
            <Panel kind={each} library={library} onClose={onClose} />
            {each === 'layout' && <KeptTable library={library} onClose={onClose} />}
          </Tabs.Content>
        ))}
      </Tabs.Root>
      <Transfer library={library} />
    </Sheet>
  );
}
