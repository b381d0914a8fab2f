/**
 * What a person types into a field: "25,4 mm", "25.4", "1 in", "1/4 in", "1 1/2 in", "2 cm". A bare number means
 * millimetres or degrees. The unit belongs to the whole number, a fraction included. A comma is a decimal comma; two
 * separators of thousands and decimals in one number are refused, because "1.234,5" and "1,234.5" cannot both be right.
 * 1 in = 25.4 mm exactly (international yard and pound agreement of 1959).
 */
import { roundDeg, roundMm } from './round';
import type { Degrees, Mm } from './types';

/** Why an entry is refused; codes of the table of messages. */
export type ParseCode =
  | 'length-unreadable'
  | 'length-too-large'
  | 'angle-unreadable'
  | 'angle-too-large'
  | 'number-unreadable'
  | 'number-exponent';
/** The same form as a Result of layout/, with the codes that this folder can give. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly fault: {
        readonly code: ParseCode;
        readonly params: Readonly<Record<string, string | number>>;
      };
    };

/** Longest length a field takes: 100 m. */
const LENGTH_LIMIT_mm = 100_000;
/** Largest angle a field takes, in either sense. */
export const ANGLE_LIMIT_deg = 36_000;

const MM_PER_UNIT: Readonly<Record<string, number>> = {
  '': 1,
  mm: 1,
  cm: 10,
  m: 1000,
  um: 0.001,
  µm: 0.001,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  '″': 25.4,
  '”': 25.4,
  "''": 25.4,
};
const DEGREE_UNITS: readonly string[] = ['', '°', 'deg', 'º'];
const LONGEST_SHOWN = 40;

const DECIMAL = /^([+-]?)(\d+(?:[.,]\d*)?|[.,]\d+)\s*(\D*)$/;
const EXPONENT = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)\s*e\s*[+\-\u2212\u2013]?\s*\d+/i;
const FRACTION = /^([+-]?)(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/⁄]\s*(\d+)\s*(\D*)$/;

interface Amount {
  readonly value: number;
  readonly unit: string;
}

const fault = (code: ParseCode, text: string): Parsed<never> => ({
  ok: false,
  fault: { code, params: { found: text.trim().slice(0, LONGEST_SHOWN) } },
});

/** The fault of a text that is no number of its kind: an exponent is named, since it looks like one. */
const unreadable = (code: ParseCode, text: string): Parsed<never> =>
  fault(EXPONENT.test(text.trim()) ? 'number-exponent' : code, text);

const signed = (sign: string, size: number): number => (sign === '-' ? -size : size) + 0;

function readFraction(text: string): Amount | null {
  const match = FRACTION.exec(text);
  if (!match) return null;
  const [, sign = '', whole = '0', above = '', below = '', unit = ''] = match;
  if (Number(below) === 0) return null;
  return { value: signed(sign, Number(whole) + Number(above) / Number(below)), unit };
}

function readDecimal(text: string): Amount | null {
  const match = DECIMAL.exec(text);
  if (!match) return null;
  const [, sign = '', digits = '', unit = ''] = match;
  return { value: signed(sign, Number(digits.replace(',', '.'))), unit };
}

/** Number and unit of a text; null where it is not one number with at most one unit behind it. */
function readAmount(text: string): Amount | null {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/^([+-]) /, '$1');
  const amount = readFraction(plain) ?? readDecimal(plain);
  return amount && Number.isFinite(amount.value) ? { ...amount, unit: amount.unit.trim() } : null;
}

const lengthUnit = (unit: string): number | undefined => {
  const name = unit
    .toLowerCase()
    .replace('\u03bc', 'µ')
    .replace(/(?<=[a-z])\.$/, '');
  return Object.hasOwn(MM_PER_UNIT, name) ? MM_PER_UNIT[name] : undefined;
};

/**
 * A length in millimetres, to the nearest micrometre.
 * Faults: length-unreadable, number-exponent, length-too-large (over 100 m in either sense).
 */
export function parseLength(text: string): Parsed<Mm> {
  const amount = readAmount(text);
  const mmPerUnit = amount && lengthUnit(amount.unit);
  if (!amount || mmPerUnit === undefined || mmPerUnit === null) return unreadable('length-unreadable', text);
  const value = roundMm(amount.value * mmPerUnit);
  return Math.abs(value) > LENGTH_LIMIT_mm ? fault('length-too-large', text) : { ok: true, value };
}

/**
 * An angle in degrees, to the nearest 0.001, brought to 0 ≤ a < 360.
 * Faults: angle-unreadable, number-exponent, angle-too-large (over 100 turns).
 */
export function parseAngle(text: string): Parsed<Degrees> {
  const amount = readAmount(text);
  if (!amount || !DEGREE_UNITS.includes(amount.unit.toLowerCase()))
    return unreadable('angle-unreadable', text);
  if (Math.abs(amount.value) > ANGLE_LIMIT_deg) return fault('angle-too-large', text);
  return { ok: true, value: roundDeg(amount.value) };
}

/** A bare number (or fraction) without a unit. Faults: number-unreadable, number-exponent. */
export function parseNumber(text: string): Parsed<number> {
  const amount = readAmount(text);
  if (!amount || amount.unit !== '') return unreadable('number-unreadable', text);
  return { ok: true, value: amount.value };
}
