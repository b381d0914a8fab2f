/**
 * How far two parts stand apart at one height: the nearest two points of their sections, or of their footprints where one has
 * no section there. Millimetres, platform coordinates.
 */
import { nearestPoints, type Nearest } from '../geometry/nearest';
import type { PartId } from '../layout/types';
import type { Mm } from '../units/types';
import { sectionAt } from './sectionAt';
import type { Analysis, PartView } from './types';

export interface Apart extends Nearest {
  /** The part asked about, and the other one. */
  readonly parts: readonly [PartId, PartId];
}

function between(a: PartView, b: PartView, height_mm: Mm): Apart | null {
  const [one, other] = [sectionAt(a, height_mm), sectionAt(b, height_mm)];
  const cut = one.length > 0 && other.length > 0;
  const near = cut ? nearestPoints(one, other) : nearestPoints(a.footprint, b.footprint);
  return near && { ...near, parts: [a.id, b.id] };
}

/**
 * The least distance of a part to another one, or to the nearest of all others where none is named.
 * @returns null where there is no other part, or one of them overlaps it
 */
export function apart(
  { parts }: Pick<Analysis, 'parts'>,
  id: PartId,
  other: PartId | null,
  height_mm: Mm,
): Apart | null {
  const own = parts.find((view) => view.id === id);
  if (!own) return null;
  const others = parts.filter((view) => view.id !== id && (other === null || view.id === other));
  const found = others.map((view) => between(own, view, height_mm));
  // one that overlaps is nearer than any other, and has no distance
  if (found.includes(null)) return null;
  return found.reduce<Apart | null>(
    (best, next) => (best === null || next!.distance_mm < best.distance_mm ? next : best),
    null,
  );
}
