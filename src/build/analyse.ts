/**
 * Layout → everything the readout shows: the division, every stretch of equal layers with its figures, the build and its
 * problems. Pure; what did not change since an earlier call is remembered by object identity, so a drag costs the moved
 * part only. Millimetres, seconds.
 */
import { allocate, type LayerPart } from '../allocation/allocate';
import type { RealiseContext } from '../allocation/realise';
import { cellsOfPinned, divideSection } from '../exposure/fragments';
import { placedPart, type PlacedPart } from '../exposure/prepared';
import type { Layout, Part } from '../layout/types';
import type { Mm } from '../units/types';
import { divide } from '../zoning/divide';
import type { Cell, Division } from '../zoning/types';
import { buildFigures } from './buildFigures';
import { checkPlate } from './checks';
import { divisionFaults } from './faults';
import { layerAt, layerRanges, middleOfLayer, type LayerRange } from './layers';
import { layerFigures, modelOf } from './layerFigures';
import { rulesOf, type PartSections } from './rules';
import type { Analysis, LayerFigures, PartView, Problem, Stretch } from './types';

function cellsFor(layout: Layout, division: Division, part: Part): readonly Cell[] {
  if (part.laser === null) return division.cells;
  return cellsOfPinned(
    division,
    layout.machine.lasers.findIndex((laser) => laser.id === part.laser),
  );
}

function sectionsOf(layout: Layout, division: Division, ranges: readonly LayerRange[]): PartSections[] {
  return layout.parts.map((part, p) => {
    const cells = cellsFor(layout, division, part);
    return ranges.map(({ slabs }) => (slabs[p] ? divideSection(slabs[p], cells) : null));
  });
}

/** Stretches of the analysis before this one, looked up by what they were made from. */
interface Known {
  readonly context: RealiseContext;
  readonly layer: number;
  readonly parts: readonly LayerPart[];
  readonly indices: readonly number[];
  readonly layout: Layout;
  readonly figures: LayerFigures;
}
let known: readonly Known[] = [];

const samePart = (a: LayerPart, b: LayerPart): boolean =>
  a.id === b.id && a.section === b.section && a.timeFactor === b.timeFactor && sameRule(a.rule, b.rule);

function sameRule(a: LayerPart['rule'], b: LayerPart['rule']): boolean {
  if (a.kind === 'whole' && b.kind === 'whole') return a.laser === b.laser && a.holders === b.holders;
  return a.kind === 'free' && b.kind === 'free';
}

function recall(now: Omit<Known, 'figures'>): LayerFigures | null {
  const found = known.find(
    (old) =>
      old.layer === now.layer &&
      old.layout.machine === now.layout.machine &&
      old.layout.process === now.layout.process &&
      old.context.division === now.context.division &&
      old.context.limits === now.context.limits &&
      old.parts.length === now.parts.length &&
      old.parts.every((part, i) => samePart(part, now.parts[i]) && old.indices[i] === now.indices[i]),
  );
  return found?.figures ?? null;
}

function figuresOf(now: Omit<Known, 'figures'>): LayerFigures {
  const { layout, context } = now;
  const recalled = recall(now);
  if (recalled) return recalled;
  return layerFigures({
    machine: layout.machine,
    process: layout.process,
    on: context.division.on,
    layer: now.layer,
    parts: now.parts.map((part, i) => ({ index: now.indices[i], section: part.section })),
    allocation: allocate(context, now.parts),
  });
}

function stretchOf(range: LayerRange, layout: Layout, figures: LayerFigures): Stretch {
  const t = layout.process.layer_mm;
  return {
    firstLayer: range.firstLayer,
    lastLayer: range.lastLayer,
    from_mm: (range.firstLayer - 1) * t,
    to_mm: range.lastLayer * t,
    figures,
  };
}

interface Found {
  readonly problems: readonly Problem[];
  readonly checks: number;
}

