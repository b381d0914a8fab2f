/**
 * Which stretch and layer stand at a height: layer k covers (k−1)·t … k·t, and the top belongs to the last layer
 * (DESIGN 5.7). Millimetres above the platform.
 */
import type { Analysis, LayerFigures, Stretch } from '../build/types';
import type { Mm } from '../units/types';

/** A rounding error this small makes no other layer (DESIGN 5.7). */
const SLACK = 1e-9;

/** 1-based; 0 for an empty build. */
export const layerNumber = (analysis: Analysis, height_mm: Mm): number => {
  const { layers } = analysis.build;
  const at = Math.floor(height_mm / analysis.layout.process.layer_mm + SLACK) + 1;
  return Math.min(layers, Math.max(1, at));
};

export const stretchIndexAt = (analysis: Analysis, height_mm: Mm): number => {
  const layer = layerNumber(analysis, height_mm);
  return analysis.stretches.findIndex((stretch) => layer >= stretch.firstLayer && layer <= stretch.lastLayer);
};

export const stretchAt = (analysis: Analysis, height_mm: Mm): Stretch | null =>
  analysis.stretches[stretchIndexAt(analysis, height_mm)] ?? null;

/** Figures of the layer at a height; null for an empty build. */
export const layerFiguresAt = (analysis: Analysis, height_mm: Mm): LayerFigures | null =>
  stretchAt(analysis, height_mm)?.figures ?? null;
