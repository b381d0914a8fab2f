/**
 * What a typed field makes of the text in it: a number inside its limits, or one sentence. The text is read by a parser
 * of src/units; the limits are the field's own, in the unit of the value.
 */
import type { Result } from '../../layout/result';
import { fail } from '../../layout/result';

export interface FieldLimits {
  readonly min?: number;
  readonly max?: number;
  /** Counts: only whole numbers. */
  readonly whole?: boolean;
}
export interface Reading extends FieldLimits {
  /** The field's name as the message says it. */
  readonly what: string;
  readonly unit: string;
  parse(text: string): Result<number>;
}

const range = ({ min, max }: FieldLimits): string => {
  if (min !== undefined && max !== undefined) return `${min} to ${max}`;
  if (min !== undefined) return `${min} or more`;
  return max === undefined ? 'any number' : `up to ${max}`;
};

/**
 * Reads a field's text.
 * @returns the value, or the parser's fault, or `field-range` where the value lies outside the limits.
 */
export function readField(text: string, reading: Reading): Result<number> {
  const read = reading.parse(text);
  if (!read.ok) return read;
  const { min = -Infinity, max = Infinity, whole = false } = reading;
  if (read.value >= min && read.value <= max && (!whole || Number.isInteger(read.value))) return read;
  const kind = whole ? 'a whole number, ' : '';
  return fail('field-range', {
    what: reading.what,
    found: text.trim(),
    accepted: `${kind}${range(reading)}${reading.unit === '' ? '' : ` ${reading.unit}`}`,
  });
}

/** One step up or down, kept inside the limits and on the step's own decimals. */
export function stepField(value: number, step: number, direction: 1 | -1, limits: FieldLimits): number {
  const next = Math.round((value + direction * step) * 1e6) / 1e6;
  return Math.min(limits.max ?? Infinity, Math.max(limits.min ?? -Infinity, next));
}
