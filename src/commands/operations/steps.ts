/**
 * Steps of the zoning over height: begun, moved, taken away; the whole field over a range of height. A step begins where
 * a layer begins: of all heights that divide the layers alike, the one on the layers' raster is kept. Millimetres above
 * the platform, whole micrometres; layers count from 1 and layer k covers (k−1)·t … k·t.
 */
import { lastLayerBelow, layerAt, layerCount, middleOfLayer } from '../../build/layers';
import { buildTop } from '../../layout/height';
import type { Layout, ZoningStep } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { changeAt } from '../../layout/steps';
import { clamp } from './edit';
import { setStrategy } from './strategy';

/** Number of layers below a height: the step that begins there holds from the next one on. */
const layersBelow = ({ process }: Layout, z_mm: Mm): number => lastLayerBelow(z_mm, process.layer_mm);

const raster = ({ process }: Layout, layers: number): Mm => roundMm(layers * process.layer_mm);

/** Layers that the machine, or a plate higher than it, has room for. */
const mostLayers = (layout: Layout): number =>
  layerCount(Math.max(layout.machine.buildHeight_mm, buildTop(layout)), layout.process.layer_mm);

/** Index of the step that holds in the layer after so many. */
const stepAbove = (layout: Layout, layers: number): number =>
  layout.zoning.findLastIndex((step) => layersBelow(layout, step.from_mm) <= layers);

/** Where in the list a step that begins after so many layers stands, or would be added. */
const placeOf = (layout: Layout, layers: number): number => {
  const above = layout.zoning.findIndex((step) => layersBelow(layout, step.from_mm) >= layers);
  return above < 0 ? layout.zoning.length : above;
};

/**
 * The height at which a step begun at `from_mm` would begin; null in the first layer, where a step begins already, and
 * where the machine has no layer left.
 */
export function stepHeight(layout: Layout, from_mm: Mm): Mm | null {
  if (!Number.isFinite(from_mm)) return null;
  const layers = layersBelow(layout, from_mm);
  const room = layers >= 1 && layers < mostLayers(layout);
  const taken = layout.zoning.some((step) => layersBelow(layout, step.from_mm) === layers);
  return room && !taken ? raster(layout, layers) : null;
}

/** The bottom of the layer at a height, as a height to begin a step at; 0 for an empty plate. */
export function bottomOfLayer(layout: Layout, z_mm: Mm): Mm {
  const layer = layerAt(z_mm, layout.process.layer_mm, buildTop(layout));
  return raster(layout, Math.max(0, layer - 1));
}

/** Begins a step that divides as what held there; the layout itself where `stepHeight` gives none. */
export function addStep(layout: Layout, from_mm: Mm): Layout {
  const height = stepHeight(layout, from_mm);
  if (height === null) return layout;
  const layers = layersBelow(layout, height);
  const { zoning } = layout.zoning[stepAbove(layout, layers)]!;
  const step: ZoningStep = { from_mm: height, zoning };
  return { ...layout, zoning: layout.zoning.toSpliced(placeOf(layout, layers), 0, step) };
}

/** Takes a step away, so that the one below holds there, too. The first one stays. */
export function removeStep(layout: Layout, index: number): Layout {
  if (index < 1 || !(index in layout.zoning)) return layout;
  return { ...layout, zoning: layout.zoning.toSpliced(index, 1) };
}

/** Between which heights a step may begin: a layer away from its neighbours. Null where it cannot move at all. */
export function stepLimits(layout: Layout, index: number): { readonly min: Mm; readonly max: Mm } | null {
  const [below, above] = [layout.zoning[index - 1], layout.zoning[index + 1]];
  if (!below || !(index in layout.zoning)) return null;
  const least = layersBelow(layout, below.from_mm) + 1;
  const most = (above ? layersBelow(layout, above.from_mm) : mostLayers(layout)) - 1;
  return least <= most ? { min: raster(layout, least), max: raster(layout, most) } : null;
}

/** Lets a step begin elsewhere, kept a layer away from its neighbours; the first one stays at the platform. */
export function moveStep(layout: Layout, index: number, from_mm: Mm): Layout {
  const limits = stepLimits(layout, index);
  if (limits === null || !Number.isFinite(from_mm)) return layout;
  const height = raster(layout, layersBelow(layout, clamp(from_mm, limits.min, limits.max)));
  const step = layout.zoning[index]!;
  if (height === step.from_mm) return layout;
  return { ...layout, zoning: layout.zoning.with(index, { ...step, from_mm: height }) };
}

/** The step begins so many layers higher (negative: lower), kept as `moveStep` keeps it. */
export function moveStepByLayers(layout: Layout, index: number, by: number): Layout {
  const step = layout.zoning[index];
  return step ? moveStep(layout, index, raster(layout, layersBelow(layout, step.from_mm) + by)) : layout;
}

/** A height in the middle one of the layers in which a step holds; null where it holds in none. */
export function middleOfStep(layout: Layout, index: number): Mm | null {
  const [step, above] = [layout.zoning[index], layout.zoning[index + 1]];
  if (!step) return null;
  const t = layout.process.layer_mm;
  const top = layerCount(buildTop(layout), t);
  const first = layersBelow(layout, step.from_mm) + 1;
  const last = above ? Math.min(top, layersBelow(layout, above.from_mm)) : top;
  return first <= last ? roundMm(middleOfLayer((first + last) >> 1, t)) : null;
}

/**
 * The whole field from one height on, up to another or, with null, to the top; below and above, the plate stays divided as
 * it was. Steps in between are given up.
 */
export function wholeFieldBetween(layout: Layout, from_mm: Mm, to_mm: Mm | null): Layout {
  const start = layersBelow(layout, from_mm);
  const end = to_mm === null ? Infinity : layersBelow(layout, to_mm);
  if (!(start < end && start < mostLayers(layout))) return layout;
  const begun = addStep(to_mm === null ? layout : addStep(layout, to_mm), from_mm);
  const zoning = begun.zoning.filter((step) => {
    const below = layersBelow(begun, step.from_mm);
    return below <= start || below >= end;
  });
  const cleared = zoning.length === begun.zoning.length ? begun : { ...begun, zoning };
  return changeAt(cleared, stepAbove(cleared, start), (plate) => setStrategy(plate, 'wholeField'));
}
