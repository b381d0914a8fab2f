/** Words of the sheet broken into lines. Every character is one millimetre wide: widths by hand. */
import { expect, it } from 'vitest';
import { wrapWithin, type Measure } from '../../../src/export/sheet/drawing/pen';

const measure: Measure = (words) => [...words].length;
const style = { size: 1, bold: false };

it('leaves words whole that have room', () =>
  expect(wrapWithin('ferry spares', 6, 2, style, measure)).toEqual(['ferry', 'spares']));

it('ends in "…" where words are left out, within the width', () =>
  expect(wrapWithin('ferry spares of autumn', 6, 2, style, measure)).toEqual(['ferry', 'spar …']));

it('cuts between characters, never within one', () =>
  expect(wrapWithin('\u{1F6A2}'.repeat(9), 4, 1, style, measure)).toEqual(['\u{1F6A2}\u{1F6A2} …']));
