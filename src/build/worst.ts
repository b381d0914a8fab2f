/**
 * The stretch of height that wastes most: neighbouring layers in which the same lasers work and the same ones wait, and
 * what waiting costs there; layers that lose next to nothing do not count to their uneven neighbours. A laser waits where its
 * load is less than a tenth of the slowest one's: common practice to call it so, no source. Hours lost = Σ layers · (layer
 * time − max(minLayer, recoating + mean load)): what an even share of the same loads would save (DESIGN 5.7).
 */
import type { LaserId } from '../layout/types';
import type { Hours, Mm, Seconds } from '../units/types';
import type { LayerTotals, Stretch } from './types';

const WAITS_BELOW = 0.1;
/** Of its exposure: a layer that loses less counts as even. */
const UNEVEN = 0.02;
const S_PER_H = 3600;

export interface WorstRange {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  /** It ends at the top of the build. */
  readonly toTop: boolean;
  readonly working: readonly LaserId[];
  readonly waiting: readonly LaserId[];
  readonly lost_h: Hours;
  /** Exposure in these layers; with what the minimum layer time adds to it. */
  readonly exposure_h: Hours;
  readonly held_h: Hours;
}

const waits = ({ exposure_s }: LayerTotals, load_s: number): boolean => load_s < WAITS_BELOW * exposure_s;

/** The lasers that work in a layer, and whether it loses anything to speak of, as a text to compare. */
function pattern(stretch: Stretch, minLayer_s: Seconds): string {
  const { figures } = stretch;
  const working = figures.lasers.map(({ on, load_s }) => (on && !waits(figures, load_s) ? '1' : '0'));
  const uneven = lostIn(stretch, minLayer_s) > UNEVEN * exposureIn(stretch);
  return working.join('') + (uneven ? ' uneven' : ' even');
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Hours of as many seconds in each of the layers. */
const hoursIn = ({ firstLayer, lastLayer }: Stretch, each_s: Seconds): Hours =>
  ((lastLayer - firstLayer + 1) * each_s) / S_PER_H;

const exposureIn = (stretch: Stretch): Hours => hoursIn(stretch, stretch.figures.exposure_s);

/** Of a layer's time all but recoating, which no share of the loads changes. */
const held = ({ exposure_s, wait_s }: LayerTotals): Seconds => exposure_s + wait_s;

const heldIn = (stretch: Stretch): Hours => hoursIn(stretch, held(stretch.figures));

function lostIn(stretch: Stretch, minLayer_s: Seconds): Hours {
  const { figures } = stretch;
  const on = figures.lasers.filter((laser) => laser.on);
  if (on.length === 0) return 0;
  const mean_s = sum(on.map(({ load_s }) => load_s)) / on.length;
  const even_s = Math.max(minLayer_s - figures.recoat_s, mean_s);
  return hoursIn(stretch, Math.max(0, held(figures) - even_s));
}

/** Neighbouring stretches of one pattern, as ranges of indices. */
function runs(stretches: readonly Stretch[], minLayer_s: Seconds): Stretch[][] {
  const found: Stretch[][] = [];
  let before: string | null = null;
  for (const stretch of stretches) {
    const now = pattern(stretch, minLayer_s);
    if (now === before) found.at(-1)!.push(stretch);
    else found.push([stretch]);
    before = now;
  }
  return found;
}

function rangeOf(run: readonly Stretch[], last: Stretch, lost_h: Hours): WorstRange {
  const { figures } = run[0]!;
  const on = figures.lasers.filter((laser) => laser.on);
  return {
    from_mm: run[0]!.from_mm,
    to_mm: run.at(-1)!.to_mm,
    toTop: run.at(-1) === last,
    working: on.filter(({ load_s }) => !waits(figures, load_s)).map(({ id }) => id),
    waiting: on.filter(({ load_s }) => waits(figures, load_s)).map(({ id }) => id),
    lost_h,
    exposure_h: sum(run.map(exposureIn)),
    held_h: sum(run.map(heldIn)),
  };
}

/** The range that loses most hours; null where nothing is lost. */
export function worstRange(stretches: readonly Stretch[], minLayer_s: Seconds): WorstRange | null {
  const last = stretches.at(-1);
  let worst: { readonly run: readonly Stretch[]; readonly lost_h: Hours } | null = null;
  for (const run of runs(stretches, minLayer_s)) {
    const lost_h = sum(run.map((stretch) => lostIn(stretch, minLayer_s)));
    if (lost_h > (worst?.lost_h ?? 1e-9)) worst = { run, lost_h };
  }
  return worst && last ? rangeOf(worst.run, last, worst.lost_h) : null;
}
