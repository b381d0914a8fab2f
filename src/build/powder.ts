/**
 * Powder and overflow of a layer.
 *   need of a layer = t·[(A_platform − A_section) + A_section/packing]; dose = A_platform·t·doseFactor
 *   overflow = dose − need
 * Mass balance of a layer whose section melts to full density [mathematics]. Square millimetres, millimetres, litres.
 */
import type { Process } from '../layout/types';
import type { Litres, Mm2 } from '../units/types';

const MM3_PER_L = 1e6;

export interface LayerPowder {
  readonly dose_l: Litres;
  readonly need_l: Litres;
  /** dose − need; negative where the dose does not fill the layer. */
  readonly overflow_l: Litres;
}

/** Powder of one layer with a section of that area. */
export function powderOfLayer(
  platform_mm2: Mm2,
  section_mm2: Mm2,
  process: Pick<Process, 'layer_mm' | 'doseFactor' | 'packing'>,
): LayerPowder {
  const { layer_mm, doseFactor, packing } = process;
  const dose_l = (platform_mm2 * layer_mm * doseFactor) / MM3_PER_L;
  const need_l = (layer_mm * (platform_mm2 - section_mm2 + section_mm2 / packing)) / MM3_PER_L;
  return { dose_l, need_l, overflow_l: dose_l - need_l };
}
