/**
 * The language files are complete: nothing that a reader sees is left in English alone, nothing stands in them that no
 * source uses, both sides of a pair take the same values, and what the first paint shows is there before it.
 */
import { describe, expect, it } from 'vitest';
import { FIRST } from '../../src/language/de/first';
import { REST } from '../../src/language/de/rest';
import { firstFiles, leftovers, literalsOf, sourceFiles } from './sources';

const GERMAN: Readonly<Record<string, string>> = { ...FIRST, ...REST };
const texts = new Set(Object.keys(GERMAN));
/** The values that a text takes, each once. */
const names = (text: string): string =>
  [...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name))].toSorted().join(' ');
/** The values that its choices go by. */
const choices = (text: string): string[] =>
  [...text.matchAll(/\[(?:(\w+): ?)?[^|\]]*\|[^\]]*\]/g)].map(([, by]) => by ?? 'count');
/** Every choice of the German goes by a value that the English text is given. */
const known = (english: string, german: string): boolean => {
  const given = new Set([...names(english).split(' '), ...choices(english)]);
  return choices(german).every((by) => given.has(by));
};
const files = sourceFiles();

describe('the language files', () => {
  it('leave no text that a reader sees in English alone', () => {
    const left = files.flatMap((file) => leftovers(file, texts));
    expect(left.map(({ file, line, text }) => `${file}:${line} ${text}`)).toEqual([]);
  });

  it('hold no text that no source uses', () => {
    const used = new Set(files.flatMap((file) => [...literalsOf(file)]));
    expect([...texts].filter((text) => !used.has(text))).toEqual([]);
  });

  it('take the same values on both sides, and every side says something', () => {
    const odd = Object.entries(GERMAN).filter(
      ([english, german]) =>
        german.trim() === '' || names(english) !== names(german) || !known(english, german),
    );
    expect(odd).toEqual([]);
  });

  it('hold what the first paint shows in the part that comes before it', () => {
    const first = new Set(firstFiles().flatMap((file) => [...literalsOf(file)]));
    expect(Object.keys(REST).filter((text) => first.has(text))).toEqual([]);
    expect(Object.keys(FIRST).filter((text) => !first.has(text))).toEqual([]);
  });
});
