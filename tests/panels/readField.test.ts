/**
 * What a typed field makes of text. 1 in = 25.4 mm exactly (international yard and pound agreement of 1959); the rest
 * is this field's own rule: "25,4 mm", "1 in" and "1/4 in" are lengths, and a unit belongs to the whole fraction.
 */
import { describe, expect, test } from 'vitest';
import { setProcess, setSchedule, planStart } from '../../src/commands/operations';
import { demoLayout } from '../../src/layout/demo';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { tooFull } from '../../src/panels/schedule/tooFull';
import { fieldFault, readField, stepField } from '../../src/panels/controls/readField';
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

describe('a field that clamps', () => {
  const height = { ...length, clamp: true };
  test.each([
    ['361', 360],
    ['-1', 0],
    ['60', 60],
  ])('brings “%s” to %f mm', (text, mm) => {
    expect(readField(text, height)).toEqual({ ok: true, value: mm });
  });
  test('still says why a text is no length', () => {
    expect(readField('wide', height)).toMatchObject({ ok: false, fault: { code: 'length-unreadable' } });
  });
});

describe('a value that the layout refuses', () => {
  const words = (result: ReturnType<typeof setProcess>, what: string, unit: string, found: string) => {
    if (result.ok) throw new Error('the layout takes it');
    const { code, params } = fieldFault(result.fault, { what, unit, found });
    return `${messageText(code, params)} ${messageAdvice(code, params)}`;
  };
  test('is told by the field’s own name, with the text as typed and the range', () => {
    // 0.1 µm rounds to no whole micrometre, the least a length is kept to.
    expect(words(setProcess(demoLayout(), { layer_mm: 0 }), 'layer t', 'mm', ' 0,0001')).toBe(
      'layer t: “0,0001” is out of range. Accepted: a number from 0.001 to 10 mm.',
    );
  });
  test('names the years where a date is beyond them', () => {
    const planned = planStart(demoLayout(), '2026-11-27T16:00');
    if (!planned.ok) throw new Error('no start');
    const late = setSchedule(planned.value, { start: '9999-12-31T23:59' });
    const told = words(late, 'start of the build', '', '9999-12-31 23:59');
    expect(told).toContain('start of the build: “9999-12-31 23:59”');
    expect(told).toContain('1900 to 2999');
    expect(told).not.toContain('schedule.start');
  });
  test('of another kind keeps its own words', () => {
    const fault = { code: 'attended-unreadable', params: { found: 'x' } } as const;
    expect(fieldFault(fault, { what: 'Monday', unit: '', found: 'x' })).toBe(fault);
  });
});

test('a fill level above what the store holds says so, and what it holds', () => {
  expect(tooFull(500, 10)).toBe('more than it holds (10 l)');
  expect(tooFull(10, 10)).toBeUndefined();
  expect(tooFull(500, undefined)).toBeUndefined();
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
