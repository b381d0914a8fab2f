/**
 * The library: saves, lists, renames and deletes entries. Whoever changes an entry says which state of it was seen, by its
 * stamp; where another window has changed it since, saving makes a second entry and everything else is refused, so no
 * window writes over another one's. What is saved and what is read are copies. A refusal is a fault, never thrown.
 */
import { fail, ok, type Fault, type Result } from '../../layout/result';
import { newStamp } from '../apartForm';
import { checksumInSlices, readTextBeside, shapeBeside, textBeside } from './beside';
import { asideChecksum, contentChecksum, contentText, factsOf, named, readContent } from './content';
import type { LibraryDatabase, Writing } from './database';
import { entryName, freeEntryName, newId, sameNamed } from './names';
import type { Content, Entry, EntryHead, EntryId, EntryKind, HeadOf, StoredEntry } from './types';

/** An entry in the state in which it was seen. */
export type Seen = Pick<EntryHead, 'id' | 'stamp' | 'name'>;

export type SaveRequest = Content & {
  readonly name: string;
  /** The entry whose place it takes; a new entry where not given. */
  readonly replaces?: Seen | null;
  /** The content's checksum, where it is known: working it out reads all of a layout. */
  readonly checksum?: string | null;
};
export interface Saved {
  readonly head: EntryHead;
  /** `beside`: as a second entry, since the name is taken or another window has changed the entry; `same`: it was there. */
  readonly outcome: 'new' | 'replaced' | 'beside' | 'same';
  /** What was replaced; null otherwise. */
  readonly before: StoredEntry | null;
}

export interface Library {
  listEntries<K extends EntryKind>(kind: K): Promise<Result<readonly HeadOf<K>[]>>;
  /** Faults: library-entry-gone, library-entry-unreadable. */
  readEntry(id: EntryId): Promise<Result<Entry>>;
  /** Faults: library-name. */
  saveEntry(request: SaveRequest): Promise<Result<Saved>>;
  /** Faults: library-name, library-entry-gone, library-entry-changed. */
  renameEntry(seen: Seen, name: string): Promise<Result<EntryHead>>;
  /** Gives back what was deleted. Faults: library-entry-gone, library-entry-changed. */
  deleteEntry(seen: Seen): Promise<Result<StoredEntry>>;
  /** Puts back what was deleted or replaced: in its place, or beside what stands there now. */
  restoreEntry(entry: StoredEntry, instead?: Seen | null): Promise<Result<EntryHead>>;
}

/** What a database refuses, as a fault: too full, or not there at all. */
export function databaseFault(error: unknown): Fault {
  const full = error instanceof Error && error.name === 'QuotaExceededError';
  return { code: full ? 'library-full' : 'library-unavailable', params: {} };
}

/** The answer of a database, or the fault where it refuses. */
export async function guarded<T>(ask: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await ask();
  } catch (error) {
    return { ok: false, fault: databaseFault(error) };
  }
}

export const byNewest = (a: EntryHead, b: EntryHead): number =>
  b.saved_ms - a.saved_ms || (a.name < b.name ? -1 : 1);

/** What of a new entry is known already. */
interface Known {
  readonly checksum?: string | null;
  readonly text?: string | null;
}

/** The content and head of a new entry. */
export function makeEntry(
  held: Content,
  name: string,
  id: EntryId,
  saved_ms: number,
  known: Known = {},
): StoredEntry {
  const content = named(held, name);
  const head = {
    id,
    kind: content.kind,
    name,
    saved_ms,
    stamp: newStamp(),
    checksum: known.checksum ?? contentChecksum(held),
    aside: asideChecksum(content),
    facts: factsOf(content),
  } as EntryHead;
  return { head, text: known.text ?? contentText(content) };
}

/** True where two entries hold the same, whatever they are called. */
export const holdsSame = (a: EntryHead, b: EntryHead): boolean =>
  a.kind === b.kind && a.checksum === b.checksum && a.aside === b.aside;

const gone = (name: string): Result<never> => fail('library-entry-gone', { name });

/** The entry as it is now. Faults: library-entry-gone, library-entry-changed. */
function asSeen(heads: readonly EntryHead[], { id, stamp, name }: Seen): Result<EntryHead> {
  const head = heads.find((entry) => entry.id === id);
  if (!head) return gone(name);
  return head.stamp === stamp ? ok(head) : fail('library-entry-changed', { name });
}

type SaveStep = readonly [Writing, Omit<Saved, 'before'>];

/** A new entry, under a name that is free; nothing where that very content stands under the name already. */
function saveNew(heads: readonly EntryHead[], made: StoredEntry): SaveStep {
  const { kind, name } = made.head;
  const known = sameNamed(heads, kind, name);
  if (known && holdsSame(known, made.head)) return [{}, { head: known, outcome: 'same' }];
  const head = { ...made.head, name: freeEntryName(heads, kind, name) };
  return [{ put: [{ ...made, head }] }, { head, outcome: known ? 'beside' : 'new' }];
}

