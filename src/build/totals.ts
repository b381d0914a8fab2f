/** What is kept of a layer where only its sums matter: no pieces, no seams. */
import type { LayerFigures, LayerTotals } from './types';

/** Numbers only. */
export function totalsOf(figures: LayerFigures): LayerTotals {
  const { layer, height_mm, lasers, cutParts, seamLength_mm, sectionArea_mm2, unassigned_mm2 } = figures;
  const { doubleExposed_mm2, exposure_s, recoat_s, wait_s, time_s, imbalanceTime_pct } = figures;
  const { imbalanceArea_pct, bestPossible_s, bestSetBy, costOfCutting_s, fewestCutsProven } = figures;
  return {
    layer,
    height_mm,
    lasers,
    cutParts,
    seamLength_mm,
    sectionArea_mm2,
    unassigned_mm2,
    doubleExposed_mm2,
    exposure_s,
    recoat_s,
    wait_s,
    time_s,
    imbalanceTime_pct,
    imbalanceArea_pct,
    bestPossible_s,
    bestSetBy,
    costOfCutting_s,
    fewestCutsProven,
  };
}
