/**
 * Saves what is on the workbench under a name. A name that is taken asks whether to replace that entry or to keep both.
 */
import { t } from '../../language/index';
import { useState } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import type { Layout } from '../../layout/types';
import type { Content, EntryHead, EntryKind } from '../../store/library';
import { FieldBox } from '../../panels/controls/FieldBox';
import { save } from './actions';
import type { LibraryState } from './useLibrary';
import { KIND_WORDS } from './words';

interface SaveFormProps {
  readonly kind: EntryKind;
  readonly heads: readonly EntryHead[];
  readonly library: LibraryState;
}

/** What the plate has of that kind; null where it has no such shape. */
function contentOf(layout: Layout, kind: EntryKind, shape: string): Content | null {
  switch (kind) {
    case 'layout':
      return { kind, content: layout };
    case 'machine':
      return { kind, content: layout.machine };
    case 'process':
      return { kind, content: layout.process };
    case 'shape': {
      const content = Object.hasOwn(layout.shapes, shape) ? layout.shapes[shape] : undefined;
      return content ? { kind, content } : null;
    }
  }
}

/** What the plate calls it. */
const nameOf = (layout: Layout, kind: EntryKind, shape: string): string =>
  kind === 'layout' ? layout.name : kind === 'shape' ? shape : layout[kind].name;

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ');

interface ShapeChoiceProps {
  readonly names: readonly string[];
  readonly value: string;
  onChoose(name: string): void;
}
function ShapeChoice({ names, value, onChoose }: ShapeChoiceProps) {
  return (
    <select
      className="plain-select library-shape"
      aria-label={t('Shape of the plate')}
      data-testid="library-shape-choice"
      value={value}
      onChange={(event) => onChoose(event.target.value)}
    >
      {names.map((name) => (
        <option key={name}>{name}</option>
      ))}
    </select>
  );
}

function useSaveForm({ kind, heads, library }: SaveFormProps) {
  const bench = useWorkbench();
  const layout = useBench((state) => state.layout);
  const [typed, setTyped] = useState<string | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const shapes = Object.keys(layout.shapes);
  const shape = chosen !== null && shapes.includes(chosen) ? chosen : (shapes[0] ?? '');
  const name = typed ?? nameOf(layout, kind, shape);
  const content = contentOf(layout, kind, shape);
  const taken = heads.find((head) => head.name === plain(name)) ?? null;
  const run = (replaces: EntryHead | null): void => {
    if (content === null) return;
    setTyped(null);
    const { height } = bench.store.getState();
    const checksum = height.checksum?.layout === content.content ? height.checksum.checksum : null;
    void library.act(() => save({ ...content, name, replaces, checksum }));
  };
  const choose = (next: string): void => {
    setTyped(null);
    setChosen(next);
  };
  return { shapes, shape, name, taken, run, choose, setTyped, ready: content !== null && !library.busy };
}

export function SaveForm(props: SaveFormProps) {
  const { kind } = props;
  const { shapes, shape, name, taken, run, choose, setTyped, ready } = useSaveForm(props);
  const words = KIND_WORDS[kind];
  return (
    <form
      className="library-save"
      onSubmit={(event) => {
        event.preventDefault();
        if (taken === null) run(null);
      }}
    >
      <span className="field-label">{t(words.save)}</span>
      {kind === 'shape' && <ShapeChoice names={shapes} value={shape} onChoose={choose} />}
      {kind === 'shape' && <span className="field-label">{t('as')}</span>}
      <FieldBox
        bare
        label={t(words.named)}
        fault={null}
        testId="library-name"
        input={{
          style: { textAlign: 'left' },
          value: name,
          onChange: (event) => setTyped(event.target.value),
        }}
      />
      {taken === null ? (
        <button type="submit" className="button" data-main disabled={!ready || plain(name) === ''}>
          {t('Save')}
        </button>
      ) : (
        <>
          <span className="field-label">{t('this name is taken:')}</span>
          <button type="button" className="button" disabled={!ready} onClick={() => run(taken)}>
            {t('Replace')}
          </button>
          <button type="button" className="button" disabled={!ready} onClick={() => run(null)}>
            {t('Keep both')}
          </button>
        </>
      )}
    </form>
  );
}
