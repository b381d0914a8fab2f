/**
 * Links that bring no plate: cut ones, altered ones, newer ones, bombs, and ones whose seal is right around a content
 * that is none. Nothing is thrown, and every refusal has its sentence.
 */
import { deflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { emptyLayout } from '../../src/layout/defaults';
import { messageText } from '../../src/layout/messages';
import { decodeComparison, decodeLink, encodeComparison, encodeLink } from '../../src/link';
import { toBase64url } from '../../src/link/base64url';
import { writeBody, type Form } from '../../src/link/body';
import { deflate } from '../../src/link/deflate';
import { DICTIONARY_1 } from '../../src/link/dictionary1';
import { sealed } from '../../src/link/envelope';
import { sample } from '../layout/sample';

/** The code of the refusal; 'read' where there is none. */
function code(text: string, decode: typeof decodeLink | typeof decodeComparison = decodeLink): string {
  const result = decode(text);
  if (result.ok) return 'read';
  expect(messageText(result.fault.code, result.fault.params)).not.toContain('?');
  return result.fault.code;
}
const link = encodeLink(emptyLayout(), { height_mm: 3 });

describe('a link that', () => {
  test('was cut anywhere after its first characters says so', () => {
    const ends = Array.from({ length: link.length - 2 }, (_, i) => i + 2);
    const read = ends.filter((end) => code(link.slice(0, end)) !== 'link-cut');
    expect(read).toEqual([]);
    expect(code(encodeLink(demoLayout()).slice(0, 1999))).toBe('link-cut');
  });

  const body = link.indexOf('.', 3) + 1;
  /** The link with any one character of a stretch exchanged for some others. */
  const altered = (from: number, to: number): string[] =>
    Array.from(link.slice(from, to)).flatMap((was, i) =>
      ['A', 'z', '-', '.', '7', 'L', 'C']
        .filter((other) => other !== was)
        .map((other) => link.slice(0, from + i) + other + link.slice(from + i + 1)),
    );

  test('was altered in any one character of its body or check says so', () => {
    const texts = altered(body, link.length);
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => code(text) !== 'link-altered')).toEqual([]);
  });

  test('was altered in its head is refused', () => {
    expect(altered(0, body).filter((text) => code(text) === 'read')).toEqual([]);
  });

  test('has two characters exchanged, or one more, was altered', () => {
    const swapped = link.replace(/^(.{12})(.)(.)/, '$1$3$2');
    expect(swapped).not.toBe(link);
    expect(code(swapped)).toBe('link-altered');
    expect(code(`${link}x`)).toBe('link-altered');
  });

  test('stands in a sentence, or was broken into lines by mail, is read all the same', () => {
    expect(code(`${link}.`)).toBe('read');
    expect(code(`${link}).`)).toBe('read');
    const half = link.length >> 1;
    for (const between of ['\n', '%0A', '%0d%0a', ' ', '%20'])
      expect(code(link.slice(0, half) + between + link.slice(half))).toBe('read');
  });

  test('a newer version made says so', () => {
    expect(code(link.replace('L1.', 'L2.'))).toBe('link-newer');
    expect(code('L17.whatever comes then')).toBe('link-newer');
  });

  test.each(['', '#', 'parts', 'L', 'L0.1.A', 'https://plates.example/'])('is "%s" is none', (text) => {
    expect(code(text)).toBe('link-none');
  });

  test('was cut or altered is refused as a comparison too', () => {
    const text = encodeComparison([emptyLayout(), demoLayout()]);
    expect(code(text.slice(0, -1), decodeComparison)).toBe('link-cut');
    expect(code(text.replace(/.$/, 'g'), decodeComparison)).toBe('link-altered');
  });
});

/** A link with the right seal around any bytes. */
const around = (bytes: Uint8Array): string => sealed('layout', toBase64url(deflate(bytes, DICTIONARY_1)));
const withText = (text: string, ...more: number[]): string => {
  const bytes = new TextEncoder().encode(text);
  return around(Uint8Array.from([(bytes.length % 128) | 128, bytes.length >> 7, ...bytes, ...more]));
};

describe('a right seal around', () => {
  test('a bomb is refused before it is unpacked', () => {
    const bomb = deflateRawSync(new Uint8Array(1_000_000_000), { level: 9 });
    const before = performance.now();
    expect(code(sealed('layout', toBase64url(bomb)))).toBe('link-too-large');
    expect(performance.now() - before).toBeLessThan(3000);
  });

  test('one long ring named over and over is refused', () => {
    const ring = Array.from({ length: 100_000 }, (_, i) => [i / 1000, (i % 7) / 1000]);
    const slabs = Array.from({ length: 41 }, (_, i) => ({ to_mm: i + 1, rings: [ring] }));
    const form = { ...sample(), shapes: { block: { slabs } } } as unknown as Form;
    expect(code(around(writeBody([form], {})))).toBe('link-altered');
  });

  test.each([
    ['nothing', around(new Uint8Array())],
    ['no deflate', sealed('layout', '____')],
    ['no JSON', withText('{"layouts"')],
    ['no object', withText('7')],
    ['no layouts', withText('{}')],
    ['no layout', withText('{"layouts":[]}')],
    ['a list as layout', withText('{"layouts":[[]]}')],
    ['a layout without lists', withText('{"layouts":[{}]}')],
    ['a shape that is missing', withText('{"layouts":[{"parts":[],"shapes":["a"]}]}')],
    [
      'an endless list of slabs',
      withText('{"layouts":[{"parts":[],"shapes":["a"]}]}', 255, 255, 255, 255, 15),
    ],
    ['a ring that is not there', withText('{"layouts":[{"parts":[],"shapes":["a"]}]}', 1, 2, 1, 1, 9)],
    [
      'too many points',
      withText('{"layouts":[{"parts":[],"shapes":["a"]}]}', 1, 2, 1, 255, 255, 255, 255, 15),
    ],
    ['bytes that nobody reads', withText('{"layouts":[{"parts":[],"shapes":[]}]}', 0)],
    ['lists fifteen thousand deep', withText('['.repeat(15_000))],
  ])('%s is refused', (_, text) => {
    expect(code(text)).toBe('link-altered');
  });

  test('a layout that a file would not bring either is refused like the file', () => {
    const form = (json: object): string => around(writeBody([json as unknown as Form], {}));
    expect(code(form(sample()))).toBe('read');
    expect(code(form({ ...sample(), version: 9 }))).toBe('layout-newer-version');
    expect(code(form({ ...sample(), colour: 'red' }))).toBe('layout-unknown-key');
    expect(code(form({ ...sample(), process: null }))).toBe('layout-wrong-value');
    expect(code(withText('{"layouts":[{"parts":[],"shapes":[]}]}'))).toBe('layout-wrong-format');
  });

  test('two layouts as one is refused', () => {
    const form = sample() as unknown as Form;
    expect(code(around(writeBody([form, form], {})))).toBe('link-altered');
  });
});
