/**
 * The values a layout is made of: lengths (kept to 1 µm), angles (to 0.001°), plain quantities, names, points, rings.
 * Every value has a range that real machines stay well inside, so that a slip such as 1e300 is refused where it
 * stands. A failed check carries the words that say what is accepted.
 */
import { accepts } from './accepted';
import type { Param } from './result';
import type { Text } from '../language/index';
import { isId, isText, LONGEST_ID } from './ids';
import * as v from 'valibot';
import { roundDeg, roundMm } from '../units/round';
import { COORDINATE_LIMIT_mm, MOST_RING_POINTS, MOST_RINGS, SIZE_LIMIT_mm } from './limits';

const ANGLE_LIMIT_deg = 36_000;
const LONGEST_NAME = 200;
const LONGEST_NOTE = 10_000;
/** Smallest length that is not 0: one micrometre. */
const LEAST_mm = 0.001;

const noNegativeZero = (value: number): number => value + 0;
const toMm = (value: number): number => roundMm(value);
const toDeg = (value: number): number => roundDeg(value);

const between = (min: number, max: number) => {
  const accepted = accepts('a number from {min} to {max}', { min, max });
  return v.pipe(v.number(accepted), v.minValue(min, accepted), v.maxValue(max, accepted));
};
/** A number in a range, kept as it is. */
export const quantity = (min: number, max: number) => v.pipe(between(min, max), v.transform(noNegativeZero));
/** A number in a range that does not contain `above` itself. */
export const quantityAbove = (above: number, max: number) => {
  const accepted = accepts('a number above {above}, up to {max}', { above, max });
  return v.pipe(v.number(accepted), v.gtValue(above, accepted), v.maxValue(max, accepted));
};
/** Millimetres, kept to 1 µm. */
export const length = (min: number, max: number) => v.pipe(between(min, max), v.transform(toMm));
/** Millimetres, at least 1 µm. */
export const size = (max: number = SIZE_LIMIT_mm) => length(LEAST_mm, max);
/** Millimetres from the platform's centre or the shape's origin. */
export const coordinate = length(-COORDINATE_LIMIT_mm, COORDINATE_LIMIT_mm);
/** Degrees counter-clockwise from +x, kept to 0.001°, brought to 0 ≤ a < 360. */
export const angle = v.pipe(between(-ANGLE_LIMIT_deg, ANGLE_LIMIT_deg), v.transform(toDeg));
/** Degrees 0 ≤ a < 180. */
const runAccepted = accepts('an angle from 0 to below 180');
export const runAngle = v.pipe(
  v.number(runAccepted),
  v.minValue(0, runAccepted),
  v.ltValue(180, runAccepted),
  v.transform((value): number => roundDeg(value) % 180),
);
/** A whole number from min to max; −0 is read as 0. */
export const wholeNumber = (min: number, max: number) => {
  const accepted = accepts('a whole number from {min} to {max}', { min, max });
  return v.pipe(
    v.number(accepted),
    v.integer(accepted),
    v.minValue(min, accepted),
    v.maxValue(max, accepted),
    v.transform(noNegativeZero),
  );
};

const text = (longest: number) => {
  const accepted = accepts('a text of at most {longest} characters, none of them a direction mark', {
    longest,
  });
  return v.pipe(v.string(accepted), v.maxLength(longest, accepted), v.check(isText, accepted));
};
export const name = text(LONGEST_NAME);
export const note = text(LONGEST_NOTE);
const idAccepted = accepts(
  'a name of 1 to {longest} characters without control characters, direction marks or blanks at its ends',
  { longest: LONGEST_ID },
);
export const id = v.pipe(
  v.string(idAccepted),
  v.minLength(1, idAccepted),
  v.maxLength(LONGEST_ID, idAccepted),
  v.check(isId, idAccepted),
);
/** "a" or ("b" or "c"), as values of a text. */
function eitherOf([option, ...more]: readonly string[]): Readonly<Record<'first' | 'last', Param>> {
  const last: Param =
    more.length > 1 ? { text: '{first} or {last}', values: eitherOf(more) } : `"${more[0] ?? ''}"`;
  return { first: `"${option ?? ''}"`, last };
}
/** One of some words. */
export const choice = <const T extends readonly [string, ...string[]]>(options: T) =>
  v.picklist(options, accepts('{first} or {last}', eitherOf(options)));
