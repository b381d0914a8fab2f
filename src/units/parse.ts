/**
 * What a person types into a field: "25,4 mm", "25.4", "1 in", "1/4 in", "1 1/2 in", "2 cm", and sums of such ("3+2 mm",
 * "1/2 in + 3"). A bare number means millimetres or degrees. The unit belongs to the whole number, a fraction included. A comma is a decimal comma; two
 * separators of thousands and decimals in one number are refused, because "1.234,5" and "1,234.5" cannot both be right.
 * 1 in = 25.4 mm exactly (international yard and pound agreement of 1959).
 */
import { roundDeg, roundMm } from './round';
import { readTerms } from './sums';
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

const EXPONENT = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)\s*e\s*[+\-\u2212\u2013]?\s*\d+/i;

const fault = (code: ParseCode, text: string): Parsed<never> => ({
  ok: false,
  fault: { code, params: { found: text.trim().slice(0, LONGEST_SHOWN) } },
});

const lengthUnit = (unit: string): number | undefined => {
  const name = unit
    .toLowerCase()
    .replace('\u03bc', 'µ')
    .replace(/(?<=[a-z])\.$/, '');
  return Object.hasOwn(MM_PER_UNIT, name) ? MM_PER_UNIT[name] : undefined;
};

/** The sum of a text's terms, each times what its unit stands for (undefined: no such unit). An exponent is named. */
function sumOf(text: string, code: ParseCode, perUnit: (unit: string) => number | undefined): Parsed<number> {
  if (EXPONENT.test(text.trim())) return fault('number-exponent', text);
  const read = readTerms(text);
  if (!read.ok) return fault(code, read.found);
  let value = 0;
  for (const term of read.terms) {
    const times = perUnit(term.unit);
    if (times === undefined) return fault(code, read.terms.length === 1 ? text : term.text);
    value += term.value * times;
  }
  return Number.isFinite(value) ? { ok: true, value } : fault(code, text);
}

/**
 * A length in millimetres, to the nearest micrometre.
 * Faults: length-unreadable, number-exponent, length-too-large (over 100 m in either sense).
 */
export function parseLength(text: string): Parsed<Mm> {
  const read = sumOf(text, 'length-unreadable', lengthUnit);
  if (!read.ok) return read;
  const value = roundMm(read.value);
  return Math.abs(value) > LENGTH_LIMIT_mm ? fault('length-too-large', text) : { ok: true, value };
}

const degreeUnit = (unit: string): number | undefined =>
  DEGREE_UNITS.includes(unit.toLowerCase()) ? 1 : undefined;

/**
 * An angle in degrees, to the nearest 0.001, brought to 0 ≤ a < 360.
 * Faults: angle-unreadable, number-exponent, angle-too-large (over 100 turns).
 */
export function parseAngle(text: string): Parsed<Degrees> {
  const read = sumOf(text, 'angle-unreadable', degreeUnit);
  if (!read.ok) return read;
  if (Math.abs(read.value) > ANGLE_LIMIT_deg) return fault('angle-too-large', text);
  return { ok: true, value: roundDeg(read.value) };
}

/**
 * A number (or sum) that carries no unit, or the field's own one. Faults: number-unreadable, number-exponent.
 * What lies beyond twelve decimals is the computer's, not the typist's: 0.1+0.2 is 0.3.
 */
export function parseNumber(text: string, own = ''): Parsed<number> {
  const named = (unit: string): number | undefined => (unit === '' || unit === own ? 1 : undefined);
  const read = sumOf(text, 'number-unreadable', named);
  return read.ok ? { ok: true, value: Number(read.value.toFixed(12)) } : read;
}
