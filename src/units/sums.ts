/**
 * Sums as people type them into a field: "3+2 mm", "120-8,5", "1/2 in + 3", "3*25". Terms are added and taken away, a
 * term is one amount or a product of amounts of which one may carry a unit; no brackets. Each term's unit is its own.
 * A hyphen between a whole number and a fraction of an inch joins them ("1-1/2 in" is one and a half); everywhere else it
 * takes away.
 */

/** Number and unit of one text. */
export interface Amount {
  readonly value: number;
  readonly unit: string;
}
export interface Term extends Amount {
  /** The term as typed, without its sign. */
  readonly text: string;
}

const DECIMAL = /^(\d+(?:[.,]\d*)?|[.,]\d+)\s*(\D*)$/;
const FRACTION = /^(?:(\d+)\s+)?(\d+)\s*[/⁄]\s*(\d+)\s*(\D*)$/;
const INCH_AND_PART = /(?<![\d.,]\s*)(\d+)-(\d+\s*[/⁄]\s*\d+\s*(?:in(?:ch|ches)?\b|["″”]|''))/gi;

function readFraction(text: string): Amount | null {
  const match = FRACTION.exec(text);
  if (!match) return null;
  const [, whole = '0', above = '', below = '', unit = ''] = match;
  return Number(below) === 0 ? null : { value: Number(whole) + Number(above) / Number(below), unit };
}

function readDecimal(text: string): Amount | null {
  const match = DECIMAL.exec(text);
  if (!match) return null;
  const [, digits = '', unit = ''] = match;
  return { value: Number(digits.replace(',', '.')), unit };
}

/** One number with at most one unit behind it, without a sign. */
function readAmount(text: string): Amount | null {
  const plain = text.trim();
  const amount = readFraction(plain) ?? readDecimal(plain);
  return amount && Number.isFinite(amount.value) ? { ...amount, unit: amount.unit.trim() } : null;
}

/** A product of amounts; null where one cannot be read or two of them carry a unit. */
function readProduct(text: string): Amount | null {
  const factors = text.split(/[*×]/).map(readAmount);
  let [value, unit] = [1, ''];
  for (const factor of factors) {
    if (factor === null || (unit !== '' && factor.unit !== '')) return null;
    value *= factor.value;
    unit ||= factor.unit;
  }
  return { value, unit };
}

/** True minus signs and dashes as hyphens, single blanks, inches and their fractions joined. */
const plainText = (text: string): string =>
  text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(INCH_AND_PART, '$1 $2');

export type Terms =
  | { readonly ok: true; readonly terms: readonly Term[] }
  /** What of the text was not understood. */
  | { readonly ok: false; readonly found: string };

/** The signed terms of a sum; a single number is a sum of one. */
export function readTerms(text: string): Terms {
  const pieces = plainText(text).split(/([+-])/);
  // A sign in front belongs to the first term: the text before it is empty.
  const signed = pieces[0] === '' && pieces.length > 1 ? pieces.slice(1) : ['+', ...pieces];
  const terms: Term[] = [];
  for (let i = 0; i < signed.length; i += 2) {
    const typed = signed[i + 1]!.trim();
    const amount = readProduct(typed);
    if (amount === null)
      return { ok: false, found: typed === '' || signed.length === 2 ? text.trim() : typed };
    terms.push({ ...amount, value: (signed[i] === '-' ? -amount.value : amount.value) + 0, text: typed });
  }
  return { ok: true, terms };
}
