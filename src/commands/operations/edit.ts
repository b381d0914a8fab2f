/**
 * Small steps that every operation is made of: replacing one branch of a layout, rounding on entry.
 * Lengths to 1 µm, angles to 0.001°. An operation that changes nothing returns the very layout it was given.
 */
import type { Layout, LayoutAt, LayoutRing, Machine, Part, PartId, Point, Zoning } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';

/** A point in whole micrometres. */
export const roundPoint = ([x, y]: Point): Point => [roundMm(x), roundMm(y)];

/** A ring, or a circle by its centre and radius, in whole micrometres. */
export const roundRing = (ring: LayoutRing): LayoutRing =>
  'circle_mm' in ring
    ? { circle_mm: [roundMm(ring.circle_mm[0]), roundMm(ring.circle_mm[1]), roundMm(ring.circle_mm[2])] }
    : ring.map(roundPoint);

/** The value, or the end of low … high that it lies beyond. */
export const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);

/** True where every value is a finite number: NaN and infinity never enter a layout. */
export const allFinite = (...values: readonly number[]): boolean => values.every(Number.isFinite);

/** The layout with some fields of its machine replaced; nothing is checked. */
export const withMachine = (layout: Layout, patch: Partial<Machine>): Layout => ({
  ...layout,
  machine: { ...layout.machine, ...patch },
});

/** The plate divided by another zoning; nothing is checked. */
export const withZoning = (layout: LayoutAt, zoning: Zoning): LayoutAt => ({ ...layout, zoning });

/** Changes the parts named by `ids`; the same layout where `change` gives every one of them back. */
export function changeParts(layout: Layout, ids: readonly PartId[], change: (part: Part) => Part): Layout {
  const chosen = new Set(ids);
  let touched = false;
  const parts = layout.parts.map((part) => {
    const next = chosen.has(part.id) ? change(part) : part;
    touched ||= next !== part;
    return next;
  });
  return touched ? { ...layout, parts } : layout;
}

/** Half the platform's extent along a unit normal. */
export const halfExtent = ({ platform }: Machine, nx: number, ny: number): Mm =>
  (platform.width_mm * Math.abs(nx) + platform.depth_mm * Math.abs(ny)) / 2;
