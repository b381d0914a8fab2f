/**
 * The one time axis that all lasers share: its end and its ticks. Seconds; places as shares of the axis, 0 to 1.
 */
import type { LayerFigures } from '../../build/types';
import type { Seconds } from '../../units/types';

export interface TimeAxis {
  readonly end_s: Seconds;
  readonly ticks_s: readonly Seconds[];
}
const STEPS = [1, 2, 5, 10] as const;

/** The smallest of 1, 2, 5 · 10^n that makes at most `most` steps. */
export function tickStep(span: number, most: number): number {
  if (!(span > 0)) return 1;
  const decade = 10 ** Math.floor(Math.log10(span / most));
  return decade * (STEPS.find((step) => decade * step * most >= span * (1 - 1e-9)) ?? 10);
}

/** An axis that holds the slowest laser and the best possible, with `most` steps at most. */
export function timeAxis(figures: LayerFigures | undefined, most = 4): TimeAxis {
  const span = figures === undefined ? 0 : Math.max(figures.exposure_s, figures.bestPossible_s);
  const step = tickStep(span, most);
  const end_s = Math.max(span, step) * 1.02;
  const count = Math.floor(end_s / step + 1e-9);
  return { end_s, ticks_s: Array.from({ length: count + 1 }, (_, k) => k * step) };
}

/** Share of the axis as a CSS length. */
export const share = (axis: TimeAxis, value_s: Seconds): string =>
  `${((100 * value_s) / axis.end_s).toFixed(2)}%`;
