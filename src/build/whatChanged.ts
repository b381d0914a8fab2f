/**
 * What differs between two layouts, in the words of the plate: parts moved, turned, added, taken away or given other
 * rules; other shapes, zones, process, machine. Parts are known by their id. Millimetres, degrees.
 */
import { sameValue } from '../layout/same';
import type { Layout, Part, PartId } from '../layout/types';
import type { Degrees, Mm } from '../units/types';

export interface Moved {
  readonly id: PartId;
  readonly by_mm: Mm;
}
export interface Turned {
  readonly id: PartId;
  /** The shorter way round, counter-clockwise positive. */
  readonly by_deg: Degrees;
}
export interface Changes {
  readonly moved: readonly Moved[];
  readonly turned: readonly Turned[];
  readonly added: readonly PartId[];
  readonly removed: readonly PartId[];
  /** Other seams, pinned laser or time factor. */
  readonly ruled: readonly PartId[];
  /** Of another shape, or a shape whose outlines changed. */
  readonly reshaped: readonly PartId[];
  readonly zoning: boolean;
  readonly allocation: boolean;
  /** Keys of the process, the machine and the limits that differ. */
  readonly process: readonly string[];
  readonly machine: readonly string[];
  readonly limits: readonly string[];
  readonly schedule: boolean;
}

const FULL_TURN: Degrees = 360;
/** Places are kept to a micrometre, angles to a thousandth of a degree. */
const SAME_MM: Mm = 1e-6;
const SAME_DEG: Degrees = 1e-6;

const distance = (a: Part, b: Part): Mm => Math.hypot(b.at_mm[0] - a.at_mm[0], b.at_mm[1] - a.at_mm[1]);

function turn(a: Part, b: Part): Degrees {
  const by = (((b.turn_deg - a.turn_deg) % FULL_TURN) + FULL_TURN) % FULL_TURN;
  return by > FULL_TURN / 2 ? by - FULL_TURN : by;
}

const sameRule = (a: Part, b: Part): boolean =>
  a.seams === b.seams && a.laser === b.laser && a.timeFactor === b.timeFactor;

const keysThatDiffer = <T extends object>(a: T, b: T): string[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(
    (key) => !sameValue(a[key as keyof T], b[key as keyof T]),
  );

/** What became of `before` in `after`. */
export function whatChanged(before: Layout, after: Layout): Changes {
  const was = new Map(before.parts.map((part) => [part.id, part]));
  const is = new Set(after.parts.map(({ id }) => id));
  const pairs = after.parts.flatMap((part) => {
    const old = was.get(part.id);
    return old ? [[old, part] as const] : [];
  });
  const sameShape = (a: Part, b: Part): boolean => sameValue(before.shapes[a.shape], after.shapes[b.shape]);
  const ids = (differs: (a: Part, b: Part) => boolean): PartId[] =>
    pairs.filter(([a, b]) => differs(a, b)).map(([{ id }]) => id);
  return {
    moved: pairs
      .map(([a, b]) => ({ id: a.id, by_mm: distance(a, b) }))
      .filter(({ by_mm }) => by_mm > SAME_MM),
    turned: pairs
      .map(([a, b]) => ({ id: a.id, by_deg: turn(a, b) }))
      .filter(({ by_deg }) => Math.abs(by_deg) > SAME_DEG),
    added: after.parts.map(({ id }) => id).filter((id) => !was.has(id)),
    removed: before.parts.map(({ id }) => id).filter((id) => !is.has(id)),
    ruled: ids((a, b) => !sameRule(a, b)),
    reshaped: ids((a, b) => !sameShape(a, b)),
    zoning: !sameValue(before.zoning, after.zoning),
    allocation: before.allocation !== after.allocation,
    process: keysThatDiffer(before.process, after.process),
    machine: keysThatDiffer(before.machine, after.machine),
    limits: keysThatDiffer(before.limits, after.limits),
    schedule: !sameValue(before.schedule, after.schedule),
  };
}
