/**
 * The load of one laser taken apart into the terms of the time model, so that the screen can put the layout's own numbers
 * into the formula: E = A/(h·v) + t_v·n + contours·P/v_c + t_p per piece, times the part's factor.
 * Seconds, square millimetres, millimetres.
 */
import type { Analysis, LayerFigures } from '../../build/types';
import type { Process } from '../../layout/types';
import type { Mm, Mm2, Seconds } from '../../units/types';

export interface LoadTerms {
  readonly pieces: number;
  readonly hatchArea_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly seam_mm: Mm;
  /** P + S of the pieces that have hatch: what the number of vectors counts. */
  readonly border_mm: Mm;
  /** Mean number of hatch vectors. */
  readonly vectors: number;
  readonly hatch_s: Seconds;
  readonly vectorGaps_s: Seconds;
  readonly contours_s: Seconds;
  readonly pieceGaps_s: Seconds;
}
const NONE: LoadTerms = {
  pieces: 0,
  hatchArea_mm2: 0,
  outline_mm: 0,
  seam_mm: 0,
  border_mm: 0,
  vectors: 0,
  hatch_s: 0,
  vectorGaps_s: 0,
  contours_s: 0,
  pieceGaps_s: 0,
};

/** Mean number of vectors of a piece with hatch area A and border P + S; 0 where A is 0. */
export function vectorsOf(process: Process, hatchArea_mm2: Mm2, border_mm: Mm): number {
  if (hatchArea_mm2 <= 0) return 0;
  const along = hatchArea_mm2 / (process.vector_mm * process.hatch_mm);
  return process.vectorCount === 'area' ? along : along + border_mm / (Math.PI * process.hatch_mm);
}

/** Sums over the pieces that laser `laser` exposes in this layer. */
export function loadTerms(analysis: Analysis, figures: LayerFigures, laser: number): LoadTerms {
  const { process, parts } = analysis.layout;
  return figures.pieces
    .filter((piece) => piece.laser === laser)
    .reduce((sum, piece) => {
      const factor = parts[piece.part]?.timeFactor ?? 1;
      const border_mm = piece.outline_mm + piece.seam_mm;
      const vectors = vectorsOf(process, piece.hatchArea_mm2, border_mm);
      const contours_s = (process.contours * piece.outline_mm) / process.contourSpeed_mm_s;
      return {
        pieces: sum.pieces + 1,
        hatchArea_mm2: sum.hatchArea_mm2 + piece.hatchArea_mm2,
        outline_mm: sum.outline_mm + piece.outline_mm,
        seam_mm: sum.seam_mm + piece.seam_mm,
        border_mm: sum.border_mm + (piece.hatchArea_mm2 > 0 ? border_mm : 0),
        vectors: sum.vectors + vectors,
        hatch_s: sum.hatch_s + (factor * piece.hatchArea_mm2) / (process.hatch_mm * process.speed_mm_s),
        vectorGaps_s: sum.vectorGaps_s + (factor * vectors * process.vectorGap_ms) / 1000,
        contours_s: sum.contours_s + factor * contours_s,
        pieceGaps_s: sum.pieceGaps_s + factor * process.pieceGap_s,
      };
    }, NONE);
}
