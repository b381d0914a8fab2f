/**
 * What can be done with the library, each with the words that say it was done and the way back.
 */
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
      return `“${head.name}” is in the library.`;
    case 'replaced':
      return `“${head.name}” is replaced.`;
    case 'same':
      return `“${head.name}” was in the library already, with the same content.`;
    case 'beside':
      return `Saved as “${head.name}”, beside “${asked}”.`;
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
  back.ok ? ok(doneWords(`“${back.value.name}” is back in the library.`)) : back;

export async function remove(head: EntryHead): Promise<Result<Done>> {
  const deleted = await deleteEntry(head);
  if (!deleted.ok) return deleted;
  const undo = async () => restored(await restoreEntry(deleted.value));
  return ok(doneWords(`“${head.name}” is deleted.`, undo));
}

export async function rename(head: EntryHead, name: string): Promise<Result<Done>> {
  const renamed = await renameEntry(head, name);
  if (!renamed.ok) return renamed;
  const back = renamed.value.name === head.name ? null : renamed.value;
  const undo =
    back &&
    (async () => {
      const again = await renameEntry(back, head.name);
      return again.ok ? ok(doneWords(`“${again.value.name}” has its name back.`)) : again;
    });
  return ok(doneWords(`“${head.name}” is now “${renamed.value.name}”.`, undo));
}

const entries = (n: number): string => `${n} ${n === 1 ? 'entry' : 'entries'}`;
export function importedWords({ added, beside, renamed, known }: Imported): string {
  const also = [
    ...(beside > 0 ? [`${beside} of them beside another state of the same entry`] : []),
    ...(renamed > 0 ? [`${renamed} renamed`] : []),
    ...(known > 0 ? [`${known} here already`] : []),
  ];
  return `${entries(added)} added${also.map((words) => `, ${words}`).join('')}.`;
}

export async function bringIn(file: File): Promise<Result<Done>> {
  const imported = await importLibrary(file);
  return imported.ok ? ok(doneWords(importedWords(imported.value))) : imported;
}
