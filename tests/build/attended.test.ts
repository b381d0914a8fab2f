/** Attended hours as they are typed: what is understood, what is refused, and that what is written out is read back. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAttended, parseAttended } from '../../src/build/attended';
import type { ClockRange } from '../../src/layout/types';
import { runs } from '../support/random';

const two = (value: number): string => String(value).padStart(2, '0');

describe('typed hours', () => {
  const read = (text: string): readonly ClockRange[] => {
    const result = parseAttended(text);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  };
  it.each([
    [
      '06:00-22:00, 23:00-24:00',
      [
        ['06:00', '22:00'],
        ['23:00', '24:00'],
      ],
    ],
    [
      '6-14;14:30 – 22',
      [
        ['06:00', '14:00'],
        ['14:30', '22:00'],
      ],
    ],
    [
      '20-22, 6.15-8',
      [
        ['06:15', '08:00'],
        ['20:00', '22:00'],
      ],
    ],
    ['0-24', [['00:00', '24:00']]],
    ['', []],
    ['  ', []],
  ] as const)('"%s" is understood', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  it.each([
    ['in the morning', 'attended-unreadable'],
    ['06:00', 'attended-unreadable'],
    ['06:60-07:00', 'attended-unreadable'],
    ['06:00-25:00', 'attended-unreadable'],
    ['06:00-24:01', 'attended-unreadable'],
    ['22:00-06:00', 'attended-backwards'],
    ['08:00-08:00', 'attended-backwards'],
    ['24:00-24:00', 'attended-backwards'],
    ['06:00-12:00, 11:59-13:00', 'attended-overlap'],
  ])('"%s" is refused: %s', (text, code) => {
    expect(parseAttended(text)).toMatchObject({ ok: false, fault: { code } });
  });

  it('what is written out is read back', () => {
    const bounds = fc.uniqueArray(fc.integer({ min: 0, max: 1440 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(bounds, (minutes) => {
        const times = minutes
          .toSorted((a, b) => a - b)
          .map((m) => `${two(Math.floor(m / 60))}:${two(m % 60)}`);
        const ranges: ClockRange[] = [];
        for (let i = 0; i + 1 < times.length; i += 2) ranges.push([times[i]!, times[i + 1]!]);
        expect(read(formatAttended(ranges))).toEqual(ranges);
      }),
      runs(200),
    );
  });
});
