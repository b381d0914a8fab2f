/**
 * Layers over height. Layer k of thickness t covers (k−1)·t … k·t and is cut at its middle; a middle
 * exactly on a slab's top belongs to the slab above. Layers in a row in which no part changes its section make one
 * stretch; a step of the zoning ends one, too. Millimetres; layers count from 1.
 */
import type { PlacedSlab } from '../exposure/placed';
import type { PlacedPart } from '../exposure/prepared';
import { stepAt } from '../layout/steps';
import type { ZoningStep } from '../layout/types';
import type { Mm } from '../units/types';

/** Relative to one layer: a rounding error makes no extra layer. */
const ROUNDING = 1e-9;

/** ⌈height/t⌉ */
export const layerCount = (height_mm: Mm, layer_mm: Mm): number =>
  Math.max(0, Math.ceil(height_mm / layer_mm - ROUNDING));

/** Number of layers whose middle lies below a height: the last layer of a slab that ends there. */
export const lastLayerBelow = (top_mm: Mm, layer_mm: Mm): number =>
  Math.max(0, Math.ceil(top_mm / layer_mm + 0.5 - ROUNDING) - 1);

/** Middle of layer k. */
export const middleOfLayer = (layer: number, layer_mm: Mm): Mm => (layer - 0.5) * layer_mm;

/** The layer k with (k−1)·t ≤ z < k·t; the top belongs to the last one; 0 where the height is outside the build. */
export function layerAt(z_mm: Mm, layer_mm: Mm, height_mm: Mm): number {
  const last = layerCount(height_mm, layer_mm);
  if (!(z_mm >= 0) || z_mm > height_mm + ROUNDING * layer_mm || last === 0) return 0;
  return Math.min(last, Math.floor(z_mm / layer_mm + ROUNDING) + 1);
}

export interface LayerRange {
  readonly firstLayer: number;
  readonly lastLayer: number;
  /** Index of the step of the zoning that holds here. */
  readonly step: number;
  /** The slab of each part in these layers; null above a part. */
  readonly slabs: readonly (PlacedSlab | null)[];
}

/** The slabs of one part against layers that only ascend: each slab is passed once. */
function slabWalk({ sections }: PlacedPart, layer_mm: Mm) {
  let next = 0;
  return (layer: number): PlacedSlab | null => {
    while (next < sections.length && lastLayerBelow(sections[next].to_mm, layer_mm) < layer) next++;
    return sections[next] ?? null;
  };
}

/** The last layers of all stretches: where a slab or a step of the zoning ends, and the top. */
function lastLayers(parts: readonly PlacedPart[], steps: readonly ZoningStep[], layer_mm: Mm): number[] {
  const height = parts.reduce((top, part) => Math.max(top, part.height_mm), 0);
  const last = layerCount(height, layer_mm);
  const ends = new Set<number>([last]);
  const end = (z_mm: Mm): unknown => ends.add(Math.min(last, lastLayerBelow(z_mm, layer_mm)));
  for (const part of parts) for (const slab of part.sections) end(slab.to_mm);
  for (const { from_mm } of steps) end(from_mm);
  return [...ends].filter((layer) => layer > 0).sort((a, b) => a - b);
}

/** The build as ranges of layers in which nothing changes. */
export function layerRanges(
  parts: readonly PlacedPart[],
  steps: readonly ZoningStep[],
  layer_mm: Mm,
): LayerRange[] {
  const walks = parts.map((part) => slabWalk(part, layer_mm));
  return lastLayers(parts, steps, layer_mm).map((lastLayer, i, ends) => {
    const firstLayer = (ends[i - 1] ?? 0) + 1;
    const step = stepAt(steps, middleOfLayer(firstLayer, layer_mm));
    return { firstLayer, lastLayer, step, slabs: walks.map((slabIn) => slabIn(firstLayer)) };
  });
}

/** First of the ascending heights whose last layer is not below a layer; their number where there is none. */
function search(count: number, top: (i: number) => Mm, layer: number, layer_mm: Mm): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lastLayerBelow(top(middle), layer_mm) < layer) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The one range that holds a layer of the build, without looking at the others. */
export function rangeAt(
  parts: readonly PlacedPart[],
  steps: readonly ZoningStep[],
  layer_mm: Mm,
  layer: number,
): LayerRange {
  const height = parts.reduce((top, part) => Math.max(top, part.height_mm), 0);
  let firstLayer = 1;
  let lastLayer = layerCount(height, layer_mm);
  const bound = (below_mm: Mm | undefined, above_mm: Mm | undefined): void => {
    if (below_mm !== undefined) firstLayer = Math.max(firstLayer, lastLayerBelow(below_mm, layer_mm) + 1);
    if (above_mm !== undefined) lastLayer = Math.min(lastLayer, lastLayerBelow(above_mm, layer_mm));
  };
  const slabs = parts.map(({ sections }) => {
    const i = search(sections.length, (k) => sections[k].to_mm, layer, layer_mm);
    bound(sections[i - 1]?.to_mm, sections[i]?.to_mm);
    return sections[i] ?? null;
  });
  const step = stepAt(steps, middleOfLayer(layer, layer_mm));
  bound(steps[step].from_mm, steps[step + 1]?.from_mm);
  return { firstLayer, lastLayer, step, slabs };
}
