/** Where parts stand. Platform millimetres, origin at the centre of the platform. */
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import type { Layout, Part, PartId } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { allFinite, changeParts } from './edit';

/** The part with its origin at (x, y), in whole micrometres; itself where it stands there, or where that is out of range. */
export function movedTo(part: Part, x_mm: Mm, y_mm: Mm): Part {
  if (!allFinite(x_mm, y_mm) || Math.max(Math.abs(x_mm), Math.abs(y_mm)) > COORDINATE_LIMIT_mm) return part;
  const [x, y] = [roundMm(x_mm), roundMm(y_mm)];
  return x === part.at_mm[0] && y === part.at_mm[1] ? part : { ...part, at_mm: [x, y] };
}

/** Moves parts by (dx, dy) from where they stand in `layout`. */
export const moveParts = (layout: Layout, ids: readonly PartId[], dx_mm: Mm, dy_mm: Mm): Layout =>
  changeParts(layout, ids, (part) => movedTo(part, part.at_mm[0] + dx_mm, part.at_mm[1] + dy_mm));

/** Puts one part's origin at (x, y). */
export const placePart = (layout: Layout, id: PartId, x_mm: Mm, y_mm: Mm): Layout =>
  changeParts(layout, [id], (part) => movedTo(part, x_mm, y_mm));
