// What a person may type. 1 in = 25.4 mm exactly: international agreement of 1959 [memory].
import { describe, expect, expectTypeOf, test } from 'vitest';
import { MESSAGES } from '../../src/layout/messages';
import type { Result } from '../../src/layout/result';
import { parseAngle, parseLength, parseNumber, type ParseCode } from '../../src/units/parse';
import type { Mm } from '../../src/units/types';

describe('lengths', () => {
  test.each<[string, number]>([
    ['25,4 mm', 25.4],
    ['25.4', 25.4],
    ['25,4', 25.4],
    ['25.', 25],
    [',5', 0.5],
    ['0', 0],
    ['1 in', 25.4],
    ['1in', 25.4],
    ['1 in.', 25.4],
    ['1"', 25.4],
    ['1″', 25.4],
    ["2''", 50.8],
    ['3 inches', 76.2],
    ['1/4 in', 6.35],
    ['1/4"', 6.35],
    ['1/4', 0.25],
    ['1 1/2 in', 38.1],
    ['1-1/2 in', 38.1],
    ['-1 1/2 in', -38.1],
    ['  7 / 8  inch ', 22.225],
    ['1⁄2 in', 12.7],
    ['2 cm', 20],
    ['0,3 m', 300],
    ['60 µm', 0.06],
    ['60 μm', 0.06],
    ['60 um', 0.06],
    ['12 MM', 12],
    ['−3 mm', -3],
    ['- 3 mm', -3],
    ['+3', 3],
    ['1/3 in', 8.467],
    ['25\u202f400 µm'.replace('\u202f', ''), 25.4],
    ['12.34567 mm', 12.346],
    ['100000', 100000],
  ])('%j is %d mm', (text, mm) => {
    expect(parseLength(text)).toEqual({ ok: true, value: mm });
  });

  test.each([
    '',
    '  ',
    'mm',
    'in',
    'abc',
    '1,234.5',
    '1.234,5',
    '1 234',
    '1..5',
    '1.2.',
    'NaN',
    'Infinity',
    '0x10',
    '1/0 in',
    '1/ in',
    '/4 in',
    '1 in 3',
    '3 ft',
    '3 furlongs',
    '1 mm mm',
    '--3',
    '1 1 1/2 in',
    '1.5/2 in',
    'constructor',
    '1 constructor',
  ])('%j is refused and shown', (text) => {
    expect(parseLength(text)).toEqual({
      ok: false,
      fault: { code: 'length-unreadable', params: { found: text.trim() } },
    });
  });

  test('more than 100 m is refused', () => {
    expect(parseLength('100.001 m')).toMatchObject({ ok: false, fault: { code: 'length-too-large' } });
    expect(parseLength('9'.repeat(400))).toMatchObject({ ok: false });
  });
});

// The values are worked out by hand; 1/2 in = 12.7 mm.
describe('sums', () => {
  test.each<[string, number]>([
    ['3+2 mm', 5],
    ['120-8,5', 111.5],
    ['120 − 8.5 mm', 111.5],
    ['1/2 in + 3', 15.7],
    ['1-1/2 in + 1 mm', 39.1],
    ['1 1/2 in - 1/2 in', 25.4],
    ['3 - 1/2', 2.5],
    ['120-1/2', 119.5],
    ['10 - 1/2 in', -2.7],
    ['-3+5', 2],
    ['- 3 - 5', -8],
    ['3*25', 75],
    ['2*1 in+0,2', 51],
    ['4×2,5 cm - 1', 99],
    ['0.1+0.2', 0.3],
    ['1 cm+1 mm+100 µm', 11.1],
  ])('%j is %d mm', (text, mm) => {
    expect(parseLength(text)).toEqual({ ok: true, value: mm });
  });
  test.each<[string, string]>([
    ['3+', '3+'],
    ['3++2', '3++2'],
    ['3+-2', '3+-2'],
    ['12+3 ft', '3 ft'],
    ['12-x', 'x'],
    ['2 mm*3 mm', '2 mm*3 mm'],
    ['(3+2)', '(3'],
    ['3*', '3*'],
  ])('of %j, %j is what was not understood', (text, found) => {
    expect(parseLength(text)).toEqual({ ok: false, fault: { code: 'length-unreadable', params: { found } } });
  });
  test('angles add up, then come back to one turn', () => {
    expect(parseAngle('350+22,5°')).toEqual({ ok: true, value: 12.5 });
    expect(parseAngle('10 - 20')).toEqual({ ok: true, value: 350 });
    expect(parseAngle('10+3 mm')).toMatchObject({ ok: false, fault: { params: { found: '3 mm' } } });
  });
  test('numbers take their own unit and no other', () => {
    expect(parseNumber('450 W + 50', 'W')).toEqual({ ok: true, value: 500 });
    expect(parseNumber('0.1+0.2')).toEqual({ ok: true, value: 0.3 });
    expect(parseNumber('450 mm', 'W')).toMatchObject({ ok: false });
  });
});

describe('angles', () => {
  test.each<[string, number]>([
    ['30', 30],
    ['22,5°', 22.5],
    ['22.5 deg', 22.5],
    ['-90', 270],
    ['360', 0],
    ['725.0004°', 5],
    ['1/2', 0.5],
  ])('%j is %d degrees', (text, degrees) => {
    expect(parseAngle(text)).toEqual({ ok: true, value: degrees });
  });
  test.each(['', '30 mm', '1 rad', '30 40'])('%j is refused', (text) => {
    expect(parseAngle(text)).toMatchObject({ ok: false, fault: { code: 'angle-unreadable' } });
  });
  test('more than a hundred turns are refused', () => {
    expect(parseAngle('36001')).toMatchObject({ ok: false, fault: { code: 'angle-too-large' } });
  });
});

describe('numbers', () => {
  test.each<[string, number]>([
    ['1,25', 1.25],
    ['-4', -4],
    ['3/4', 0.75],
    ['0.000123', 0.000123],
  ])('%j is %d', (text, value) => {
    expect(parseNumber(text)).toEqual({ ok: true, value });
  });
  test.each(['', '3 mm', '3 %', 'x', 'e3', '1 e', '2em'])('%j is refused', (text) => {
    expect(parseNumber(text)).toMatchObject({ ok: false, fault: { code: 'number-unreadable' } });
  });
});

describe('exponents', () => {
  test.each(['5e3', '1e5', '1E5', '1e5 mm', '2.5e-3', '2,5e−3', '1e300', '-1e+9', '.5 e 2'])(
    '%j is refused as a number with an exponent, whatever is asked for',
    (text) => {
      for (const parse of [parseLength, parseAngle, parseNumber])
        expect(parse(text)).toEqual({
          ok: false,
          fault: { code: 'number-exponent', params: { found: text } },
        });
    },
  );
});

test('what parsing gives is a Result whose codes stand in the table of messages', () => {
  expectTypeOf(parseLength).returns.toExtend<Result<Mm>>();
  const codes: ParseCode[] = [
    'length-unreadable',
    'length-too-large',
    'angle-unreadable',
    'angle-too-large',
    'number-unreadable',
    'number-exponent',
  ];
  for (const code of codes) expect(MESSAGES[code].advice.length).toBeGreaterThan(10);
});
