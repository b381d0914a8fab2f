/**
 * All of the library out as one file, and in from one; and where the library lies.
 */
import { t } from '../../language/index';
import { useContext } from 'react';
import { CommandContext } from '../../panels/commandContext';
import { ok, type Result } from '../../layout/result';
import { exportLibrary } from '../../store/library';
import { bringIn } from './actions';
import type { Done, LibraryState } from './useLibrary';
import { savedText } from './words';

const FILES = '.json,application/json';

export function Transfer({ library }: { readonly library: LibraryState }) {
  const ports = useContext(CommandContext)?.ports;
  const { act, busy, lists } = library;
  const empty = lists === null || Object.values(lists).every((list) => list.length === 0);
  const carryOut = async (): Promise<Result<Done | null>> => {
    const pieces = await exportLibrary();
    if (!pieces.ok) return pieces;
    const name = `library-${savedText(Date.now()).slice(0, 10)}.json`;
    ports?.download(name, new TextEncoder().encode(pieces.value.join('')), 'application/json');
    return ok({ text: t('All of it is in {name}.', { name }), undo: null });
  };
  const carryIn = async (): Promise<void> => {
    const file = await ports?.pickFile(FILES);
    if (file) await act(() => bringIn(file));
  };
  return (
    <footer className="dialog-foot library-foot">
      <p className="hint">
        {t(
          'Kept in this browser only; clearing its site data removes it. A plate holds copies: changing an entry changes no plate.',
        )}
      </p>
      <button type="button" className="button" disabled={busy} onClick={() => void carryIn()}>
        {t('Import …')}
      </button>
      <button type="button" className="button" disabled={busy || empty} onClick={() => void act(carryOut)}>
        {t('Export all')}
      </button>
    </footer>
  );
}
