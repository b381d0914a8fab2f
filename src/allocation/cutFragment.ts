/**
 * One shared fragment that several lasers divide by straight parallel lines (DESIGN 5.5). A line is placed where the load
 * on its near side is what the plan says: load below c = timeFactor · (perArea · hatch area below c + perOutline · true
 * outline below c), c measured along the cut's normal. Millimetres, seconds, platform coordinates.
 */
import { intersect } from '../geometry/clipper';
import { clipToConvex, cutByLine, untagged } from '../geometry/halfPlane';
import { sweepProfile, type SweepProfile } from '../geometry/profile';
import { area, boxOf, components } from '../geometry/region';
import type { Region, TaggedRegion } from '../geometry/types';
import type { Given } from '../exposure/pieces';
import { outlineOf, taggedComponents } from '../exposure/tagged';
import type { TimeModel } from '../exposure/timeModel';
import type { Fragment } from '../exposure/types';
import type { Mm, Seconds } from '../units/types';

export type Normal = readonly [number, number];

export interface CutFragment {
  readonly fragment: Fragment;
  readonly normal: Normal;
  /** Lasers in the order of their sides along the normal. */
  readonly lasers: readonly number[];
  readonly region: SweepProfile;
  readonly hatch: SweepProfile | null;
  /** Load of the whole fragment without seams and gaps. */
  readonly total_s: Seconds;
  /** Load with n·p ≤ c. */
  loadBelow(c: Mm): Seconds;
}

export function cutFragment(
  fragment: Fragment,
  normal: Normal,
  lasers: readonly number[],
  model: TimeModel,
  timeFactor: number,
): CutFragment {
  const [nx, ny] = normal;
  const region = sweepProfile(fragment.region, nx, ny);
  const hatch = fragment.hatch.length > 0 ? sweepProfile(untagged(fragment.hatch), nx, ny) : null;
  const perOutline = hatch ? model.perOutline : model.perContour;
  const loadBelow = (c: Mm): Seconds =>
    timeFactor * ((hatch ? hatch.area(c) * model.perArea : 0) + region.outline(c) * perOutline);
  return { fragment, normal, lasers, region, hatch, total_s: loadBelow(region.max), loadBelow };
}

const STEPS = 60;

/** The c at which loadBelow(c) reaches a load: regula falsi with halved ends (Illinois), bracketed by min and max. */
export function placeCut(cut: CutFragment, load_s: Seconds): Mm {
  let low = cut.region.min;
  let high = cut.region.max;
  let fLow = -load_s;
  let fHigh = cut.total_s - load_s;
  if (fLow >= 0) return low;
  if (fHigh <= 0) return high;
  const enough = 1e-12 * cut.total_s;
  let side = 0;
  for (let step = 0; step < STEPS; step++) {
    const c = step % 8 === 7 ? (low + high) / 2 : (low * fHigh - high * fLow) / (fHigh - fLow);
    const f = cut.loadBelow(c) - load_s;
    if (Math.abs(f) <= enough || high - low < 1e-10) return c;
    if (f < 0) {
      [low, fLow] = [c, f];
      if (side === -1) fHigh /= 2;
      side = -1;
    } else {
      [high, fHigh] = [c, f];
      if (side === 1) fLow /= 2;
      side = 1;
    }
  }
  return (low + high) / 2;
}

/** Positions of the cuts between the sides, for shares in the order of `lasers`. */
export function placeCuts(cut: CutFragment, shares_s: readonly Seconds[]): Mm[] {
  let sum = 0;
  return shares_s.slice(0, -1).map((share) => placeCut(cut, (sum += share)));
}

export interface CutSide extends Given {
  /** Position of the laser in the cut's order. */
  readonly side: number;
}

function elementsOf(
  cut: CutFragment,
  side: number,
  region: TaggedRegion,
  hatch_mm2: number,
  from: Mm,
  to: Mm,
): CutSide[] {
  const parts = taggedComponents(region);
  const loose = parts.length > 1 ? hatchBetween(cut, from, to) : [];
  return parts.map((part) => ({
    side,
    laser: cut.lasers[side],
    region: part,
    box: boxOf(part.rings),
    area_mm2: area(part.rings),
    hatch_mm2: parts.length === 1 ? hatch_mm2 : hatchWithin(loose, part.rings),
    outline_mm: outlineOf(part),
  }));
}

/** Hatch components between two cuts. */
function hatchBetween(cut: CutFragment, from: Mm, to: Mm): Region[] {
  const [nx, ny] = cut.normal;
  const planes = [
    { nx, ny, c: to },
    { nx: -nx, ny: -ny, c: -from },
  ];
  return components(clipToConvex(untagged(cut.fragment.hatch), planes).rings);
}

const hatchWithin = (loose: readonly Region[], part: Region): number =>
  loose.reduce((sum, hatch) => sum + area(intersect(hatch, part)), 0);

/** The sides that cuts at `positions` make, every connected part of a side on its own. */
export function cutSides(cut: CutFragment, positions: readonly Mm[]): CutSide[] {
  const [nx, ny] = cut.normal;
  let rest = cut.fragment.region;
  let from = cut.region.min;
  let hatchBefore = 0;
  const sides: CutSide[] = [];
  for (let side = 0; side < cut.lasers.length; side++) {
    const to = side < positions.length ? positions[side] : cut.region.max;
    const hatchUpTo = cut.hatch ? cut.hatch.area(to) : 0;
    let mine = rest;
    if (side < positions.length) {
      const { inside, outside } = cutByLine(rest, { nx, ny, c: to });
      mine = inside;
      rest = outside;
    }
    if (mine.rings.length > 0) sides.push(...elementsOf(cut, side, mine, hatchUpTo - hatchBefore, from, to));
    [from, hatchBefore] = [to, hatchUpTo];
  }
  return sides;
}

/** Extent of regions along a normal. */
export function extentAlong(regions: readonly Region[], [nx, ny]: Normal): Mm {
  let min = Infinity;
  let max = -Infinity;
  for (const region of regions) {
    for (const ring of region) {
      for (let i = 0; i < ring.length; i += 2) {
        const p = nx * ring[i] + ny * ring[i + 1];
        if (p < min) min = p;
        if (p > max) max = p;
      }
    }
  }
  return max - min;
}
