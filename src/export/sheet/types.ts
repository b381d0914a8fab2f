/**
 * What the operator's sheet is made of: facts over the whole height (who exposes which part from where to where, seams,
 * what a failing laser leaves), and the page itself as rows of words. Millimetres above the platform, hours, cm³.
 * Indices point into layout.parts and layout.machine.lasers.
 */
import { type Text } from '../../language/index';
import type { Cm3, Hours, Mm } from '../../units/types';

/** Heights in a row, of whole layers. */
export interface HeightRange {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
}
/** One laser's share of a part; laser −1: exposed by none. */
export interface Holding {
  readonly part: number;
  readonly laser: number;
  /** Ascending, none touching the next. */
  readonly ranges: readonly HeightRange[];
}
/** A part cut between two lasers, the lower index first. */
export interface SeamRun {
  readonly part: number;
  readonly lasers: readonly [number, number];
  readonly ranges: readonly HeightRange[];
  /** In the layer where it is longest. */
  readonly longest_mm: Mm;
}
/** What a build comes to that leaves something unexposed, or nothing. */
export interface Rest {
  /** Parts of which something is left unexposed, ascending. */
  readonly parts: readonly number[];
  readonly volume_cm3: Cm3;
  /** Uncorrected. */
  readonly time_h: Hours;
}
/** What is left of the whole build where one laser is off from the first layer on. */
export interface Outage {
  readonly laser: number;
  /** Parts given to this laser by hand. */
  readonly pinned: readonly number[];
  /** With the zones as they are; null where no other laser is on. */
  readonly asZoned: Rest | null;
  /**
   * Divided anew: the whole field among the others, what was pinned to it set free. null where nothing is left
   * unexposed as zoned, or where no other laser is on.
   */
  readonly anew: Rest | null;
}
export interface SheetFacts {
  /** Of the layout. */
  readonly checksum: string;
  /** By part, then by laser. */
  readonly holdings: readonly Holding[];
  readonly seams: readonly SeamRun[];
  /** Most seams, and the longest sum of them, in one layer. */
  readonly mostSeams: number;
  readonly longestSeams_mm: Mm;
  /** Of every laser that is on, in the machine's order. */
  readonly outages: readonly Outage[];
}

/** A row of a table: what it is about, and what is said of it. */
export interface SheetRow {
  readonly head: string;
  readonly body: string;
  /** A box to tick off, and a line for the actual time. */
  readonly tick?: boolean;
}
/** A table of the sheet. */
export interface SheetTable {
  readonly title: string;
  /** Stands under the title; '' for none. */
  readonly hint: string;
  readonly rows: readonly SheetRow[];
  /** Where not all rows have room: "and {count} more …: next page". */
  readonly rest: Text;
}
/** The words of the sheet, whatever it is drawn on. */
export interface SheetContent {
  readonly name: string;
  /** "NOT FOR USE", "DRAFT, NOT RELEASED", "RELEASED" … */
  readonly state: string;
  readonly blocked: boolean;
  /** Why it is not for use. */
  readonly reasons: readonly string[];
  readonly revision: string;
  readonly checksum: string;
  /** Label and value. */
  readonly facts: readonly (readonly [string, string])[];
  readonly events: SheetTable;
  readonly cautions: SheetTable;
  readonly parts: SheetTable;
  readonly seams: SheetTable;
  readonly outages: SheetTable;
  /** Names as typed, beside the lines to sign on. */
  readonly signatures: readonly (readonly [string, string])[];
  /** Blanks to be filled in by hand: what the layout does not know, and what is known only afterwards. */
  readonly blanks: readonly string[];
  readonly notes: readonly string[];
}
