/**
 * One shared fragment that several lasers divide by straight parallel lines. A line is placed where the load
 * on its near side is what the plan says: load below c = timeFactor · (perArea · hatch area below c + perOutline · true
 * outline below c), c measured along the cut's normal. Millimetres, seconds, platform coordinates.
 */
import { clipToConvex, cutByLine, untagged } from '../geometry/halfPlane';
import { crossingsOf, cutsInTwo } from '../geometry/halves';
import { sweepProfile, type SweepProfile } from '../geometry/profile';
import { area, boxOf, components } from '../geometry/region';
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Given } from '../exposure/pieces';
import { outlineOf, shareOut, taggedComponents } from '../exposure/tagged';
import type { TimeModel } from '../exposure/timeModel';
import type { Between, Fragment } from '../exposure/types';
import type { Mm, Seconds } from '../units/types';

/** Unit normal of a cut, pointing to +x (to +y where it has no x). */
export type Normal = readonly [number, number];

/** What of a fragment lies at n·p ≤ c: areas, true outline, chord at c. */
export type Profile = Pick<SweepProfile, 'min' | 'max' | 'area' | 'outline' | 'chord' | 'atArea'>;

/** A fragment swept along the normal of its cuts; c is n·p on the platform, millimetres. */
export interface CutFragment {
  readonly fragment: Fragment;
  readonly normal: Normal;
  readonly region: Profile;
  readonly hatch: Profile | null;
  /** Load of the whole fragment without seams and gaps. */
  readonly total_s: Seconds;
  /** Load with n·p ≤ c. */
  loadBelow(c: Mm): Seconds;
  /** Load per mm by which a cut at c gains when it moves on, outlines aside. */
  slope(c: Mm): number;
  /** Load that a cut at c adds on each side as a seam. */
  seamLoad(c: Mm): Seconds;
  /** True where a cut at c leaves two connected sides. */
  leavesTwo(c: Mm): boolean;
}

/** The part of an island's profile between two lines, in platform coordinates. */
function slice(profile: SweepProfile, { offset, low, high }: Between): Profile {
  const min = Math.max(low, profile.min) + offset;
  const max = Math.min(high, profile.max) + offset;
  const area0 = profile.area(low);
  const outline0 = profile.outline(low);
  const local = (c: Mm): Mm => (c <= min ? low : c >= max ? high : c - offset);
  return {
    min,
    max,
    area: (c) => profile.area(local(c)) - area0,
    outline: (c) => profile.outline(local(c)) - outline0,
    chord: (c) => profile.chord(c - offset),
    atArea: (area) => Math.min(max, Math.max(min, profile.atArea(area + area0) + offset)),
  };
}

interface Profiles {
  readonly region: Profile;
  readonly hatch: Profile | null;
  leavesTwo(c: Mm): boolean;
}

/** From the island's own sweep where the fragment is a slice along the same normal. */
function slicedProfiles({ between }: Fragment, [nx, ny]: Normal): Profiles | null {
  if (!between || between.sweep.nx !== nx || between.sweep.ny !== ny) return null;
  const { island, sweep, offset } = between;
  return {
    region: slice(sweep.section, between),
    hatch: sweep.hatch && slice(sweep.hatch, between),
    leavesTwo: (c) => crossingsOf(island.local.section, { nx, ny, c: c - offset }) === 2,
  };
}

function sweptProfiles(fragment: Fragment, [nx, ny]: Normal): Profiles {
  const { region, hatch } = fragment;
  return {
    region: sweepProfile(region, nx, ny),
    hatch: hatch.length > 0 ? sweepProfile(untagged(hatch), nx, ny) : null,
    leavesTwo: () => false,
  };
}

function makeCutFragment(
  fragment: Fragment,
  normal: Normal,
  model: TimeModel,
  timeFactor: number,
): CutFragment {
  const { region, hatch, leavesTwo } = slicedProfiles(fragment, normal) ?? sweptProfiles(fragment, normal);
  const [nx, ny] = normal;
  const perOutline = hatch ? model.perOutline : model.perContour;
  const loadBelow = (c: Mm): Seconds =>
    timeFactor * ((hatch ? hatch.area(c) * model.perArea : 0) + region.outline(c) * perOutline);
  return {
    fragment,
    normal,
    region,
    hatch,
    total_s: loadBelow(region.max),
    loadBelow,
    slope: (c) => timeFactor * model.perArea * (hatch ? hatch.chord(c) : 0),
    seamLoad: (c) => timeFactor * model.perSeam * region.chord(c),
    leavesTwo: (c) => leavesTwo(c) || cutsInTwo(fragment.region.rings, { nx, ny, c }),
  };
}

interface Made {
  readonly cut: CutFragment;
  readonly model: TimeModel;
  readonly timeFactor: number;
}
const made = new WeakMap<Fragment, Made>();

