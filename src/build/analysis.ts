/**
 * Layout → everything the readout shows: the division, every stretch of equal layers with its figures, the build and, told
 * who finds them, its problems (the page loads that a moment after the plate); or, where the whole height would take too
 * long for one frame, the layer that is looked at, beside what is known of the whole height. Pure; what did not change
 * since an earlier call is remembered by object identity, so a drag costs the moved part only. Millimetres, seconds.
 */
import { allocate } from '../allocation/allocate';
import type { Layout } from '../layout/types';
import type { Mm } from '../units/types';
import type { FindProblems, Found } from './findProblems';
import { finished } from './finished';
import { layerAt, layerCount, middleOfLayer, rangeAt } from './layers';
import { layerFigures } from './layerFigures';
import { plateOf, type Plate } from './plate';
import { anyKeepsLaser, type Rules } from './rules';
import { figuresIn, rulesIn, Stacks, type Stack } from './stack';
import type { Analysis, BuildFigures, LayerFigures, WholeHeight } from './types';

const empties = new WeakMap<Plate, LayerFigures>();
/** The one layer of a plate without parts. */
function emptyLayer(plate: Plate): LayerFigures {
  let figures = empties.get(plate);
  if (!figures) {
    const allocation = allocate(plate.contexts[0], []);
    figures = layerFigures({ ...plate.layout, on: plate.on, layer: 1, parts: [], allocation });
    empties.set(plate, figures);
  }
  return figures;
}

const partOfAnalysis = ({ layout, divisions, placed, on }: Plate) => ({
  layout,
  divisions,
  parts: placed,
  on,
});

const full = new Stacks((figures) => figures);

function layerOf(plate: Plate, { stretches }: Stack<LayerFigures>, layer: number): LayerFigures {
  const found = stretches.find((stretch) => layer >= stretch.firstLayer && layer <= stretch.lastLayer);
  return found?.figures ?? emptyLayer(plate);
}

const NOT_LOOKED_FOR: Found = { problems: [], checks: 0 };

/**
 * The analysis of a layout that was read, its whole height included. Never throws for such a layout.
 * @param find looks for problems when they are asked for; null: nobody looks, and no check stands behind the empty list
 */
export function analyseWith(layout: Layout, find: FindProblems | null): Analysis<LayerFigures> {
  const plate = plateOf(layout);
  const stack = finished(full.run(plate));
  let known: Found | null = null;
  const found = (): Found => (known ??= find ? find(stack) : NOT_LOOKED_FOR);
  return {
    ...partOfAnalysis(plate),
    stretches: stack.stretches,
    build: stack.build,
    get problems() {
      return found().problems;
    },
    get checks() {
      return found().checks;
    },
    whole: 'present',
    layer: (layer) => layerOf(plate, stack, layer),
  };
}

/** The whole height of some layout, with the rules it was computed with. */
export interface KnownHeight extends WholeHeight {
  readonly layout: Layout;
  /** 1: every range of layers was computed; n: one of n in a row stands for all of them. */
  readonly every: number;
  readonly rules: Rules;
}

const NO_BUILD: Omit<BuildFigures, 'scanVolume_cm3'> = {
  layers: 0,
  height_mm: 0,
  time_h: 0,
  timeOneWay_h: 0,
  timeBothWays_h: 0,
  exposure_h: 0,
  recoat_h: 0,
  heldByMinLayer_h: 0,
  imbalance_pct: 0,
  idle_laserH: 0,
  load_laserH: 0,
  dose_l: 0,
  overflow_l: 0,
  choiceProven: true,
};
const NOTHING_KNOWN = { ...NOT_LOOKED_FOR, stretches: [], build: { ...NO_BUILD, scanVolume_cm3: {} } };

const layersMade = new WeakMap<Layout, Map<number, LayerFigures>>();

/** Figures made so far of a layout's layers; kept where they do not depend on what is known of the whole height. */
function madeOf(layout: Layout): Map<number, LayerFigures> {
  let made = layersMade.get(layout);
  if (!made) {
    made = new Map();
    if (!anyKeepsLaser(layout)) layersMade.set(layout, made);
  }
  return made;
}

/**
 * The analysis at once: layers are computed when they are asked for, the whole height is what `known` says, of this
 * layout or of an earlier one. While it is of an earlier one, parts that keep their laser over the height are given to
 * the laser that suits the layer alone.
 */
export function analyseLive(layout: Layout, known: KnownHeight | null): Analysis {
  const plate = plateOf(layout);
  const present = known?.layout === layout ? known : null;
  const whole = !known ? 'none' : !present ? 'earlier' : present.every > 1 ? 'sampled' : 'present';
  const made = madeOf(layout);
  const layerIn = (layer: number): LayerFigures => {
    const range = rangeAt(plate.placed, layout.zoning, layout.process.layer_mm, layer);
    const figures =
      made.get(range.firstLayer) ?? figuresIn(plate, range, present?.rules ?? rulesIn(plate, range));
    made.set(range.firstLayer, figures);
    return figures;
  };
  const layers = layerCount(plate.height_mm, layout.process.layer_mm);
  const { stretches, problems, checks, build } = known ?? NOTHING_KNOWN;
  return {
    ...partOfAnalysis(plate),
    stretches,
    problems,
    checks,
    build: { ...build, layers, height_mm: plate.height_mm },
    whole,
    layer: (layer) => (layer >= 1 && layer <= layers ? layerIn(layer) : emptyLayer(plate)),
  };
}

/** Part-sections a frame may compute: what is larger goes to the live layer and the worker. */
const MOST_IN_A_FRAME = 2000;
const MOST_STRETCHES = 100;

/** True where the whole height of a plate is computed within a frame: by its parts and the heights at which one changes. */
export function fitsAFrame({ parts, shapes, zoning }: Layout): boolean {
  const most = Math.min(MOST_STRETCHES, MOST_IN_A_FRAME / parts.length) - zoning.length;
  const tops = new Set<Mm>();
  for (const id of new Set(parts.map((part) => part.shape)))
    for (const { to_mm } of shapes[id].slabs) if (tops.add(to_mm).size > most) return false;
  return true;
}

/** The layer at a height and its figures; null outside the build. An empty plate has one empty layer. */
export function layerAtHeight(
  analysis: Analysis,
  z_mm: Mm,
): { layer: number; height_mm: Mm; figures: LayerFigures } | null {
  const { layout, build } = analysis;
  const t = layout.process.layer_mm;
  if (build.layers === 0)
    return z_mm === 0 ? { layer: 1, height_mm: t / 2, figures: analysis.layer(1) } : null;
  const layer = layerAt(z_mm, t, build.height_mm);
  if (layer === 0) return null;
  return { layer, height_mm: middleOfLayer(layer, t), figures: analysis.layer(layer) };
}

/** Figures at a height for the screen: heights outside the build show the nearest layer. */
export function figuresAt(analysis: Analysis, z_mm: Mm): LayerFigures {
  const inside = Math.min(Math.max(0, z_mm), analysis.build.height_mm);
  return layerAtHeight(analysis, inside)?.figures ?? analysis.layer(0);
}
