/**
 * Rows dragged by their grip to another place of the list: where they would land while they are carried, one step of
 * history when they are let go. The layout changes at the end only; whatever ends the drag otherwise leaves everything as it
 * was. Heights in CSS px of the window; a gap counts the rows above it.
 */
import { placeInList } from '../../commands/operations';
import { t } from '../../language/index';
import type { Layout, PartId } from '../../layout/types';
import type { Workbench } from '../../store/types';

/** Px a press may wander before it is a drag. */
const THRESHOLD_PX = 3;

/** The rows as they lie in the window; all are of one height. */
export interface Rows {
  readonly top: number;
  readonly height: number;
}
export interface Carried {
  readonly ids: readonly PartId[];
  readonly gap: number;
  /** Where they would land, as "3 of 40" or "3 to 5 of 40"; null where they stay where they are. */
  readonly words: string | null;
}
export interface ListHost {
  readonly bench: Workbench;
  rows(): Rows;
  /** What is carried, for the screen; null: nothing any more. */
  show(carried: Carried | null): void;
}
export interface ListDrag {
  /** False where the drag cannot go on. */
  move(y: number): boolean;
  /** True where it was a drag, false where it was a press. */
  end(): boolean;
  cancel(): void;
  /** True once the press has become a drag. */
  open(): boolean;
}

/** The gap nearest to a height: the rows whose middle is above it are above the gap. */
export function gapAt(y: number, { top, height }: Rows, count: number): number {
  if (count === 0 || height <= 0) return 0;
  return Math.min(Math.max(Math.round(((y - top) * count) / height), 0), count);
}

/** More single places than this are not read out. */
const MOST_PLACES = 5;

/** "3 of 40", of neighbours "3 to 5 of 40", of parts with others between them "2, 5 of 40". */
export function placeWords({ parts }: Layout, ids: readonly PartId[]): string {
  const chosen = new Set(ids);
  const places = parts.flatMap(({ id }, i) => (chosen.has(id) ? [i + 1] : []));
  const [first = 0, last = first] = [places[0], places.at(-1)];
  const count = parts.length;
  if (places.length > 1 && last - first === places.length - 1)
    return t('{first} to {last} of {count}', { first, last, count });
  const named = places.slice(0, MOST_PLACES).join(', ');
  return t('{place} of {count}', { place: places.length > MOST_PLACES ? `${named} …` : named, count });
}

function carriedAt(layout: Layout, ids: readonly PartId[], gap: number): Carried {
  const next = placeInList(layout, ids, gap);
  return { ids, gap, words: next === layout ? null : placeWords(next, ids) };
}

/** A drag that began with a press at `startY` on the grip of a row; it takes the selection along where that row is in it. */
export function dragRows({ bench, rows, show }: ListHost, grabbed: PartId, startY: number): ListDrag {
  const { selection } = bench.store.getState().view;
  const ids = selection.includes(grabbed) ? selection : [grabbed];
  const label =
    ids.length > 1
      ? t('Move {count} parts in the list', { count: ids.length })
      : t('Move {part} in the list', { part: grabbed });
  let carried: Carried | null = null;
  const layoutNow = (): Layout => bench.store.getState().layout;
  const begin = (): void => {
    bench.beginGesture(label);
    bench.setView({ selection: ids });
  };
  const stop = (): void => {
    carried = null;
    show(null);
  };
  const cancel = (): void => {
    if (carried === null) return;
    if (bench.gestureOpen()) bench.cancelGesture();
    bench.setView({ selection });
    stop();
  };
  return {
    move(y) {
      if (carried === null && Math.abs(y - startY) < THRESHOLD_PX) return true;
      if (carried === null) begin();
      else if (!bench.gestureOpen()) return (cancel(), false);
      const layout = layoutNow();
      show((carried = carriedAt(layout, ids, gapAt(y, rows(), layout.parts.length))));
      return true;
    },
    end() {
      if (carried === null) return false;
      const { gap } = carried;
      if (bench.gestureOpen()) {
        bench.change(label, (layout) => placeInList(layout, ids, gap));
        bench.endGesture();
      }
      stop();
      return true;
    },
    cancel,
    open: () => carried !== null,
  };
}
