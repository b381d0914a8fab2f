/**
 * Time per layer as outlines: per kind of time one stepped area over the height, however many stretches there are. Seconds
 * to the right, millimetres upward, drawn in px.
 */
import type { LayerTotals, Stretch } from '../build/types';
import type { Px, Seconds } from '../units/types';
import type { ZAxis } from './zAxis';

/** Mean load of the lasers that are on: where idle begins. */
export const meanLoad = (figures: LayerTotals): Seconds => {
  const on = figures.lasers.filter((laser) => laser.on);
  return on.length === 0 ? 0 : on.reduce((sum, laser) => sum + laser.load_s, 0) / on.length;
};

export type TimeKind = 'load' | 'idle' | 'recoat' | 'wait';
export const TIME_KINDS: readonly TimeKind[] = ['load', 'idle', 'recoat', 'wait'];

export interface Bar {
  readonly kind: TimeKind;
  readonly from_s: Seconds;
  readonly to_s: Seconds;
}

/** A layer's time from left to right, every kind in its place, also where it has no length; together the layer's time. */
export const layerBars = (figures: LayerTotals): readonly Bar[] => {
  const load = meanLoad(figures);
  const { exposure_s, recoat_s, wait_s } = figures;
  const ends = [0, load, exposure_s, exposure_s + recoat_s, exposure_s + recoat_s + wait_s];
  return TIME_KINDS.map((kind, i) => ({ kind, from_s: ends[i], to_s: ends[i + 1] }));
};

export interface ChartFrame {
  readonly axis: ZAxis;
  readonly width: Px;
  readonly pxPerSecond: number;
  toX(seconds: Seconds): Px;
}

const round = (px: Px): number => Math.round(px * 10) / 10;

interface Edges {
  readonly top: Px;
  readonly bottom: Px;
  readonly left: Px;
  readonly right: Px;
}

/** Up along the right edges, down along the left ones. */
function outline(steps: readonly Edges[]): string {
  const up = steps.map(({ right, top, bottom }) => `${right} ${bottom}L${right} ${top}`);
  const down = steps.toReversed().map(({ left, top, bottom }) => `${left} ${top}L${left} ${bottom}`);
  return `M${[...up, ...down].join('L')}Z`;
}

/** The areas of one kind as a path: one outline per run of stretches in which it has a length. */
export function areaPath(stretches: readonly Stretch[], kind: TimeKind, { axis, toX }: ChartFrame): string {
  const which = TIME_KINDS.indexOf(kind);
  const runs: Edges[][] = [];
  let open: Edges[] | null = null;
  for (const { from_mm, to_mm, figures } of stretches) {
    const bar = layerBars(figures)[which];
    if (!(bar.to_s - bar.from_s > 1e-9)) {
      open = null;
      continue;
    }
    if (!open) runs.push((open = []));
    const [top, bottom] = [round(axis.toPx(Math.min(to_mm, axis.top_mm))), round(axis.toPx(from_mm))];
    open.push({ top, bottom, left: round(toX(bar.from_s)), right: round(toX(bar.to_s)) });
  }
  return runs.map(outline).join('');
}

/** The best possible exposure of every stretch as one stepped line. */
export const bestPath = (stretches: readonly Stretch[], { axis, toX }: ChartFrame): string =>
  stretches
    .map(({ from_mm, to_mm, figures }, i) => {
      const x = round(toX(figures.bestPossible_s));
      const [bottom, top] = [round(axis.toPx(from_mm)), round(axis.toPx(Math.min(to_mm, axis.top_mm)))];
      return `${i === 0 ? 'M' : 'L'}${x} ${bottom}L${x} ${top}`;
    })
    .join('');
