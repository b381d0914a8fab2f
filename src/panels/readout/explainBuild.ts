/**
 * Why the build's figures are what they are: sums over layers, grouped by stretches; never from one layer. Hours.
 */
import { t } from '../../language/index';
import type { Analysis, LayerTotals, Stretch } from '../../build/types';
import type { Hours, Seconds } from '../../units/types';
import { correctedTime, totalVolume, UNCORRECTED } from './buildValues';
import { formatCm3, formatField, formatHours, formatPercent, formatSeconds } from '../../units/format';
import type { Explanation } from './explanation';
import type { BuildFigureName } from './figureNames';
import type { Table } from './sumTable';
import { sumTable } from './sumTable';

type Explain = (analysis: Analysis) => Explanation;

const S_PER_H = 3600;
const PERCENT = 100;
const count = (stretch: Stretch): number => stretch.lastLayer - stretch.firstLayer + 1;

/** Layers · seconds per stretch, in hours, which come to the figure shown. */
function perStretch(
  { stretches }: Analysis,
  label: string,
  value: Hours,
  seconds: (figures: LayerTotals) => Seconds,
): Table {
  const terms = stretches.map((stretch) => {
    const each = seconds(stretch.figures);
    const heights = `z ${formatField(stretch.from_mm)}–${formatField(stretch.to_mm)} mm`;
    return {
      label: `${heights}: ${count(stretch)} · ${formatSeconds(each)}`,
      value: (count(stretch) * each) / S_PER_H,
    };
  });
  return sumTable(terms, { label, value, format: formatHours, more: '{count} more stretches' });
}

/** Hours per laser, which come to the figure shown. */
function perLaser(
  { stretches, layout }: Analysis,
  label: string,
  value: Hours,
  seconds: (figures: LayerTotals, laser: number) => Seconds,
): Table {
  const terms = layout.machine.lasers.map(({ id }, laser) => ({
    label: id,
    value: stretches.reduce((sum, s) => sum + (count(s) * seconds(s.figures, laser)) / S_PER_H, 0),
  }));
  return sumTable(terms, { label, value, format: formatHours, more: '{count} more lasers' });
}

