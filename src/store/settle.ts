/**
 * What must hold in every state a subscriber sees: the selection names parts that exist, by the name that they have now;
 * the hover names something that exists, the zone line for the keys is one of the lines, the height lies in the build.
 * Millimetres above the platform.
 */
import type { StateCreator, StoreMutatorIdentifier } from 'zustand/vanilla';
import { buildTop } from '../layout/height';
import type { Layout, LayoutAt, PartId } from '../layout/types';
import type { Mm } from '../units/types';
import { zoneLines } from '../zoning/lines';
import { renamed } from './locked';
import { plateShown } from './shown';
import type { Hover, View, WorkbenchState } from './types';

interface Changed {
  readonly layout: boolean;
  /** What is known of the whole height, problems among it. */
  readonly known: boolean;
  readonly height: boolean;
}

/** Indices into an analysis (seam, problem) mean nothing once the layout or the height is another one. */
function hoverHolds(hover: Hover, state: WorkbenchState, changed: Changed): boolean {
  switch (hover.kind) {
    case 'part':
      return state.layout.parts.some((part) => part.id === hover.part);
    case 'laser':
      return hover.laser < state.layout.machine.lasers.length;
    case 'seam':
      return !changed.layout && !changed.height;
    case 'problem':
      return !changed.layout && !changed.known;
    case 'seams':
    case 'unassigned':
    case 'sections':
    case 'worst':
    case 'binding':
      return true;
  }
}

function settledHeight(height_mm: Mm, before_mm: Mm, layout: Layout): Mm {
  const wanted = Number.isFinite(height_mm) ? height_mm : before_mm;
  return Math.min(Math.max(wanted, 0), buildTop(layout));
}

/** Those of some ids that name a part; a part that got another name is meant by that one. */
function named(
  ids: readonly PartId[],
  layout: Layout,
  names: ReadonlyMap<PartId, PartId>,
): readonly PartId[] {
  if (ids.length === 0) return ids;
  const meant = names.size > 0 ? ids.map((id) => names.get(id) ?? id) : ids;
  const known = new Set(layout.parts.map((part) => part.id));
  return meant.every((id) => known.has(id)) ? meant : meant.filter((id) => known.has(id));
}

/** The chosen line where there is one, else the first. */
const settledLine = (line: number, plate: LayoutAt): number =>
  Number.isInteger(line) && line >= 0 && line < zoneLines(plate.zoning).length ? line : 0;

/** The chosen drawn zone where there is one. */
const settledZone = (zone: number | null, { zoning }: LayoutAt): number | null =>
  zone !== null && zoning.strategy === 'drawn' && zone in zoning.zones ? zone : null;

function settledHover(next: WorkbenchState, before: WorkbenchState, height_mm: Mm): Hover | null {
  const { hover } = next.view;
  const fresh = hover !== before.view.hover && next.layout === before.layout;
  const changed = {
    layout: next.layout !== before.layout,
    known: next.height.known !== before.height.known,
    height: !fresh && height_mm !== before.view.height_mm,
  };
  return hover && hoverHolds(hover, next, changed) ? hover : null;
}

/** `next` with its view brought in line with its layout; the same object where nothing was amiss. */
export function settle(next: WorkbenchState, before: WorkbenchState): WorkbenchState {
  const { view, layout } = next;
  const height_mm = settledHeight(view.height_mm, before.view.height_mm, layout);
  const names = renamed(before.layout, layout);
  const [selection, locked, hidden] = [view.selection, view.locked, view.hidden].map((ids) =>
    named(ids, layout, names),
  ) as [View['selection'], View['locked'], View['hidden']];
  const hover = settledHover(next, before, height_mm);
  // what was measured stands on places of the plate as it was
  const measured = layout === before.layout ? view.measured : null;
  const plate = plateShown({ layout, view: { ...view, height_mm } });
  const activeLine = settledLine(view.activeLine, plate);
  const activeZone = settledZone(view.activeZone, plate);
  const clean =
    height_mm === view.height_mm &&
    selection === view.selection &&
    locked === view.locked &&
    hidden === view.hidden &&
    hover === view.hover &&
    measured === view.measured &&
    activeLine === view.activeLine &&
    activeZone === view.activeZone;
  if (clean) return next;
  return {
    ...next,
    view: { ...view, height_mm, selection, locked, hidden, hover, measured, activeLine, activeZone },
  };
}

/** A zustand layer below the history: whatever is set, undo and redo included, arrives settled in one step. */
export const settled =
  <Mcs extends [StoreMutatorIdentifier, unknown][]>(
    inner: StateCreator<WorkbenchState, [], Mcs>,
  ): StateCreator<WorkbenchState, [], Mcs> =>
  (_, get, api) => {
    const raw = api.setState;
    const set = (partial: Parameters<typeof raw>[0]) => {
      const before = get();
      const patch = typeof partial === 'function' ? partial(before) : partial;
      raw(settle({ ...before, ...patch }, before), true);
    };
    api.setState = set as typeof raw;
    return inner(set as typeof raw, get, api as Parameters<typeof inner>[2]);
  };
