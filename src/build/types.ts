/**
 * What the screens, the CLI and the exports read: one Analysis per layout. Millimetres, seconds, hours; percent where
 * the name says pct. Indices point into layout.parts and layout.machine.lasers.
 */
import type { Region } from '../geometry/types';
import type { MessageCode } from '../layout/messages';
import type { Params } from '../layout/result';
import type { LaserId, Layout, PartId } from '../layout/types';
import type { Cm3, Hours, Litres, Mm, Mm2, Percent, Seconds } from '../units/types';
import type { Division, LaserSet } from '../zoning/types';

/** A connected region of one part that one laser exposes (laser −1: unassigned). */
export interface Piece {
  readonly part: number;
  readonly laser: number;
  readonly region: Region;
  /** Section area of the region itself, without seam overlap. */
  readonly area_mm2: Mm2;
  /** Hatch area A: after the inset, with half the seam overlap. */
  readonly hatchArea_mm2: Mm2;
  /** True outline P inside the piece. */
  readonly outline_mm: Mm;
  /** Seam length S. */
  readonly seam_mm: Mm;
  readonly load_s: Seconds;
}
/** A border inside one part between two lasers: one connected segment. */
export interface Seam {
  readonly part: number;
  /** The lower laser index first. */
  readonly lasers: readonly [number, number];
  /** Connected segments, in order where they form one line: x0, y0, x1, y1 per segment. */
  readonly path: Float64Array;
  readonly length_mm: Mm;
  /** Ends that meet the outline. */
  readonly witnessLines: number;
}
export interface LaserFigures {
  readonly id: LaserId;
  readonly on: boolean;
  readonly scanArea_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly pieces: number;
  readonly load_s: Seconds;
  readonly idle_s: Seconds;
}
/** What a layer comes to: numbers only, so that the whole height of them is small. */
export interface LayerTotals {
  /** 1-based layer number this result was computed at; it holds for its whole stretch. */
  readonly layer: number;
  readonly height_mm: Mm;
  readonly lasers: readonly LaserFigures[];
  /** Number of parts that have a seam at this height. */
  readonly cutParts: number;
  readonly seamLength_mm: Mm;
  readonly sectionArea_mm2: Mm2;
  readonly unassigned_mm2: Mm2;
  readonly doubleExposed_mm2: Mm2;
  readonly exposure_s: Seconds;
  readonly recoat_s: Seconds;
  readonly wait_s: Seconds;
  readonly time_s: Seconds;
  readonly imbalanceTime_pct: Percent;
  readonly imbalanceArea_pct: Percent;
  readonly bestPossible_s: Seconds;
  readonly bestSetBy: readonly LaserId[];
  /** What the seams and gaps of cuts add to the exact minimum that was planned. */
  readonly costOfCutting_s: Seconds;
  /** The number of cut parts is proven to be the fewest. */
  readonly fewestCutsProven: boolean;
}
/** The totals of a layer and what they are made of. */
export interface LayerFigures extends LayerTotals {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly witnessLines: number;
}
/** Layers in a row whose sections are all the same, and which are divided alike. */
export interface Stretch<F extends LayerTotals = LayerTotals> {
  readonly firstLayer: number;
  readonly lastLayer: number;
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly figures: F;
}
export interface BuildFigures {
  readonly layers: number;
  readonly height_mm: Mm;
  /** With the recoater as it is set. */
  readonly time_h: Hours;
  /** With a stroke one way, and with strokes both ways, whatever is set. */
  readonly timeOneWay_h: Hours;
  readonly timeBothWays_h: Hours;
  readonly exposure_h: Hours;
  readonly recoat_h: Hours;
  readonly heldByMinLayer_h: Hours;
  readonly imbalance_pct: Percent;
  readonly idle_laserH: Hours;
  readonly load_laserH: Hours;
  readonly dose_l: Litres;
  readonly overflow_l: Litres;
  readonly scanVolume_cm3: Readonly<Record<LaserId, Cm3>>;
  /** Where whole parts had to be chosen: the choice is proven to be the best. */
  readonly choiceProven: boolean;
}
export interface Problem {
  readonly code: MessageCode;
  readonly params: Params;
  /** Parts concerned; the first one is the one to act on. */
  readonly parts: readonly PartId[];
  readonly blocks: boolean;
}
/** One part as it stands: for canvases, lists and hit tests. */
export interface PartView {
  readonly id: PartId;
  readonly height_mm: Mm;
  /** Union of all sections seen from above, turned and moved. */
  readonly footprint: Region;
  /** Sections by slab, turned and moved. */
  readonly sections: readonly { readonly from_mm: Mm; readonly to_mm: Mm; readonly section: Region }[];
}
/** What only the whole height tells. */
export interface WholeHeight<F extends LayerTotals = LayerTotals> {
  /** From the platform up, without gaps. */
  readonly stretches: readonly Stretch<F>[];
  readonly build: BuildFigures;
  readonly problems: readonly Problem[];
  /** Number of checks that `problems` stands for; 0: nobody has looked for problems yet. */
  readonly checks: number;
}
/**
 * Of which plate the whole height is known: of the one analysed; of it, but from every so-many-th range of layers only;
 * of an earlier one, while the present one is being computed; of none yet.
 */
export type Freshness = 'present' | 'sampled' | 'earlier' | 'none';
export interface Analysis<F extends LayerTotals = LayerTotals> extends WholeHeight<F> {
  readonly layout: Layout;
  /** By step of the layout's zoning. */
  readonly divisions: readonly Division[];
  readonly parts: readonly PartView[];
  /** Lasers that are on. */
  readonly on: LaserSet;
  /** Of which plate `stretches`, `problems` and `build` are; the build's height and number of layers are always the present ones. */
  readonly whole: Freshness;
  /** The figures of one layer of the present plate, whatever is known of the whole height. */
  layer(layer: number): LayerFigures;
}
