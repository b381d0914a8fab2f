// Keys given twice are refused by name and place. RFC 8259, 4: names within an object should be unique. On random JSON
// the scanner is held against JSON.parse, which keeps one value per name: a text repeats a key exactly where the values
// that JSON.parse keeps are fewer than the keys that were written [mathematics].
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyLayout } from '../../src/layout/defaults';
import { messageText } from '../../src/layout/messages';
import { readLayout } from '../../src/layout/read';
import { repeatedKey } from '../../src/layout/repeatedKeys';

test.each([
  ['{"a":1,"a":2}', 'a', [], 1],
  ['{"a":1,\n"\\u0061":2}', 'a', [], 2],
  ['{"a":{"b":[1,[2,{"c":1,"c":1}]]}}', 'c', ['a', 'b', 1, 1], 1],
  ['[{"a":1},{"a":1},\n\n{"b":{"a":1},"b":{}}]', 'b', [2], 3],
  ['{"x\\"":1,"x\\"":2}', 'x"', [], 1],
  ['{"x\\\\":"\\\\","x\\\\":2}', 'x\\', [], 1],
  ['{"":1,"":2}', '', [], 1],
  ['{"__proto__":1,"__proto__":2}', '__proto__', [], 1],
])('%s repeats a key', (text, key, path, line) => {
  expect(repeatedKey(text)).toEqual({ key, path, line });
});

test.each([
  '{}',
  '[]',
  '3',
  '"a"',
  '{"a":{"a":{"a":["a","a",{"a":"a"}]}},"b":"a","c":"\\",\\"a\\":"}',
  '[{"a":1},{"a":2}]',
  '{"a":[{"b":1},{"b":1}],"b":[[],[],{}],"A":0}',
])('%s repeats none', (text) => {
  expect(repeatedKey(text)).toBeNull();
});

type Json =
  string | number | null | readonly Json[] | { readonly pairs: readonly (readonly [string, Json])[] };
const name = fc.oneof(fc.constantFrom('a', 'b', 'c', '"', '\\', '}', ','), fc.string({ maxLength: 3 }));
const { json } = fc.letrec<{ json: Json }>((tie) => ({
  json: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.oneof(fc.string(), fc.integer(), fc.constant(null)),
    fc.array(tie('json'), { maxLength: 4 }),
    fc.record({ pairs: fc.array(fc.tuple(name, tie('json')), { maxLength: 5 }) }),
  ),
}));
function write(value: Json): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if ('pairs' in value)
    return `{${value.pairs.map(([key, own]) => `${JSON.stringify(key)} : ${write(own)}`).join(', ')}}`;
  return `[${value.map(write).join(',\n')}]`;
}
const repeats = (value: Json): boolean => {
  if (value === null || typeof value !== 'object') return false;
  if (!('pairs' in value)) return value.some(repeats);
  const kept = Object.keys(
    JSON.parse(`{${value.pairs.map(([key]) => `${JSON.stringify(key)}:0`).join(',')}}`) as object,
  );
  return kept.length < value.pairs.length || value.pairs.some(([, own]) => repeats(own));
};

test('random JSON repeats a key exactly where JSON.parse loses a value', () => {
  const seen = { repeated: 0, unique: 0 };
  fc.assert(
    fc.property(json, (value) => {
      const text = write(value);
      JSON.parse(text);
      const found = repeatedKey(text) !== null;
      seen[found ? 'repeated' : 'unique'] += 1;
      expect(found).toBe(repeats(value));
    }),
    { seed: 20261125, numRuns: 3000 },
  );
  expect(seen.repeated).toBeGreaterThan(300);
  expect(seen.unique).toBeGreaterThan(300);
});

test('a text nested a million deep is refused like any other', () => {
  const deep = `${'['.repeat(1e6)}${']'.repeat(1e6)}`;
  expect(repeatedKey(deep)).toBeNull();
  expect(readLayout(`{"format":"evenplate-layout","version":2,"note":${deep}}`).ok).toBe(false);
});

const sentence = (text: string): string => {
  const read = readLayout(text);
  return read.ok ? 'accepted' : messageText(read.fault.code, read.fault.params);
};
const text = JSON.stringify({
  ...emptyLayout(),
  shapes: { block: { slabs: [{ to_mm: 5, rings: [{ circle_mm: [0, 0, 5] }] }] } },
});

test('a layout that names a shape twice, or its version, is refused with the place', () => {
  expect(sentence(text)).toBe('accepted');
  const block = '"block":{"slabs":[{"to_mm":9,"rings":[{"circle_mm":[0,0,9]}]}]},';
  expect(sentence(text.replace('"shapes":{', `"shapes":{${block}`))).toBe(
    'The key "block" stands twice in shapes, the second time at line 1.',
  );
  expect(sentence(text.replace('{', '{"version":1,\n'))).toBe(
    'The key "version" stands twice in the layout, the second time at line 2.',
  );
  expect(sentence(text.replace('"to_mm":5,', '"to_mm":5,"to_mm":6,'))).toContain('shapes.block.slabs[0]');
});
