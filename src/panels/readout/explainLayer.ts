/**
 * Why the layer's figures are what they are: meaning, formula, and the layout's own numbers.
 */
import { t } from '../../language/index';
import type { Analysis, LayerFigures } from '../../build/types';
import {
  formatField,
  formatMm,
  formatMm2,
  formatNumber,
  formatPercent,
  formatSeconds,
} from '../../units/format';
import type { Explanation } from './explanation';
import type { LayerFigureName } from './figureNames';
import { explainChoices } from './explainChoices';
import type { SumWords, Table } from './sumTable';
import { sumTable } from './sumTable';

type Explain = (analysis: Analysis, figures: LayerFigures) => Explanation;

const onLasers = (figures: LayerFigures) => figures.lasers.filter((laser) => laser.on);

function imbalance(values: readonly number[], result: string, unit: (value: number) => string): string {
  if (values.length === 0) return t('every laser is off');
  const max = Math.max(...values);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return max === 0 ? t('nothing to expose: 0') : `${unit(max)} / ${unit(mean)} − 1 = ${result}`;
}

/** A figure of the layer, part by part. */
function byPart(
  { layout }: Analysis,
  items: readonly { readonly part: number; readonly value: number }[],
  words: Omit<SumWords, 'more'>,
): Table {
  const sums = new Map<number, number>();
  for (const { part, value } of items) sums.set(part, (sums.get(part) ?? 0) + value);
  const terms = [...sums].map(([part, value]) => ({ label: layout.parts[part].id, value }));
  return sumTable(terms, { ...words, more: '{count} more parts' });
}