/** A fragment made ready to be cut along a normal; remembered where its profile is its own. */
export function cutFragment(
  fragment: Fragment,
  normal: Normal,
  model: TimeModel,
  timeFactor: number,
): CutFragment {
  if (fragment.between) return makeCutFragment(fragment, normal, model, timeFactor);
  const known = made.get(fragment);
  const [nx, ny] = normal;
  if (known && known.model === model && known.timeFactor === timeFactor) {
    if (known.cut.normal[0] === nx && known.cut.normal[1] === ny) return known.cut;
  }
  const cut = makeCutFragment(fragment, normal, model, timeFactor);
  made.set(fragment, { cut, model, timeFactor });
  return cut;
}

const STEPS = 60;
/** Part of a fragment's load to which a cut is placed. */
const EXACT = 1e-11;

/**
 * The c at which loadBelow(c) reaches a load: regula falsi with halved ends (Illinois), bracketed by min and max, by
 * `near` and a secant step beyond it where an earlier place is known.
 */
export function placeCut(cut: CutFragment, load_s: Seconds, near?: Mm): Mm {
  const { min, max } = cut.region;
  if (load_s <= 0) return min;
  if (load_s >= cut.total_s) return max;
  const enough = EXACT * cut.total_s;
  const found = new Bracket(min, -load_s, max, cut.total_s - load_s);
  let c = near !== undefined && near > min && near < max ? near : found.guess();
  for (let step = 1; step < STEPS; step++) {
    const f = cut.loadBelow(c) - load_s;
    if (Math.abs(f) <= enough || found.width() < 1e-10) return c;
    const slope = step === 1 && c === near ? cut.slope(c) : 0;
    found.take(c, f);
    const ahead = slope > 0 ? c - f / slope : NaN;
    c = found.holds(ahead) ? ahead : step % 8 === 7 ? found.middle() : found.guess();
  }
  return found.middle();
}

/** Two places between which a load is reached. */
class Bracket {
  private side = 0;
  constructor(
    private low: Mm,
    private fLow: Seconds,
    private high: Mm,
    private fHigh: Seconds,
  ) {}
  guess(): Mm {
    return (this.low * this.fHigh - this.high * this.fLow) / (this.fHigh - this.fLow);
  }
  middle(): Mm {
    return (this.low + this.high) / 2;
  }
  width(): Mm {
    return this.high - this.low;
  }
  holds(c: Mm): boolean {
    return c > this.low && c < this.high;
  }
  /** Narrows the bracket; an end that stays twice counts half. */
  take(c: Mm, f: Seconds): void {
    if (f < 0) {
      this.low = c;
      this.fLow = f;
      if (this.side === -1) this.fHigh /= 2;
      this.side = -1;
    } else {
      this.high = c;
      this.fHigh = f;
      if (this.side === 1) this.fLow /= 2;
      this.side = 1;
    }
  }
}

/** A connected part of one side of a cut. */
export interface CutSide extends Omit<Given, 'laser'> {
  /** 0 is the side at the smallest n·p. */
  readonly side: number;
  readonly region: TaggedRegion;
  readonly box: Box;
}

function partsOfSide(
  cut: CutFragment,
  side: number,
  region: TaggedRegion,
  hatch_mm2: number,
  from: Mm,
  to: Mm,
): CutSide[] {
  const parts = taggedComponents(region);
  const hatches = parts.length === 1 ? [hatch_mm2] : hatchOfParts(cut, parts, from, to);
  return parts.map((part, i) => ({
    side,
    region: part,
    box: boxOf(part.rings),
    area_mm2: area(part.rings),
    hatch_mm2: hatches[i],
    outline_mm: outlineOf(part),
  }));
}

/** Hatch area in each of several parts of one side. */
function hatchOfParts(cut: CutFragment, parts: readonly TaggedRegion[], from: Mm, to: Mm): number[] {
  const { hatch, region } = cut.fragment;
  if (hatch === region.rings) return parts.map((part) => area(part.rings));
  const [nx, ny] = cut.normal;
  const planes = [
    { nx, ny, c: to },
    { nx: -nx, ny: -ny, c: -from },
  ];
  const loose = components(clipToConvex(untagged(hatch), planes).rings);
  return shareOut(loose, parts).map((own) => own.reduce((sum, one) => sum + area(one), 0));
}

/** The sides that cuts at ascending positions make, every connected part of a side on its own. */
export function cutSides(cut: CutFragment, positions: readonly Mm[]): CutSide[] {
  const [nx, ny] = cut.normal;
  let rest = cut.fragment.region;
  let from = cut.region.min;
  let hatchBefore = 0;
  const sides: CutSide[] = [];
  for (let side = 0; side <= positions.length; side++) {
    const last = side === positions.length;
    const to = last ? cut.region.max : positions[side];
    const hatchUpTo = cut.hatch ? cut.hatch.area(to) : 0;
    const { inside, outside } = last ? { inside: rest, outside: rest } : cutByLine(rest, { nx, ny, c: to });
    if (inside.rings.length > 0)
      sides.push(...partsOfSide(cut, side, inside, hatchUpTo - hatchBefore, from, to));
    rest = outside;
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
