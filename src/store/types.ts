/**
 * The workbench's state: a document (undone and redone) and a view (never part of history).
 */
import type { StoreApi } from 'zustand/vanilla';
import type { KnownHeight } from '../build/analysis';
import type { FindProblems } from '../build/findProblems';
import type { Analysis } from '../build/types';
import type { LanguageChoice } from '../language/load';
import type { Fault } from '../layout/result';
import type { Layout, PartId } from '../layout/types';
import type { Mm, PlatePoint, Px } from '../units/types';

/** What is lit up everywhere at once. */
export type Hover =
  | { readonly kind: 'part'; readonly part: PartId }
  | { readonly kind: 'laser'; readonly laser: number }
  | { readonly kind: 'seam'; readonly seam: number }
  | { readonly kind: 'seams' }
  | { readonly kind: 'unassigned' }
  /** All that is exposed in the layer shown. */
  | { readonly kind: 'sections' }
  /** The range of height that wastes most. */
  | { readonly kind: 'worst' }
  | { readonly kind: 'binding' }
  | { readonly kind: 'problem'; readonly problem: number };

export type Tool = 'select' | 'pan' | 'rectangle' | 'disc' | 'ring' | 'polygon' | 'zone' | 'measure';

/** A distance on the plate: from one place to another, or between two parts. */
export interface Measured {
  readonly from: PlatePoint;
  readonly to: PlatePoint;
  readonly parts: readonly [PartId, PartId] | null;
}

/** What the part list can be sorted by. */
export type SortColumn = 'id' | 'shape' | 'height' | 'turn' | 'laser';
export interface SortBy {
  readonly column: SortColumn;
  readonly down: boolean;
}
export interface ListView {
  /** Words that all have to be in a row; none: every part is shown. */
  readonly search: string;
  /** null: in the order of the layout. */
  readonly sort: SortBy | null;
}

/** Screen px = (plate mm − centre) · scale, y turned over. */
export interface Camera {
  readonly centreX_mm: Mm;
  readonly centreY_mm: Mm;
  readonly pxPerMm: number;
}
export interface Notice {
  readonly id: number;
  readonly fault: Fault;
}
export interface View {
  /** Height the plan is cut at. */
  readonly height_mm: Mm;
  readonly selection: readonly PartId[];
  /** Parts that keep their place, and parts drawn as outlines only; both count in every figure. */
  readonly locked: readonly PartId[];
  readonly hidden: readonly PartId[];
  readonly list: ListView;
  readonly hover: Hover | null;
  readonly tool: Tool;
  /** What was measured last, until the plate changes or it is put away. */
  readonly measured: Measured | null;
  /** null: fit the platform. */
  readonly camera: Camera | null;
  /** What the plan shows while `camera` is null; the plan sets it when its size or the platform's changes. */
  readonly fitted: Camera | null;
  /** What would show the platform and every part, where parts stand off it; null where `fitted` shows them all. */
  readonly everything: Camera | null;
  /** Of the plan's canvas, CSS px; null before it has been laid out. */
  readonly planSize: { readonly width: Px; readonly height: Px } | null;
  /** The zone line that keys move: an index into the division's lines. */
  readonly activeLine: number;
  /** The drawn zone whose corners can be taken hold of: an index into the drawn zones; null where none is chosen. */
  readonly activeZone: number | null;
  readonly notices: readonly Notice[];
  readonly theme: 'light' | 'dark' | 'system';
  /** What the page speaks; the browser's language where it is left to the system. */
  readonly language: LanguageChoice;
  /** What the wheel, or two fingers on a trackpad, do on the plan. */
  readonly wheel: 'zoom' | 'pan';
  readonly firstRunDismissed: boolean;
  /** Parts that are dragged come to rest at edges, lines and gaps; and, 0 for none, on a grid. */
  readonly snapping: boolean;
  readonly grid_mm: Mm;
  /** Height that newly drawn parts get. */
  readonly drawHeight_mm: Mm;
}
/** What is known of the whole height of a plate that is too high for one frame. */
export interface HeightState {
  readonly known: KnownHeight | null;
  /** Of the layout it was last computed for, beside the page. */
  readonly checksum: { readonly layout: Layout; readonly checksum: string } | null;
  /** How far the present plate's computation is, 0 to 1; null while nothing is being computed. */
  readonly progress: number | null;
  /** The last question for it found no answer, and nobody computes. */
  readonly failed: boolean;
}
export interface WorkbenchState {
  readonly layout: Layout;
  readonly height: HeightState;
  /** Looks for problems; null until its code has come. */
  readonly find: FindProblems | null;
  readonly view: View;
  /** Name of the change that led to this layout; null for the one that was opened first. */
  readonly lastChange: string | null;
}
/** A state of the document. */
export interface Moment {
  readonly layout: Layout;
  /** Name of the change that led to it; null for the one that was opened first. */
  readonly lastChange: string | null;
}
/** The document through time, without what an open gesture has done so far. */
export interface Timeline {
  /** The first one first. */
  readonly past: readonly Moment[];
  readonly present: Moment;
  /** What can be done again, the next one last. */
  readonly future: readonly Moment[];
}
export interface HistoryLabels {
  readonly undo: string | null;
  readonly redo: string | null;
}
export interface Workbench {
  readonly store: StoreApi<WorkbenchState>;
  /**
   * The analysis of the present layout, at once. Of a plate that is too high for one frame it holds the layers that are
   * looked at; its whole height follows, and `store` tells when it is there.
   */
  analysis(): Analysis;
  /**
   * Edits the document: one history entry, or part of the open gesture. Where its revision is not edited any more, the
   * edit begins the next one.
   */
  change(label: string, recipe: (layout: Layout) => Layout): void;
  /** Puts another layout in its place, revision and all: one history entry, no edit of the present one. Ends an open gesture. */
  replace(label: string, layout: Layout): void;
  /** From here to endGesture everything is one history entry. */
  beginGesture(label: string): void;
  endGesture(): void;
  /** Back to where the gesture began; leaves no entry. */
  cancelGesture(): void;
  gestureOpen(): boolean;
  undo(): void;
  redo(): void;
  /** Labels for the buttons; null where there is nothing to undo or redo. */
  history(): HistoryLabels;
  timeline(): Timeline;
  /** Calls back when the labels may have changed; returns the way to stop. */
  onHistory(listener: () => void): () => void;
  setView(patch: Partial<View>): void;
  /** Shows a message from the table; the layout is untouched. */
  notify(fault: Fault): void;
  dismissNotice(id: number): void;
}
