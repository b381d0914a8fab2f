/**
 * Sums on the screen add up: sums of whole last digits are mathematics; values are chosen so that rounding each term by
 * itself would miss the total.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lastDigit, sharesOf, shownNumber, sumTable } from '../../src/panels/readout/sumTable';
import { formatSeconds } from '../../src/units/format';

const words = (value: number, format = formatSeconds) => ({
  label: 'all',
  value,
  format,
  more: '{count} more terms' as const,
});
const term = (value: number, label = String(value)) => ({ label, value });

describe('the last digit of a number as it is shown', () => {
  test.each([
    [94.0213, '94.02 s', 0.01],
    [137.84, '137.8 s', 0.1],
    [12345, '12340 s', 10],
    [12340.2, '12340 s', 1],
    [1, '1.000 h', 0.001],
  ])('%d shown as %s counts %d', (value, shown, step) => {
    expect(lastDigit(value, shown).step).toBeCloseTo(step, 9);
  });
});

describe('a sum written out', () => {
  test('three thirds of 1.00 h come to 1.00 h, one of them with the digit left over', () => {
    const { rows, total } = sumTable(
      [term(1 / 3), term(1 / 3), term(1 / 3)],
      words(1, (hours) => `${hours.toFixed(2)} h`),
    );
    expect(rows.map((row) => row.value)).toEqual(['0.34', '0.33', '0.33']);
    expect(shownNumber(total?.value ?? '')).toBe(1);
  });
  test('of nine terms the seven biggest stand first and the rest are one line', () => {
    const values = [1, 9, 2, 8, 3, 7, 4, 6, 5];
    const { rows } = sumTable(
      values.map((value) => term(value)),
      words(45),
    );
    expect(rows.map((row) => row.label)).toEqual(['9', '8', '7', '6', '5', '4', '3', '2 more terms']);
    expect(Number(rows.at(-1)?.value)).toBe(3);
  });
  test('eight terms stand in their own order', () => {
    const { rows } = sumTable(
      [1, 8, 2, 7, 3, 6, 4, 5].map((value) => term(value)),
      words(36),
    );
    expect(rows.map((row) => row.label)).toEqual(['1', '8', '2', '7', '3', '6', '4', '5']);
  });
  test('adds up for any terms, and no term is off by a whole last digit', () => {
    const amounts = fc.array(fc.double({ min: 0, max: 5000, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(amounts, (values) => {
        const value = values.reduce((sum, one) => sum + one, 0);
        const { rows, total } = sumTable(
          values.map((one, i) => term(one, `t${i}`)),
          words(value),
        );
        const shown = shownNumber(total?.value ?? '');
        const { step } = lastDigit(value, total?.value ?? '');
        const sum = rows.reduce((all, row) => all + Number(row.value), 0);
        expect(Math.abs(sum - shown)).toBeLessThan(step / 2);
        rows.forEach((row) => {
          const own = values[Number(row.label.slice(1))];
          if (own !== undefined) expect(Math.abs(Number(row.value) - own)).toBeLessThan(step * 1.000001);
        });
      }),
      { seed: 20261125 },
    );
  });
  test('shares are whole and come to the whole', () => {
    expect(sharesOf([0.5, 0.25, 0.25], 1)).toEqual([1, 0, 0]);
  });
});