/** What blocks hand-over first, then the rest; each in the order of the parts. */
function findProblems(
  layout: Layout,
  division: Division,
  placed: readonly PlacedPart[],
  sections: readonly PartSections[],
  heldByNoZone: readonly number[],
  parts: readonly PartView[],
): Found {
  const faults = divisionFaults(layout, division, placed, sections, heldByNoZone);
  const standing = checkPlate(layout, parts);
  const all = [...faults.problems, ...standing.problems];
  return {
    problems: [...all.filter((p) => p.blocks), ...all.filter((p) => !p.blocks)],
    checks: faults.checks + standing.checks,
  };
}

/** The analysis of a layout that was read. Never throws for such a layout. */
export function analyse(layout: Layout): Analysis {
  const division = divide(layout.machine, layout.zoning);
  const model = modelOf(layout.process);
  const placed = layout.parts.map((part) => placedPart(layout, part));
  const ranges = layerRanges(placed, layout.process.layer_mm);
  const sections = sectionsOf(layout, division, ranges);
  const layers = ranges.map((range) => range.lastLayer - range.firstLayer + 1);
  const { rules, heldByNoZone, proven } = rulesOf(layout, division, sections, layers, model);
  const context: RealiseContext = { machine: layout.machine, division, model, limits: layout.limits };
  const made = ranges.map((range, r): Known => {
    const indices = layout.parts.flatMap((_, p) => (sections[p][r] ? [p] : []));
    const parts = indices.map((p): LayerPart => {
      const { id, timeFactor } = layout.parts[p];
      return { id, timeFactor, section: sections[p][r]!, rule: rules[p] };
    });
    const now = { context, layout, layer: range.firstLayer, parts, indices };
    return { ...now, figures: figuresOf(now) };
  });
  known = made;
  const stretches = ranges.map((range, r) => stretchOf(range, layout, made[r].figures));
  const height_mm = placed.reduce((top, part) => Math.max(top, part.height_mm), 0);
  const parts: readonly PartView[] = placed;
  let found: Found | null = null;
  const find = (): Found => (found ??= findProblems(layout, division, placed, sections, heldByNoZone, parts));
  return {
    layout,
    division,
    parts,
    stretches,
    build: buildFigures(layout, stretches, height_mm, proven),
    get problems() {
      return find().problems;
    },
    get checks() {
      return find().checks;
    },
    on: division.on,
  };
}

function emptyLayer(analysis: Analysis): LayerFigures {
  const { layout, division } = analysis;
  const context: RealiseContext = {
    machine: layout.machine,
    division,
    model: modelOf(layout.process),
    limits: layout.limits,
  };
  const allocation = allocate(context, []);
  return layerFigures({ ...layout, on: division.on, layer: 1, parts: [], allocation });
}

/** The layer at a height and its figures; null outside the build. An empty plate has one empty layer. */
export function layerAtHeight(
  analysis: Analysis,
  z_mm: Mm,
): { layer: number; height_mm: Mm; figures: LayerFigures } | null {
  const { layout, build } = analysis;
  const t = layout.process.layer_mm;
  if (analysis.stretches.length === 0) {
    return z_mm === 0 ? { layer: 1, height_mm: t / 2, figures: emptyLayer(analysis) } : null;
  }
  const layer = layerAt(z_mm, t, build.height_mm);
  const stretch = analysis.stretches.find((s) => layer >= s.firstLayer && layer <= s.lastLayer);
  return stretch ? { layer, height_mm: middleOfLayer(layer, t), figures: stretch.figures } : null;
}

/** Figures at a height for the screen: heights outside the build show the nearest layer. */
export function figuresAt(analysis: Analysis, z_mm: Mm): LayerFigures {
  const inside = Math.min(Math.max(0, z_mm), analysis.build.height_mm);
  return layerAtHeight(analysis, inside)?.figures ?? emptyLayer(analysis);
}
