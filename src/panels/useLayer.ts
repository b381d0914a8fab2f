/**
 * The analysis together with the figures of the layer that the plan is cut at.
 */
import type { Analysis, LayerFigures } from '../build/types';
import { useAnalysis, useAnalysisLater, useBench } from '../canvas/bench';
import { layerFiguresAt, layerNumber } from '../canvas/layerAt';

export interface LayerView {
  readonly analysis: Analysis;
  /** Undefined on an empty plate. */
  readonly figures: LayerFigures | undefined;
  readonly layer: number;
}

function useLayerOf(analysis: Analysis): LayerView {
  const height_mm = useBench((state) => state.view.height_mm);
  return {
    analysis,
    figures: layerFiguresAt(analysis, height_mm) ?? undefined,
    layer: layerNumber(analysis, height_mm),
  };
}

export const useLayer = (): LayerView => useLayerOf(useAnalysis());
/** For lists beside plan and readout: follows just after the frame of a drag. */
export const useLayerLater = (): LayerView => useLayerOf(useAnalysisLater());
