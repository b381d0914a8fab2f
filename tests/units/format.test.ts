// How figures are shown: three to four significant digits with a unit, never six decimals.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatCount,
  formatDegrees,
  formatField,
  formatHours,
  formatMm,
  formatMm2,
  formatNumber,
  formatPercent,
  formatSeconds,
  NARROW_SPACE,
} from '../../src/units/format';
import { parseLength } from '../../src/units/parse';

const shown = (text: string): string => text.replace(NARROW_SPACE, ' ');

describe('four significant digits, three for percent', () => {
  test.each<[string, string]>([
    [formatMm(25.4), '25.40 mm'],
    [formatMm(0), '0.000 mm'],
    [formatMm(0.06), '0.060 mm'],
    [formatMm(120), '120.0 mm'],
    [formatMm(-12.3456), '−12.35 mm'],
    [formatMm(-0.00001), '0.000 mm'],
    [formatMm(9.99996), '10.00 mm'],
    [formatMm(99999.6), '100000 mm'],
    [formatMm2(7961.73), '7962 mm²'],
    [formatMm2(25446.9), '25450 mm²'],
    [formatMm2(314.159), '314.2 mm²'],
    [formatSeconds(70.546), '70.55 s'],
    [formatSeconds(0.02), '0.020 s'],
    [formatHours(44.748), '44.75 h'],
    [formatHours(109.113), '109.1 h'],
    [formatPercent(2.5637), '2.56 %'],
    [formatPercent(35.5932), '35.6 %'],
    [formatPercent(300), '300 %'],
    [formatPercent(0.0004), '0.00 %'],
    [formatDegrees(12.34), '12.3°'],
    [formatMm(NaN), '– mm'],
    [formatCount(1234567), '1234567'],
  ])('%s', (text, expected) => {
    expect(shown(text)).toBe(expected);
  });

  test('a figure of any size is right to half a unit of its fourth digit or its third decimal, and short', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
        const text = formatNumber(value);
        const read = Number(text.replace('−', '-'));
        const tolerance = Math.max(0.5e-3, Math.abs(value) * 0.5e-3) * (1 + 1e-9);
        expect(Math.abs(read - value)).toBeLessThanOrEqual(tolerance);
        expect(text).toMatch(/^−?\d+(\.\d{1,3})?$/);
      }),
      { seed: 21, numRuns: 2000 },
    );
  });
});

describe('what a field holds', () => {
  test.each<[number, string]>([
    [25.4, '25.4'],
    [100, '100'],
    [0, '0'],
    [-0.0001, '0'],
    [-38.1, '-38.1'],
    [0.06, '0.06'],
    [1200, '1200'],
    [NaN, ''],
  ])('%d is "%s"', (value, text) => {
    expect(formatField(value)).toBe(text);
  });

  test('every whole number of micrometres comes back as it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000_000, max: 100_000_000 }), (um) => {
        const value = um / 1000 + 0;
        expect(parseLength(formatField(value))).toEqual({ ok: true, value });
      }),
      { seed: 22, numRuns: 1000 },
    );
  });
});
