/**
 * Zones over height: which step of the zoning holds at a height, and the layout as it is divided there. Millimetres
 * above the platform; a step holds from its own height up to the next one's, and a height exactly on `from_mm` belongs
 * to the upper step.
 */
import type { Layout, LayoutAt, ZoningStep } from './types';
import type { Mm } from '../units/types';

/** Relative to 1 mm: a middle of a layer that misses a step's height by rounding lies on it. */
const ROUNDING_MM = 1e-9;

/** Index of the step that holds at a height; 0 below the first. */
export const stepAt = (steps: readonly ZoningStep[], z_mm: Mm): number =>
  Math.max(
    0,
    steps.findLastIndex((step) => step.from_mm <= z_mm + ROUNDING_MM),
  );

const kept = new WeakMap<Layout, LayoutAt[]>();

/** The layout as divided in one step; the same layout and step give the same object. */
export function layoutAt(layout: Layout, step: number): LayoutAt {
  let known = kept.get(layout);
  if (!known) kept.set(layout, (known = []));
  return (known[step] ??= { ...layout, zoning: layout.zoning[step]!.zoning });
}

/** The layout after `recipe` changed what holds in one step; the same layout where it changed nothing. */
export function changeAt(layout: Layout, step: number, recipe: (at: LayoutAt) => LayoutAt): Layout {
  const before = layoutAt(layout, step);
  const after = recipe(before);
  return after === before ? layout : withSteps(after, layout, step);
}

function withSteps(after: LayoutAt, { zoning }: Layout, step: number): Layout {
  const { from_mm, zoning: before } = zoning[step]!;
  const same = after.zoning === before;
  return { ...after, zoning: same ? zoning : zoning.with(step, { from_mm, zoning: after.zoning }) };
}
