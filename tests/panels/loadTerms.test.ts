/**
 * The terms that an explanation shows, held against a load computed by hand from the formula
 * E = A/(h·v) + t_v·n + contours·P/v_c + t_p with ordinary process numbers (common practice, no source): a piece of 100 mm² hatch area and 40 mm outline with 10 mm of seam.
 */
import { describe, expect, test } from 'vitest';
import { loadTerms, vectorsOf } from '../../src/panels/readout/loadTerms';
import type { Analysis, LayerFigures, Piece } from '../../src/build/types';
import { DEFAULT_PROCESS, emptyLayout } from '../../src/layout/defaults';

const process = {
  ...DEFAULT_PROCESS,
  hatch_mm: 0.1,
  speed_mm_s: 1200,
  vector_mm: 10,
  vectorGap_ms: 0.4,
  contours: 1,
  contourSpeed_mm_s: 600,
  pieceGap_s: 0.02,
  vectorCount: 'area' as const,
};
const piece = (laser: number, hatchArea_mm2: number): Piece => ({
  part: 0,
  laser,
  region: [],
  area_mm2: 100,
  hatchArea_mm2,
  outline_mm: 40,
  seam_mm: 10,
  load_s: 0,
});
const part = {
  id: 'P01',
  shape: 's',
  at_mm: [0, 0] as const,
  turn_deg: 0,
  seams: 'free' as const,
  laser: null,
  timeFactor: 2,
};
const analysis = { layout: { ...emptyLayout(), process, parts: [part] } } as unknown as Analysis;
const terms = (pieces: Piece[]) => loadTerms(analysis, { pieces } as unknown as LayerFigures, 0);

describe('the terms of a load', () => {
  test('are area over hatch and speed, gaps per vector, contours and gaps per piece, times the part’s factor', () => {
    const found = terms([piece(0, 100), piece(1, 100)]);
    expect(found.hatch_s).toBeCloseTo(2 * 0.8333333333, 9);
    expect(found.vectors).toBeCloseTo(100, 9);
    expect(found.vectorGaps_s).toBeCloseTo(2 * 0.04, 9);
    expect(found.contours_s).toBeCloseTo(2 * 0.0666666667, 9);
    expect(found.pieceGaps_s).toBeCloseTo(2 * 0.02, 9);
    expect(found.pieces).toBe(1);
  });
  test('count no vector where the hatch area is 0', () => {
    expect(terms([piece(0, 0)]).vectorGaps_s).toBe(0);
  });
  test('count P/(π h) more vectors with area and outline (Cauchy-Crofton)', () => {
    const both = { ...process, vectorCount: 'areaAndOutline' as const };
    expect(vectorsOf(both, 100, 50) - vectorsOf(process, 100, 50)).toBeCloseTo(159.1549431, 6);
  });
});
