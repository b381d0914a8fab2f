/**
 * What the plan shows only while a hand is at work: the drawing under way, what is being moved, the words beside the
 * pointer. Never saved, never undone. Millimetres on the platform, CSS px on the canvas.
 */
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { PartId } from '../../layout/types';
import type { Mm, PlatePoint, ScreenPoint } from '../../units/types';
import type { Size } from '../camera';
import type { Caught } from '../catching';
import type { Marks } from '../magnetism';

export type DrawTool = 'rectangle' | 'disc' | 'ring' | 'polygon' | 'zone';
/** Tools that set places on the plate. */
export const setsPlaces = (tool: string): boolean => isDrawTool(tool) || tool === 'measure';
export const isDrawTool = (tool: string): tool is DrawTool =>
  ['rectangle', 'disc', 'ring', 'polygon', 'zone'].includes(tool);

/** Tools that draw an outline corner by corner. */
export type CornerTool = 'polygon' | 'zone';
export const isCornerTool = (tool: string): tool is CornerTool => tool === 'polygon' || tool === 'zone';
/** An outline has at least so many. */
export const CORNERS_NEEDED = 3;

/** A drawing under way; `to` is where the pointer stands. */
export type Draft =
  | { readonly kind: 'rectangle'; readonly from: PlatePoint; readonly to: PlatePoint }
  | { readonly kind: 'disc'; readonly centre: PlatePoint; readonly radius_mm: Mm }
  | { readonly kind: 'ring'; readonly centre: PlatePoint; readonly outer_mm: Mm; readonly inner_mm: Mm }
  | { readonly kind: 'polygon'; readonly points: readonly PlatePoint[]; readonly to: PlatePoint }
  | { readonly kind: 'zone'; readonly points: readonly PlatePoint[]; readonly to: PlatePoint }
  | { readonly kind: 'box'; readonly from: PlatePoint; readonly to: PlatePoint };

export type CornerDraft = Extract<Draft, { readonly kind: CornerTool }>;
/** A drawing that becomes a part. */
export type PartDraft = Exclude<Draft, { readonly kind: 'box' | 'zone' }>;

/** The drawing where it is one of corners. */
export const cornerDraft = (draft: Draft | null): CornerDraft | null =>
  draft && isCornerTool(draft.kind) ? (draft as CornerDraft) : null;

/** Words beside a place on the canvas, line by line. */
export interface Tip {
  readonly at: ScreenPoint;
  readonly lines: readonly string[];
}
/** A menu that was asked for: about what, where on the plate, and where on the page. */
export interface MenuAsked {
  readonly about: 'part' | 'line' | 'plate';
  readonly at: PlatePoint;
  readonly client: ScreenPoint;
}
export interface PlanUi {
  readonly draft: Draft | null;
  readonly tip: Tip | null;
  /** A press that has not been let go: a gesture runs. */
  readonly pressed: boolean;
  /** Parts under the hand: drawn on a layer of their own. */
  readonly moving: readonly PartId[];
  /** CSS cursor. */
  readonly cursor: string;
  /** Where the pointer, or the keyboard's cross, stands; marked on the rulers. */
  readonly pointer: PlatePoint | null;
  /** The cross that arrow keys move while a drawing tool is chosen. */
  readonly cross: PlatePoint | null;
  /** A seam that was clicked: its figures stand beside it until the next click. */
  readonly seam: { readonly part: PartId; readonly at: PlatePoint } | null;
  readonly menu: MenuAsked | null;
  /** What holds the parts that are dragged. */
  readonly marks: Marks | null;
  /** What a measure would be caught by, and where one that is under way begins. */
  readonly caught: Caught | null;
  readonly measureFrom: PlatePoint | null;
  readonly panKey: boolean;
  /** Of the canvas. */
  readonly size: Size;
}
export type PlanUiStore = StoreApi<PlanUi>;

const IDLE_UI: PlanUi = {
  draft: null,
  tip: null,
  pressed: false,
  moving: [],
  cursor: 'default',
  pointer: null,
  cross: null,
  seam: null,
  menu: null,
  marks: null,
  caught: null,
  measureFrom: null,
  panKey: false,
  size: { width: 0, height: 0 },
};
export const createPlanUi = (): PlanUiStore => createStore<PlanUi>(() => IDLE_UI);
