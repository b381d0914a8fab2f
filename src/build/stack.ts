/**
 * All layers of a build, grouped where nothing changes: layout → every stretch with its figures, and the build.
 * It goes stretch by stretch, so that who runs it may pause, tell how far it is, or drop it for a newer request. What
 * did not change since the last run is taken over by object identity. Millimetres, seconds.
 */
import { allocate, type LayerPart } from '../allocation/allocate';
import type { DividedSection } from '../exposure/types';
import { buildFigures } from './buildFigures';
import type { Examined } from './findProblems';
import type { LayerRange } from './layers';
import { layerFigures, modelOf } from './layerFigures';
import { sectionsIn, type Plate } from './plate';
import { sameQuestion, type Asked, type Known } from './recall';
import { rulesOf, type PartSections, type Rules } from './rules';
import type { BuildFigures, LayerFigures, LayerTotals, Stretch } from './types';

function ask(
  plate: Plate,
  range: LayerRange,
  sections: readonly (DividedSection | null)[],
  { rules }: Rules,
): Asked {
  return {
    context: plate.contexts[range.step],
    layout: plate.layout,
    layer: range.firstLayer,
    sections,
    rules,
  };
}

interface Answer {
  readonly figures: LayerFigures;
  readonly drafted: ReadonlySet<number>;
}

function answer({ layout, context, layer, sections, rules }: Asked): Answer {
  const parts = layout.parts.flatMap(({ id, timeFactor }, index): (LayerPart & { index: number })[] => {
    const section = sections[index];
    return section ? [{ index, id, timeFactor, section, rule: rules[index] }] : [];
  });
  const allocation = allocate(context, parts);
  const figures = layerFigures({
    machine: layout.machine,
    process: layout.process,
    on: context.division.on,
    layer,
    parts,
    allocation,
  });
  return { figures, drafted: new Set([...allocation.drafted].map((i) => parts[i].index)) };
}

/** The figures of one range of layers, without the rest of the height. */
export const figuresIn = (plate: Plate, range: LayerRange, rules: Rules): LayerFigures =>
  answer(ask(plate, range, sectionsIn(plate, range), rules)).figures;

/** The rules that one range of layers alone would give; what keeps its laser over the height may get another one. */
export function rulesIn(plate: Plate, range: LayerRange): Rules {
  const sections = sectionsIn(plate, range).map((section) => [section]);
  return rulesOf(plate.layout, plate.divisions[0], sections, [1], modelOf(plate.layout.process));
}

/** The whole height. */
export interface Whole<F extends LayerTotals> {
  readonly rules: Rules;
  readonly stretches: readonly Stretch<F>[];
  readonly build: BuildFigures;
}
/** The whole height, and what its problems are looked for in. */
export type Stack<F extends LayerTotals> = Whole<F> & Examined;

const stretchOf = <F extends LayerTotals>(group: Group, t: number, figures: F): Stretch<F> => ({
  firstLayer: group.firstLayer,
  lastLayer: group.lastLayer,
  from_mm: (group.firstLayer - 1) * t,
  to_mm: group.lastLayer * t,
  figures,
});

/** Layers that one range stands for. */
export interface Group {
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

/** Ranges of layers with the divided sections of all parts in each. */
export interface Divided {
  readonly plate: Plate;
  readonly groups: readonly Group[];
  readonly sections: readonly (readonly (DividedSection | null)[])[];
}

/** Every so-many-th of the ranges, for several threads that share a build out: thread `index` of `of`. */
export interface Portion {
  readonly index: number;
  readonly of: number;
}
const ALL: Portion = { index: 0, of: 1 };

/** All ranges of a plate's layers in groups. @param every as in Stacks.run */
export const groupsIn = (plate: Plate, every: number): Group[] => groupsOf(plate.ranges, every);

/** Divides the sections of a portion of a plate's ranges. Yields how far it is. @param every as in Stacks.run */
export function* divide(
  plate: Plate,
  every: number,
  { index, of }: Portion = ALL,
): Generator<number, Divided, undefined> {
  const groups = groupsIn(plate, every).filter((_, g) => g % of === index);
  const sections: (DividedSection | null)[][] = [];
  for (const { range } of groups) {
    sections.push(sectionsIn(plate, range));
    yield sections.length / groups.length;
  }
  return { plate, groups, sections };
}

/** By part, the divided section of every group. */
export const byPart = ({ plate, sections }: Divided): PartSections[] =>
  plate.layout.parts.map((_, p) => sections.map((inRange) => inRange[p]));

/** The rule of every part over all that was divided. */
export function rulesOver(divided: Divided): Rules {
  const { layout, divisions } = divided.plate;
  const layers = divided.groups.map((group) => group.lastLayer - group.firstLayer + 1);
  return rulesOf(layout, divisions[0], byPart(divided), layers, modelOf(layout.process));
}

/** The whole height, put together from what its portions came to. */
export function wholeOf<F extends LayerTotals>(
  { layout, height_mm }: Plate,
  rules: Rules,
  stretches: readonly Stretch<F>[],
): Whole<F> {
  return { rules, stretches, build: buildFigures(layout, stretches, height_mm, rules.proven) };
}

/** Share of the work that dividing the sections takes, for telling how far it is. */
export const DIVIDING = 0.5;

/** Work that tells how far it is, as the stretch from one share to another of a longer work. */
export function* scaled<T>(
  work: Generator<number, T, undefined>,
  from: number,
  to: number,
): Generator<number, T, undefined> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}

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

  /** The stretches of what was divided. Yields how far it is. */
  *stretches({ plate, groups, sections }: Divided, rules: Rules): Generator<number, Stretch<F>[], undefined> {
    const t = plate.layout.process.layer_mm;
    const stretches: Stretch<F>[] = [];
    for (const [g, group] of groups.entries()) {
      stretches.push(stretchOf(group, t, this.figuresOf(ask(plate, group.range, sections[g], rules))));
      yield stretches.length / groups.length;
    }
    return stretches;
  }

  /**
   * Yields how far it is, 0 to 1, after every range of layers. Dropped at any of them, it leaves only what holds.
   * @param every 1: every range of layers is computed. n: the middle one of n ranges in a row stands for all of them,
   *   a first look at a high build; what it computes is there for the whole run after it.
   */
  *run(plate: Plate, every = 1): Generator<number, Stack<F>, undefined> {
    const divided = yield* scaled(divide(plate, every), 0, DIVIDING);
    const rules = rulesOver(divided);
    const stretches = yield* scaled(this.stretches(divided, rules), DIVIDING, 1);
    if (every === 1) this.forget(divided.groups);
    return { plate, sections: byPart(divided), ...wholeOf(plate, rules, stretches) };
  }

  /** Forgets the layers that are in none of these groups. */
  forget(groups: readonly Group[]): void {
    const now = new Set(groups.map((group) => group.firstLayer));
    for (const layer of this.known.keys()) if (!now.has(layer)) this.known.delete(layer);
  }
}
