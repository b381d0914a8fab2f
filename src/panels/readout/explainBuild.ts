/**
 * Why the build's figures are what they are: sums over layers, grouped by stretches; never from one layer.
 */
import type { Analysis, Stretch } from '../../build/types';
import { formatHours, formatPercent, formatSeconds } from '../../units/format';
import type { Explanation } from './explainLaser';
import type { BuildFigureName } from './figureNames';

type Explain = (analysis: Analysis) => Explanation;

/** Stretches written out; the rest is named by its count. */
const SHOWN = 4;
const count = (stretch: Stretch): number => stretch.lastLayer - stretch.firstLayer + 1;

function perStretch(analysis: Analysis, seconds: (stretch: Stretch) => number): string {
  const terms = analysis.stretches
    .slice(0, SHOWN)
    .map((stretch) => `${count(stretch)} · ${formatSeconds(seconds(stretch))}`);
  const more = analysis.stretches.length - SHOWN;
  return more > 0 ? `${terms.join(' + ')} + ${more} more stretches` : terms.join(' + ');
}

const hours: Explain = (analysis) => ({
  title: 'Build time (estimate)',
  meaning: 'Every layer’s time added up. Service stops, heating and cooling are not in it.',
  formula: 'Σ over stretches of layers · layer time',
  numbers: [
    perStretch(analysis, (stretch) => stretch.figures.time_s),
    `= ${formatHours(analysis.build.time_h)}, of which recoating ${formatHours(analysis.build.recoat_h)}`,
    ...(analysis.build.choiceProven
      ? []
      : ['lasers of whole parts: a good choice, not proven to be the best']),
  ],
});
const exposureHours: Explain = (analysis) => ({
  title: 'Exposure of the build (estimate)',
  meaning: 'Time in which at least one laser exposes.',
  formula: 'Σ layers · slowest laser',
  numbers: [
    perStretch(analysis, (stretch) => stretch.figures.exposure_s),
    `= ${formatHours(analysis.build.exposure_h)}`,
  ],
});
const held: Explain = (analysis) => ({
  title: 'Held by the minimum layer time (estimate)',
  meaning: 'Hours in which every laser is done and the layer waits. Balancing does not shorten them.',
  formula: 'Σ layers · max(0, minimum − recoat − exposure)',
  numbers: [
    perStretch(analysis, (stretch) => stretch.figures.wait_s),
    `= ${formatHours(analysis.build.heldByMinLayer_h)}`,
  ],
});
const imbalance: Explain = (analysis) => {
  const lasers = Math.max(1, analysis.stretches[0]?.figures.lasers.filter((laser) => laser.on).length ?? 1);
  const mean = analysis.build.load_laserH / lasers;
  return {
    title: 'Imbalance of the build',
    meaning: 'From the sums over all layers: equal totals can hide layers that are far from even.',
    formula: 'Σ exposure / Σ mean load − 1',
    numbers: [
      `${formatHours(analysis.build.exposure_h)} / ${formatHours(mean)} − 1 = ${formatPercent(analysis.build.imbalance_pct)}`,
    ],
  };
};
const laserHours: Explain = (analysis) => ({
  title: 'Laser-hours (estimate)',
  meaning: 'All loads of all lasers added up; filter and residue count in these, not in clock hours.',
  formula: 'Σ over layers and lasers of the loads',
  numbers: [`${formatHours(analysis.build.load_laserH)}; idle ${formatHours(analysis.build.idle_laserH)}`],
});
const idle: Explain = (analysis) => ({
  title: 'Idle laser-hours (estimate)',
  meaning: 'Time lasers wait for the slowest one, summed over all of them.',
  formula: 'Σ over layers and lasers of (exposure − load)',
  numbers: [formatHours(analysis.build.idle_laserH)],
});

export const BUILD_EXPLANATIONS = {
  'build-hours': hours,
  'build-exposure': exposureHours,
  'held-hours': held,
  'build-imbalance': imbalance,
  'laser-hours': laserHours,
  'idle-hours': idle,
} as const satisfies Record<BuildFigureName, Explain>;
