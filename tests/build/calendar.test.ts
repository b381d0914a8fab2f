/**
 * Clock times and attended hours. Weekdays by Zeller's congruence and the leap years of the Gregorian calendar
 * [mathematics]; expected values of random times come from walking the calendar day by day.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attendedAt, clockAfter, nextGoodStart, WEEKDAYS, weekdayOf } from '../../src/build/calendar';
import type { ClockRange, Schedule } from '../../src/layout/types';
import { runs } from '../support/random';

type Attended = Schedule['attended'];
const DAY: readonly ClockRange[] = [['06:00', '22:00']];
const NOBODY: Attended = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
const OFFICE: Attended = { ...NOBODY, mon: DAY, tue: DAY, wed: DAY, thu: DAY, fri: DAY };

const two = (value: number): string => String(value).padStart(2, '0');
const leap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number): number =>
  month === 2 ? (leap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** The clock `minutes` later, day by day. */
function walked(year: number, month: number, day: number, minutes: number): string {
  let [y, m, d, left] = [year, month, day, minutes];
  for (; left >= 1440; left -= 1440) {
    d++;
    if (d > daysIn(y, m)) [d, m] = [1, m + 1];
    if (m > 12) [m, y] = [1, y + 1];
  }
  return `${y}-${two(m)}-${two(d)}T${two(Math.floor(left / 60))}:${two(left % 60)}`;
}

/** Zeller's congruence, Monday 0. */
function zeller(at: string): number {
  const [year, month, day] = at.slice(0, 10).split('-').map(Number) as [number, number, number];
  const [y, m] = month < 3 ? [year - 1, month + 12] : [year, month];
  const h =
    (day +
      Math.floor((13 * (m + 1)) / 5) +
      y +
      Math.floor(y / 4) -
      Math.floor(y / 100) +
      Math.floor(y / 400)) %
    7;
  return (h + 5) % 7;
}

describe('clock', () => {
  it.each([
    ['2026-11-27T16:00', 62 * 60 + 56, '2026-11-30T06:56'],
    ['2026-12-31T23:59', 1, '2027-01-01T00:00'],
    ['2028-02-28T23:59', 1, '2028-02-29T00:00'],
    ['2100-02-28T23:59', 1, '2100-03-01T00:00'],
    ['2000-02-28T12:00', 24 * 60, '2000-02-29T12:00'],
    // In many places clocks are put back in this night: local time without a zone does not know of it.
    ['2026-10-25T01:30', 120, '2026-10-25T03:30'],
  ])('%s and %i minutes is %s', (start, minutes, expected) => {
    expect(clockAfter(start, minutes)).toBe(expected);
  });

  it('counts like a calendar walked day by day', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1900, max: 2999 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        fc.integer({ min: 0, max: 3_000_000 }),
        (year, month, day, minutes) => {
          const at = clockAfter(`${year}-${two(month)}-${two(day)}T00:00`, minutes);
          expect(at).toBe(walked(year, month, day, minutes));
          expect(WEEKDAYS.indexOf(weekdayOf(at) as 'mon')).toBe(zeller(at));
        },
      ),
      runs(500),
    );
  });

  it('a build without end stops at the last minute that four digits can write', () => {
    expect(clockAfter('2026-11-27T16:00', 1e18)).toBe('9999-12-31T23:59');
    expect(clockAfter('2026-11-27T16:00', Infinity)).toBe('9999-12-31T23:59');
  });
});

describe('attended hours', () => {
  it('27 November 2026 is a Friday', () => {
    expect(weekdayOf('2026-11-27T16:00')).toBe('fri');
  });

  it('hold their first minute and not their last', () => {
    const at = (time: string): boolean => attendedAt(OFFICE, `2026-11-27T${time}`);
    expect([at('05:59'), at('06:00'), at('21:59'), at('22:00')]).toEqual([false, true, true, false]);
    expect(attendedAt(OFFICE, '2026-11-28T12:00')).toBe(false);
  });

  it('over midnight are two ranges without a gap', () => {
    const night: Attended = { ...NOBODY, fri: [['22:00', '24:00']], sat: [['00:00', '06:00']] };
    const there = [
      '2026-11-27T21:59',
      '2026-11-27T23:59',
      '2026-11-28T00:00',
      '2026-11-28T05:59',
      '2026-11-28T06:00',
    ];
    expect(there.map((at) => attendedAt(night, at))).toEqual([false, true, true, true, false]);
  });

  it('two ranges that touch are attended where they do', () => {
    const touching: Attended = {
      ...NOBODY,
      fri: [
        ['06:00', '14:00'],
        ['14:00', '22:00'],
      ],
    };
    expect(attendedAt(touching, '2026-11-27T14:00')).toBe(true);
  });
});

describe('the next good start', () => {
  it('waits until an event 20 hours later falls into attended hours, over the weekend too', () => {
    // Starts lie in 06:00 … 21:45 and 20 h later it is 02:00 … 17:45 of the next day: good from 10:00 to 21:45.
    expect(nextGoodStart(OFFICE, [20 * 60], '2026-11-23T06:00')).toBe('2026-11-23T10:00');
    // On a Friday the event falls on a Saturday: Monday at 10.
    expect(nextGoodStart(OFFICE, [20 * 60], '2026-11-27T10:00')).toBe('2026-11-30T10:00');
  });

  it('lies after the given one, on a quarter of an hour', () => {
    expect(nextGoodStart(OFFICE, [], '2026-11-23T08:00')).toBe('2026-11-23T08:15');
    expect(nextGoodStart(OFFICE, [], '2026-11-23T08:01')).toBe('2026-11-23T08:15');
  });

  it('is none where two events cannot both be attended, or nobody ever comes', () => {
    const monday: Attended = { ...NOBODY, mon: [['08:00', '10:00']] };
    expect(nextGoodStart(monday, [3 * 60], '2026-11-23T06:00')).toBeNull();
    expect(nextGoodStart(NOBODY, [], '2026-11-23T06:00')).toBeNull();
  });

  it('is the first one that trying them all finds', () => {
    const hours = fc
      .integer({ min: 0, max: 23 })
      .chain((from) =>
        fc
          .integer({ min: from + 1, max: 24 })
          .map((to): readonly ClockRange[] => [[`${two(from)}:00`, `${two(to)}:00`]]),
      );
    const day = fc.oneof(hours, fc.constant<readonly ClockRange[]>([]));
    const week = fc.record({ mon: day, tue: day, wed: day, thu: day, fri: day, sat: day, sun: day });
    const offsets = fc.array(fc.integer({ min: 0, max: 9000 }), { maxLength: 4 });
    fc.assert(
      fc.property(week, offsets, fc.integer({ min: 0, max: 10_079 }), (attended, offsets_min, minute) => {
        // 23 November 2026 is a Monday.
        const after = walked(2026, 11, 23, minute);
        let expected: string | null = null;
        for (let m = minute + 1; m <= minute + 14 * 1440 && expected === null; m++) {
          const at = (offset: number): boolean => attendedAt(attended, walked(2026, 11, 23, m + offset));
          if (m % 15 === 0 && at(0) && offsets_min.every(at)) expected = walked(2026, 11, 23, m);
        }
        expect(nextGoodStart(attended, offsets_min, after)).toBe(expected);
      }),
      runs(150),
    );
  });
});
