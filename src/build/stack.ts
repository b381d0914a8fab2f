/**
 * All layers of a build, grouped where nothing changes: layout → every stretch with its figures, and the build.
 * It goes stretch by stretch, so that who runs it may pause, tell how far it is, or drop it for a newer request. What
 * did not change since the last run is taken over by object identity. Millimetres, seconds.
 */
import { allocate, type LayerPart } from '../allocation/allocate';
import type { DividedSection } from '../exposure/types';
import { buildFigures } from './buildFigures';
import type { Examined } from './findProblems';
import { layerRanges, type LayerRange } from './layers';
import { layerFigures, modelOf } from './layerFigures';
import { sectionsIn, type Plate } from './plate';
import { sameQuestion, type Asked, type Known } from './recall';
import { rulesOf, type Rules } from './rules';
import type { BuildFigures, LayerFigures, LayerTotals, Stretch } from './types';

function ask(
  plate: Plate,
  range: LayerRange,
  sections: readonly (DividedSection | null)[],
  rules: Rules,
): Asked {
  const { layout } = plate;
  const indices = layout.parts.flatMap((_, p) => (sections[p] ? [p] : []));
  const parts = indices.map((p): LayerPart => {
    const { id, timeFactor } = layout.parts[p];
    return { id, timeFactor, section: sections[p]!, rule: rules.rules[p] };
  });
  return { context: plate.contexts[range.step], layout, layer: range.firstLayer, parts, indices };
}

interface Answer {
  readonly figures: LayerFigures;
  readonly drafted: ReadonlySet<number>;
}

function answer({ layout, context, layer, parts, indices }: Asked): Answer {
  const allocation = allocate(context, parts);
  const figures = layerFigures({
    machine: layout.machine,
    process: layout.process,
    on: context.division.on,
    layer,
    parts: parts.map((part, i) => ({ index: indices[i], section: part.section })),
    allocation,
  });
  return { figures, drafted: allocation.drafted };
}

/** The figures of one range of layers, without the rest of the height. */
export const figuresIn = (plate: Plate, range: LayerRange, rules: Rules): LayerFigures =>
  answer(ask(plate, range, sectionsIn(plate, range), rules)).figures;

/** The rules that one range of layers alone would give; what keeps its laser over the height may get another one. */
export function rulesIn(plate: Plate, range: LayerRange): Rules {
  const sections = sectionsIn(plate, range).map((section) => [section]);
  return rulesOf(plate.layout, plate.divisions[0], sections, [1], modelOf(plate.layout.process));
}

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

/** The whole height, and what its problems are looked for in. */
export interface Stack<F extends LayerTotals> extends Examined {
  readonly stretches: readonly Stretch<F>[];
  readonly build: BuildFigures;
}

const stretchOf = <F extends LayerTotals>(group: Group, t: number, figures: F): Stretch<F> => ({
  firstLayer: group.firstLayer,
  lastLayer: group.lastLayer,
  from_mm: (group.firstLayer - 1) * t,
  to_mm: group.lastLayer * t,
  figures,
});

/** Layers that one range stands for. */
interface Group {
  readonly firstLayer: number;
  readonly lastLayer: number;
  readonly range: LayerRange;
}

/** Groups of at most `every` ranges in one step of the zoning, the middle range of each standing for it. */
function groupsOf(ranges: readonly LayerRange[], every: number): Group[] {
  const groups: Group[] = [];
  for (let i = 0; i < ranges.length;) {
    let end = i + 1;
    while (end < ranges.length && end < i + every && ranges[end].step === ranges[i].step) end++;
    const { firstLayer } = ranges[i];
    groups.push({ firstLayer, lastLayer: ranges[end - 1].lastLayer, range: ranges[(i + end - 1) >> 1] });
    i = end;
  }
  return groups;
}

/** Share of the work that dividing the sections takes, for telling how far it is. */
const DIVIDING = 0.5;

/** Computes stacks one after the other and remembers the last one's stretches. */
export class Stacks<F extends LayerTotals> {
  private known = new Map<number, Known<F>>();
  /**
   * @param finish what is kept of a layer's figures
   * @param holds when an earlier answer is the one to a question: `sameAnswer` where only numbers are kept
   */
  constructor(
    private readonly finish: (figures: LayerFigures) => F,
    private readonly holds: (old: Known<F>, now: Asked) => boolean = sameQuestion,
  ) {}

  private figuresOf(asked: Asked): F {
    const old = this.known.get(asked.layer);
    if (old && this.holds(old, asked)) {
      this.known.set(asked.layer, { ...old, ...asked });
      return old.figures;
    }
    const { figures, drafted } = answer(asked);
    const known = { ...asked, drafted, figures: this.finish(figures) };
    this.known.set(asked.layer, known);
    return known.figures;
  }

  /**
   * Yields how far it is, 0 to 1, after every range of layers. Dropped at any of them, it leaves only what holds.
   * @param every 1: every range of layers is computed. n: the middle one of n ranges in a row stands for all of them,
   *   a first look at a high build; what it computes is there for the whole run after it.
   */
  *run(plate: Plate, every = 1): Generator<number, Stack<F>> {
    const { layout } = plate;
    const t = layout.process.layer_mm;
    const groups = groupsOf(layerRanges(plate.placed, layout.zoning, t), every);
    const sections: (DividedSection | null)[][] = [];
    for (const { range } of groups) {
      sections.push(sectionsIn(plate, range));
      yield (DIVIDING * sections.length) / groups.length;
    }
    const byPart = layout.parts.map((_, p) => sections.map((inRange) => inRange[p]));
    const layers = groups.map((group) => group.lastLayer - group.firstLayer + 1);
    const rules = rulesOf(layout, plate.divisions[0], byPart, layers, modelOf(layout.process));
    const stretches: Stretch<F>[] = [];
    for (const [g, group] of groups.entries()) {
      stretches.push(stretchOf(group, t, this.figuresOf(ask(plate, group.range, sections[g], rules))));
      yield DIVIDING + ((1 - DIVIDING) * stretches.length) / groups.length;
    }
    if (every === 1) this.forget(groups);
    const build = buildFigures(layout, stretches, plate.height_mm, rules.proven);
    return { plate, sections: byPart, rules, stretches, build };
  }

  private forget(groups: readonly Group[]): void {
    const now = new Set(groups.map((group) => group.firstLayer));
    for (const layer of this.known.keys()) if (!now.has(layer)) this.known.delete(layer);
  }
}
