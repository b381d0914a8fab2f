/**
 * Why a laser's figures are what they are: meaning, formula and the layout's own numbers in it. Scan area is taken before
 * any hatch inset; the load is the time model's; idle time is that of exposure, never of recoating or waiting.
 */
import type { Analysis, LayerFigures } from '../../build/types';
import { formatCount, formatMm, formatMm2, formatNumber, formatSeconds } from '../../units/format';
import { loadTerms } from './loadTerms';

export interface Explanation {
  readonly title: string;
  readonly meaning: string;
  readonly formula: string;
  /** The formula with this layout's numbers, one line each. */
  readonly numbers: readonly string[];
}

const mixedFactors = (analysis: Analysis): boolean =>
  analysis.layout.parts.some((part) => part.timeFactor !== 1);

export function explainLoad(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const terms = loadTerms(analysis, figures, laser);
  const own = figures.lasers[laser];
  const { hatch_mm, speed_mm_s, vectorGap_ms, contours, contourSpeed_mm_s, pieceGap_s } =
    analysis.layout.process;
  const numbers = [
    `hatch ${formatMm2(terms.hatchArea_mm2)} / (${hatch_mm} mm · ${speed_mm_s} mm/s): ${formatSeconds(terms.hatch_s)}`,
    `${formatCount(terms.vectors)} vectors · ${vectorGap_ms} ms: ${formatSeconds(terms.vectorGaps_s)}`,
    `${contours} · outline ${formatMm(terms.outline_mm)} / ${contourSpeed_mm_s} mm/s: ${formatSeconds(terms.contours_s)}`,
    `${terms.pieces} pieces · ${pieceGap_s} s: ${formatSeconds(terms.pieceGaps_s)}`,
    `together ${formatSeconds(own?.load_s ?? 0)}`,
  ];
  return {
    title: `Load of ${own?.id ?? ''}`,
    meaning: 'Time this laser exposes in the layer. Thin walls cost more than a block of the same area.',
    formula: 'E = A/(h·v) + t_v·n + contours·P/v_c + t_p, summed over its pieces',
    numbers: mixedFactors(analysis) ? [...numbers, 'each part’s time factor is applied'] : numbers,
  };
}

export function explainArea(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  const pieces = figures.pieces.filter((piece) => piece.laser === laser);
  const section = pieces.reduce((sum, piece) => sum + piece.area_mm2, 0);
  const seam = pieces.reduce((sum, piece) => sum + piece.seam_mm, 0);
  const overlap = analysis.layout.process.seamOverlap_mm;
  return {
    title: `Scan area of ${own?.id ?? ''}`,
    meaning:
      'Section area this laser exposes, before the hatch inset, with half the seam overlap at its seams.',
    formula: 'section of its pieces + seam length · seam overlap / 2',
    numbers: [
      `${formatMm2(section)} + ${formatMm(seam)} · ${overlap} mm / 2 = ${formatMm2(own?.scanArea_mm2 ?? 0)}`,
    ],
  };
}

export function explainIdle(_: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  return {
    title: `Idle of ${own?.id ?? ''}`,
    meaning: 'Time this laser waits for the slowest one. Recoating and the minimum layer time are not in it.',
    formula: 'exposure of the layer − own load',
    numbers:
      own?.on === false
        ? ['switched off: no figures']
        : [
            `${formatSeconds(figures.exposure_s)} − ${formatSeconds(own?.load_s ?? 0)} = ${formatSeconds(own?.idle_s ?? 0)}`,
          ],
  };
}

export function explainPieces(_: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  const parts = new Set(figures.pieces.filter((piece) => piece.laser === laser).map((piece) => piece.part));
  return {
    title: `Pieces of ${own?.id ?? ''}`,
    meaning: 'Connected regions of one part that this laser exposes, adjacent cells merged.',
    formula: 'count over the layer',
    numbers: [`${own?.pieces ?? 0} pieces of ${parts.size} parts`],
  };
}

export function explainPlumes(analysis: Analysis, plumes: number, id: string): Explanation {
  const { plumeHalfWidth_mm } = analysis.layout.limits;
  return {
    title: `Plumes over ${id}`,
    meaning:
      'Geometry only, not a flow simulation: mean number of other lasers’ plumes over this beam. No published plume width was found; the half-width is a setting.',
    formula:
      'Σ over upwind lasers of the chance that the beam stands in the strip behind their spot · min(1, E_i/E_j)',
    numbers: [
      `half-width ${plumeHalfWidth_mm} mm, flow towards ${analysis.layout.machine.gasFlow.towards_deg}°: ${formatNumber(plumes, 3)}`,
    ],
  };
}
