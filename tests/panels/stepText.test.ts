/** Steps of the zoning in words. Tall one is 240 mm high; the words are what the panel is meant to say. */
import { describe, expect, test } from 'vitest';
import { stepRange, stepShown, zoningWords } from '../../src/panels/division/stepText';
import { divided, plate, QUADRANTS, rect, standing, strips } from '../support/plates';

const tall = standing('tall', 240, rect(250, 250, 350, 350));
const FIELD = { strategy: 'wholeField' };
const drawn = { strategy: 'drawn', zones: [{ lasers: ['L1'], rings: [rect(-100, -100, 100, 100)] }] };
const of = (...steps: readonly (readonly [from_mm: number, zoning: unknown])[]) =>
  plate([tall], divided(...steps));
const words = (zoning: unknown) => zoningWords(plate([tall], zoning).zoning[0]!.zoning);

describe('a division', () => {
  test.each([
    [QUADRANTS, 'quadrants'],
    [{ ...QUADRANTS, sharedBand_mm: 20 }, 'quadrants, band 20 mm'],
    [strips(90, [-100, 0, 100]), '4 strips side by side in x'],
    [strips(0, [10], ['L1', 'L2']), '2 strips front to back in y'],
    [{ ...strips(45, [10], ['L1', 'L2']), sharedBand_mm: 5.5 }, '2 strips along 45°, band 5.5 mm'],
    [FIELD, 'whole field'],
    [drawn, '1 drawn zone'],
  ])('%j is said as "%s"', (zoning, said) => expect(words(zoning)).toBe(said));
});

describe('the range of a step', () => {
  test('goes to the next one, the last one to the top', () => {
    const layout = of([0, QUADRANTS], [60, FIELD], [120.5, QUADRANTS]);
    expect([0, 1, 2].map((i) => stepRange(layout, i))).toEqual([
      '0 – 60 mm',
      '60 – 120.5 mm',
      '120.5 mm to the top',
    ]);
    expect(stepRange(of([0, QUADRANTS]), 0)).toBe('0 mm to the top');
  });
  test('above the top says so, and what is below it goes to the top', () => {
    const layout = of([0, QUADRANTS], [100, FIELD], [240, QUADRANTS]);
    expect([1, 2].map((i) => stepRange(layout, i))).toEqual(['100 mm to the top', '240 mm, above the top']);
  });
});

test('which zones are shown is said where there are several', () => {
  expect(stepShown(of([0, QUADRANTS]), 0)).toBeNull();
  const three = of([0, QUADRANTS], [60, FIELD], [90, QUADRANTS]);
  expect([0, 1].map((i) => stepShown(three, i))).toEqual([
    'zones 1 of 3, from 0 mm',
    'zones 2 of 3, from 60 mm',
  ]);
});
