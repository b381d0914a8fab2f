/** The order of the parts in the layout: steps, blocks, and a whole order. Orders written by hand. */
import { describe, expect, test } from 'vitest';
import { orderParts, placeInList, stepInList } from '../../../src/commands/operations';
import { demoLayout } from '../../../src/layout/demo';
import type { Layout } from '../../../src/layout/types';

/** Parts A to F. */
const plate = (): Layout => {
  const demo = demoLayout();
  return { ...demo, parts: demo.parts.slice(0, 6).map((part, i) => ({ ...part, id: 'ABCDEF'[i]! })) };
};
const order = (layout: Layout): string => layout.parts.map(({ id }) => id).join('');
const of = (text: string): string[] => [...text];

describe('one step', () => {
  test.each([
    ['C', -1, 'ACBDEF'],
    ['C', 1, 'ABDCEF'],
    ['CD', -1, 'ACDBEF'],
    ['CD', 1, 'ABECDF'],
    ['BE', -1, 'BACEDF'],
    ['BE', 1, 'ACBDFE'],
    // A is at the end and stays; C goes on
    ['AC', -1, 'ACBDEF'],
    ['DF', 1, 'ABCEDF'],
  ] as const)('of %s by %i', (ids, step, expected) => {
    expect(order(stepInList(plate(), of(ids), step))).toBe(expected);
  });
  test('at the end of the list changes nothing at all', () => {
    const layout = plate();
    expect(stepInList(layout, of('AB'), -1)).toBe(layout);
    expect(stepInList(layout, of('EF'), 1)).toBe(layout);
    expect(stepInList(layout, [], 1)).toBe(layout);
  });
});

describe('a block', () => {
  test.each([
    ['EB', 0, 'BEACDF'],
    ['EB', 6, 'ACDFBE'],
    ['BE', 3, 'ACBEDF'],
    ['A', 4, 'BCDAEF'],
    ['F', 1, 'AFBCDE'],
  ] as const)('of %s at gap %i keeps its own order', (ids, gap, expected) => {
    expect(order(placeInList(plate(), of(ids), gap))).toBe(expected);
  });
  test.each([2, 3, 4])('of C and D stays where it is at gap %i', (gap) => {
    const layout = plate();
    expect(placeInList(layout, of('CD'), gap)).toBe(layout);
  });
});

describe('a whole order', () => {
  test('puts the parts in it and touches no part', () => {
    const layout = plate();
    const next = orderParts(layout, of('FDBACE'));
    expect(order(next)).toBe('FDBACE');
    expect(new Set(next.parts)).toEqual(new Set(layout.parts));
    expect(next.parts.every((part) => layout.parts.includes(part))).toBe(true);
  });
  test('leaves those that it does not name behind, and changes nothing where it holds', () => {
    const layout = plate();
    expect(order(orderParts(layout, of('DB')))).toBe('DBACEF');
    expect(orderParts(layout, of('ABCDEF'))).toBe(layout);
  });
});
