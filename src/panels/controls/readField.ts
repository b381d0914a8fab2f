/**
 * What a typed field makes of the text in it: a number inside its limits, or one sentence. The text is read by a parser
 * of src/units; the limits are the field's own, in the unit of the value.
 */
import { t } from '../../language/index';
import { fail, type Fault, type Param, type Result } from '../../layout/result';

export interface FieldLimits {
  readonly min?: number;
  readonly max?: number;
  /** Counts: only whole numbers. */
  readonly whole?: boolean;
  /** What lies outside the limits is brought to the nearer one instead of being refused. */
  readonly clamp?: boolean;
}
export interface Reading extends FieldLimits {
  /** The field's name as the message says it. */
  readonly what: string;
  readonly unit: string;
  parse(text: string): Result<number>;
}

const withUnit = (accepted: string, unit: string): string => (unit === '' ? accepted : `${accepted} ${unit}`);
const range = ({ min, max }: FieldLimits): string => {
  if (min !== undefined && max !== undefined) return t('{min} to {max}', { min, max });
  if (min !== undefined) return t('{min} or more', { min });
  return max === undefined ? t('any number') : t('up to {max}', { max });
};

/** "+=5", "-=1/4 in": added to what is there, each value of several for itself. */
const RELATIVE = /^\s*([+\-\u2212\u2013])\s*=(.*)$/;

/** What a field's text asks for: the value after it, from the value before it. */
export type Entry = (now: number) => Result<number>;

/**
 * Reads a field's text as a change.
 * @returns the change, or the parser's fault; the change itself gives `field-range` where it leads out of the limits.
 */
export function readEntry(text: string, reading: Reading): Result<{ readonly relative: boolean; to: Entry }> {
  const match = RELATIVE.exec(text);
  if (!match) {
    const read = readField(text, reading);
    return read.ok ? { ok: true, value: { relative: false, to: () => read } } : read;
  }
  const by = reading.parse(match[2] ?? '');
  if (!by.ok) return by;
  const signed = match[1] === '+' ? by.value : -by.value;
  const to: Entry = (now) => {
    const read = readField((now + signed).toFixed(9), reading);
    return read.ok || read.fault.code !== 'field-range'
      ? read
      : fail('field-range', { ...read.fault.params, found: text.trim() });
  };
  return { ok: true, value: { relative: true, to } };
}

/**
 * Reads a field's text.
 * @returns the value, or the parser's fault, or `field-range` where the value lies outside the limits.
 */
export function readField(text: string, reading: Reading): Result<number> {
  const read = reading.parse(text);
  if (!read.ok) return read;
  const { min = -Infinity, max = Infinity, whole = false, clamp = false } = reading;
  if (clamp) return { ok: true, value: Math.min(max, Math.max(min, read.value)) };
  if (read.value >= min && read.value <= max && (!whole || Number.isInteger(read.value))) return read;
  const accepted = whole ? t('a whole number, {range}', { range: range(reading) }) : range(reading);
  return fail('field-range', {
    what: reading.what,
    found: text.trim(),
    accepted: withUnit(accepted, reading.unit),
  });
}

export interface Refused {
  /** The field's name. */
  readonly what: string;
  readonly unit: string;
  /** The text as typed. */
  readonly found: string;
}

/** Why the layout refuses a typed value, in the field's own words: its name for the place in the file, the text as typed. */
export function fieldFault(refused: Fault, { what, unit, found }: Refused): Fault {
  if (refused.code !== 'layout-wrong-value') return refused;
  const value = refused.params['accepted'] ?? '';
  const accepted: Param = unit === '' ? value : { text: '{value} {unit}', values: { value, unit } };
  return { code: 'field-range', params: { what, found: found.trim(), accepted } };
}

/** One step up or down, kept inside the limits and on the step's own decimals. */
export function stepField(value: number, step: number, direction: 1 | -1, limits: FieldLimits): number {
  const next = Math.round((value + direction * step) * 1e6) / 1e6;
  return Math.min(limits.max ?? Infinity, Math.max(limits.min ?? -Infinity, next));
}
