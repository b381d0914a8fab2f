/**
 * From a figure's name to its explanation. Names are those of the data-testid on the screen: "load-L1",
 * "imbalance-time", "build-hours" …
 */
import { t } from '../../language/index';
import type { Analysis, LayerFigures } from '../../build/types';
import { BUILD_EXPLANATIONS } from './explainBuild';
import { explainArea, explainIdle, explainOptics, explainPieces, explainPlumes } from './explainLaser';
import { explainLoad } from './explainLoad';
import type { Explanation } from './explanation';
import { LAYER_EXPLANATIONS } from './explainLayer';
import type { FigureName } from './figureNames';
import { leftOutOfLayer } from './leftOut';
import { leftOutHeights, leftOutOfBuild, leftOutVolume } from './leftOutBuild';

const OF_LASERS = {
  laser: explainOptics,
  load: explainLoad,
  area: explainArea,
  idle: explainIdle,
  pieces: explainPieces,
  plumes: explainPlumes,
};

function explainOfLaser(name: string, analysis: Analysis, figures: LayerFigures): Explanation | null {
  const dash = name.indexOf('-');
  const kind = name.slice(0, dash);
  const laser = figures.lasers.findIndex(({ id }) => id === name.slice(dash + 1));
  if (laser < 0) return null;
  return kind in OF_LASERS ? OF_LASERS[kind as keyof typeof OF_LASERS](analysis, figures, laser) : null;
}

/** Figures of the layer that what no laser exposes is missing from. */
const LEAVE_OUT: readonly FigureName[] = [
  'imbalance-time',
  'imbalance-area',
  'exposure',
  'layer-time',
  'best-possible',
];

function leavingOut(said: Explanation, line: string | undefined): Explanation {
  if (line === undefined) return said;
  return { ...said, numbers: [...said.numbers, t('{line} that no laser exposes', { line })] };
}

function explainBuild(name: keyof typeof BUILD_EXPLANATIONS, analysis: Analysis): Explanation {
  const left = leftOutOfBuild(analysis);
  const line = left === null ? undefined : `${leftOutVolume(left)}, ${leftOutHeights(left)},`;
  return leavingOut(BUILD_EXPLANATIONS[name](analysis), line);
}

/** Null where there is nothing to explain (an empty plate, a laser that is gone). */
export function explain(
  name: FigureName,
  analysis: Analysis,
  figures: LayerFigures | undefined,
): Explanation | null {
  if (name in BUILD_EXPLANATIONS) return explainBuild(name as keyof typeof BUILD_EXPLANATIONS, analysis);
  if (figures === undefined) return null;
  if (!(name in LAYER_EXPLANATIONS)) return explainOfLaser(name, analysis, figures);
  const said = LAYER_EXPLANATIONS[name as keyof typeof LAYER_EXPLANATIONS](analysis, figures);
  return LEAVE_OUT.includes(name) ? leavingOut(said, leftOutOfLayer(figures)) : said;
}
