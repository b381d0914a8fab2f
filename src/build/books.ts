/**
 * The books of a layer: Σ scan areas − double exposure + unassigned = section area. Square millimetres.
 */
import type { Mm2 } from '../units/types';
import type { LayerFigures } from './types';

/** The four terms of the book-keeping line, and by how much it fails. */
export interface Books {
  readonly scanned_mm2: Mm2;
  readonly doubleExposed_mm2: Mm2;
  readonly unassigned_mm2: Mm2;
  readonly section_mm2: Mm2;
  /** |left − right| / section area; mm² where there is no section. */
  readonly error: number;
}

/** Relative error up to which the books balance. */
export const BOOKS_TOLERANCE = 1e-6;

/** The book-keeping line of a layer. */
export function books(layer: LayerFigures): Books {
  const scanned_mm2 = layer.lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0);
  const left = scanned_mm2 - layer.doubleExposed_mm2 + layer.unassigned_mm2;
  const section_mm2 = layer.sectionArea_mm2;
  return {
    scanned_mm2,
    doubleExposed_mm2: layer.doubleExposed_mm2,
    unassigned_mm2: layer.unassigned_mm2,
    section_mm2,
    error: section_mm2 > 0 ? Math.abs(left - section_mm2) / section_mm2 : Math.abs(left),
  };
}
