/**
 * The sheet's header: name, revision, division, rule for shared load, undo and redo, file, ground, help.
 */
import { labelOf } from '../../commands/labels';
import { t } from '../../language/index';
import { Suspense, useState } from 'react';
import { onceDrawn } from '../../canvas/later';
import { useBench, useHistory } from '../../canvas/bench';
import { setTexts } from '../../commands/operations';
import { Segmented } from '../controls/Segmented';
import { TextField } from '../controls/TextField';
import { keyText, useCommand } from '../useCommands';
import { CommandButton } from './CommandButton';
import { DivisionSwitch } from './DivisionSwitch';
import { GroundIcon, RedoIcon, UndoIcon } from './icons';
import './header.css';

const FileMenu = onceDrawn(async () => (await import('./FileMenu')).default);
const ViewMenu = onceDrawn(async () => (await import('./ViewMenu')).default);

function RuleSwitch() {
  const rule = useBench((state) => state.layout.allocation);
  const commands = {
    balanced: useCommand('allocate-balanced'),
    wholeParts: useCommand('allocate-whole-parts'),
  };
  const option = (value: keyof typeof commands, word: string) => ({
    value,
    label: labelOf(commands[value].command),
    content: (
      <>
        {word} <span className="key">{keyText(commands[value].command.keys[0] ?? '')}</span>
      </>
    ),
  });
  return (
    <Segmented
      label={t('Rule for shared load')}
      value={rule}
      options={[option('balanced', t('Balanced')), option('wholeParts', t('Whole parts'))]}
      onChoose={(next) => commands[next].run()}
    />
  );
}

function HistoryButtons() {
  const { undo, redo } = useHistory();
  return (
    <div className="row">
      <CommandButton id="undo" label={undo === null ? t('Undo') : t('Undo: {undo}', { undo })}>
        <UndoIcon />
      </CommandButton>
      <CommandButton id="redo" label={redo === null ? t('Redo') : t('Redo: {redo}', { redo })}>
        <RedoIcon />
      </CommandButton>
    </div>
  );
}

/** The button alone until it is pressed; the menu comes with its own code. */
function FileButton() {
  const [wanted, setWanted] = useState(false);
  const button = (
    <button
      type="button"
      className="button"
      aria-haspopup="menu"
      data-testid="file-menu"
      onClick={() => setWanted(true)}
    >
      {t('File')}
    </button>
  );
  if (!wanted) return button;
  return (
    <Suspense fallback={button}>
      <FileMenu />
    </Suspense>
  );
}

/** Ground, language and wheel; like the file menu. */
function ViewButton() {
  const [wanted, setWanted] = useState(false);
  const button = (
    <button
      type="button"
      className="button"
      aria-haspopup="menu"
      aria-label={t('Ground, language, wheel')}
      title={t('Ground, language, wheel')}
      data-testid="view-menu"
      onClick={() => setWanted(true)}
    >
      <GroundIcon />
    </button>
  );
  if (!wanted) return button;
  return (
    <Suspense fallback={button}>
      <ViewMenu>
        <GroundIcon />
      </ViewMenu>
    </Suspense>
  );
}

function LayoutName() {
  const name = useBench((state) => state.layout.name);
  return (
    <TextField
      bare
      label={t('name of the layout')}
      value={name}
      testId="layout-name"
      recipe={(layout, next) => setTexts(layout, { name: next })}
    />
  );
}

/** Beside the name: the revision it is filed under and its state; opens what it records. */
function RevisionMark() {
  const revision = useBench((state) => state.layout.revision);
  const { run } = useCommand('revision');
  const words =
    revision === null
      ? t('No revision yet')
      : t('Revision {name}, {state}', { name: revision.name, state: t(revision.state) });
  return (
    <button
      type="button"
      className="button revision-mark"
      data-bare
      title={words}
      aria-label={words}
      data-testid="revision-mark"
      onClick={run}
    >
      <b>· {revision?.name ?? '–'}</b>
      {revision && <span className="key">{t(revision.state)}</span>}
    </button>
  );
}

export function Header() {
  return (
    <header className="header">
      <h1 className="visually-hidden">Evenplate</h1>
      <LayoutName />
      <RevisionMark />
      <DivisionSwitch />
      <RuleSwitch />
      <span className="header-gap" />
      <HistoryButtons />
      <CommandButton id="copy-link">{t('Link')}</CommandButton>
      <CommandButton id="side-by-side">{t('Side by side')}</CommandButton>
      <CommandButton id="sheet">{t('Sheet')}</CommandButton>
      <FileButton />
      <ViewButton />
      <CommandButton id="help">?</CommandButton>
    </header>
  );
}
