/**
 * Coordinates as files hold them: finite and not absurdly far out. Decimal numbers are read from bytes, exactly rounded.
 */
import { strFromU8 } from 'fflate';
import { figure, type Fault } from '../../layout/result';
import { FURTHEST } from './limits';

/** mesh-bad-number or mesh-too-far (without its place); null where all three are sound. */
export function coordinateFault(x: number, y: number, z: number): Fault | null {
  if (Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST && Math.abs(z) <= FURTHEST) return null;
  const found = [x, y, z].find((value) => !(Math.abs(value) <= FURTHEST)) ?? NaN;
  if (!Number.isFinite(found)) return { code: 'mesh-bad-number', params: { found: String(found) } };
  return {
    code: 'mesh-too-far',
    params: {
      found: figure(found.toPrecision(3)),
      limit: { text: '{count} units', values: { count: FURTHEST } },
    },
  };
}

const ZERO = 0x30;
const NINE = 0x39;
const POINT = 0x2e;
const MINUS = 0x2d;
const PLUS = 0x2b;
/** "e" after making a letter small. */
const EXPONENT = 0x65;
const SMALL = 0x20;
/** Whole numbers up to this are exact in a double. */
const EXACT = 2 ** 53;
/** 10^0 … 10^22 are exact in a double. */
const POWERS = Array.from({ length: 23 }, (_, i) => Number(`1e${i}`));
const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/**
 * The decimal number in bytes from … to; NaN where there is none. Digits times or over an exact power of ten are rounded
 * once, so exact; longer numbers go through Number(). Source: Clinger, How to read floating point numbers accurately, 1990
 * [memory].
 */
export function readDecimal(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  const negative = bytes[at] === MINUS;
  if (negative || bytes[at] === PLUS) at += 1;
  let digits = 0;
  let scale = 0;
  let seen = 0;
  let point = false;
  for (; at < to; at++) {
    const byte = bytes[at];
    if (byte >= ZERO && byte <= NINE) {
      digits = 10 * digits + (byte - ZERO);
      seen += 1;
      if (point) scale -= 1;
    } else if (byte === POINT && !point) point = true;
    else break;
  }
  if (at < to) {
    const exponent = (bytes[at] | SMALL) === EXPONENT ? readExponent(bytes, at + 1, to) : NaN;
    if (!Number.isInteger(exponent)) return NaN;
    scale += exponent;
  }
  if (seen === 0) return NaN;
  if (digits > EXACT || scale > 22 || scale < -22) return slowly(bytes, from, to);
  const size = scale < 0 ? digits / POWERS[-scale] : digits * POWERS[scale];
  return negative ? -size : size;
}

function readExponent(bytes: Uint8Array, from: number, to: number): number {
  const negative = bytes[from] === MINUS;
  let at = negative || bytes[from] === PLUS ? from + 1 : from;
  if (at === to) return NaN;
  let value = 0;
  for (; at < to; at++) {
    if (bytes[at] < ZERO || bytes[at] > NINE) return NaN;
    value = 10 * value + (bytes[at] - ZERO);
  }
  return negative ? -value : value;
}

function slowly(bytes: Uint8Array, from: number, to: number): number {
  const text = strFromU8(bytes.subarray(from, to), true);
  return DECIMAL.test(text) ? Number(text) : NaN;
}