const hours: Explain = (analysis) => ({
  title: t('Build time (estimate)'),
  meaning: t('Every layer’s time added up. Service stops, heating and cooling are not in it.'),
  formula: t('Σ over stretches of layers · layer time'),
  numbers: [
    t('recoating {recoat} of it', { recoat: formatHours(analysis.build.recoat_h) }),
    ...(analysis.build.choiceProven
      ? []
      : [t('lasers of whole parts: a good choice, not proven to be the best')]),
  ],
  table: perStretch(analysis, t('build time, h'), analysis.build.time_h, (figures) => figures.time_s),
});
const otherWay: Explain = ({ layout, build }) => {
  const { recoater } = layout.machine;
  const set = recoater.mode === 'oneWay' ? t('one way') : t('both ways');
  return {
    title: t('Build time one way and both ways (estimate)'),
    meaning: t(
      'The same exposure with either way of recoating; {set} is set. A layer still takes at least the minimum.',
      { set },
    ),
    formula: t('Σ over layers of max(minimum, recoat + exposure)'),
    numbers: [
      t('one way, {oneWay} a layer: {timeOneWay}', {
        oneWay: formatSeconds(recoater.oneWay_s),
        timeOneWay: formatHours(build.timeOneWay_h),
      }),
      t('both ways, {bothWays} a layer: {timeBothWays}', {
        bothWays: formatSeconds(recoater.bothWays_s),
        timeBothWays: formatHours(build.timeBothWays_h),
      }),
    ],
  };
};
const correctedHours: Explain = ({ layout, build }) => {
  const correction = layout.schedule?.correction ?? UNCORRECTED;
  const spread_h = (correctedTime(layout, build) * correction.spread_pct) / PERCENT;
  return {
    title: t('Corrected build time (estimate)'),
    meaning: t(
      'The build time times what finished builds took of their planned hours, with one standard deviation; set in the calendar.',
    ),
    formula: t('build time · factor ± spread'),
    numbers: [
      `${formatHours(build.time_h)} · ${formatField(correction.factor)} = ${formatHours(correctedTime(layout, build))}`,
      `± ${formatField(correction.spread_pct)} %: ± ${formatHours(spread_h)}`,
    ],
  };
};
const scanVolume: Explain = ({ layout, build }) => ({
  title: t('Scan volume'),
  meaning: t('What each laser exposes over the whole height: scan area times layer thickness.'),
  formula: t('Σ over layers of scan area · layer thickness'),
  numbers: [],
  table: sumTable(
    layout.machine.lasers.map(({ id }) => ({ label: id, value: build.scanVolume_cm3[id] ?? 0 })),
    {
      label: t('scan volume, cm³'),
      value: totalVolume(build),
      format: formatCm3,
      more: '{count} more lasers',
    },
  ),
});
const exposureHours: Explain = (analysis) => ({
  title: t('Exposure of the build (estimate)'),
  meaning: t('Time in which at least one laser exposes.'),
  formula: t('Σ over stretches of layers · slowest laser'),
  numbers: [],
  table: perStretch(analysis, t('exposure, h'), analysis.build.exposure_h, (figures) => figures.exposure_s),
});
const held: Explain = (analysis) => ({
  title: t('Held by the minimum layer time (estimate)'),
  meaning: t('Hours in which every laser is done and the layer waits. Balancing does not shorten them.'),
  formula: t('Σ over stretches of layers · max(0, minimum − recoat − exposure)'),
  numbers: [
    t('minimum layer time {minLayer}', { minLayer: formatSeconds(analysis.layout.process.minLayer_s) }),
  ],
  table: perStretch(analysis, t('held, h'), analysis.build.heldByMinLayer_h, (figures) => figures.wait_s),
});
const imbalance: Explain = (analysis) => {
  const lasers = analysis.layout.machine.lasers.filter((laser) => laser.on).length;
  const { exposure_h, load_laserH, imbalance_pct } = analysis.build;
  const mean = load_laserH / Math.max(1, lasers);
  return {
    title: t('Imbalance of the build'),
    meaning: t('From the sums over all layers: equal totals can hide layers that are far from even.'),
    formula: t('Σ exposure / Σ mean load − 1'),
    numbers: [
      t('mean load: {load} / {lasers} lasers that are on = {mean}', {
        load: formatHours(load_laserH),
        lasers,
        mean: formatHours(mean),
      }),
      mean === 0
        ? t('nothing to expose: 0')
        : `${formatHours(exposure_h)} / ${formatHours(mean)} − 1 = ${formatPercent(imbalance_pct)}`,
    ],
  };
};
const laserHours: Explain = (analysis) => ({
  title: t('Laser-hours (estimate)'),
  meaning: t('All loads of all lasers added up; filter and residue count in these, not in clock hours.'),
  formula: t('Σ over layers and lasers of the loads'),
  numbers: [],
  table: perLaser(
    analysis,
    t('laser-hours, h'),
    analysis.build.load_laserH,
    (figures, laser) => figures.lasers[laser]?.load_s ?? 0,
  ),
});
const idle: Explain = (analysis) => ({
  title: t('Idle laser-hours (estimate)'),
  meaning: t('Time lasers wait for the slowest one, summed over all of them.'),
  formula: t('Σ over layers and lasers of (exposure − load)'),
  numbers: [],
  table: perLaser(
    analysis,
    t('idle, h'),
    analysis.build.idle_laserH,
    (figures, laser) => figures.lasers[laser]?.idle_s ?? 0,
  ),
});

export const BUILD_EXPLANATIONS = {
  'build-hours': hours,
  'build-corrected': correctedHours,
  'hours-other-way': otherWay,
  'build-exposure': exposureHours,
  'held-hours': held,
  'build-imbalance': imbalance,
  'laser-hours': laserHours,
  'idle-hours': idle,
  'scan-volume': scanVolume,
} as const satisfies Record<BuildFigureName, Explain>;
