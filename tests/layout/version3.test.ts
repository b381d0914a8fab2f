/**
 * Version 3 of the layout file: what a layout is filed under. What a revision may hold, its written form, and that the
 * older versions are still written wherever they can say the same. Dates by the Gregorian calendar [mathematics].
 */
import type { Params } from '../../src/layout/result';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksum } from '../../src/layout/checksum';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import { changed, REVISION, sample, sample2, sample3 } from './sample';

type Loose = Record<string, unknown>;

const sentences = (code: Parameters<typeof messageText>[0], params: Params) =>
  `${messageText(code, params)} ${messageAdvice(code, params)}`;

function value(json: unknown): Layout {
  const result = readLayoutValue(json);
  if (!result.ok) throw new Error(messageText(result.fault.code, result.fault.params));
  return result.value;
}
/** Code and sentences of the fault. */
function refused(json: unknown): readonly [string, string] {
  const result = readLayoutValue(json);
  if (result.ok) throw new Error('the layout was accepted');
  return [result.fault.code, sentences(result.fault.code, result.fault.params)];
}
const written = (layout: Layout): Loose => JSON.parse(writeLayout(layout)) as Loose;

describe('a file of version 3', () => {
  test('holds a revision', () => {
    expect(value(sample3()).revision).toEqual(REVISION);
  });

  test('needs none, and of one only name, date and state', () => {
    expect(value(changed(['revision'], null, sample3())).revision).toBeNull();
    expect(value(changed(['revision'], undefined, sample3())).revision).toBeNull();
    const bare = { name: 'A', date: '2026-11-27', state: 'draft' };
    expect(value(changed(['revision'], bare, sample3())).revision).toEqual({
      ...bare,
      reason: '',
      author: '',
      reviewer: '',
      derivedFrom: null,
    });
  });

  test.each(['draft', 'reviewed', 'released', 'superseded'])('may be %s', (state) => {
    expect(value(changed(['revision', 'state'], state, sample3())).revision?.state).toBe(state);
  });

  test('is the same layout as the file of version 2 that says the same', () => {
    expect(value(sample2())).toEqual(value({ ...sample2(), version: 3, revision: null }));
  });

  const refusals: readonly (readonly [string, readonly string[], unknown, string, readonly string[]])[] = [
    ['a list', ['revision'], [], 'layout-wrong-value', ['revision is', 'an object']],
    ['a text', ['revision'], 'B', 'layout-wrong-value', ['revision is "B"']],
    ['no name', ['revision', 'name'], undefined, 'layout-missing-key', ['"name"', 'revision']],
    ['an empty name', ['revision', 'name'], '', 'layout-wrong-value', ['revision.name', '1 to 64']],
    ['a long name', ['revision', 'name'], 'B'.repeat(65), 'layout-wrong-value', ['revision.name', '64']],
    ['another state', ['revision', 'state'], 'approved', 'layout-wrong-value', ['"approved"', '"released"']],
    ['30 February', ['revision', 'date'], '2026-02-30', 'layout-wrong-value', ['"2026-11-27"']],
    ['a date with time', ['revision', 'date'], '2026-11-27T16:00', 'layout-wrong-value', ['"2026-11-27"']],
    ['half a checksum', ['revision', 'derivedFrom'], '4532', 'layout-wrong-value', ['twelve hexadecimal']],
    [
      'a checksum in capitals',
      ['revision', 'derivedFrom'],
      '4532415F99F5',
      'layout-wrong-value',
      ['"4532415f99f5"'],
    ],
    ['an author by number', ['revision', 'author'], 7, 'layout-wrong-value', ['revision.author']],
    ['an unknown key', ['revision', 'approver'], 'x', 'layout-unknown-key', ['"approver"', 'revision']],
  ];
  test.each(refusals)('is refused with %s', (_, path, replacement, code, words) => {
    const [found, said] = refused(changed(path, replacement, sample3()));
    expect(found).toBe(code);
    for (const word of words) expect(said).toContain(word);
    expect(said).not.toMatch(/[?{}]|undefined/);
  });
});

test.each([
  ['1', sample],
  ['2', sample2],
])('a file of version %s knows no revision', (_, older) => {
  const [code, said] = refused({ ...older(), revision: REVISION });
  expect(code).toBe('layout-unknown-key');
  expect(said).toContain('"revision"');
});

describe('a written file', () => {
  test('has version 3 for a revision only, whatever else it holds', () => {
    const filed = (layout: Layout): Layout => ({ ...layout, revision: REVISION });
    expect(written(value(sample()))['version']).toBe(1);
    expect(written(value(sample2()))['version']).toBe(2);
    expect(written(value(sample2()))).not.toHaveProperty('revision');
    expect(written(filed(value(sample())))).toMatchObject({ version: 3, revision: REVISION, schedule: null });
    expect(written(filed(value(sample2())))).toMatchObject({ version: 3, revision: REVISION });
  });

  test('names the revision last', () => {
    expect(Object.keys(written(value(sample3()))).at(-1)).toBe('revision');
  });

  const text = fc.string({ maxLength: 40, unit: 'grapheme' });
  const hex = fc.string({
    minLength: 12,
    maxLength: 12,
    unit: fc.constantFrom(...'0123456789abcdef'),
  });
  const day = fc
    .date({ min: new Date('1901-01-01T00:00Z'), max: new Date('2998-12-31T00:00Z'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10));
  const revision = fc.record({
    name: fc.constantFrom('A', 'B', 'Z', '17', 'R-03', 'Änderung 2'),
    date: day,
    reason: text,
    state: fc.constantFrom('draft', 'reviewed', 'released', 'superseded'),
    author: text,
    reviewer: text,
    derivedFrom: fc.option(hex),
  });

  test('brings back every revision, with one checksum for all of them', () => {
    const plain = checksum(value(sample2()));
    fc.assert(
      fc.property(revision, (filed) => {
        const layout = value({ ...sample3(), revision: filed });
        expect(layout.revision).toEqual(filed);
        expect(readLayout(writeLayout(layout))).toEqual({ ok: true, value: layout });
        expect(checksum(layout)).toBe(plain);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});