/** In place of an entry that is as it was seen; else beside it. */
function saveOver(heads: readonly EntryHead[], made: StoredEntry, seen: Seen): SaveStep {
  const place = asSeen(heads, seen);
  if (!place.ok || place.value.kind !== made.head.kind) return saveNew(heads, made);
  if (holdsSame(place.value, made.head) && place.value.name === made.head.name)
    return [{}, { head: place.value, outcome: 'same' }];
  const { id, kind } = place.value;
  const head = { ...made.head, id, name: freeEntryName(heads, kind, made.head.name, id) };
  return [{ put: [{ ...made, head }] }, { head, outcome: 'replaced' }];
}

/** What a large layout or shape asks much time for, without holding up the page. */
async function knownOf(request: SaveRequest, name: string): Promise<Known> {
  const { kind, content, checksum } = request;
  if (kind === 'shape') return (await shapeBeside(content)) ?? { checksum };
  if (kind !== 'layout') return { checksum };
  return {
    checksum: checksum ?? (await checksumInSlices(content)),
    text: await textBeside({ ...content, name }),
  };
}

async function save(database: LibraryDatabase, request: SaveRequest): Promise<Result<Saved>> {
  const name = entryName(request.name);
  if (!name.ok) return name;
  const { replaces = null } = request;
  const made = makeEntry(request, name.value, newId(), Date.now(), await knownOf(request, name.value));
  const before = replaces && (await database.entry(replaces.id));
  const saved = await database.change((heads) =>
    replaces ? saveOver(heads, made, replaces) : saveNew(heads, made),
  );
  // The stamp was looked at within the change: what was read before it is what stood there.
  return ok({ ...saved, before: saved.outcome === 'replaced' ? before : null });
}

/** Reads what an entry holds; throws where it is no JSON. */
async function readText(kind: EntryKind, text: string): Promise<Result<Content>> {
  const layout = kind === 'layout' ? await readTextBeside(text) : null;
  if (layout === null) return readContent(kind, JSON.parse(text));
  return layout.ok ? ok({ kind: 'layout', content: layout.value }) : layout;
}

async function read(database: LibraryDatabase, id: EntryId): Promise<Result<Entry>> {
  const entry = await database.entry(id);
  if (!entry) return gone(id);
  const { head, text } = entry;
  try {
    const content = await readText(head.kind, text);
    if (content.ok) return ok({ head, content: named(content.value, head.name).content } as Entry);
    return fail('library-entry-unreadable', { name: head.name, detail: content.fault });
  } catch {
    return fail('library-entry-unreadable', { name: head.name, detail: { text: 'its text is cut off.' } });
  }
}

async function rename(database: LibraryDatabase, seen: Seen, typed: string): Promise<Result<EntryHead>> {
  const name = entryName(typed);
  if (!name.ok) return name;
  return database.change<Result<EntryHead>>((heads) => {
    const found = asSeen(heads, seen);
    if (!found.ok || found.value.name === name.value) return [{}, found];
    const free = freeEntryName(heads, found.value.kind, name.value, seen.id);
    const head = { ...found.value, name: free, stamp: newStamp() };
    return [{ heads: [head] }, ok(head)];
  });
}

async function remove(database: LibraryDatabase, seen: Seen): Promise<Result<StoredEntry>> {
  const entry = await database.entry(seen.id);
  if (!entry) return gone(seen.name);
  return database.change<Result<StoredEntry>>((heads) => {
    const found = asSeen(heads, seen);
    return found.ok ? [{ remove: [seen.id] }, ok(entry)] : [{}, found];
  });
}

async function restore(
  database: LibraryDatabase,
  { head: former, text }: StoredEntry,
  instead: Seen | null,
): Promise<Result<EntryHead>> {
  return database.change<Result<EntryHead>>((heads) => {
    const there = heads.find(({ id }) => id === former.id);
    const mayStand = !there || there.stamp === instead?.stamp;
    const id = mayStand ? former.id : newId();
    const head = {
      ...former,
      id,
      name: freeEntryName(heads, former.kind, former.name, id),
      stamp: newStamp(),
    };
    return [{ put: [{ head, text }] }, ok(head)];
  });
}

/** The library in a database; `changed` is told after every change that this page makes. */
export function createLibrary(database: LibraryDatabase, changed: () => void = () => undefined): Library {
  const telling = async <T>(ask: () => Promise<Result<T>>): Promise<Result<T>> => {
    const answer = await guarded(ask);
    if (answer.ok) changed();
    return answer;
  };
  return {
    listEntries: (kind) =>
      guarded(async () => {
        const heads = await database.heads();
        const ofKind = heads.filter((head): head is HeadOf<typeof kind> => head.kind === kind);
        return ok(ofKind.toSorted(byNewest));
      }),
    readEntry: (id) => guarded(() => read(database, id)),
    saveEntry: (request) => telling(() => save(database, request)),
    renameEntry: (seen, name) => telling(() => rename(database, seen, name)),
    deleteEntry: (seen) => telling(() => remove(database, seen)),
    restoreEntry: (entry, instead = null) => telling(() => restore(database, entry, instead)),
  };
}
