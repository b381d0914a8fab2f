/**
 * What a layout is: everything one file or link holds. These types describe a layout AFTER reading: every optional
 * key has its default, every length is a whole number of micrometres, every angle of 0.001 degrees.
 * Millimetres, seconds, watts, degrees counter-clockwise from +x; origin at the centre of the platform (ISO 17295).
 */
import type {
  Degrees,
  Hours,
  Litres,
  Milliseconds,
  Mm,
  Mm2,
  MmPerSecond,
  Percent,
  Seconds,
  Watts,
} from '../units/types';

export type LaserId = string;
export type PartId = string;
export type ShapeId = string;

export type Point = readonly [Mm, Mm];
/** A circle kept as a circle: centre x, centre y, radius. */
export interface Circle {
  readonly circle_mm: readonly [Mm, Mm, Mm];
}
export type Outline = readonly Point[];
/** An outline (closed or not, at least three different points) or a circle. Several rings fill even-odd. */
export type LayoutRing = Outline | Circle;

export interface Platform {
  readonly width_mm: Mm;
  readonly depth_mm: Mm;
  readonly margin_mm: Mm;
  readonly keepOuts: readonly LayoutRing[];
}
export interface Recoater {
  readonly towards_deg: Degrees;
  readonly mode: 'oneWay' | 'bothWays';
  readonly oneWay_s: Seconds;
  readonly bothWays_s: Seconds;
}
export interface Laser {
  readonly id: LaserId;
  readonly power_W: Watts;
  readonly foot_mm: Point;
  readonly workingHeight_mm: Mm;
  readonly reach: LayoutRing | null;
  readonly on: boolean;
}
export interface PowderStore {
  readonly feed_l: Litres;
  readonly overflow_l: Litres;
  readonly residueInterval_laserH: Hours;
}
export interface Machine {
  readonly name: string;
  readonly platform: Platform;
  readonly buildHeight_mm: Mm;
  readonly gasFlow: { readonly towards_deg: Degrees };
  readonly recoater: Recoater;
  readonly lasers: readonly Laser[];
  readonly powder: PowderStore | null;
}
export interface Process {
  readonly name: string;
  readonly density_g_cm3: number;
  readonly packing: number;
  readonly doseFactor: number;
  readonly layer_mm: Mm;
  readonly hatch_mm: Mm;
  readonly speed_mm_s: MmPerSecond;
  readonly hatchInset_mm: Mm;
  readonly vector_mm: Mm;
  readonly vectorGap_ms: Milliseconds;
  readonly vectorCount: 'areaAndOutline' | 'area';
  readonly contours: number;
  readonly contourSpeed_mm_s: MmPerSecond;
  readonly pieceGap_s: Seconds;
  readonly minLayer_s: Seconds;
  readonly seamOverlap_mm: Mm;
}
export interface Slab {
  /** Top of the slab; its bottom is the top of the slab before, 0 for the first. Ascending. */
  readonly to_mm: Mm;
  readonly rings: readonly LayoutRing[];
}
export interface Shape {
  readonly slabs: readonly Slab[];
}
export interface Part {
  readonly id: PartId;
  readonly shape: ShapeId;
  readonly at_mm: Point;
  readonly turn_deg: Degrees;
  readonly seams: 'free' | 'none';
  readonly laser: LaserId | null;
  readonly timeFactor: number;
}
export interface QuadrantsZoning {
  readonly strategy: 'quadrants';
  readonly at_mm: Point;
  readonly sharedBand_mm: Mm;
  /** front-left, front-right, rear-left, rear-right */
  readonly lasers: readonly LaserId[];
}
export interface StripsZoning {
  readonly strategy: 'strips';
  /** 0 ≤ a < 180; strips run along it (90: side by side in x) */
  readonly run_deg: Degrees;
  /** ascending along the normal that points to +x (to +y where it has no x) */
  readonly lines_mm: readonly Mm[];
  readonly sharedBand_mm: Mm;
  readonly lasers: readonly LaserId[];
}
export interface WholeFieldZoning {
  readonly strategy: 'wholeField';
}
export interface DrawnZone {
  readonly lasers: readonly LaserId[];
  readonly rings: readonly LayoutRing[];
}
export interface DrawnZoning {
  readonly strategy: 'drawn';
  readonly zones: readonly DrawnZone[];
}
export type Zoning = QuadrantsZoning | StripsZoning | WholeFieldZoning | DrawnZoning;
export type Strategy = Zoning['strategy'];
/** From this height on the platform is divided so, until the next step's height. */
export interface ZoningStep {
  readonly from_mm: Mm;
  readonly zoning: Zoning;
}
export type AllocationRule = 'balanced' | 'wholeParts';

export type Weekday = 'mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun';
/** From and to on the clock, "06:00" to "22:00"; "24:00" ends the day. Ascending, none overlapping. */
export type ClockRange = readonly [from: string, to: string];
/** What real hours are to planned hours: a factor and its spread (one standard deviation). */
export interface Correction {
  readonly factor: number;
  readonly spread_pct: Percent;
}
/** When the build starts, when somebody attends it, and how full its stores are then. Local time, no zone. */
export interface Schedule {
  /** "2026-11-27T16:00" */
  readonly start: string;
  readonly attended: Readonly<Record<Weekday, readonly ClockRange[]>>;
  readonly feedFilled_l: Litres;
  readonly overflowFilled_l: Litres;
  readonly residue_laserH: Hours;
  readonly correction: Correction;
}

export type RevisionState = 'draft' | 'reviewed' | 'released' | 'superseded';
/** What a shared layout is filed under. Names of people are recorded as typed; nothing proves them. */
export interface Revision {
  /** "A", "B" … or a company's own */
  readonly name: string;
  /** of the last change of state, "2026-11-27" */
  readonly date: string;
  readonly reason: string;
  readonly state: RevisionState;
  readonly author: string;
  readonly reviewer: string;
  /** Checksum of the layout that this one was made from; null for the first. */
  readonly derivedFrom: string | null;
}

export interface Limits {
  readonly crumbArea_mm2: Mm2;
  readonly crumbWidth_mm: Mm;
  readonly plumeHalfWidth_mm: Mm;
  readonly spacing_mm: Mm;
  readonly chainGap_mm: Mm;
}
export interface Layout {
  readonly format: 'evenplate-layout';
  readonly version: 3;
  readonly name: string;
  readonly note: string;
  readonly machine: Machine;
  readonly process: Process;
  readonly shapes: Readonly<Record<ShapeId, Shape>>;
  readonly parts: readonly Part[];
  /** Ascending from 0: each step holds up to the next one's height. */
  readonly zoning: readonly ZoningStep[];
  readonly allocation: AllocationRule;
  readonly limits: Limits;
  /** null: nothing is known of when the build starts. */
  readonly schedule: Schedule | null;
  /** null: a layout that nobody has filed yet. Like name and note outside the checksum. */
  readonly revision: Revision | null;
}
/** A layout as it is divided at one height. */
export interface LayoutAt extends Omit<Layout, 'zoning'> {
  readonly zoning: Zoning;
}
