/**
 * Names and ids of entries. Within one kind no name stands twice: a second one is numbered, "Plate (2)".
 */
import { fail, ok, type Result } from '../../layout/result';
import { newStamp } from '../apartForm';
import type { EntryHead, EntryId, EntryKind } from './types';

/** As long as a layout's own name may be, less room for a number. */
export const LONGEST_ENTRY_NAME = 190;

/** A typed name without what surrounds it. Faults: library-name. */
export function entryName(typed: string): Result<string> {
  const name = typed.trim().replace(/\s+/g, ' ');
  if (name !== '' && name.length <= LONGEST_ENTRY_NAME) return ok(name);
  return fail('library-name', { found: name.slice(0, 40), longest: LONGEST_ENTRY_NAME });
}

/** The entry of that kind and name. */
export const sameNamed = (
  heads: readonly EntryHead[],
  kind: EntryKind,
  name: string,
): EntryHead | undefined => heads.find((head) => head.kind === kind && head.name === name);

/** The name, or with the lowest number that makes it free; `own` is the entry that may keep it. */
export function freeEntryName(
  heads: readonly EntryHead[],
  kind: EntryKind,
  wanted: string,
  own: EntryId | null = null,
): string {
  const others = heads.filter(({ id }) => id !== own);
  if (!sameNamed(others, kind, wanted)) return wanted;
  const stem = wanted.replace(/ \(\d+\)$/, '');
  for (let n = 2; ; n++) {
    const name = `${stem} (${n})`;
    if (!sameNamed(others, kind, name)) return name;
  }
}

/** A new entry's id: like a stamp it is made nowhere else. */
export const newId = (): EntryId => newStamp();
