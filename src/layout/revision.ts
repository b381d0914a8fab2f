/**
 * Revisions: which ones stay as they are, how the next one is called, what it starts with. Dates are local days,
 * "2026-11-27".
 */
import type { Revision } from './types';

/** Names are ids of a layout file: at most 64 characters. */
const LONGEST_NAME = 64;
const LONGEST_STEM = 30;
const LETTERS = 26;

/** True for a revision that is not edited any more: one that was reviewed, released or superseded. */
export const isFixed = (revision: Revision | null): boolean =>
  revision !== null && revision.state !== 'draft';

/** "A" → "B", "Z" → "AA", "AZ" → "BA"; small letters likewise. */
function nextLetters(letters: string): string {
  const first = letters >= 'a' ? 'a' : 'A';
  const end = first.charCodeAt(0) + LETTERS - 1;
  const last = letters.charCodeAt(letters.length - 1);
  const stem = letters.slice(0, -1);
  if (last < end) return stem + String.fromCharCode(last + 1);
  return (stem === '' ? first : nextLetters(stem)) + first;
}

/** "09" → "10", "9" → "10"; as many digits as before where they suffice. */
const nextDigits = (digits: string): string => String(BigInt(digits) + 1n).padStart(digits.length, '0');

/** The name after this one: its last number or its last letters count on; "-2" where it ends in neither. */
export function nextName(name: string): string {
  const next = name
    .replace(/\d+$/, nextDigits)
    .replace(/(?<![\p{L}\p{M}\d])([A-Z]+|[a-z]+)$/u, (letters) =>
      letters.length > 3 ? letters : nextLetters(letters),
    );
  if (next !== name && next.length <= LONGEST_NAME) return next;
  return `${[...name].slice(0, LONGEST_STEM).join('')}-2`;
}

/** The draft that an edit of `former` begins; its author and reason are still to be said. */
export const successor = (former: Revision, derivedFrom: string | null, date: string): Revision => ({
  name: nextName(former.name),
  date,
  reason: '',
  state: 'draft',
  author: '',
  reviewer: '',
  derivedFrom,
});