const imbalanceTime: Explain = (_, figures) => ({
  title: t('Imbalance by time'),
  meaning: t('How much longer the slowest laser works than the mean of all lasers that are on.'),
  formula: t('max / mean − 1'),
  numbers: [
    imbalance(
      onLasers(figures).map((laser) => laser.load_s),
      formatPercent(figures.imbalanceTime_pct),
      formatSeconds,
    ),
  ],
});
const imbalanceArea: Explain = (_, figures) => ({
  title: t('Imbalance by area'),
  meaning: t(
    'The same over scan areas. Balance time, not area: walls and holes cost time that area does not show.',
  ),
  formula: t('max / mean − 1'),
  numbers: [
    imbalance(
      onLasers(figures).map((laser) => laser.scanArea_mm2),
      formatPercent(figures.imbalanceArea_pct),
      formatMm2,
    ),
  ],
});
const exposure: Explain = (_, figures) => ({
  title: t('Exposure of the layer'),
  meaning: t('The slowest laser’s load; the others wait for it.'),
  formula: t('max of the loads'),
  numbers: [
    onLasers(figures)
      .map((laser) => `${laser.id} ${formatSeconds(laser.load_s)}`)
      .join(', '),
  ],
});
const layerTime: Explain = ({ layout }, figures) => ({
  title: t('Layer time'),
  meaning: t('Recoating and exposure, or the minimum layer time where that is longer. An estimate.'),
  formula: t('max(minimum layer time, recoat + exposure)'),
  numbers: [
    `max(${formatSeconds(layout.process.minLayer_s)}, ${formatSeconds(figures.recoat_s)} + ${formatSeconds(figures.exposure_s)}) = ${formatSeconds(figures.time_s)}`,
  ],
});
const bestPossible: Explain = ({ layout }, figures) => {
  if (figures.bestSetBy.length === 0)
    return {
      title: t('Best possible exposure'),
      meaning: t('Every laser is off: nothing is exposed, and no time can be the best.'),
      formula: t('max over sets S of lasers of (load only S can reach) / |S|'),
      numbers: [],
    };
  const count = Math.max(1, figures.bestSetBy.length);
  const names = figures.bestSetBy.join(', ');
  const whole = layout.allocation === 'wholeParts' || layout.parts.some((part) => part.seams === 'none');
  return {
    title: t('Best possible exposure'),
    meaning: t(
      'Proven: no sharing within this division is faster. {lasers} [sets|set] it: change what only [it|they] can reach to get below.',
      { lasers: names, count },
    ),
    formula: t(
      whole
        ? 'max over sets S of lasers of (load only S can reach) / |S|; no less than the largest part that may not be cut'
        : 'max over sets S of lasers of (load only S can reach) / |S|',
    ),
    numbers: [
      `S = {${names}}: ${formatSeconds(figures.bestPossible_s * count)} / ${count} = ${formatSeconds(figures.bestPossible_s)}`,
      t(
        'it counts no seam of a cut that is still open, and gaps per piece only where they cannot be avoided',
      ),
    ],
  };
};
const costOfCutting: Explain = (_, figures) => ({
  title: t('Cost of cutting'),
  meaning: t('Seams and extra pieces that the bound does not count; real loads count them.'),
  formula: t('exposure − best possible'),
  numbers: [
    t('{exposure} − {bestPossible}; due to cuts: {costOfCutting}', {
      exposure: formatSeconds(figures.exposure_s),
      bestPossible: formatSeconds(figures.bestPossible_s),
      costOfCutting: formatSeconds(figures.costOfCutting_s),
    }),
  ],
});
const seamCount: Explain = (_, figures) => ({
  title: t('Seams'),
  meaning: t('Borders inside one part between two lasers, each connected segment once.'),
  formula: t('count of (part, laser pair, segment)'),
  numbers: [
    t('{seams} seams in {cutParts} parts', { seams: figures.seams.length, cutParts: figures.cutParts }),
  ],
});
const seamLength: Explain = (analysis, figures) => ({
  title: t('Seam length'),
  meaning: t('All seams of the layer end to end.'),
  formula: t('Σ lengths of the seams'),
  numbers: [
    t('{seams} seams in {cutParts} parts', { seams: figures.seams.length, cutParts: figures.cutParts }),
  ],
  table: byPart(
    analysis,
    figures.seams.map(({ part, length_mm }) => ({ part, value: length_mm })),
    { label: t('seam length, mm'), value: figures.seamLength_mm, format: formatMm },
  ),
});
const cutParts: Explain = (_, figures) => ({
  title: t('Cut parts'),
  meaning: t('Parts with a seam at this height.'),
  formula: t('count of parts exposed by more than one laser'),
  numbers: [
    t(
      figures.fewestCutsProven
        ? '{parts} parts; proven to be the fewest for this exposure'
        : '{parts} parts; not proven to be the fewest',
      { parts: figures.cutParts },
    ),
  ],
});
const witnessLines: Explain = (_, figures) => ({
  title: t('Witness lines'),
  meaning: t('Places where a seam meets the part’s outline and may show on its surface.'),
  formula: t('crossings of seam and outline; several at one point are one'),
  numbers: [
    t('{witnessLines} on {seams} seams', { witnessLines: figures.witnessLines, seams: figures.seams.length }),
  ],
});
const unassigned: Explain = (analysis, figures) => ({
  title: t('Unassigned'),
  meaning: t(
    'Section area that no laser may expose: outside the zones, out of reach, off the platform, or under a laser that is off. It blocks hand-over.',
  ),
  formula: t('section area in no cell'),
  numbers: [],
  table: byPart(
    analysis,
    figures.pieces.flatMap(({ part, laser, area_mm2 }) => (laser < 0 ? [{ part, value: area_mm2 }] : [])),
    { label: t('unassigned, mm²'), value: figures.unassigned_mm2, format: formatMm2 },
  ),
});
const doubleExposed: Explain = ({ layout }, figures) => ({
  title: t('Double exposure'),
  meaning: t('Both neighbours expose the seam overlap.'),
  formula: t('seam length · seam overlap'),
  numbers: [
    `${formatMm(figures.seamLength_mm)} · ${formatField(layout.process.seamOverlap_mm)} mm = ${formatMm2(figures.doubleExposed_mm2)}`,
  ],
});
const sectionArea: Explain = (analysis, figures) => ({
  title: t('Section area'),
  meaning: t('All parts cut at this height, holes left out.'),
  formula: t('Σ section areas of the parts'),
  numbers: [],
  table: byPart(
    analysis,
    figures.pieces.map(({ part, area_mm2 }) => ({ part, value: area_mm2 })),
    { label: t('section area, mm²'), value: figures.sectionArea_mm2, format: formatMm2 },
  ),
});
const bookKeeping: Explain = (_, figures) => ({
  title: t('Book-keeping'),
  meaning: t('What goes out to the lasers must be what the section holds, nothing twice and nothing lost.'),
  formula: t('Σ scan areas − double exposure + unassigned = section area'),
  numbers: [
    figures.lasers.map((laser) => `${laser.id} ${formatNumber(laser.scanArea_mm2, 7, 1)}`).join(' + ') +
      ' mm²',
  ],
});

export const LAYER_EXPLANATIONS = {
  'imbalance-time': imbalanceTime,
  'imbalance-area': imbalanceArea,
  exposure,
  'layer-time': layerTime,
  'best-possible': bestPossible,
  'cost-of-cutting': costOfCutting,
  'seam-count': seamCount,
  'seam-length': seamLength,
  'cut-parts': cutParts,
  'witness-lines': witnessLines,
  unassigned,
  'double-exposed': doubleExposed,
  'section-area': sectionArea,
  'whole-choices': explainChoices,
  'book-keeping': bookKeeping,
} as const satisfies Record<LayerFigureName, Explain>;
