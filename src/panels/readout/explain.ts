/**
 * From a figure's name to its explanation. Names are those of the data-testid on the screen: "load-L1",
 * "imbalance-time", "build-hours" …
 */
import { downwindPlumes } from '../../build/downwind';
import type { Analysis, LayerFigures } from '../../build/types';
import { BUILD_EXPLANATIONS } from './explainBuild';
import type { Explanation } from './explainLaser';
import { explainArea, explainIdle, explainLoad, explainPieces, explainPlumes } from './explainLaser';
import { LAYER_EXPLANATIONS } from './explainLayer';
import type { FigureName } from './figureNames';

const OF_LASERS = { load: explainLoad, area: explainArea, idle: explainIdle, pieces: explainPieces };

function explainOfLaser(name: string, analysis: Analysis, figures: LayerFigures): Explanation | null {
  const dash = name.indexOf('-');
  const kind = name.slice(0, dash);
  const laser = figures.lasers.findIndex(({ id }) => id === name.slice(dash + 1));
  if (laser < 0) return null;
  if (kind === 'plumes')
    return explainPlumes(analysis, downwindPlumes(analysis, figures)[laser] ?? 0, name.slice(dash + 1));
  return kind in OF_LASERS ? OF_LASERS[kind as keyof typeof OF_LASERS](analysis, figures, laser) : null;
}

/** Null where there is nothing to explain (an empty plate, a laser that is gone). */
export function explain(
  name: FigureName,
  analysis: Analysis,
  figures: LayerFigures | undefined,
): Explanation | null {
  if (name in BUILD_EXPLANATIONS)
    return BUILD_EXPLANATIONS[name as keyof typeof BUILD_EXPLANATIONS](analysis);
  if (figures === undefined) return null;
  if (name in LAYER_EXPLANATIONS)
    return LAYER_EXPLANATIONS[name as keyof typeof LAYER_EXPLANATIONS](analysis, figures);
  return explainOfLaser(name, analysis, figures);
}
