/**
 * The library as the dialog shows it: lists that follow every window's changes, what was done last and how to take it
 * back. What the browser refuses becomes a message; the lists stay as they were.
 */
import { useCallback, useEffect, useMemo, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import type { Fault, Result } from '../../layout/result';
import { KINDS, listEntries, onLibraryChange, type EntryHead, type EntryKind } from '../../store/library';
import { keptAside, type Kept } from '../../store/library/keptAside';
import { storageOf } from '../../store/savedForm';

export type Lists = Readonly<Record<EntryKind, readonly EntryHead[]>>;
export interface Done {
  readonly text: string;
  /** Takes it back; null where there is nothing to take back. */
  readonly undo: (() => Promise<Result<Done>>) | null;
}
export interface LibraryState {
  /** null: not read yet. */
  readonly lists: Lists | null;
  /** Why there is no library. */
  readonly refused: Fault | null;
  readonly kept: readonly Kept[];
  readonly done: Done | null;
  readonly busy: boolean;
  /** Runs what changes something; its faults become messages, and what it did is shown. */
  act(work: () => Promise<Result<Done | null>>): Promise<void>;
}

export const pageStorage = () => storageOf(() => window.localStorage);
const loadLarge = async () => (await import('../../store/large')).largeStorage;

async function readLists(): Promise<Result<Lists>> {
  const lists: Partial<Record<EntryKind, readonly EntryHead[]>> = {};
  for (const kind of KINDS) {
    const list = await listEntries(kind);
    if (!list.ok) return list;
    lists[kind] = list.value;
  }
  return { ok: true, value: lists as Lists };
}

/** Calls back when another window has changed the library or what is kept aside, or this one comes to the front. */
function useNews(hear: () => void): void {
  useEffect(() => {
    const stop = onLibraryChange(hear);
    window.addEventListener('storage', hear);
    document.addEventListener('visibilitychange', hear);
    return () => {
      stop();
      window.removeEventListener('storage', hear);
      document.removeEventListener('visibilitychange', hear);
    };
  }, [hear]);
}

/** Lists and what is kept aside; `reload` reads them anew. */
function useLists() {
  const [lists, setLists] = useState<Lists | null>(null);
  const [refused, setRefused] = useState<Fault | null>(null);
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const reload = useCallback(() => {
    void readLists().then((read) => {
      if (read.ok) setLists(read.value);
      setRefused(read.ok ? null : read.fault);
    });
    void keptAside(pageStorage(), loadLarge).then(setKept);
  }, []);
  useEffect(reload, [reload]);
  useNews(reload);
  return { lists, refused, kept, reload };
}

export function useLibrary(): LibraryState {
  const bench = useWorkbench();
  const { lists, refused, kept, reload } = useLists();
  const [done, setDone] = useState<Done | null>(null);
  const [busy, setBusy] = useState(false);
  const act = useCallback(
    async (work: () => Promise<Result<Done | null>>) => {
      setBusy(true);
      const answer = await work().finally(() => setBusy(false));
      if (answer.ok) setDone(answer.value);
      else bench.notify(answer.fault);
      reload();
    },
    [bench, reload],
  );
  return useMemo(() => ({ lists, refused, kept, done, busy, act }), [lists, refused, kept, done, busy, act]);
}
