/**
 * Whether whole parts have anything to choose: how many lasers may expose each part whole, over its whole height. Where
 * no part has two, giving every part to one laser decides nothing. A pinned part has no choice. Area beyond a zone below
 * the sliver that rounding leaves does not count. Millimetres.
 */
import { subtract } from '../geometry/clipper';
import { area, boxOf } from '../geometry/region';
import type { Box, Region } from '../geometry/types';
import type { Layout } from '../layout/types';
import type { Mm, Mm2 } from '../units/types';
import { has, only, singleOf } from '../zoning/lasers';
import type { Division, LaserSet } from '../zoning/types';
import type { PartView } from './types';

export interface Choices {
  /** Parts that two lasers or more may expose whole. */
  readonly several: number;
  /** Parts that only one laser may expose whole, the pinned ones included. */
  readonly one: number;
  /** Parts that no laser may expose whole: they are cut along the zones. */
  readonly none: number;
}

/** Outlines off a line by rounding leave slivers of this size. */
const SLIVER_MM2: Mm2 = 0.01;

const within = (inner: Box, outer: Box): boolean =>
  inner.minX >= outer.minX &&
  inner.maxX <= outer.maxX &&
  inner.minY >= outer.minY &&
  inner.maxY <= outer.maxY;

const meet = (a: Box, b: Box): boolean =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

/** True where a region is its own box. */
const isBox = (region: Region, box: Box): boolean =>
  region.length === 1 && Math.abs(area(region) - (box.maxX - box.minX) * (box.maxY - box.minY)) < 1e-6;

const known = new WeakMap<Region, WeakMap<Region, boolean>>();

/** True where a laser's own region holds all of an outline. */
function holds(own: Region, outline: Region): boolean {
  if (own.length === 0) return false;
  const [inner, outer] = [boxOf(outline), boxOf(own)];
  if (!meet(inner, outer)) return false;
  if (isBox(own, outer) && within(inner, outer)) return true;
  const asked = known.get(outline) ?? new WeakMap<Region, boolean>();
  known.set(outline, asked);
  const found = asked.get(own) ?? area(subtract(outline, own)) <= SLIVER_MM2;
  asked.set(own, found);
  return found;
}

/** Outlines of a part between two heights: its footprint where that is all of it. */
function outlinesBetween(part: PartView, from_mm: Mm, to_mm: Mm): readonly Region[] {
  if (from_mm <= 0 && to_mm >= part.height_mm) return [part.footprint];
  return part.sections
    .filter((slab) => slab.from_mm < to_mm && slab.to_mm > from_mm && slab.section.length > 0)
    .map(({ section }) => section);
}

/** Lasers that may expose all of a part, whatever it is pinned to. */
export function lasersThatHold(layout: Layout, divisions: readonly Division[], part: PartView): LaserSet {
  let set: LaserSet = 0;
  layout.machine.lasers.forEach((_, laser) => {
    const held = layout.zoning.every(({ from_mm }, step) => {
      const to_mm = layout.zoning[step + 1]?.from_mm ?? Infinity;
      return outlinesBetween(part, from_mm, to_mm).every((outline) =>
        holds(divisions[step].own[laser], outline),
      );
    });
    if (held && has(divisions[0].on, laser)) set |= only(laser);
  });
  return set;
}

/** How many parts have several lasers, one, or none to go to whole. */
export function wholePartChoices(
  layout: Layout,
  divisions: readonly Division[],
  parts: readonly PartView[],
): Choices {
  const counts = { several: 0, one: 0, none: 0 };
  parts.forEach((part, i) => {
    const set = lasersThatHold(layout, divisions, part);
    if (set === 0) counts.none++;
    else if (singleOf(set) >= 0 || layout.parts[i].laser !== null) counts.one++;
    else counts.several++;
  });
  return counts;
}
