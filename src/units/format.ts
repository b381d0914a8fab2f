/**
 * How quantities are shown: three to four significant digits with their unit behind a narrow no-break space, the
 * decimal sign of the language in force, a true minus sign, and the same number of digits for the same magnitude so that
 * figures keep their width.
 * `formatField` is the exception: it gives back exactly what a field holds (whole micrometres).
 */
import { withDecimalSign } from '../language/index';
import type { Cm3, Degrees, Hours, Mm, Mm2, Percent, Seconds } from './types';

/** Between a number and its unit; a line is not broken there (U+202F). */
export const NARROW_SPACE = '\u202f';
const MINUS = '\u2212';
const NOT_A_NUMBER = '–';

/** Number of digits before the decimal point, counted after rounding to `digits` significant ones. */
function magnitude(size: number, digits: number): number {
  const exponent = Number(size.toExponential(digits - 1).split('e')[1]);
  return exponent + 1;
}

/**
 * A bare number to `digits` significant digits, with at most `maxDecimals` of them behind the point.
 * Integers longer than that are rounded too: 25446.9 → "25450".
 */
export function formatNumber(value: number, digits = 4, maxDecimals = 3): string {
  if (!Number.isFinite(value)) return NOT_A_NUMBER;
  const size = Math.abs(value);
  const before = size === 0 ? 1 : magnitude(size, digits);
  const decimals = Math.min(maxDecimals, Math.max(0, digits - Math.max(1, before)));
  const rounded = before > digits ? Number(size.toPrecision(digits)) : size;
  const text = withDecimalSign(rounded.toFixed(decimals));
  return value < 0 && Number(rounded.toFixed(decimals)) !== 0 ? MINUS + text : text;
}

const withUnit = (text: string, unit: string): string => text + NARROW_SPACE + unit;

/** Lengths: four significant digits, down to the micrometre. */
export const formatMm = (value: Mm): string => withUnit(formatNumber(value), 'mm');
/** Areas: four significant digits, at most two decimals. */
export const formatMm2 = (value: Mm2): string => withUnit(formatNumber(value, 4, 2), 'mm²');
/** Volumes: four significant digits, at most two decimals. */
export const formatCm3 = (value: Cm3): string => withUnit(formatNumber(value, 4, 2), 'cm³');
/** Times of a layer: four significant digits, down to the millisecond. */
export const formatSeconds = (value: Seconds): string => withUnit(formatNumber(value), 's');
/** Hours; whoever shows them adds the word "estimate". */
export const formatHours = (value: Hours): string => withUnit(formatNumber(value, 4, 2), 'h');
/** Percent: three significant digits, at most two decimals. */
export const formatPercent = (value: Percent): string => withUnit(formatNumber(value, 3, 2), '%');
/** Degrees; the sign stands at the number without a space (ISO 80000-1, 7.1.4 [memory]). */
export const formatDegrees = (value: Degrees): string => `${formatNumber(value, 4, 1)}°`;
/** A count of things: whole, never rounded. */
export const formatCount = (value: number): string =>
  Number.isFinite(value) ? String(Math.round(value)) : NOT_A_NUMBER;

/** What an input field holds: at most three decimals, no trailing zeros, plain hyphen. */
export function formatField(value: number): string {
  if (!Number.isFinite(value)) return '';
  const text = value.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : withDecimalSign(text);
}
