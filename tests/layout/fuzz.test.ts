// Whatever a file holds, reading gives a layout or a fault and throws nothing; what it gives survives
// writing and reading unchanged. Seeds are fixed; a failure prints the value.
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksum } from '../../src/layout/checksum';
import { messageText } from '../../src/layout/messages';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Result } from '../../src/layout/result';
import type { Layout } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import { sample } from './sample';

type Path = readonly (string | number)[];

/** Every place in a JSON value, the root left out. */
function places(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [];
  const keys = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return keys.flatMap((key) => {
    const here = [...path, key];
    return [here, ...places((value as Record<string | number, unknown>)[key], here)];
  });
}
const allPlaces = places(sample());

function mutate(layout: Record<string, unknown>, path: Path, replacement: unknown): void {
  let holder: Record<string | number, unknown> | undefined = layout;
  for (const key of path.slice(0, -1)) {
    const next: unknown = holder?.[key];
    holder = typeof next === 'object' && next !== null ? (next as Record<string, unknown>) : undefined;
  }
  if (holder) holder[path.at(-1) as string] = replacement;
}

const awkward = fc.oneof(
  fc.jsonValue(),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom<unknown>(
    0,
    -0,
    -1,
    1e300,
    1e-300,
    5e-324,
    2 ** 53,
    '',
    '__proto__',
    null,
    [],
    {},
    [[]],
    true,
  ),
);

/** What is wrong with an answer: a fault without a sentence, or a layout that its own file does not bring back. */
function wrongWith(result: Result<Layout>): string | null {
  if (!result.ok) {
    const text = messageText(result.fault.code, result.fault.params);
    return /undefined|\n/.test(text) ? `a poor sentence: ${text}` : null;
  }
  const again = readLayout(writeLayout(result.value));
  if (!isDeepStrictEqual(again, result)) return 'its own file reads otherwise';
  return again.ok && checksum(again.value) === checksum(result.value) ? null : 'another checksum';
}

describe('reading never throws', () => {
  test('on random JSON values', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        expect(wrongWith(readLayoutValue(json))).toBeNull();
      }),
      { seed: 11, numRuns: 500 },
    );
  });
  test('on random texts', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(wrongWith(readLayout(text))).toBeNull();
      }),
      { seed: 12, numRuns: 500 },
    );
  });
  test('on sound layouts with up to four values replaced', () => {
    let accepted = 0;
    const mutations = fc.array(fc.tuple(fc.constantFrom(...allPlaces), awkward), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(mutations, (changes) => {
        const json = sample();
        for (const [path, replacement] of changes) mutate(json, path, replacement);
        const result = readLayoutValue(json);
        if (result.ok) accepted++;
        expect(wrongWith(result)).toBeNull();
        expect(wrongWith(readLayout(JSON.stringify(json)))).toBeNull();
      }),
      { seed: 13, numRuns: 2000 },
    );
    expect(accepted).toBeGreaterThan(40);
  });
  test('on sound layouts with characters cut out of their text', () => {
    const text = JSON.stringify(sample());
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(40), fc.string({ maxLength: 5 }), (at, length, inserted) => {
        const cut = text.slice(0, at) + inserted + text.slice(at + length);
        expect(wrongWith(readLayout(cut))).toBeNull();
      }),
      { seed: 14, numRuns: 1000 },
    );
  });
});

test('a random sound layout with arbitrary decimals survives writing and reading', () => {
  const decimal = fc.double({ min: -1000, max: 1000, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(decimal, decimal, decimal), { maxLength: 20 }), (places_) => {
      const json = sample();
      json['parts'] = places_.map(([x, y, turn], i) => ({
        id: `P${i}`,
        shape: 'block',
        at_mm: [x, y],
        turn_deg: turn,
      }));
      const result = readLayoutValue(json);
      expect(result.ok).toBe(true);
      expect(wrongWith(result)).toBeNull();
    }),
    { seed: 15, numRuns: 200 },
  );
});
