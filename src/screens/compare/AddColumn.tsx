/** Where another layout comes from: the open plate, a file, the library, a link. */
import { t } from '../../language/index';
import { useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import { readLayoutFile } from '../../commands/file/openFile';
import type { Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { readLink } from '../../worker/links';
import { listEntries, readEntry, type EntryHead } from '../../store/library';
import { addColumn, comparison, MOST_COLUMNS } from './columns';

/** Adds what was read, or says what is wrong with it. */
function useTake() {
  const bench = useWorkbench();
  return (from: string, read: Result<Layout>): boolean => {
    if (read.ok) addColumn(from, read.value);
    else bench.notify(read.fault);
    return read.ok;
  };
}

function FromFile() {
  const input = useRef<HTMLInputElement>(null);
  const take = useTake();
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {t('Add file …')}
      </button>
      <input
        ref={input}
        hidden
        type="file"
        accept=".json"
        data-testid="compare-file"
        onChange={async ({ target }) => {
          const file = target.files?.[0];
          target.value = '';
          if (file) take(file.name, await readLayoutFile(file));
        }}
      />
    </>
  );
}

/** Layouts of the library; nothing where there is none. */
function FromLibrary() {
  const take = useTake();
  const [heads, setHeads] = useState<readonly EntryHead[]>([]);
  useEffect(() => {
    void listEntries('layout').then((list) => setHeads(list.ok ? list.value : []));
  }, []);
  if (heads.length === 0) return null;
  const add = async (id: string): Promise<void> => {
    const entry = await readEntry(id);
    if (!entry.ok) take(t('library'), entry);
    else if (entry.value.head.kind === 'layout')
      take(t('library'), { ok: true, value: entry.value.content as Layout });
  };
  return (
    <select
      className="input"
      aria-label={t('layout of the library')}
      value=""
      data-testid="compare-library"
      onChange={({ target }) => void add(target.value)}
    >
      <option value="">{t('Add from the library …')}</option>
      {heads.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
}

/** A pasted link, of one plate or of a comparison; what is no link, or holds more than there is room for, stays in the field and is reported. */
function FromLink() {
  const bench = useWorkbench();
  const [text, setText] = useState('');
  const add = async (given: string): Promise<void> => {
    if (given.trim() === '') return;
    const read = await readLink(given);
    if (!read.ok) return bench.notify(read.fault);
    const found = read.value.layouts.length;
    const room = MOST_COLUMNS - comparison.getState().columns.length;
    if (found > room) return bench.notify({ code: 'link-no-room', params: { found, room } });
    setText('');
    for (const layout of read.value.layouts) addColumn(t('link'), layout);
  };
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        void add(text);
      }}
    >
      <input
        className="input"
        aria-label={t('link of a plate or of a comparison')}
        placeholder={t('Paste a link …')}
        spellCheck={false}
        autoComplete="off"
        value={text}
        data-testid="compare-paste-link"
        onChange={({ target }) => setText(target.value)}
      />
      <button type="submit" className="button" disabled={text.trim() === ''}>
        {t('Add link')}
      </button>
    </form>
  );
}

export function AddColumn() {
  const bench = useWorkbench();
  return (
    <div className="compare-add">
      <button
        type="button"
        className="button"
        data-testid="compare-open-plate"
        onClick={() => addColumn(t('open plate'), bench.store.getState().layout)}
      >
        {t('Add the open plate')}
      </button>
      <FromFile />
      <FromLibrary />
      <FromLink />
    </div>
  );
}
