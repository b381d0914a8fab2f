/** A light's word and the store's hover are two forms of one thing. */
import { expect, test } from 'vitest';
import type { Lights } from '../../src/panels/lights';
import { hoverOf, lightsOf } from '../../src/panels/lights';

test.each<Lights>([
  'laser:0',
  'laser:12',
  'part:P:03',
  'seam:4',
  'problem:1',
  'seams',
  'unassigned',
  'binding',
  'none',
])('%s comes back as it went', (lights) => {
  expect(lightsOf(hoverOf(lights))).toBe(lights);
});
test('a part keeps its id, colons and all', () => {
  expect(hoverOf('part:P:03')).toEqual({ kind: 'part', part: 'P:03' });
});

test('the whole section and the height that wastes most are lights of one word', () => {
  for (const lights of ['sections', 'worst'] as const) {
    expect(hoverOf(lights)).toEqual({ kind: lights });
    expect(lightsOf({ kind: lights })).toBe(lights);
  }
});
