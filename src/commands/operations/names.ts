/** Names and ids for what is new on a plate, and what came with a step. */
import { plainName } from '../../layout/ids';
import { MOST_PARTS } from '../../layout/limits';
import type { Layout, PartId, ShapeId } from '../../layout/types';

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
