/**
 * What a typed field makes of text. 1 in = 25.4 mm exactly (international yard and pound agreement of 1959); the rest
 * is this field's own rule: "25,4 mm", "1 in" and "1/4 in" are lengths, and a unit belongs to the whole fraction.
 */
import { describe, expect, test } from 'vitest';
import { readField, stepField } from '../../src/panels/controls/readField';
import { parseLength, parseNumber } from '../../src/units/parse';

const length = { what: 'height', unit: 'mm', parse: parseLength, min: 0, max: 360 };
const count = { what: 'strips', unit: '', parse: parseNumber, min: 2, max: 12, whole: true };

describe('a typed field', () => {
  test.each([
    ['25,4 mm', 25.4],
    ['1 in', 25.4],
    ['1/4 in', 6.35],
    ['360', 360],
  ])('reads “%s” as %f mm', (text, mm) => {
    expect(readField(text, length)).toEqual({ ok: true, value: mm });
  });
  test('names its limits where a value lies outside', () => {
    expect(readField('361', length)).toEqual({
      ok: false,
      fault: { code: 'field-range', params: { what: 'height', found: '361', accepted: '0 to 360 mm' } },
    });
    expect(readField('-1', length).ok).toBe(false);
  });
  test('passes on why a text is no length', () => {
    expect(readField('wide', length)).toMatchObject({ ok: false, fault: { code: 'length-unreadable' } });
  });
  test('takes whole numbers only where it counts', () => {
    expect(readField('3', count)).toEqual({ ok: true, value: 3 });
    expect(readField('3.5', count)).toMatchObject({
      ok: false,
      fault: { params: { accepted: 'a whole number, 2 to 12' } },
    });
  });
});

describe('an arrow key', () => {
  test('steps by the step and stays on its decimals', () => {
    expect(stepField(0.1, 0.1, 1, {})).toBe(0.2);
    expect(stepField(0.3, 0.1, -1, {})).toBe(0.2);
  });
  test('stops at the limits', () => {
    expect(stepField(11.5, 1, 1, { max: 12 })).toBe(12);
    expect(stepField(0.5, 1, -1, { min: 0 })).toBe(0);
  });
});
