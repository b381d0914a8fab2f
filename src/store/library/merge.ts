/**
 * What an import makes of entries that come from elsewhere. An entry that is there stays as it is: under the same id with the
 * same content the newer name counts, with another content both are kept, the one that comes in as a second entry. Its id
 * follows from what it holds, so that the same file brings it once however often it is read.
 */
import type { Writing } from './database';
import { holdsSame } from './library';
import { freeEntryName } from './names';
import type { EntryHead, StoredEntry } from './types';

export interface Imported {
  /** Entries that were not there. */
  readonly added: number;
  /** Those of them that stand beside another state of the same entry. */
  readonly beside: number;
  /** Entries that got a newer name. */
  readonly renamed: number;
  /** Entries that were there already. */
  readonly known: number;
}

/** The id of another state of an entry. */
const besideId = ({ id, checksum, aside }: EntryHead): string =>
  `${id.split('~')[0]}~${checksum}${aside === '' ? '' : `-${aside}`}`;

type Step =
  | { readonly kind: 'known' }
  | { readonly kind: 'renamed'; readonly head: EntryHead }
  | { readonly kind: 'added'; readonly id: string; readonly beside: boolean };

function stepOf(heads: readonly EntryHead[], { head }: StoredEntry): Step {
  const here = heads.find(({ id }) => id === head.id);
  if (!here) {
    const twin = heads.some((other) => holdsSame(other, head) && other.name === head.name);
    return twin ? { kind: 'known' } : { kind: 'added', id: head.id, beside: false };
  }
  if (holdsSame(here, head)) {
    if (head.saved_ms <= here.saved_ms || head.name === here.name) return { kind: 'known' };
    const name = freeEntryName(heads, here.kind, head.name, here.id);
    return { kind: 'renamed', head: { ...here, name, saved_ms: head.saved_ms, stamp: head.stamp } };
  }
  const id = besideId(head);
  return heads.some((other) => other.id === id) ? { kind: 'known' } : { kind: 'added', id, beside: true };
}

/** What is to be written, and its count. */
export function merge(
  before: readonly EntryHead[],
  incoming: readonly StoredEntry[],
): readonly [Writing, Imported] {
  const heads = new Map(before.map((head) => [head.id, head]));
  const put: StoredEntry[] = [];
  const renamed: EntryHead[] = [];
  const count = { added: 0, beside: 0, renamed: 0, known: 0 };
  for (const entry of incoming) {
    const all = [...heads.values()];
    const step = stepOf(all, entry);
    count[step.kind]++;
    if (step.kind === 'known') continue;
    if (step.kind === 'renamed') {
      renamed.push(step.head);
      heads.set(step.head.id, step.head);
      continue;
    }
    if (step.beside) count.beside++;
    const head = { ...entry.head, id: step.id, name: freeEntryName(all, entry.head.kind, entry.head.name) };
    put.push({ ...entry, head });
    heads.set(head.id, head);
  }
  return [{ put, heads: renamed }, count];
}
