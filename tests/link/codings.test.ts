/**
 * The codings that a link is made of, each against something that is not ours: base64url [published: RFC 4648, section 10
 * and node's Buffer], variable-length numbers [published: DWARF 5, section 7.6], folded signs [published: Protocol Buffers
 * encoding, "Signed Integers"], deflate [published: RFC 1951, by node's zlib].
 */
import { constants, deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase64url, toBase64url } from '../../src/link/base64url';
import { deflate, inflate, TooLarge } from '../../src/link/deflate';
import { DICTIONARY_1 } from '../../src/link/dictionary1';
import { IntegerReader, IntegerWriter, Unreadable } from '../../src/link/integers';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('base64url', () => {
  // RFC 4648, section 10, without the padding that section 5 allows to leave away.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
  ])('of "%s" is "%s" and back', (plain, coded) => {
    expect(toBase64url(utf8(plain))).toBe(coded);
    expect(fromBase64url(coded)).toEqual(utf8(plain));
  });

  test('is what node makes of any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const text = Buffer.from(bytes).toString('base64url');
        expect(toBase64url(bytes)).toBe(text);
        expect(fromBase64url(text)).toEqual(bytes);
      }),
      { seed: 4648 },
    );
  });

  test.each(['Zg==', 'Zh', 'Z', 'Zm9', 'Zm9v Zg', 'Zm9v+', 'Zm9/', 'Zm9é'])('does not read "%s"', (text) => {
    expect(fromBase64url(text)).toBeNull();
  });
});

const written = (write: (out: IntegerWriter) => void): number[] => {
  const out = new IntegerWriter();
  write(out);
  return [...out.done()];
};

describe('whole numbers', () => {
  // DWARF 5, section 7.6, table 7.7.
  test.each([
    [2, [2]],
    [127, [127]],
    [128, [0x80, 1]],
    [129, [0x81, 1]],
    [12857, [0xb9, 0x64]],
  ])('%d takes the bytes %j', (value, bytes) => {
    expect(written((out) => out.whole(value))).toEqual(bytes);
  });

  // Protocol Buffers: the signed original and what it is encoded as.
  test.each([
    [0, 0],
    [-1, 1],
    [1, 2],
    [-2, 3],
    [0x7fffffff, 0xfffffffe],
    [-0x80000000, 0xffffffff],
  ])('%d is folded to %d', (value, folded) => {
    expect(written((out) => out.signed(value))).toEqual(written((out) => out.whole(folded)));
  });

  test('come back in their order, up to 2^53 − 1', () => {
    const most = Math.floor(Number.MAX_SAFE_INTEGER / 2);
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.maxSafeNat(), fc.integer({ min: -most, max: most }))), (pairs) => {
        const bytes = written((out) => pairs.forEach(([a, b]) => (out.whole(a), out.signed(b))));
        const from = new IntegerReader(Uint8Array.from(bytes));
        expect(pairs.map(() => [from.whole(), from.signed()])).toEqual(pairs);
        expect(from.ended).toBe(true);
      }),
      { seed: 53 },
    );
  });

  test.each([[[]], [[0x80]], [[0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 1]]])(
    '%j is none',
    (bytes) => {
      expect(() => new IntegerReader(Uint8Array.from(bytes)).whole()).toThrow(Unreadable);
    },
  );
});

describe('deflate', () => {
  const texts = fc
    .array(fc.constantFrom('"lasers":[', '"L1"', '0.06', 'é', 'P17', '\u0000'))
    .map((w) => w.join(''));

  test('is read by zlib, and zlib’s is read here, with and without a dictionary', () => {
    fc.assert(
      fc.property(texts, fc.boolean(), (text, known) => {
        const dictionary = known ? DICTIONARY_1 : new Uint8Array();
        const bytes = utf8(text);
        const options = known ? { dictionary } : {};
        expect(new Uint8Array(inflateRawSync(deflate(bytes, dictionary), options))).toEqual(bytes);
        for (const strategy of [constants.Z_DEFAULT_STRATEGY, constants.Z_FIXED, constants.Z_HUFFMAN_ONLY])
          expect(inflate(deflateRawSync(bytes, { ...options, strategy }), dictionary)).toEqual(bytes);
      }),
      { seed: 1951 },
    );
  });

  test('that ends too early is refused', () => {
    const data = deflate(utf8('"lasers":["L1","L2"]'.repeat(200)), DICTIONARY_1);
    for (let end = 0; end < data.length; end++)
      expect(() => inflate(data.subarray(0, end), DICTIONARY_1)).toThrow(/too early|unexpected EOF/);
  });

  test('stops at the limit, not at the end of what would come', () => {
    const data = deflateRawSync(new Uint8Array(1_000_000_000), { level: 9 });
    expect(data.length).toBeLessThan(1_100_000);
    const before = performance.now();
    expect(() => inflate(data, DICTIONARY_1, 1_000_000)).toThrow(TooLarge);
    // a megabyte takes milliseconds, a gigabyte seconds
    expect(performance.now() - before).toBeLessThan(500);
  });

  test('of exactly the limit is read', () => {
    expect(inflate(deflate(new Uint8Array(5000), DICTIONARY_1), DICTIONARY_1, 5000)).toHaveLength(5000);
    expect(() => inflate(deflate(new Uint8Array(5001), DICTIONARY_1), DICTIONARY_1, 5000)).toThrow(TooLarge);
  });
});
