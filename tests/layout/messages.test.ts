// One table of messages with stable codes: each says what is wrong and what to do,
// and a sentence built from it holds every word that it asks for.
import { describe, expect, test } from 'vitest';
import { messageAdvice, MESSAGES, messageText, type MessageCode } from '../../src/layout/messages';

const codes = Object.keys(MESSAGES) as MessageCode[];

test('no code stands in two parts of the table, and no part is left out', () => {
  const parts = import.meta.glob<Record<string, object>>('../../src/layout/messages/*Messages.ts', {
    eager: true,
  });
  const tables = Object.values(parts).flatMap((part) => Object.values(part));
  expect(tables.flatMap((table) => Object.keys(table)).sort()).toEqual([...codes].sort());
});

describe.each(codes)('%s', (code) => {
  const { text, advice } = MESSAGES[code];
  test('is a stable code in kebab case', () => {
    expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });
  test('says what is wrong and what to do in one line each', () => {
    expect(text).toMatch(/^[^\n]{5,200}$/);
    expect(advice).toMatch(/^[^\n]{5,200}$/);
  });
  test('asks for its words in braces only', () => {
    expect((text + advice).replace(/\{\w+\}/g, '')).not.toMatch(/[{}]/);
  });
});

test('a count of one has words of its own', () => {
  const says = (count: number) => messageText('mesh-inside-out', { count });
  expect([says(1), says(2)]).toEqual(['1 shell is inside out.', '2 shells are inside out.']);
});

test.each(codes)('%s leaves no choice of words behind', (code) => {
  for (const count of [1, 2]) {
    expect(messageText(code, { count })).not.toContain('|');
    expect(messageAdvice(code, { count })).not.toContain('|');
  }
});

test('words are put where the braces stand, a missing one shows as ?', () => {
  const params = { path: 'parts[3]', found: 2, zones: 4 };
  expect(messageText('layout-laser-count', params)).toBe('parts[3] lists 2 lasers for 4 zones.');
  expect(messageAdvice('layout-unknown-laser', { known: 'L1, L2' })).toBe('The machine has L1, L2.');
  expect(messageText('layout-laser-count', { path: 'x' })).toBe('x lists ? lasers for ? zones.');
});
