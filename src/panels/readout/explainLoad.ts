/**
 * Why a laser's load is what it is: the time model term by term, with the layout's own numbers, and the number of vectors
 * by its own formula. Seconds.
 */
import { t } from '../../language/index';
import type { Analysis, LayerFigures } from '../../build/types';
import type { Process } from '../../layout/types';
import { formatCount, formatField, formatMm, formatMm2, formatNumber } from '../../units/format';
import { cellSeconds } from './cellNumbers';
import type { Explanation } from './explanation';
import type { LoadTerms } from './loadTerms';
import { loadTerms } from './loadTerms';
import { sumTable } from './sumTable';

/** n = A/(s·h), or n = A/(s·h) + (P+S)/(π·h), with numbers. */
function vectorLine(process: Process, { hatchArea_mm2, border_mm, vectors }: LoadTerms): string {
  const { vector_mm, hatch_mm, vectorCount } = process;
  const along = `${formatMm2(hatchArea_mm2)} / (${formatField(vector_mm)} mm · ${formatField(hatch_mm)} mm)`;
  const count = t('{vectors} vectors', { vectors: formatCount(vectors) });
  if (vectorCount === 'area') return `n = A/(s·h) = ${along} = ${count}`;
  return `n = A/(s·h) + (P+S)/(π·h) = ${along} + ${formatMm(border_mm)} / (π · ${formatField(hatch_mm)} mm) = ${count}`;
}

/** "time factors: P03 ×1.2"; null where every part of this laser has the factor 1. */
function factorLine({ layout }: Analysis, figures: LayerFigures, laser: number): string | null {
  const own = new Set(figures.pieces.filter((piece) => piece.laser === laser).map((piece) => piece.part));
  const other = layout.parts.filter((part, i) => own.has(i) && part.timeFactor !== 1);
  if (other.length === 0) return null;
  return t('the seconds below hold the time factors: {list}', {
    list: other.map(({ id, timeFactor }) => `${id} ×${formatNumber(timeFactor)}`).join(', '),
  });
}

function termsOf(process: Process, terms: LoadTerms) {
  const { hatch_mm, speed_mm_s, vectorGap_ms, contours, contourSpeed_mm_s, pieceGap_s } = process;
  return [
    {
      label: `A/(h·v) = ${formatMm2(terms.hatchArea_mm2)} / (${formatField(hatch_mm)} mm · ${formatField(speed_mm_s)} mm/s)`,
      value: terms.hatch_s,
    },
    {
      label: `t_v·n = ${formatField(vectorGap_ms)} ms · ${formatCount(terms.vectors)}`,
      value: terms.vectorGaps_s,
    },
    {
      label: t('contours·P/v_c = {contours} · {outline} / {contourSpeed} mm/s', {
        contours,
        outline: formatMm(terms.outline_mm),
        contourSpeed: contourSpeed_mm_s,
      }),
      value: terms.contours_s,
    },
    {
      label: t('t_p, {pieces} pieces · {pieceGap} s', { pieces: terms.pieces, pieceGap: pieceGap_s }),
      value: terms.pieceGaps_s,
    },
  ];
}

export function explainLoad(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const { process } = analysis.layout;
  const terms = loadTerms(analysis, figures, laser);
  const own = figures.lasers[laser];
  const factors = factorLine(analysis, figures, laser);
  return {
    title: t('Load of {id}', { id: own.id }),
    meaning: t('Time this laser exposes in the layer. Thin walls cost more than a block of the same area.'),
    formula: t('E = A/(h·v) + t_v·n + contours·P/v_c + t_p, summed over its pieces'),
    numbers: !own.on
      ? [t('switched off: 0 s')]
      : [vectorLine(process, terms), ...(factors === null ? [] : [factors])],
    table: sumTable(termsOf(process, terms), {
      label: t('load, s'),
      value: own.load_s,
      format: cellSeconds,
      more: '{count} more terms',
    }),
  };
}
