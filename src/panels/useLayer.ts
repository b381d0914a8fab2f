/**
 * The analysis together with the figures of the layer that the plan is cut at.
 */
import type { Analysis, LayerFigures } from '../build/types';
import { useAnalysis, useBench } from '../canvas/bench';
import { layerFiguresAt, layerNumber } from '../canvas/layerAt';

export interface LayerView {
  readonly analysis: Analysis;
  /** Undefined on an empty plate. */
  readonly figures: LayerFigures | undefined;
  readonly layer: number;
}

export function useLayer(): LayerView {
  const analysis = useAnalysis();
  const height_mm = useBench((state) => state.view.height_mm);
  return {
    analysis,
    figures: layerFiguresAt(analysis, height_mm) ?? undefined,
    layer: layerNumber(analysis, height_mm),
  };
}
