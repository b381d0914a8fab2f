/** How revisions are called one after the other, and which of them stay as they are. Names counted by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLayoutValue } from '../../src/layout/read';
import { isFixed, nextName, successor } from '../../src/layout/revision';
import { firstRevision, reviewedByAuthor } from '../../src/layout/revisionNames';
import { REVISION, sample3 } from './sample';

describe('the name after', () => {
  test.each([
    ['A', 'B'],
    ['Y', 'Z'],
    ['Z', 'AA'],
    ['AZ', 'BA'],
    ['ZZ', 'AAA'],
    ['c', 'd'],
    ['z', 'aa'],
    ['1', '2'],
    ['9', '10'],
    ['09', '10'],
    ['R-03', 'R-04'],
    ['R-99', 'R-100'],
    ['Rev B', 'Rev C'],
    ['B2', 'B3'],
    ['2B', '2B-2'],
    ['first', 'first-2'],
    ['Ä', 'Ä-2'],
    ['ÄB', 'ÄB-2'],
    ['final!', 'final!-2'],
  ])('%s is %s', (name, next) => expect(nextName(name)).toBe(next));

  test('is one a layout accepts, and another one, whatever the name', () => {
    const name = fc
      .string({ minLength: 1, maxLength: 64, unit: 'grapheme' })
      .filter((text) => readLayoutValue({ ...sample3(), revision: { ...REVISION, name: text } }).ok);
    fc.assert(
      fc.property(
        fc.oneof(name, fc.constantFrom('9'.repeat(64), 'Z'.repeat(64), '⚓'.repeat(60))),
        (text) => {
          const next = nextName(text);
          expect(next).not.toBe(text);
          const read = readLayoutValue({ ...sample3(), revision: { ...REVISION, name: next } });
          expect(read.ok && read.value.revision?.name).toBe(next);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

test('all but drafts stay as they are', () => {
  const states = ['draft', 'reviewed', 'released', 'superseded'] as const;
  expect(states.map((state) => isFixed({ ...REVISION, state }))).toEqual([false, true, true, true]);
  expect(isFixed(null)).toBe(false);
});

test('a first and a next revision are drafts that name nobody', () => {
  const nobody = { reason: '', state: 'draft', author: '', reviewer: '' };
  expect(firstRevision('2026-11-28')).toEqual({
    name: 'A',
    date: '2026-11-28',
    derivedFrom: null,
    ...nobody,
  });
  expect(successor(REVISION, '7775dd293fdb', '2026-11-28')).toEqual({
    name: 'C',
    date: '2026-11-28',
    derivedFrom: '7775dd293fdb',
    ...nobody,
  });
});

test('author and reviewer are one person under one name, however it is spaced or capitalised', () => {
  expect(reviewedByAuthor(REVISION)).toBe(false);
  expect(reviewedByAuthor({ ...REVISION, reviewer: ' ada  quay ' })).toBe(true);
  expect(reviewedByAuthor({ ...REVISION, author: '', reviewer: '' })).toBe(false);
});
