/**
 * The time model of one piece, in seconds:
 *   E = A/(h·v) + t_v·n + contours·P/v_c + t_p
 *   n = A/(s·h)                      vectorCount "area"
 *   n = A/(s·h) + (P+S)/(π·h)        vectorCount "areaAndOutline"; n = 0 where A = 0
 * A hatch area in mm² (after the hatch inset, with half the seam overlap along the seams), P true outline in mm, S seam
 * length in mm, h hatch distance, v speed, s vector length, t_v gap per vector, v_c contour speed, t_p gap per piece.
 * (P+S)/(π·h) is the mean number of lines at spacing h that meet an outline of length P+S over all turns of the hatch
 * (Cauchy–Crofton). Everything but t_p is linear, so a load is a weighted sum of areas and lengths.
 */
import type { Process } from '../layout/types';
import type { Mm, Mm2, Seconds } from '../units/types';

/** The formula's factors for one process. */
export interface TimeModel {
  /** s per mm² of hatch area */
  readonly perArea: number;
  /** s per mm of true outline, where there is hatch */
  readonly perOutline: number;
  /** s per mm of true outline, where there is none */
  readonly perContour: number;
  /** s per mm of seam on one side of it, half the seam overlap included */
  readonly perSeam: number;
  /** s per piece */
  readonly perPiece: Seconds;
  /** mm², half the seam overlap, per mm of seam on one side */
  readonly overlapPerSeam: Mm;
}

const MS_PER_S = 1000;

/** The factors of a process; milliseconds become seconds here. */
export function timeModel(process: Process): TimeModel {
  const gap_s = process.vectorGap_ms / MS_PER_S;
  const perArea =
    1 / (process.hatch_mm * process.speed_mm_s) + gap_s / (process.vector_mm * process.hatch_mm);
  const perLine = process.vectorCount === 'areaAndOutline' ? gap_s / (Math.PI * process.hatch_mm) : 0;
  const perContour = process.contours === 0 ? 0 : process.contours / process.contourSpeed_mm_s;
  const overlapPerSeam = process.seamOverlap_mm / 2;
  return {
    perArea,
    perOutline: perContour + perLine,
    perContour,
    perSeam: overlapPerSeam * perArea + perLine,
    perPiece: process.pieceGap_s,
    overlapPerSeam,
  };
}

/** A, P and S of the formula. */
export interface PieceMeasures {
  /** Hatch area after the inset, without seam overlap. */
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly seam_mm: Mm;
}

/** Load without the gap per piece: what splits when a piece is cut. */
export function divisibleLoad(model: TimeModel, { hatch_mm2, outline_mm, seam_mm }: PieceMeasures): Seconds {
  const hatched = hatch_mm2 + seam_mm * model.overlapPerSeam > 0;
  if (!hatched) return outline_mm * model.perContour;
  return hatch_mm2 * model.perArea + outline_mm * model.perOutline + seam_mm * model.perSeam;
}

/** Load E of one piece; timeFactor multiplies all of it. */
export const pieceLoad = (model: TimeModel, measures: PieceMeasures, timeFactor: number): Seconds =>
  timeFactor * (divisibleLoad(model, measures) + model.perPiece);
