/**
 * Areas, loads and the exact allocation of one layer without what hangs on it (cuts made real, seams, build sums): every
 * part's areas by set of lasers, its loads, the best possible time and who gets what share. mm², seconds.
 */
import { bestPossible, compactOf, plannedLoads, planLayer, askedOf } from '../../src/allocation/plan';
import { assembleUncut, rememberedDemand } from '../../src/allocation/remembered';
import { modelOf } from '../../src/build/layerFigures';
import { divideSection } from '../../src/exposure/fragments';
import { placedPart } from '../../src/exposure/prepared';
import type { Layout } from '../../src/layout/types';
import { divide } from '../../src/zoning/divide';

export interface PlannedLayer {
  readonly areas_mm2: ReadonlyMap<number, number>;
  readonly loads_s: readonly number[];
  readonly exposure_s: number;
  readonly best_s: number;
}

/** The first layer of a plate of free parts that stand in one slab. */
export const plannedLayer = (layout: Layout): PlannedLayer => {
  const division = divide(layout.machine, layout.zoning[0]!.zoning);
  const model = modelOf(layout.process);
  const compact = compactOf(division);
  const fixed_s = layout.machine.lasers.map(() => 0);
  const areas_mm2 = new Map<number, number>();
  const free = [];
  for (const part of layout.parts) {
    const section = divideSection(placedPart(layout, part).sections[0]!, division.cells);
    for (const { set, area_mm2 } of section.fragments)
      areas_mm2.set(set, (areas_mm2.get(set) ?? 0) + area_mm2);
    const demand = rememberedDemand(section, model, part.timeFactor);
    if (demand.decided) {
      const { pieces } = assembleUncut(section, demand.decided, model, part.timeFactor);
      for (const { laser, load_s } of pieces) fixed_s[laser]! += load_s;
      continue;
    }
    for (const [laser, load_s] of demand.fixed) fixed_s[laser]! += load_s;
    free.push({ id: part.id, demand });
  }
  const plan = planLayer(compact, fixed_s, free);
  const shared = free.flatMap(({ id, demand }) => askedOf(compact, id, demand).fragments);
  return {
    areas_mm2,
    loads_s: plannedLoads(fixed_s, free, plan),
    exposure_s: plan.exposure_s,
    best_s: bestPossible(compact, fixed_s, shared, []).best_s,
  };
};
