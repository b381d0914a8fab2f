/**
 * Dragging the turn handle: one part about its own origin, several about the middle of their common box. Degrees
 * counter-clockwise from +x.
 */
import { t } from '../../language/index';
import { turnParts } from '../../commands/operations/partFields';
import { groupPivot, keepPivot, swingParts } from '../../commands/operations/turn';
import type { Layout, PartId } from '../../layout/types';
import type { Degrees } from '../../units/types';
import { directionOf, snapTurn } from '../snapping';
import { editGesture, type Gesture, type Input, type PlanHost } from './gesture';
import { turnWords } from './words';

const partOf = (layout: Layout, id: PartId) => layout.parts.find((part) => part.id === id);

/** Turns several parts about the middle of their common box; the angle of the turn keeps to the steps. */
const turnGroupGesture = (host: PlanHost, start: Input, ids: readonly PartId[]): Gesture => {
  const before = host.bench.store.getState().layout;
  const pivot = groupPivot(before, ids);
  const centre = { x: pivot[0], y: pivot[1] };
  const first = directionOf(centre, start.at);
  const target = (to: Input): Degrees => snapTurn(directionOf(centre, to.at) - first, to.held);
  return editGesture(host, start, {
    label: t('Turn {count} parts', { count: ids.length }),
    begun: () => host.ui.setState({ moving: ids }),
    change: (layout, to) => {
      const next = swingParts(layout, ids, target(to), pivot, before);
      return next === layout ? layout : keepPivot(next, ids, pivot);
    },
    words: (to) => [t('by {amount}', { amount: turnWords(target(to)) })],
  });
};

/**
 * Turns one part by the angle the pointer goes round its origin, the part's own angle keeping to the steps; several as
 * a group.
 */
export const turnGesture = (host: PlanHost, start: Input, lead: PartId, ids: readonly PartId[]): Gesture => {
  if (ids.length > 1) return turnGroupGesture(host, start, ids);
  const part = partOf(host.bench.store.getState().layout, lead);
  const centre = { x: part?.at_mm[0] ?? 0, y: part?.at_mm[1] ?? 0 };
  const offset = (part?.turn_deg ?? 0) - directionOf(centre, start.at);
  const target = (to: Input): Degrees => snapTurn(directionOf(centre, to.at) + offset, to.held);
  return editGesture(host, start, {
    label: t('Turn {lead}', { lead }),
    begun: () => host.ui.setState({ moving: ids }),
    change: (layout, to) => turnParts(layout, ids, target(to) - (partOf(layout, lead)?.turn_deg ?? 0)),
    words: (to) => [turnWords(target(to))],
  });
};
