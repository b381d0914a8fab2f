/**
 * What the outline readers hand to the check page and the command line. Coordinates are the drawing's own, in
 * millimetres, +x right and +y up (an SVG is turned over); nothing is moved before placeImport.
 */
import type { LayoutRing, Point } from '../layout/types';
import type { Mm, Mm2 } from '../units/types';

/** Units an outline file may be in. px is the CSS pixel, 1/96 in. */
export type ImportUnit =
  'um' | 'mm' | 'cm' | 'dm' | 'm' | 'mil' | 'in' | 'ft' | 'yd' | 'px' | 'pt' | 'pc' | 'Q';

export interface ImportSettings {
  /** Ends of lines and arcs that lie this close belong together. */
  readonly chainGap_mm: Mm;
  /** Chosen by the user: one unit of the drawing is one of these, whatever the file says. */
  readonly unit?: ImportUnit;
}
export interface UnitFound {
  readonly unit: ImportUnit;
  /** Millimetres per unit of the drawing (for an SVG: of its outermost coordinates). */
  readonly scale: number;
  /** file: the file says so; css: an SVG that writes no unit, taken in pixels of 1/96 in; chosen: the user said so. */
  readonly from: 'file' | 'css' | 'chosen';
}
export interface ImportShape {
  /** Of the element, layer or block the outer ring came from; unique within the import. */
  readonly name: string;
  /** Outer ring first, then its holes; even-odd. A true circle stays one. */
  readonly rings: readonly LayoutRing[];
  readonly area_mm2: Mm2;
  readonly holes: number;
  readonly width_mm: Mm;
  readonly height_mm: Mm;
}
/** Why something of the file is no outline. */
export type LeftOutKind =
  | 'open' // ends do not meet
  | 'branch' // lines left over where three or more meet
  | 'duplicate' // drawn twice
  | 'no-area' // encloses nothing
  | 'stroke' // a line without a fill
  | 'text'
  | 'dimension'
  | 'hatch'
  | 'image'
  | 'point'
  | 'mesh' // faces, meshes and solids
  | 'hidden' // invisible, or without fill and stroke
  | 'layer-off'
  | 'layer-frozen'
  | 'paper' // belongs to a printed sheet, not to the drawing
  | 'tilted' // not parallel to the drawing's plane
  | 'missing' // names a block or element that the file does not hold, or itself
  | 'far' // further from the origin than any part: 100 m
  | 'clip' // a clip path or mask was not applied
  | 'broken' // its data cannot be read, or it crosses itself thousands of times
  | 'other'; // an object of a kind that holds no outline

export interface LeftOut {
  readonly kind: LeftOutKind;
  /** The file's own word for it, such as "text", "LEADER" or a layer's name. */
  readonly what: string;
  readonly count: number;
  /** open: the two ends of each chain; at most MOST_PLACES. */
  readonly places: readonly Point[];
  /** open, branch: the lines themselves, for the check page's picture; at most MOST_PLACES. */
  readonly lines: readonly (readonly Point[])[];
  /** open: the narrowest gap between the two ends of one of its chains. */
  readonly gap_mm: Mm | null;
}
/** How often something is so, and the names of the shapes of which it was found first. */
export interface Remark {
  readonly count: number;
  readonly first: readonly string[];
}
export interface ImportBox {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}
export interface OutlineImport {
  readonly name: string;
  readonly kind: 'svg' | 'dxf';
  /** null where the file does not say: then one unit was taken as one millimetre. */
  readonly unit: UnitFound | null;
  /** Around all shapes; all zero where there are none. */
  readonly box: ImportBox;
  readonly shapes: readonly ImportShape[];
  readonly leftOut: readonly LeftOut[];
  /** Outlines that crossed themselves and were put right. */
  readonly repaired: number;
  /** Open outlines of an SVG that were closed as their fill shows. */
  readonly closed: number;
  /** Shapes that are narrower or shallower than SMALL_mm. */
  readonly small: Remark;
  /** Pairs of shapes that overlap; `first` names both. */
  readonly overlaps: Remark;
}
/** How the shapes are turned before they land. Mirroring comes first, then the turn. */
export interface Placement {
  /** An additional factor; 1 where the unit is right. */
  readonly scale?: number;
  /** x → −x */
  readonly mirrorX?: boolean;
  /** y → −y */
  readonly mirrorY?: boolean;
  /** Counter-clockwise, degrees. */
  readonly turn_deg?: number;
}
/** A shape ready for a layout: coordinates from the centre of its own box, in whole micrometres. */
export interface PlacedShape {
  readonly name: string;
  readonly rings: readonly LayoutRing[];
  readonly area_mm2: Mm2;
  readonly width_mm: Mm;
  readonly height_mm: Mm;
  /** Where its origin lies relative to the centre of the whole import, so that a drawing can keep its arrangement. */
  readonly at_mm: Point;
}
