/**
 * What real build times were to planned ones, learned from recorded builds. Hours.
 *   factor = Σ real / Σ planned: the ratio estimator, so that long builds count for more [mathematics]
 *   spread = 100·√(Σ (real_i/planned_i − factor)² / (n − 1)) / factor, percent of the factor: the sample standard
 *   deviation of the single ratios around the factor; of one build alone nothing is known of it
 */
import { fail, figure, ok, type Param, type Result } from '../layout/result';
import type { Correction } from '../layout/types';
import type { Hours, Percent } from '../units/types';

/** One finished build: its planned hours, uncorrected, and the hours it took, stops for service left out. */
export interface BuildRecord {
  readonly planned_h: Hours;
  readonly real_h: Hours;
}
export interface Learned {
  readonly factor: number;
  /** null: unknown, because a single build has no spread. */
  readonly spread_pct: Percent | null;
  readonly builds: number;
}

const PERCENT = 100;
/** What a layout accepts as a factor and as a spread. */
const LEAST_FACTOR = 0.01;
const LARGEST_FACTOR = 100;
const LARGEST_SPREAD_PCT = 1000;
/** Longest build that is believed: ten years. */
const MOST_H = 87_600;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const sound = (hours: number): boolean => Number.isFinite(hours) && hours > 0 && hours <= MOST_H;

function spreadOf(records: readonly BuildRecord[], factor: number): Percent | null {
  if (records.length < 2) return null;
  const squares = records.map(({ planned_h, real_h }) => (real_h / planned_h - factor) ** 2);
  return (PERCENT * Math.sqrt(sum(squares) / (records.length - 1))) / factor;
}

/**
 * Factor and spread of recorded builds.
 * Faults: correction-no-records, correction-bad-record (hours that are no hours), correction-out-of-range.
 */
export function learnCorrection(records: readonly BuildRecord[]): Result<Learned> {
  if (records.length === 0) return fail('correction-no-records');
  const bad = records.findIndex(({ planned_h, real_h }) => !sound(planned_h) || !sound(real_h));
  if (bad >= 0) {
    const { planned_h, real_h } = records[bad]!;
    return fail('correction-bad-record', { record: bad + 1, planned: planned_h, real: real_h, most: MOST_H });
  }
  const factor = sum(records.map((r) => r.real_h)) / sum(records.map((r) => r.planned_h));
  const spread_pct = spreadOf(records, factor);
  if (factor < LEAST_FACTOR || factor > LARGEST_FACTOR || (spread_pct ?? 0) > LARGEST_SPREAD_PCT) {
    const shown = figure(factor.toPrecision(3));
    const found: Param =
      spread_pct === null
        ? shown
        : { text: '{factor} ± {spread} %', values: { factor: shown, spread: Math.round(spread_pct) } };
    return fail('correction-out-of-range', { found, least: LEAST_FACTOR, largest: LARGEST_FACTOR });
  }
  return ok({ factor, spread_pct, builds: records.length });
}

/** The correction of a layout after learning; a spread that is unknown stays the given one. */
export const corrected = ({ factor, spread_pct }: Learned, given: Correction): Correction => ({
  factor,
  spread_pct: spread_pct ?? given.spread_pct,
});
