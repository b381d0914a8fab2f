// What the blade meets, in words. No outside source: these are the panel's own sentences.
import { describe, expect, test } from 'vitest';
import type { BladeSettings } from '../../../src/build/blade';
import {
  adviceText,
  degreesText,
  heightsText,
  partsText,
  riseText,
  sidesText,
} from '../../../src/panels/blade/bladeText';

/** With plain spaces, as they are read. */
const SETTINGS: BladeSettings = { stroke_mm: 1, side_deg: 5, side_mm: 5, bothWays: false };
const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('words about the blade', () => {
  test('a jump is at once, a rise within its stroke, the way back is said', () => {
    expect(plain(riseText({ rise_mm: 40, from_mm: -12, to_mm: -12, back: false }))).toBe(
      '40.0 mm at once, at −12.0 mm',
    );
    expect(plain(riseText({ rise_mm: 2.04, from_mm: 3, to_mm: 2, back: true }))).toBe(
      '2.0 mm within 1.0 mm, at 3.0 mm on the way back',
    );
  });
  test('heights are exact', () => {
    expect(plain(heightsText({ from_mm: 0, to_mm: 12.54 }))).toBe('z 0 to 12.54 mm');
  });
  test('more than three parts are counted', () => {
    expect(partsText(['P1'])).toBe('P1');
    expect(partsText(['P1', 'P2', 'P3'])).toBe('P1, P2, P3');
    expect(partsText(['P1', 'P2', 'P3', 'P4', 'P5'])).toBe('P1, P2, P3 and 2 more');
  });
  test('sides carry the rule they are counted by', () => {
    expect(plain(sidesText(0, 0, SETTINGS))).toBe('no side of 5 mm or more within 5° of the blade’s line');
    expect(plain(sidesText(1, 44, SETTINGS))).toBe(
      '1 side of 5 mm or more within 5° of the blade’s line, 44.0 mm in all',
    );
    expect(sidesText(2, 88, SETTINGS)).toMatch(/^2 sides of/);
  });
  test('a turn is advised with what it changes', () => {
    expect(degreesText(-45)).toBe('−45°');
    expect(plain(adviceText('P03', { turn_deg: 45, now_mm: 40, then_mm: 2 }))).toBe(
      'Turned by 45°, P03 by itself rises by 2.0 mm at worst instead of 40.0 mm.',
    );
  });
});
