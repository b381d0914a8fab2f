/**
 * Layers over height. Layer k of thickness t covers (k−1)·t … k·t and is cut at its middle; a middle
 * exactly on a slab's top belongs to the slab above. Layers in a row in which no part changes its section make one
 * stretch. Millimetres; layers count from 1.
 */
import type { PlacedSlab } from '../exposure/placed';
import type { PlacedPart } from '../exposure/prepared';
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
  /** The slab of each part in these layers; null above a part. */
  readonly slabs: readonly (PlacedSlab | null)[];
}

function slabInLayer(part: PlacedPart, layer: number, layer_mm: Mm): PlacedSlab | null {
  return part.sections.find((slab) => lastLayerBelow(slab.to_mm, layer_mm) >= layer) ?? null;
}

/** The build as ranges of layers in which nothing changes. */
export function layerRanges(parts: readonly PlacedPart[], layer_mm: Mm): LayerRange[] {
  const height = parts.reduce((top, part) => Math.max(top, part.height_mm), 0);
  const last = layerCount(height, layer_mm);
  const ends = new Set<number>([last]);
  for (const part of parts)
    for (const slab of part.sections) ends.add(Math.min(last, lastLayerBelow(slab.to_mm, layer_mm)));
  const ascending = [...ends].filter((end) => end > 0).sort((a, b) => a - b);
  return ascending.map((lastLayer, i) => {
    const firstLayer = (ascending[i - 1] ?? 0) + 1;
    return { firstLayer, lastLayer, slabs: parts.map((part) => slabInLayer(part, firstLayer, layer_mm)) };
  });
}
