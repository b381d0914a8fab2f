/**
 * Which stretch and layer the screen shows at a height: heights outside the build show the nearest layer.
 * Layer k covers (k−1)·t … k·t. Millimetres above the platform; layers count from 1.
 */
import type { Analysis, LayerFigures } from '../build/types';
import { layerAt } from '../build/layers';
import { shownStep } from '../store/shown';
import type { Mm } from '../units/types';
import type { Division } from '../zoning/types';

/** The layer at a height; 0 for an empty build. */
export const layerNumber = ({ build, layout }: Analysis, height_mm: Mm): number => {
  const inside = Math.min(Math.max(0, height_mm), build.height_mm);
  return layerAt(inside, layout.process.layer_mm, build.height_mm);
};

/** Which stretch of equal sections the screen shows at a height; −1 for an empty build. */
export const stretchIndexAt = (analysis: Analysis, height_mm: Mm): number => {
  const layer = layerNumber(analysis, height_mm);
  return analysis.stretches.findIndex((stretch) => layer >= stretch.firstLayer && layer <= stretch.lastLayer);
};

/** Figures of the layer at a height; null for an empty build. */
export const layerFiguresAt = (analysis: Analysis, height_mm: Mm): LayerFigures | null =>
  analysis.build.layers === 0 ? null : analysis.layer(layerNumber(analysis, height_mm));

/** The division that holds in the layer at a height. */
export const divisionAt = (analysis: Analysis, height_mm: Mm): Division =>
  analysis.divisions[shownStep(analysis.layout, height_mm)] ?? analysis.divisions[0];
