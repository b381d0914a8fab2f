/** Equality of plain values, held against Node's own strict deep equality on random JSON. */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameValue } from '../../src/layout/same';

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
