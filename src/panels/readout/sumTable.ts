/**
 * A sum written out so that it adds up on the screen: every term is rounded to the last digit of the total as it is
 * shown, and the rounding left over goes to the terms that lost most by it (largest remainders), so that no term is off
 * by a whole last digit. Of many terms the biggest stand alone and the rest in one line.
 */
import { t, withDecimalSign, type Text } from '../../language/index';

/** What is added up, in the unit of the total. */
export interface Term {
  readonly label: string;
  readonly value: number;
}
export interface TableRow {
  readonly label: string;
  readonly value: string;
}
export interface Table {
  readonly rows: readonly TableRow[];
  /** Null where the rows are not added up. */
  readonly total: TableRow | null;
}
export interface SumWords {
  readonly label: string;
  /** The total itself, which the terms come to but for rounding. */
  readonly value: number;
  /** How the total is shown elsewhere on the screen. */
  readonly format: (value: number) => string;
  /** How many more there are: "{count} more stretches". */
  readonly more: Text;
}

/** Terms written out; from one more on the smallest are one line. */
const MOST = 8;

/** The number that a formatted quantity shows. */
export const shownNumber = (text: string): number =>
  Number(
    text
      .replaceAll('−', '-')
      .replace(',', '.')
      .match(/-?\d+(\.\d+)?/)?.[0] ?? 0,
  );

/** The worth of the last digit of `text`, which `value` was rounded to: its decimals, or the least power of ten that explains it. */
export function lastDigit(value: number, text: string): { readonly step: number; readonly decimals: number } {
  const shown = shownNumber(text);
  const written = text.match(/[.,](\d+)/)?.[1]?.length;
  if (written !== undefined) return { step: 10 ** -written, decimals: written };
  let step = 1;
  while (Math.abs(value - shown) > step * (0.5 + 1e-6) && step < shown) step *= 10;
  return { step, decimals: 0 };
}

/** Whole numbers that come to `whole`, each within one of its value. */
export function sharesOf(values: readonly number[], whole: number): number[] {
  const shares = values.map(Math.floor);
  const byLoss = values.map((_, i) => i).sort((a, b) => values[b] - shares[b] - (values[a] - shares[a]));
  let left = whole - shares.reduce((sum, share) => sum + share, 0);
  for (const i of byLoss) {
    if (left <= 0) break;
    shares[i]++;
    left--;
  }
  return shares;
}

function grouped(terms: readonly Term[], more: Text): readonly Term[] {
  if (terms.length <= MOST) return terms;
  const sorted = [...terms].sort((a, b) => b.value - a.value);
  const rest = sorted.slice(MOST - 1);
  const value = rest.reduce((sum, term) => sum + term.value, 0);
  return [...sorted.slice(0, MOST - 1), { label: t(more, { count: rest.length }), value }];
}

/** The terms as rows and their total; more than eight are grouped, the biggest first. */
export function sumTable(terms: readonly Term[], { label, value, format, more }: SumWords): Table {
  const rows = grouped(terms, more);
  const total = format(value);
  const shown = shownNumber(total);
  const { step, decimals } = lastDigit(value, total);
  const shares = sharesOf(
    rows.map((term) => term.value / step),
    Math.round(shown / step),
  );
  return {
    rows: rows.map((term, i) => ({
      label: term.label,
      value: withDecimalSign((shares[i] * step).toFixed(decimals)),
    })),
    total: { label, value: total },
  };
}
