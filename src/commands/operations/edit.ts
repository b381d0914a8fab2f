/**
 * Small steps that every operation is made of: replacing one branch of a layout, rounding on entry, fresh names.
 * Lengths to 1 µm, angles to 0.001°. An operation that changes nothing returns the very layout it was given.
 */
import type {
  Layout,
  LayoutAt,
  LayoutRing,
  Machine,
  Part,
  PartId,
  Point,
  ShapeId,
  Zoning,
} from '../../layout/types';
import { plainName } from '../../layout/ids';
import { MOST_PARTS } from '../../layout/limits';
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

/** First of prefix1, prefix2 … that `taken` does not hold. */
export function freshName(prefix: string, taken: (name: string) => boolean): string {
  for (let n = 1; ; n++) if (!taken(`${prefix}${n}`)) return `${prefix}${n}`;
}

/** Names that objects keep for themselves; a layout refuses them. */
const RESERVED_NAMES = ['__proto__', 'constructor', 'prototype'];
/** Characters kept of a wanted name: with surrogate pairs and a number it stays below the 64 that a layout accepts. */
const STEM_LENGTH = 28;

/** "stem-1", "stem-2" …: the first name that no shape has. Control characters and outer blanks are dropped. */
export function freshShapeName(layout: Layout, wanted: string): ShapeId {
  const stem = shapeStem(wanted);
  return freshName(`${stem}-`, (name) => Object.hasOwn(layout.shapes, name));
}

/** A wanted name as a layout accepts it; "shape" where nothing of it is left. */
export function shapeStem(wanted: string): string {
  const plain = [...plainName(wanted, '')];
  const stem = plain.slice(0, STEM_LENGTH).join('').trim();
  return stem === '' || RESERVED_NAMES.includes(stem) ? 'shape' : stem;
}

/** True where a layout may hold so many more parts. */
export const roomFor = (layout: Layout, count: number): boolean => layout.parts.length + count <= MOST_PARTS;

/** Ids for `count` new parts: "P01", "P02" …, the first numbers that are free. */
export function nextPartIds(layout: Layout, count: number): PartId[] {
  const taken = new Set(layout.parts.map((part) => part.id));
  const ids: PartId[] = [];
  for (let n = 1; ids.length < count; n++) {
    const id = `P${String(n).padStart(2, '0')}`;
    if (!taken.has(id)) ids.push(id);
  }
  return ids;
}

/** Parts of `after` that `before` did not hold, in order. */
export function addedParts(before: Layout, after: Layout): PartId[] {
  const known = new Set(before.parts.map((part) => part.id));
  return after.parts.filter((part) => !known.has(part.id)).map((part) => part.id);
}

/** Half the platform's extent along a unit normal. */
export const halfExtent = ({ platform }: Machine, nx: number, ny: number): Mm =>
  (platform.width_mm * Math.abs(nx) + platform.depth_mm * Math.abs(ny)) / 2;
