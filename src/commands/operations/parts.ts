/**
 * Where parts stand, how they are turned, and what may happen to them. Platform millimetres, origin at the centre of
 * the platform; degrees counter-clockwise from +x; a turn is about the shape's own origin.
 */
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import type { Layout, Part, PartId } from '../../layout/types';
import type { Degrees, Mm } from '../../units/types';
import { roundDeg, roundMm } from '../../units/round';
import { allFinite, changeParts } from './edit';

/** The part with its origin at (x, y), in whole micrometres; itself where it stands there, or where that is out of range. */
export function movedTo(part: Part, x_mm: Mm, y_mm: Mm): Part {
  if (!allFinite(x_mm, y_mm) || Math.max(Math.abs(x_mm), Math.abs(y_mm)) > COORDINATE_LIMIT_mm) return part;
  const [x, y] = [roundMm(x_mm), roundMm(y_mm)];
  return x === part.at_mm[0] && y === part.at_mm[1] ? part : { ...part, at_mm: [x, y] };
}

function turned(part: Part, turn_deg: Degrees): Part {
  if (!Number.isFinite(turn_deg)) return part;
  const turn = roundDeg(turn_deg);
  return turn === part.turn_deg ? part : { ...part, turn_deg: turn };
}

/** Moves parts by (dx, dy) from where they stand in `layout`. */
export const moveParts = (layout: Layout, ids: readonly PartId[], dx_mm: Mm, dy_mm: Mm): Layout =>
  changeParts(layout, ids, (part) => movedTo(part, part.at_mm[0] + dx_mm, part.at_mm[1] + dy_mm));

/** Puts one part's origin at (x, y). */
export const placePart = (layout: Layout, id: PartId, x_mm: Mm, y_mm: Mm): Layout =>
  changeParts(layout, [id], (part) => movedTo(part, x_mm, y_mm));

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