export const flag = v.boolean(accepts('true or false'));

/** A list that holds at most `longest` entries. */
export const list = <T extends v.GenericSchema>(entry: T, longest: number, what: Text) => {
  const accepted = accepts('a list of at most {longest} {what}', { longest, what: { text: what } });
  return v.pipe(v.array(entry, accepted), v.maxLength(longest, accepted));
};

const pointAccepted = accepts('a point [x, y]');
export const point = v.strictTuple([coordinate, coordinate], pointAccepted);
const ringAccepted = accepts('a list of points or an object with "circle_mm": [x, y, r]');
/** Closed or not; that three of its points differ and that it encloses an area is checked in semantics.ts. */
export const outline = v.pipe(
  v.array(point, ringAccepted),
  v.minLength(3, accepts('a list of at least 3 points')),
  v.maxLength(
    MOST_RING_POINTS,
    accepts('a list of at most {longest} {what}', {
      longest: MOST_RING_POINTS,
      what: { text: 'points ¦ counted' },
    }),
  ),
);
export const circle = v.strictObject(
  { circle_mm: v.strictTuple([coordinate, coordinate, size()], accepts('three numbers [x, y, r]')) },
  ringAccepted,
);
export const anyRing = v.union([outline, circle], ringAccepted);
/**
 * Chosen by its form, so that a fault is reported where it stands in the one that was meant. Without a value (that is
 * how the schema is written out) it is either.
 */
export const ring = v.lazy((input) => {
  if (input === undefined) return anyRing;
  return Array.isArray(input) ? outline : circle;
});
export const rings = list(ring, MOST_RINGS, 'rings ¦ counted');

const MONTH_LENGTHS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const leapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

/** True for a day of the Gregorian calendar from the year 1900 to 2999: "2026-11-27". */
function isDay(value: string): boolean {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(value);
  if (!found) return false;
  const [year, month, day] = found.slice(1, 4).map(Number) as [number, number, number];
  const days = month === 2 && !leapYear(year) ? 28 : (MONTH_LENGTHS[month - 1] ?? 0);
  return year >= 1900 && year <= 2999 && day >= 1 && day <= days;
}
const dayAccepted = accepts('a date such as "2026-11-27", in the years 1900 to 2999');
export const calendarDate = v.pipe(v.string(dayAccepted), v.check(isDay, dayAccepted));

const DAY_LENGTH = 10;
/** True for "2026-11-27T16:00", a minute of such a day. */
const isClockDate = (value: string): boolean =>
  isDay(value.slice(0, DAY_LENGTH)) && /^T([01]\d|2[0-3]):[0-5]\d$/.test(value.slice(DAY_LENGTH));
const dateAccepted = accepts('a local date and time such as "2026-11-27T16:00", in the years 1900 to 2999');
export const clockDate = v.pipe(v.string(dateAccepted), v.check(isClockDate, dateAccepted));

const checksumAccepted = accepts('a checksum of twelve hexadecimal digits, such as "4532415f99f5"');
export const checksumText = v.pipe(v.string(checksumAccepted), v.regex(/^[0-9a-f]{12}$/, checksumAccepted));

const CLOCK_TIME = /^(([01]\d|2[0-3]):[0-5]\d|24:00)$/;
const timeAccepted = accepts('a clock time from "00:00" to "24:00"');
const clockTime = v.pipe(v.string(timeAccepted), v.regex(CLOCK_TIME, timeAccepted));
/** From and to on one day; that they ascend is checked in semantics.ts. */
export const clockRange = v.strictTuple([clockTime, clockTime], accepts('a pair of clock times [from, to]'));
