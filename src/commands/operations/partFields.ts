/**
 * How parts are turned, and what may happen to them. Degrees counter-clockwise from +x; a turn is about the shape's own origin.
 */
import type { Layout, Part, PartId } from '../../layout/types';
import { roundDeg } from '../../units/round';
import type { Degrees } from '../../units/types';
import { changeParts } from './edit';

function turned(part: Part, turn_deg: Degrees): Part {
  if (!Number.isFinite(turn_deg)) return part;
  const turn = roundDeg(turn_deg);
  return turn === part.turn_deg ? part : { ...part, turn_deg: turn };
}

/** Turns every part by the same angle, each about its own origin. */
export const turnParts = (layout: Layout, ids: readonly PartId[], by_deg: Degrees): Layout =>
  changeParts(layout, ids, (part) => turned(part, part.turn_deg + by_deg));

/** Turns parts to an angle. */
export const setPartTurn = (layout: Layout, ids: readonly PartId[], turn_deg: Degrees): Layout =>
  changeParts(layout, ids, (part) => turned(part, turn_deg));

export type PartFields = Partial<Pick<Part, 'seams' | 'laser' | 'timeFactor'>>;

/** A pin names a laser of the machine (or null), a time factor is a positive number; else the field stays. */
function acceptedFields(layout: Layout, { seams, laser, timeFactor }: PartFields): PartFields {
  const knows = laser === null || layout.machine.lasers.some(({ id }) => id === laser);
  const sane = timeFactor !== undefined && timeFactor >= 0.001 && timeFactor <= 1000;
  return {
    ...(seams === undefined ? {} : { seams }),
    ...(laser === undefined || !knows ? {} : { laser }),
    ...(sane ? { timeFactor } : {}),
  };
}

/** Sets seams, pinned laser and time factor (0.001 to 1000) of the parts named. */
export function setPartFields(layout: Layout, ids: readonly PartId[], fields: PartFields): Layout {
  const accepted = acceptedFields(layout, fields);
  return changeParts(layout, ids, (part) => {
    const next = { ...part, ...accepted };
    const same =
      next.seams === part.seams && next.laser === part.laser && next.timeFactor === part.timeFactor;
    return same ? part : next;
  });
}
