/** Equality of plain values and what is taken over of them, held against Node's own strict deep equality on random JSON. */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameValue, takenOver } from '../../src/layout/same';

const SEED = 20261125;

test('agrees with deep strict equality on random pairs and on copies with one change', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 3 }), fc.jsonValue({ maxDepth: 3 }), (a, b) => {
      expect(sameValue(a, b)).toBe(isDeepStrictEqual(a, b));
      expect(sameValue(a, structuredClone(a))).toBe(true);
      expect(sameValue({ a, b }, { a: b, b: a })).toBe(isDeepStrictEqual({ a, b }, { a: b, b: a }));
      expect(sameValue([a, b], [a])).toBe(false);
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test('a list is no record, a missing key is no undefined one, null is no record', () => {
  expect(sameValue([], {})).toBe(false);
  expect(sameValue({ a: undefined }, { b: undefined })).toBe(false);
  expect(sameValue({}, null)).toBe(false);
  expect(sameValue(Number.NaN, Number.NaN)).toBe(true);
});

test('entries with an id are taken over by it wherever they stand, others by their place', () => {
  const before = {
    parts: [
      { id: 'A', at: [1, 2] },
      { id: 'B', at: [3, 4] },
      { id: 'C', at: [5, 6] },
    ],
    lines: [[1], [2]],
  };
  const [a, b, c] = before.parts;
  const next = structuredClone({ parts: [c, a, { ...b, at: [3, 9] }], lines: [[1], [7]] });
  const taken = takenOver(before, next);
  expect(taken).toEqual(next);
  expect(taken.parts[0]).toBe(c);
  expect(taken.parts[1]).toBe(a);
  expect(taken.parts[2]).not.toBe(b);
  expect(taken.lines[0]).toBe(before.lines[0]);
  expect(taken.lines[1]).not.toBe(before.lines[1]);
});
