/**
 * Demands and uncut assemblies are remembered per divided section and time model: a part that did not change costs a
 * look-up, which is what keeps a drag live.
 */
import { AssembledPart } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import { demandOf, type Demand } from './demand';

class Entry {
  readonly assembled: { readonly lasers: readonly number[]; readonly part: AssembledPart }[] = [];
  constructor(
    readonly model: TimeModel,
    readonly timeFactor: number,
    readonly demand: Demand,
  ) {}
}

const KEPT = 16;

function entryOf(section: DividedSection, model: TimeModel, timeFactor: number): Entry {
  const known = section.kept instanceof Entry ? section.kept : null;
  if (known && known.model === model && known.timeFactor === timeFactor) return known;
  const entry = new Entry(model, timeFactor, demandOf(section, model, timeFactor));
  section.kept = entry;
  return entry;
}

/** As demandOf, remembered. */
export const rememberedDemand = (section: DividedSection, model: TimeModel, timeFactor: number): Demand =>
  entryOf(section, model, timeFactor).demand;

function sameLasers(a: readonly number[], b: readonly number[]): boolean {
  if (a === b) return true;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** The part with every fragment given whole to a laser, in the order of the fragments. `lasers` may be reused after. */
export function assembleUncut(
  section: DividedSection,
  lasers: readonly number[],
  model: TimeModel,
  timeFactor: number,
): AssembledPart {
  const { assembled } = entryOf(section, model, timeFactor);
  for (const known of assembled) if (sameLasers(known.lasers, lasers)) return known.part;
  const { fragments, borders } = section;
  const given = fragments.map(({ area_mm2, hatch_mm2, outline_mm }, i) => ({
    laser: lasers[i],
    area_mm2,
    hatch_mm2,
    outline_mm,
  }));
  const geometry = () => ({
    regions: fragments.map((f) => [f.region.rings]),
    borders,
    section: section.section,
  });
  const part = new AssembledPart(given, borders, geometry, model, timeFactor);
  if (assembled.length >= KEPT) assembled.length = 0;
  assembled.push({ lasers: lasers.slice(0, fragments.length), part });
  return part;
}
