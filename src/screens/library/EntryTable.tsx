/**
 * The entries of one kind, the newest first: what each is, whether the plate has the same, and what can be done with it.
 */
import { t, type Text } from '../../language/index';
import { Fragment, useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import { putEntry } from '../../commands/file/putEntry';
import { ok, type Result } from '../../layout/result';
import { readEntry, type EntryHead, type EntryKind } from '../../store/library';
import { remove, rename } from './actions';
import { useCompared, type Compared } from './useCompared';
import type { Done, LibraryState } from './useLibrary';
import { COLUMNS, KIND_WORDS, revisionText, savedText } from './words';

interface EntryTableProps {
  readonly kind: EntryKind;
  readonly heads: readonly EntryHead[];
  readonly library: LibraryState;
  onClose(): void;
}
interface RowProps {
  readonly head: EntryHead;
  readonly library: LibraryState;
  /** What is on the plate, beside the entry; null while it is not known. */
  readonly compared: Compared | null;
  onClose(): void;
}

interface RenameProps {
  readonly name: string;
  onDone(name: string | null): void;
}
/** The name as a field: Enter or leaving commits, Escape restores. */
function Rename({ name, onDone }: RenameProps) {
  const [text, setText] = useState(name);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []);
  const commit = (): void => onDone(text.trim() === name ? null : text);
  return (
    <input
      className="library-rename"
      aria-label={t('New name of {name}', { name })}
      data-testid="library-rename"
      data-own-escape
      value={text}
      ref={field}
      onChange={(event) => setText(event.target.value)}
      onBlur={commit}
      onKeyDown={(event) => {
        if (event.key === 'Enter') commit();
        if (event.key === 'Escape') onDone(null);
      }}
    />
  );
}

/** Puts a copy on the workbench; the dialog closes unless there may be more of them. */
function usePut({ head, library, onClose }: RowProps): () => void {
  const bench = useWorkbench();
  const put = async (): Promise<Result<Done | null>> => {
    const entry = await readEntry(head.id);
    const placed = entry.ok ? putEntry(bench, entry.value) : entry;
    if (!placed.ok) return placed;
    if (head.kind !== 'shape') onClose();
    const parts = placed.value.join(', ');
    return ok(
      parts === ''
        ? null
        : { text: t('“{name}” stands on the plate as {parts}.', { name: head.name, parts }), undo: null },
    );
  };
  return () => void library.act(put);
}

function Actions({ row, onRename }: { readonly row: RowProps; onRename(): void }) {
  const { head, library } = row;
  const put = usePut(row);
  const button = (word: Text, press: () => void) => (
    <button
      type="button"
      className="button"
      disabled={library.busy}
      aria-label={t('{action} {name}', { action: t(word), name: head.name })}
      onClick={press}
    >
      {t(word)}
    </button>
  );
  return (
    <td className="library-actions">
      {button(KIND_WORDS[head.kind].use, put)}
      {button('Rename', onRename)}
      {button('Delete', () => void library.act(() => remove(head)))}
    </td>
  );
}

/** Below an entry: where the plate's differs from it. */
function Differences({ head, more }: { readonly head: EntryHead; readonly more: string }) {
  if (more === '') return null;
  return (
    <tr className="library-more" data-differences={head.name}>
      <td colSpan={COLUMNS[head.kind].length + 5}>{t('on the plate: {more}', { more })}</td>
    </tr>
  );
}

function Row(props: RowProps) {
  const { head, library, compared } = props;
  const [naming, setNaming] = useState(false);
  const named = (name: string | null): void => {
    setNaming(false);
    if (name !== null) void library.act(() => rename(head, name));
  };
  return (
    <tr data-entry={head.name} data-more={(compared?.more ?? '') !== '' || undefined}>
      <th scope="row" title={head.name}>
        {naming ? <Rename name={head.name} onDone={named} /> : head.name}
        {revisionText(head) !== '' && <small>{revisionText(head)}</small>}
      </th>
      <td>{savedText(head.saved_ms)}</td>
      {COLUMNS[head.kind].map((column) => (
        <td key={column.title} data-number={column.number} title={column.text(head)}>
          {column.text(head)}
        </td>
      ))}
      <td className="library-checksum">{head.checksum}</td>
      <td className="library-compared">{compared?.word ?? '…'}</td>
      <Actions row={props} onRename={() => setNaming(true)} />
    </tr>
  );
}

export function EntryTable({ kind, heads, library, onClose }: EntryTableProps) {
  const compared = useCompared(kind, heads);
  if (heads.length === 0) return <p className="hint">{t(KIND_WORDS[kind].none)}</p>;
  return (
    <table className="library-table" data-testid="library-table" aria-label={t(KIND_WORDS[kind].many)}>
      <thead>
        <tr>
          <th scope="col">{t('name')}</th>
          <th scope="col">{t('saved')}</th>
          {COLUMNS[kind].map(({ title, number }) => (
            <th key={title} scope="col" data-number={number}>
              {t(title)}
            </th>
          ))}
          <th scope="col">{t('checksum')}</th>
          <th scope="col">{t(KIND_WORDS[kind].beside)}</th>
          <th scope="col">
            <span className="visually-hidden">{t('actions')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {heads.map((head) => (
          <Fragment key={head.id}>
            <Row head={head} library={library} compared={compared.get(head.id) ?? null} onClose={onClose} />
            <Differences head={head} more={compared.get(head.id)?.more ?? ''} />
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
