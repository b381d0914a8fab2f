/**
 * What a plate becomes when a machine, a process or a shape from elsewhere is put in: the plate gets a copy. A machine with
 * other lasers takes over zones and pins by laser id, where that is not there by the place in the list, else by the
 * nearest foot; a pin that only the nearest foot could follow is lifted.
 */
import { ok, type Result } from '../../layout/result';
import { sameValue } from '../../layout/same';
import type { Laser, LaserId, Layout, Machine, Process, Shape, ShapeId, Zoning } from '../../layout/types';
import { addPart, addShapes } from './shapes';
import { shapeStem } from './names';
import { reviewed } from './review';
import { nearestLasers } from './strategy';

/** Who follows a laser of the machine before. */
export interface Heir {
  readonly from: LaserId;
  readonly to: LaserId;
  /** False where nothing but its nearness speaks for it. */
  readonly certain: boolean;
}

/** Lasers of the machine before that the next one does not have, each with the one that follows. */
export function heirs(before: Machine, next: Machine): readonly Heir[] {
  const known = new Set(next.lasers.map(({ id }) => id));
  const heirOf = ({ id, foot_mm }: Laser, place: number): Heir[] => {
    if (known.has(id)) return [];
    const atPlace = next.lasers[place];
    if (atPlace) return [{ from: id, to: atPlace.id, certain: true }];
    return [{ from: id, to: nearestLasers(next, [foot_mm])[0]!, certain: false }];
  };
  return before.lasers.flatMap(heirOf);
}

type Follow = (id: LaserId) => LaserId;

function followed(zoning: Zoning, follow: Follow): Zoning {
  if (zoning.strategy === 'wholeField') return zoning;
  if (zoning.strategy !== 'drawn') return { ...zoning, lasers: zoning.lasers.map(follow) };
  const zones = zoning.zones.map((zone) => ({ ...zone, lasers: [...new Set(zone.lasers.map(follow))] }));
  return { ...zoning, zones };
}

/** The plate on another machine. Faults: those of readLayoutValue. */
export function withLibraryMachine(layout: Layout, machine: Machine): Result<Layout> {
  const moves = heirs(layout.machine, machine);
  const heirBy = new Map(moves.map((heir) => [heir.from, heir]));
  const follow: Follow = (id) => heirBy.get(id)?.to ?? id;
  const pinned = (id: LaserId | null): LaserId | null =>
    id !== null && heirBy.get(id)?.certain === false ? null : id && follow(id);
  const zoning = layout.zoning.map((step) => ({ ...step, zoning: followed(step.zoning, follow) }));
  const parts = layout.parts.map((part) => ({ ...part, laser: pinned(part.laser) }));
  const next = { ...layout, machine, ...(moves.length > 0 ? { zoning, parts } : {}) };
  return reviewed(layout, next);
}

/** The plate with another process. Faults: those of readLayoutValue. */
export const withLibraryProcess = (layout: Layout, process: Process): Result<Layout> =>
  reviewed(layout, { ...layout, process });

/**
 * One more part of a shape, which the plate gets where it does not have that very shape under that name.
 * Faults: those of addShapes.
 */
export function withLibraryShape(layout: Layout, name: ShapeId, shape: Shape): Result<Layout> {
  const stem = shapeStem(name);
  const known = Object.hasOwn(layout.shapes, stem) && sameValue(layout.shapes[stem], shape);
  return known ? ok(addPart(layout, stem)) : addShapes(layout, [{ name, shape, sound: true }]);
}
