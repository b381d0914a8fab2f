/**
 * What the blade meets in one layer: the length of section under it along its stroke, the steepest rise of that length,
 * and the straight sides that it runs on to nearly parallel to its own line. Millimetres, degrees counter-clockwise from +x;
 * the blade is a straight line square to its travel direction, places along the stroke are measured from the centre of the
 * platform. Geometry alone: nothing is said of forces, of the blade's material or of how a section may stand up.
 * Stroke, angle and least length are common practice without a source, and settings of who asks.
 */
import type { Island } from '../exposure/placed';
import { PlacedSlab } from '../exposure/placed';
import type { Region } from '../geometry/types';
import type { Recoater } from '../layout/types';
import type { Degrees, Mm } from '../units/types';
import { cosSin } from '../geometry/region';
import {
  largestJump,
  largestMet,
  NO_SWEEP,
  profileOf,
  steepestRise,
  sumOfSweeps,
  sweepOf,
  wayBack,
  type Largest,
  type MetProfile,
  type Moved,
  type Rise,
  type Sweep,
} from './bladeProfile';
import { sidesMet, type Side } from './bladeSides';
import type { PartView } from './types';

export interface BladeSettings {
  /** The stroke over which a rise is measured. */
  readonly stroke_mm: Mm;
  /** Sides up to this angle to the blade's line are nearly parallel … */
  readonly side_deg: Degrees;
  /** … if they are at least this long. */
  readonly side_mm: Mm;
  /** The blade also lays powder on its way back: rises and sides count from either way. */
  readonly bothWays: boolean;
}
const BLADE_SETTINGS: BladeSettings = { stroke_mm: 1, side_deg: 5, side_mm: 5, bothWays: false };

/** The settings that a machine's blade is looked at with. */
export const settingsOf = ({ mode }: Recoater): BladeSettings => ({
  ...BLADE_SETTINGS,
  bothWays: mode === 'bothWays',
});

export interface MetSide extends Side {
  /** Index of the section it belongs to. */
  readonly section: number;
}
export interface BladeContact {
  readonly profile: MetProfile;
  readonly largest: Largest;
  /** The largest increase over the settings' stroke. */
  readonly steepest: Rise;
  /** The largest sudden increase; included in `steepest`. */
  readonly jump: Rise;
  readonly sides: readonly MetSide[];
  /** Total length of the sides. */
  readonly sides_mm: Mm;
}

const ruleOf = ({ side_deg, side_mm, bothWays }: BladeSettings) => ({
  most_deg: side_deg,
  least_mm: side_mm,
  bothWays,
});

function contactOf(sweep: Sweep, sides: readonly (readonly Side[])[], settings: BladeSettings): BladeContact {
  const profile = profileOf(sweep);
  const met = sides.flatMap((own, section) => own.map((side) => ({ ...side, section })));
  return {
    profile,
    largest: largestMet(profile),
    steepest: worstWay(profile, settings, (way) => steepestRise(way, settings.stroke_mm)),
    jump: worstWay(profile, settings, largestJump),
    sides: met,
    sides_mm: met.reduce((sum, side) => sum + side.length_mm, 0),
  };
}

/** The worse of both ways where the blade lays powder both ways; on equal terms the way out. */
function worstWay(profile: MetProfile, { bothWays }: BladeSettings, find: (way: MetProfile) => Rise): Rise {
  const out = find(profile);
  if (!bothWays) return out;
  const back = find(wayBack(profile));
  const turned = { rise_mm: back.rise_mm, from_mm: -back.from_mm, to_mm: -back.to_mm, back: true };
  return turned.rise_mm > out.rise_mm + 1e-9 ? turned : out;
}

type Slab = PartView['sections'][number];

/** What one slab of a part is to the blade, in the coordinates of its turned shape: the same wherever the part stands. */
export interface SlabContact {
  readonly sweep: Sweep;
  readonly sides: readonly Side[];
  /** The slab's own steepest rise. */
  readonly rise_mm: Mm;
}
const NOTHING_MET: SlabContact = { sweep: NO_SWEEP, sides: [], rise_mm: 0 };

class Contact implements SlabContact {
  readonly sweep: Sweep;
  readonly sides: readonly Side[];
  private rise: Mm | null = null;
  constructor(
    region: Region,
    readonly towards_deg: Degrees,
    readonly settings: BladeSettings,
  ) {
    const [ux, uy] = cosSin(towards_deg);
    this.sweep = sweepOf(region, ux, uy);
    this.sides = sidesMet(region, ux, uy, ruleOf(settings));
  }
  get rise_mm(): Mm {
    return (this.rise ??= riseOf(this.sweep, this.settings));
  }
}

/** The steepest rise of one sweep by itself. */
export const riseOf = (sweep: Sweep, settings: BladeSettings): Mm =>
  worstWay(profileOf(sweep), settings, (way) => steepestRise(way, settings.stroke_mm)).rise_mm;

const sameSettings = (a: BladeSettings, b: BladeSettings): boolean =>
  a.stroke_mm === b.stroke_mm &&
  a.side_deg === b.side_deg &&
  a.side_mm === b.side_mm &&
  a.bothWays === b.bothWays;

const known = new WeakMap<Island | Region, Contact>();

/** Remembered with the outline it belongs to, for the direction asked for last. */
export function slabContact(slab: Slab, towards_deg: Degrees, settings: BladeSettings): SlabContact {
  const islands = slab instanceof PlacedSlab ? slab.islands.map(({ local }) => local) : null;
  const key = islands ? islands[0] : slab.section;
  if (!key) return NOTHING_MET;
  const old = known.get(key);
  if (old && old.towards_deg === towards_deg && sameSettings(old.settings, settings)) return old;
  const region = islands ? islands.flatMap(({ section }) => [...section]) : slab.section;
  const contact = new Contact(region, towards_deg, settings);
  known.set(key, contact);
  return contact;
}

/** Where a slab's own coordinates stand on the platform. */
function placeOf(slab: Slab): readonly [Mm, Mm] {
  const first = slab instanceof PlacedSlab ? slab.islands[0] : undefined;
  return first ? [first.x, first.y] : [0, 0];
}

const movedSide = (side: Side, x: Mm, y: Mm): Side => ({
  ...side,
  x0: side.x0 + x,
  y0: side.y0 + y,
  x1: side.x1 + x,
  y1: side.y1 + y,
});

/** A slab's sweep and how far along the stroke it stands. */
export function movedSweep(slab: Slab, towards_deg: Degrees, settings: BladeSettings): Moved {
  const [ux, uy] = cosSin(towards_deg);
  const [x, y] = placeOf(slab);
  return { sweep: slabContact(slab, towards_deg, settings).sweep, by_mm: ux * x + uy * y };
}

/**
 * What the blade meets in a layer, from the slab of each part in it (null: above the part). Sections that overlap are
 * summed. @param towards_deg where the blade travels to
 */
export function contactOfSlabs(
  slabs: readonly (Slab | null)[],
  towards_deg: Degrees,
  settings: BladeSettings,
): BladeContact {
  const present = slabs.filter((slab): slab is Slab => slab !== null);
  const sweep = sumOfSweeps(present.map((slab) => movedSweep(slab, towards_deg, settings)));
  const sides = slabs.map((slab) => {
    if (!slab) return [];
    const [x, y] = placeOf(slab);
    return slabContact(slab, towards_deg, settings).sides.map((side) => movedSide(side, x, y));
  });
  return contactOf(sweep, sides, settings);
}
