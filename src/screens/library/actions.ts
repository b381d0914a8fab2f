/**
 * What can be done with the library, each with the words that say it was done and the way back.
 */
import { t } from '../../language/index';
import { ok, type Result } from '../../layout/result';
import {
  deleteEntry,
  importLibrary,
  renameEntry,
  restoreEntry,
  saveEntry,
  type EntryHead,
  type Imported,
  type Saved,
  type SaveRequest,
} from '../../store/library';
import type { Done } from './useLibrary';

const doneWords = (text: string, undo: Done['undo'] = null): Done => ({ text, undo });

function savedWords({ head, outcome }: Saved, asked: string): string {
  switch (outcome) {
    case 'new':
      return t('“{name}” is in the library.', { name: head.name });
    case 'replaced':
      return t('“{name}” is replaced.', { name: head.name });
    case 'same':
      return t('“{name}” was in the library already, with the same content.', { name: head.name });
    case 'beside':
      return t('Saved as “{name}”, beside “{asked}”.', { name: head.name, asked });
  }
}

/** Saves; a replaced entry can be brought back. */
export async function save(request: SaveRequest): Promise<Result<Done>> {
  const saved = await saveEntry(request);
  if (!saved.ok) return saved;
  const { head, before } = saved.value;
  const undo = before && (async () => restored(await restoreEntry(before, head)));
  return ok(doneWords(savedWords(saved.value, request.name), undo));
}

/** The words after a way back. */
const restored = (back: Result<EntryHead>): Result<Done> =>
  back.ok ? ok(doneWords(t('“{name}” is back in the library.', { name: back.value.name }))) : back;

export async function remove(head: EntryHead): Promise<Result<Done>> {
  const deleted = await deleteEntry(head);
  if (!deleted.ok) return deleted;
  const undo = async () => restored(await restoreEntry(deleted.value));
  return ok(doneWords(t('“{name}” is deleted.', { name: head.name }), undo));
}

export async function rename(head: EntryHead, name: string): Promise<Result<Done>> {
  const renamed = await renameEntry(head, name);
  if (!renamed.ok) return renamed;
  const back = renamed.value.name === head.name ? null : renamed.value;
  const undo =
    back &&
    (async () => {
      const again = await renameEntry(back, head.name);
      return again.ok ? ok(doneWords(t('“{name}” has its name back.', { name: again.value.name }))) : again;
    });
  return ok(doneWords(t('“{name}” is now “{next}”.', { name: head.name, next: renamed.value.name }), undo));
}

export function importedWords({ added, beside, renamed, known }: Imported): string {
  const also = [
    ...(beside > 0 ? [t('{beside} of them beside another state of the same entry', { beside })] : []),
    ...(renamed > 0 ? [t('{renamed} renamed', { renamed })] : []),
    ...(known > 0 ? [t('{known} here already', { known })] : []),
  ];
  return t('{count} [entry|entries] added{list}.', {
    count: added,
    list: also.map((words) => `, ${words}`).join(''),
  });
}

export async function bringIn(file: File): Promise<Result<Done>> {
  const imported = await importLibrary(file);
  return imported.ok ? ok(doneWords(importedWords(imported.value))) : imported;
}
