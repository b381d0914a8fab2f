/**
 * The whole library as one file: JSON with the entries' ids, kinds, names, dates and contents. Reading checks every content
 * before anything is taken; checksums and facts are worked out anew, never believed.
 */
import * as v from 'valibot';
import { accepts, acceptedIn } from '../../layout/accepted';
import type { Text } from '../../language/index';
import { pathText, valueText } from '../../layout/path';
import { repeatedKey } from '../../layout/repeatedKeys';
import { fail, ok, type Param, type Result } from '../../layout/result';
import { readContent } from './content';
import { makeEntry } from './library';
import { entryName } from './names';
import { KINDS, type Content, type EntryKind, type StoredEntry } from './types';

export const LIBRARY_FORMAT = 'evenplate-library';
const VERSION = 1;
/** Larger files are refused before they are read. */
export const LIBRARY_LIMIT_MB = 200;
const MOST_ENTRIES = 10_000;
const LONGEST_ID = 120;

const accepted = {
  id: accepts('a text of 1 to {longest} characters', { longest: LONGEST_ID }),
  kind: accepts('one of {list}', { list: KINDS.join(', ') }),
  saved: accepts('a date such as {example}', { example: '"2026-11-25T20:57:18.000Z"' }),
  entries: accepts('a list of at most {longest} {what}', {
    longest: MOST_ENTRIES,
    what: { text: 'entries ¦ counted' },
  }),
};
const entrySchema = v.strictObject(
  {
    id: v.pipe(
      v.string(accepted.id),
      v.minLength(1, accepted.id),
      v.maxLength(LONGEST_ID, accepted.id),
      v.regex(/^[\w.~-]+$/, accepts('letters, digits and . ~ _ - only')),
    ),
    kind: v.picklist(KINDS, accepted.kind),
    name: v.string(accepts('a text')),
    saved: v.pipe(v.string(accepted.saved), v.isoTimestamp(accepted.saved)),
    content: v.record(v.string(), v.unknown(), accepts('an object')),
  },
  accepts('an object with the keys id, kind, name, saved and content'),
);
const fileSchema = v.strictObject(
  {
    format: v.literal(LIBRARY_FORMAT),
    version: v.literal(VERSION),
    entries: v.pipe(v.array(entrySchema, accepted.entries), v.maxLength(MOST_ENTRIES, accepted.entries)),
  },
  accepts('an object with the keys format, version and entries'),
);
const KIND_NAMES: Readonly<Record<EntryKind, Text>> = {
  layout: 'layout ¦ kind',
  machine: 'machine ¦ kind',
  process: 'process ¦ kind',
  shape: 'shape ¦ kind',
};
type FileEntry = v.InferOutput<typeof entrySchema>;

const entryText = ({ head, text }: StoredEntry): string => {
  const { id, kind, name, saved_ms } = head;
  const front = JSON.stringify({ id, kind, name, saved: new Date(saved_ms).toISOString() });
  return `${front.slice(0, -1)},"content":${text}}`;
};

/** The library's file, in pieces that stand one behind the other. */
export function libraryText(entries: readonly StoredEntry[]): readonly string[] {
  const lines = entries.map((entry, i) => `${i === 0 ? '' : ',\n'}${entryText(entry)}`);
  return [`{"format":"${LIBRARY_FORMAT}","version":${VERSION},"entries":[\n`, ...lines, '\n]}\n'];
}

const wrong = (path: Param, found: unknown, accept: Param): Result<never> =>
  fail('library-wrong-value', { path, found: valueText(found), accepted: accept });

function parsed(text: string): Result<object> {
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  let value: unknown;
  try {
    value = JSON.parse(plain);
  } catch {
    return fail('library-not-json');
  }
  const found = typeof value === 'object' && value !== null ? value : {};
  const { format, version } = found as Readonly<Record<string, unknown>>;
  if (format !== LIBRARY_FORMAT)
    return fail('library-wrong-format', { found: valueText(format), format: LIBRARY_FORMAT });
  if (typeof version === 'number' && version > VERSION)
    return fail('library-newer-version', { found: version, newest: VERSION });
  const twice = repeatedKey(plain);
  if (twice === null) return ok(found);
  return fail('layout-repeated-key', {
    key: valueText(twice.key),
    path: pathText(twice.path),
    line: twice.line,
  });
}

/** The name and the content of an entry of the file. */
function readParts({
  kind,
  name,
  content,
}: FileEntry): Result<{ readonly name: string; readonly held: Content }> {
  const called = entryName(name);
  if (!called.ok) return called;
  const held = readContent(kind, content);
  return held.ok ? ok({ name: called.value, held: held.value }) : held;
}

function readEntry(entry: FileEntry, number: number): Result<StoredEntry> {
  const { id, kind, name, saved } = entry;
  const parts = readParts(entry);
  if (parts.ok) return ok(makeEntry(parts.value.held, parts.value.name, id, Date.parse(saved)));
  const shown = { number, kind: { text: KIND_NAMES[kind] }, name: name.slice(0, 60) };
  return fail('library-entry-bad', { ...shown, detail: parts.fault });
}

function readEntries(entries: readonly FileEntry[]): Result<readonly StoredEntry[]> {
  const read: StoredEntry[] = [];
  const ids = new Set<string>();
  for (const [index, entry] of entries.entries()) {
    const path = pathText(['entries', index, 'id']);
    if (ids.has(entry.id)) return wrong(path, entry.id, { text: 'an id that no other entry has' });
    ids.add(entry.id);
    const made = readEntry(entry, index + 1);
    if (!made.ok) return made;
    read.push(made.value);
  }
  return ok(read);
}

/** The entries of a library file; the first fault where one of them is bad. Nothing is thrown. */
export function readLibraryText(text: string): Result<readonly StoredEntry[]> {
  const json = parsed(text);
  if (!json.ok) return json;
  const file = v.safeParse(fileSchema, json.value, { abortEarly: true });
  if (file.success) return readEntries(file.output.entries);
  const [issue] = file.issues;
  return wrong(
    pathText((issue.path ?? []).map(({ key }) => key as string | number)),
    issue.input,
    acceptedIn(issue.message),
  );
}
