/**
 * The height the plan is cut at: one line through elevation and time per layer. In the elevation it carries the handle:
 * dragged, or moved by keys: arrows one layer, page keys one stretch, Home and End to the ends. Millimetres.
 */
import { t, withDecimalSign } from '../language/index';
import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import type { Analysis } from '../build/types';
import type { Workbench } from '../store/types';
import { NARROW_SPACE } from '../units/format';
import { roundMm } from '../units/round';
import type { Mm, Px } from '../units/types';
import { useAnalysis, useBench, useWorkbench } from './bench';
import { layerNumber, stretchIndexAt } from './layerAt';
import type { ZAxis } from './zAxis';

const TAB_HALF_PX = 12;

/** The middle of a layer: what stands there is never in doubt. */
export const middleOf = (analysis: Analysis, layer: number): Mm =>
  roundMm((Math.min(analysis.build.layers, Math.max(1, layer)) - 0.5) * analysis.layout.process.layer_mm);

const middleOfStretch = (analysis: Analysis, index: number): Mm => {
  const stretch = analysis.stretches[Math.min(analysis.stretches.length - 1, Math.max(0, index))];
  return stretch ? roundMm((stretch.from_mm + stretch.to_mm) / 2) : 0;
};

/** Where a key takes the height; null for keys that do nothing here. */
export const heightForKey = (analysis: Analysis, height_mm: Mm, key: string): Mm | null => {
  const layer = layerNumber(analysis, height_mm);
  const stretch = stretchIndexAt(analysis, height_mm);
  switch (key) {
    case 'ArrowUp':
    case 'ArrowRight':
      return middleOf(analysis, layer + 1);
    case 'ArrowDown':
    case 'ArrowLeft':
      return middleOf(analysis, layer - 1);
    case 'PageUp':
      return middleOfStretch(analysis, stretch + 1);
    case 'PageDown':
      return middleOfStretch(analysis, stretch - 1);
    case 'Home':
      return middleOf(analysis, 1);
    case 'End':
      return middleOf(analysis, analysis.build.layers);
    default:
      return null;
  }
};

/** Sets the height from a place on the z axis. */
export const setHeightAt = (bench: Workbench, axis: ZAxis, top: Px): void =>
  bench.setView({ height_mm: roundMm(axis.toMm(top)) });

/** The pointer on the handle: pressed, it takes the height along. */
function useDrag(axis: ZAxis) {
  const bench = useWorkbench();
  /** The height at the press, while it is held. */
  const from = useRef<Mm | null>(null);
  const follow = (event: PointerEvent<HTMLDivElement>) => {
    const frame = event.currentTarget.parentElement!.getBoundingClientRect();
    if (from.current !== null) setHeightAt(bench, axis, event.clientY - frame.top);
  };
  const press = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = bench.store.getState().view.height_mm;
  };
  const stop = () => {
    from.current = null;
  };
  /** The system takes the pointer away: the height goes back. */
  const lose = () => {
    if (from.current !== null) bench.setView({ height_mm: from.current });
    stop();
  };
  return {
    onPointerDown: press,
    onPointerMove: follow,
    onPointerUp: stop,
    onPointerCancel: lose,
    onLostPointerCapture: lose,
  };
}

/** What the handle says: the height, and which layer that is. */
function wordsOf(analysis: Analysis, height_mm: Mm): string {
  const { layers } = analysis.build;
  if (layers === 0) return t('nothing to build');
  return t('z {height}  layer {layer} of {layers}', {
    height: `${withDecimalSign(height_mm.toFixed(2))}${NARROW_SPACE}mm`,
    layer: layerNumber(analysis, height_mm),
    layers,
  });
}

/** The line across the elevation and its tab, as a slider. */
export function HeightHandle({ axis, width }: { axis: ZAxis; width: Px }) {
  const bench = useWorkbench();
  const analysis = useAnalysis();
  const height = useBench((state) => state.view.height_mm);
  const words = wordsOf(analysis, height);
  const drag = useDrag(axis);
  const onKey = (event: KeyboardEvent) => {
    const next = heightForKey(analysis, height, event.key);
    if (next === null) return;
    event.preventDefault();
    event.stopPropagation();
    bench.setView({ height_mm: next });
  };
  return (
    <div
      // A range input cannot be a line across the drawing.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="slider"
      tabIndex={0}
      aria-label={t('Height of the cut')}
      aria-orientation="vertical"
      aria-valuenow={height}
      aria-valuemin={0}
      aria-valuemax={analysis.build.height_mm}
      aria-valuetext={words}
      data-testid="height-handle"
      className="height-handle"
      style={{ top: axis.toPx(height) - TAB_HALF_PX, width }}
      {...drag}
      onKeyDown={onKey}
    >
      <span className="height-grab" />
      <span className="height-tab">{words}</span>
    </div>
  );
}
