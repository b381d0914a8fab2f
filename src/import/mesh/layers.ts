/**
 * How many layers a mesh makes. Heights count in whole micrometres, as a layout holds them: 20.00001 mm are 20 mm.
 * Millimetres.
 */
import { layerCount } from '../../build/layers';
import { roundMm } from '../../units/round';
import type { Mm } from '../../units/types';

/** ⌈height/t⌉ after rounding to 0.001 mm. */
export const meshLayers = (height_mm: Mm, layer_mm: Mm): number =>
  layerCount(roundMm(height_mm), roundMm(layer_mm));
