/**
 * A gesture runs from pressing to letting go. Whatever it changes is one entry of history; cancelled, it leaves the
 * layout as it was. If its entry was closed by someone else (undo during a drag), it stops by itself.
 */
import type { Layout, PartId } from '../../layout/types';
import type { Camera, Workbench } from '../../store/types';
import type { PlatePoint, ScreenPoint } from '../../units/types';
import type { Size } from '../camera';
import type { Modifiers } from '../snapping';
import type { PlanUiStore } from './planUi';

/** Where the pointer is, and the keys held with it. */
export interface Input {
  readonly at: PlatePoint;
  readonly screen: ScreenPoint;
  readonly held: Modifiers;
}
export interface Gesture {
  /** False where the gesture cannot go on. */
  move(to: Input): boolean | void;
  end(at: Input): void;
  cancel(): void;
}
/** Where parts come to rest whose grabbed one stood at `from` and is wanted at `to`. */
export type Magnet = (from: PlatePoint, to: PlatePoint, held: Modifiers) => PlatePoint;
/** What gestures work on. */
export interface PlanHost {
  readonly bench: Workbench;
  readonly ui: PlanUiStore;
  /** What pulls at parts that are dragged; null or absent: nothing. */
  magnet?(ids: readonly PartId[]): Magnet | null;
  camera(): Camera;
  size(): Size;
}

/** Screen px a press may wander before it is a drag. */
export const DRAG_THRESHOLD_PX = 3;

export interface EditOptions {
  readonly label: string;
  /** The layout with the pointer at `to`, made from the present one. */
  readonly change: (layout: Layout, to: Input) => Layout;
  /** Words beside the pointer after a change. */
  readonly words: (to: Input) => readonly string[];
  readonly begun?: () => void;
  /** A press that never became a drag. */
  readonly clicked?: (at: Input) => void;
}

const wandered = (a: ScreenPoint, b: ScreenPoint): boolean =>
  Math.hypot(a.left - b.left, a.top - b.top) >= DRAG_THRESHOLD_PX;

/** A drag that changes the layout: begins once the pointer has wandered, one history entry. */
export const editGesture = (host: PlanHost, start: Input, options: EditOptions): Gesture => {
  const { bench, ui } = host;
  let begun = false;
  const begin = () => {
    bench.beginGesture(options.label);
    begun = true;
    ui.setState({ tip: null, seam: null });
    options.begun?.();
  };
  return {
    move(to) {
      if (!begun && !wandered(start.screen, to.screen)) return true;
      if (!begun) begin();
      if (!bench.gestureOpen()) return false;
      bench.change(options.label, (layout) => options.change(layout, to));
      ui.setState({ tip: { at: to.screen, lines: options.words(to) } });
      return true;
    },
    end(at) {
      if (!begun) options.clicked?.(at);
      else if (bench.gestureOpen()) bench.endGesture();
    },
    cancel() {
      if (begun && bench.gestureOpen()) bench.cancelGesture();
    },
  };
};
