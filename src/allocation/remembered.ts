/**
 * Demands and uncut assemblies are remembered per divided section and time model: a part that did not change costs a
 * look-up, which is what keeps a drag live.
 */
import { assemble, type AssembledPart } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import { demandOf, type Demand } from './demand';

interface Entry {
  readonly demands: Map<number, Demand>;
  readonly assembled: Map<string, AssembledPart>;
}

const entries = new WeakMap<DividedSection, WeakMap<TimeModel, Entry>>();
const KEPT = 32;

function entryOf(section: DividedSection, model: TimeModel): Entry {
  let byModel = entries.get(section);
  if (!byModel) entries.set(section, (byModel = new WeakMap()));
  let entry = byModel.get(model);
  if (!entry) byModel.set(model, (entry = { demands: new Map(), assembled: new Map() }));
  return entry;
}

/** As demandOf, remembered. */
export function rememberedDemand(section: DividedSection, model: TimeModel, timeFactor: number): Demand {
  const { demands } = entryOf(section, model);
  let demand = demands.get(timeFactor);
  if (!demand) demands.set(timeFactor, (demand = demandOf(section, model, timeFactor)));
  return demand;
}

/** The part with every fragment given whole to a laser, in the order of the fragments. */
export function assembleUncut(
  section: DividedSection,
  lasers: readonly number[],
  model: TimeModel,
  timeFactor: number,
): AssembledPart {
  const { assembled } = entryOf(section, model);
  const key = lasers.length === 1 ? `${timeFactor}/${lasers[0]}` : `${timeFactor}/${lasers.join()}`;
  let part = assembled.get(key);
  if (!part) {
    if (assembled.size >= KEPT) assembled.clear();
    const given = section.fragments.map((fragment, i) => ({ ...fragment, laser: lasers[i] }));
    assembled.set(key, (part = assemble(given, section.borders, section.section, model, timeFactor)));
  }
  return part;
}
