/**
 * The books, as functions that tests and the screen both call.
 *   Σ scan areas − double exposure + unassigned = section area
 * and what a division and a layer must keep whatever the plate: cells lie apart and inside the platform, loads add up,
 * idle time fills every working laser up to the slowest. Square millimetres, seconds; errors are relative.
 */
import { intersect } from '../geometry/clipper';
import { area } from '../geometry/region';
import type { Division } from '../zoning/types';
import type { LayerFigures } from './types';

export interface Books {
  readonly scanned_mm2: number;
  readonly doubleExposed_mm2: number;
  readonly unassigned_mm2: number;
  readonly section_mm2: number;
  /** |left − right| / section area; 0 where there is no section. */
  readonly error: number;
}

/** Relative error up to which the books balance. */
export const BOOKS_TOLERANCE = 1e-6;
const TOLERANCE = BOOKS_TOLERANCE;

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

export interface Coverage {
  /** Platform area that some laser may expose, as a part of the platform. */
  readonly covered: number;
  /** Area in two cells at once, as a part of the platform: 0 but for rounding. */
  readonly twice: number;
}

/** How the cells lie on the platform. */
export function coverage(division: Division): Coverage {
  const platform = area(division.platform);
  const { cells } = division;
  let twice = 0;
  for (let i = 0; i < cells.length; i++) {
    for (let j = i + 1; j < cells.length; j++) twice += area(intersect(cells[i].region, cells[j].region));
  }
  return {
    covered: cells.reduce((sum, cell) => sum + area(cell.region), 0) / platform,
    twice: twice / platform,
  };
}

/** What is wrong with a layer's figures, in words; null where all holds. */
export function layerFault(layer: LayerFigures, division: Division): string | null {
  const scale = Math.max(1, layer.exposure_s);
  if (books(layer).error > TOLERANCE) return `books are off by ${books(layer).error}`;
  if (layer.exposure_s < layer.bestPossible_s - TOLERANCE * scale) return 'faster than the best possible';
  for (const piece of layer.pieces) {
    if (piece.laser >= 0 && ((division.on >>> piece.laser) & 1) === 0)
      return 'a laser that is off has a piece';
  }
  for (const laser of layer.lasers) {
    if (laser.load_s > layer.exposure_s + TOLERANCE * scale) return `${laser.id} is slower than the exposure`;
    const filled = laser.on ? laser.load_s + laser.idle_s : layer.exposure_s;
    if (Math.abs(filled - layer.exposure_s) > TOLERANCE * scale) return `${laser.id} does not add up`;
  }
  return null;
}
