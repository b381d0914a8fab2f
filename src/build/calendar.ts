/**
 * Clock times and the hours in which somebody attends the machine. Local time without a zone, "2026-11-27T16:00", by the
 * Gregorian calendar alone: a change to or from summer time is not counted. Whole minutes.
 * A range of attended hours holds its first minute and not its last: at 22:00 the range 06:00-22:00 is over. What runs
 * over midnight is two ranges, one on each day; "24:00" ends a day.
 */
import type { Schedule, Weekday } from '../layout/types';

/** Monday first, as in ISO 8601. */
export const WEEKDAYS = [
  'mon',
  'tue',
  'wed',
  'thu',
  'fri',
  'sat',
  'sun',
] as const satisfies readonly Weekday[];

type Attended = Schedule['attended'];

const MS_PER_MIN = 60_000;
const MIN_PER_H = 60;
const MIN_PER_DAY = 24 * MIN_PER_H;
const MIN_PER_WEEK = 7 * MIN_PER_DAY;
/** 1 January 1970, minute 0 of the count, was a Thursday. */
const THURSDAY = WEEKDAYS.indexOf('thu');
/** The last minute that is written with four digits of the year: what comes later is written as this. */
const LAST_MINUTE = Date.UTC(9999, 11, 31, 23, 59) / MS_PER_MIN;
const CLOCK_DATE_LENGTH = '2026-11-27T16:00'.length;

/** Minutes from 1970-01-01T00:00 to a clock date of the layout's form. */
function minuteOf(at: string): number {
  const [year, month, day, hour, minute] = at.split(/[-T:]/).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return Date.UTC(year, month - 1, day, hour, minute) / MS_PER_MIN;
}

const clockDate = (minute: number): string =>
  new Date(Math.min(minute, LAST_MINUTE) * MS_PER_MIN).toISOString().slice(0, CLOCK_DATE_LENGTH);

/** The clock date so many whole minutes later; nothing lies after 9999-12-31T23:59. */
export const clockAfter = (start: string, minutes: number): string => clockDate(minuteOf(start) + minutes);

/** Minute of the week of a minute since (or before) 1970; Monday 00:00 is 0. */
const weekMinute = (minute: number): number =>
  (((minute + THURSDAY * MIN_PER_DAY) % MIN_PER_WEEK) + MIN_PER_WEEK) % MIN_PER_WEEK;

/** The day of the week of a local date and time, "2026-11-27T16:00" (Gregorian; 1 January 1970 was a Thursday). */
export const weekdayOf = (at: string): Weekday =>
  WEEKDAYS[Math.floor(weekMinute(minuteOf(at)) / MIN_PER_DAY)]!;

const clockMinute = (time: string): number => {
  const [hour, minute] = time.split(':').map(Number) as [number, number];
  return hour * MIN_PER_H + minute;
};

/** Per minute of the week 1 where somebody attends the machine. */
function attendedMinutes(attended: Attended): Uint8Array {
  const minutes = new Uint8Array(MIN_PER_WEEK);
  WEEKDAYS.forEach((day, i) => {
    for (const [from, to] of attended[day])
      minutes.fill(1, i * MIN_PER_DAY + clockMinute(from), i * MIN_PER_DAY + clockMinute(to));
  });
  return minutes;
}

/** True where somebody attends the machine in the minute `at`. */
export const attendedAt = (attended: Attended, at: string): boolean =>
  attended[weekdayOf(at)].some(([from, to]) => {
    const time = at.slice(-from.length);
    return from <= time && time < to;
  });

/** Starts are looked for on quarters of an hour … */
const STEP_MIN = 15;
/** … within this many days. */
const SEARCH_DAYS = 14;

/**
 * The first quarter of an hour after `after` that is attended and from which every one of `offsets_min` (whole minutes
 * after the start) falls into attended hours; null where there is none within 14 days.
 */
export function nextGoodStart(
  attended: Attended,
  offsets_min: readonly number[],
  after: string,
): string | null {
  const minutes = attendedMinutes(attended);
  const first = (Math.floor(minuteOf(after) / STEP_MIN) + 1) * STEP_MIN;
  const last = minuteOf(after) + SEARCH_DAYS * MIN_PER_DAY;
  for (let start = first; start <= last; start += STEP_MIN) {
    const there = (offset: number): boolean => minutes[weekMinute(start + offset)] === 1;
    if (there(0) && offsets_min.every(there)) return clockDate(start);
  }
  return null;
}
