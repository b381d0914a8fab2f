/**
 * Why the layer's figures are what they are: meaning, formula, and the layout's own numbers.
 */
import type { Analysis, LayerFigures } from '../../build/types';
import { formatMm, formatMm2, formatNumber, formatPercent, formatSeconds } from '../../units/format';
import type { Explanation } from './explanation';
import type { LayerFigureName } from './figureNames';
import { explainChoices } from './explainChoices';
import type { SumWords, Table } from './sumTable';
import { sumTable } from './sumTable';

type Explain = (analysis: Analysis, figures: LayerFigures) => Explanation;

const onLasers = (figures: LayerFigures) => figures.lasers.filter((laser) => laser.on);

function imbalance(values: readonly number[], result: string, unit: (value: number) => string): string {
  if (values.length === 0) return 'every laser is off';
  const max = Math.max(...values);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return max === 0 ? 'nothing to expose: 0' : `${unit(max)} / ${unit(mean)} − 1 = ${result}`;
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
  return sumTable(terms, { ...words, more: 'parts' });
}

const imbalanceTime: Explain = (_, figures) => ({
  title: 'Imbalance by time',
  meaning: 'How much longer the slowest laser works than the mean of all lasers that are on.',
  formula: 'max / mean − 1',
  numbers: [
    imbalance(
      onLasers(figures).map((laser) => laser.load_s),
      formatPercent(figures.imbalanceTime_pct),
      formatSeconds,
    ),
  ],
});
const imbalanceArea: Explain = (_, figures) => ({
  title: 'Imbalance by area',
  meaning:
    'The same over scan areas. Balance time, not area: walls and holes cost time that area does not show.',
  formula: 'max / mean − 1',
  numbers: [
    imbalance(
      onLasers(figures).map((laser) => laser.scanArea_mm2),
      formatPercent(figures.imbalanceArea_pct),
      formatMm2,
    ),
  ],
});
const exposure: Explain = (_, figures) => ({
  title: 'Exposure of the layer',
  meaning: 'The slowest laser’s load; the others wait for it.',
  formula: 'max of the loads',
  numbers: [
    onLasers(figures)
      .map((laser) => `${laser.id} ${formatSeconds(laser.load_s)}`)
      .join(', '),
  ],
});
const layerTime: Explain = ({ layout }, figures) => ({
  title: 'Layer time',
  meaning: 'Recoating and exposure, or the minimum layer time where that is longer. An estimate.',
  formula: 'max(minimum layer time, recoat + exposure)',
  numbers: [
    `max(${formatSeconds(layout.process.minLayer_s)}, ${formatSeconds(figures.recoat_s)} + ${formatSeconds(figures.exposure_s)}) = ${formatSeconds(figures.time_s)}`,
  ],
});
const bestPossible: Explain = ({ layout }, figures) => {
  if (figures.bestSetBy.length === 0)
    return {
      title: 'Best possible exposure',
      meaning: 'Every laser is off: nothing is exposed, and no time can be the best.',
      formula: 'max over sets S of lasers of (load only S can reach) / |S|',
      numbers: [],
    };
  const count = Math.max(1, figures.bestSetBy.length);
  const names = figures.bestSetBy.join(', ');
  const whole = layout.allocation === 'wholeParts' || layout.parts.some((part) => part.seams === 'none');
  return {
    title: 'Best possible exposure',
    meaning: `Proven: no sharing within this division is faster. ${names} ${count === 1 ? 'sets' : 'set'} it: change what only ${count === 1 ? 'it' : 'they'} can reach to get below.`,
    formula: `max over sets S of lasers of (load only S can reach) / |S|${whole ? '; no less than the largest part that may not be cut' : ''}`,
    numbers: [
      `S = {${names}}: ${formatSeconds(figures.bestPossible_s * count)} / ${count} = ${formatSeconds(figures.bestPossible_s)}`,
      'it counts no seam of a cut that is still open, and gaps per piece only where they cannot be avoided',
    ],
  };
};
const costOfCutting: Explain = (_, figures) => ({
  title: 'Cost of cutting',
  meaning: 'Seams and extra pieces that the bound does not count; real loads count them.',
  formula: 'exposure − best possible',
  numbers: [
    `${formatSeconds(figures.exposure_s)} − ${formatSeconds(figures.bestPossible_s)}; due to cuts: ${formatSeconds(figures.costOfCutting_s)}`,
  ],
});
const seamCount: Explain = (_, figures) => ({
  title: 'Seams',
  meaning: 'Borders inside one part between two lasers, each connected segment once.',
  formula: 'count of (part, laser pair, segment)',
  numbers: [`${figures.seams.length} seams in ${figures.cutParts} parts`],
});
const seamLength: Explain = (analysis, figures) => ({
  title: 'Seam length',
  meaning: 'All seams of the layer end to end.',
  formula: 'Σ lengths of the seams',
  numbers: [`${figures.seams.length} seams in ${figures.cutParts} parts`],
  table: byPart(
    analysis,
    figures.seams.map(({ part, length_mm }) => ({ part, value: length_mm })),
    { label: 'seam length, mm', value: figures.seamLength_mm, format: formatMm },
  ),
});
const cutParts: Explain = (_, figures) => ({
  title: 'Cut parts',
  meaning: 'Parts with a seam at this height.',
  formula: 'count of parts exposed by more than one laser',
  numbers: [
    `${figures.cutParts} parts; ${figures.fewestCutsProven ? 'proven to be the fewest for this exposure' : 'not proven to be the fewest'}`,
  ],
});
const witnessLines: Explain = (_, figures) => ({
  title: 'Witness lines',
  meaning: 'Places where a seam meets the part’s outline and may show on its surface.',
  formula: 'crossings of seam and outline; several at one point are one',
  numbers: [`${figures.witnessLines} on ${figures.seams.length} seams`],
});
const unassigned: Explain = (analysis, figures) => ({
  title: 'Unassigned',
  meaning:
    'Section area that no laser may expose: outside the zones, out of reach, off the platform, or under a laser that is off. It blocks hand-over.',
  formula: 'section area in no cell',
  numbers: [],
  table: byPart(
    analysis,
    figures.pieces.flatMap(({ part, laser, area_mm2 }) => (laser < 0 ? [{ part, value: area_mm2 }] : [])),
    { label: 'unassigned, mm²', value: figures.unassigned_mm2, format: formatMm2 },
  ),
});
const doubleExposed: Explain = ({ layout }, figures) => ({
  title: 'Double exposure',
  meaning: 'Both neighbours expose the seam overlap.',
  formula: 'seam length · seam overlap',
  numbers: [
    `${formatMm(figures.seamLength_mm)} · ${layout.process.seamOverlap_mm} mm = ${formatMm2(figures.doubleExposed_mm2)}`,
  ],
});
const sectionArea: Explain = (analysis, figures) => ({
  title: 'Section area',
  meaning: 'All parts cut at this height, holes left out.',
  formula: 'Σ section areas of the parts',
  numbers: [],
  table: byPart(
    analysis,
    figures.pieces.map(({ part, area_mm2 }) => ({ part, value: area_mm2 })),
    { label: 'section area, mm²', value: figures.sectionArea_mm2, format: formatMm2 },
  ),
});
const bookKeeping: Explain = (_, figures) => ({
  title: 'Book-keeping',
  meaning: 'What goes out to the lasers must be what the section holds, nothing twice and nothing lost.',
  formula: 'Σ scan areas − double exposure + unassigned = section area',
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
