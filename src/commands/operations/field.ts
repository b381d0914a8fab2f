/**
 * Free places within what one laser may expose, nearest to its foot first: there its spot is roundest. Parts count as
 * the upright boxes around their sections, on the safe side. Platform millimetres.
 */
import { boxOf, containsPoint } from '../../geometry/region';
import type { Box, Region } from '../../geometry/types';
import type { LaserId, Machine, Point, Zoning } from '../../layout/types';
import { roundMm } from '../../units/round';
import type { Mm } from '../../units/types';
import { divide } from '../../zoning/divide';
import { setOf } from '../../zoning/lasers';
import type { Step } from './boxes';
import { shifted } from './place';

/** Places tried per zone: a lattice of so many steps a side, and as many places in touch with what stands there. */
const LATTICE = 24;
const MOST_TOUCHING = 40;

/** What one laser may expose. */
export interface Field {
  readonly laser: LaserId;
  readonly region: Region;
  readonly box: Box;
  /** What it alone may expose. */
  readonly alone: readonly Region[];
  readonly foot: Point;
}

/** One field per laser that is on and has a zone. */
export function fieldsOf(machine: Machine, zoning: Zoning): Field[] {
  const { own, cells } = divide(machine, zoning);
  return machine.lasers.flatMap(({ id, foot_mm }, i) => {
    const [region, set] = [own[i]!, setOf(machine, [id])];
    if (region.length === 0) return [];
    const alone = cells.filter((cell) => cell.set === set).map((cell) => cell.region);
    return [{ laser: id, region, box: boxOf(region), alone, foot: foot_mm }];
  });
}

/** True where a segment runs through the inside of a box (Liang and Barsky's clipping). */
function runsThrough(box: Box, x0: Mm, y0: Mm, x1: Mm, y1: Mm): boolean {
  let [from, to] = [0, 1];
  const sides = [
    [x0 - x1, x0 - box.minX],
    [x1 - x0, box.maxX - x0],
    [y0 - y1, y0 - box.minY],
    [y1 - y0, box.maxY - y0],
  ] as const;
  for (const [step, room] of sides) {
    if (step === 0 && room <= 0) return false;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  return to - from > 1e-9;
}

/** True where a box lies inside a region; touching its outline is inside. */
export function boxInRegion(region: Region, box: Box): boolean {
  if (!containsPoint(region, (box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2)) return false;
  return region.every((ring) => {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      if (runsThrough(box, ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!)) return false;
    }
    return true;
  });
}

interface Span {
  readonly low: Mm;
  readonly high: Mm;
}
const across = ({ minX, maxX }: Box): Span => ({ low: minX, high: maxX });
const deep = ({ minY, maxY }: Box): Span => ({ low: minY, high: maxY });

/** Lower ends that a span of this length may have within the room: a lattice, ends that touch others, the wanted one. */
function ends(room: Span, length: Mm, others: readonly Span[], wanted: Mm): Mm[] {
  const last = room.high - length;
  if (last < room.low) return [];
  const inside = (end: Mm): boolean => end >= room.low && end <= last;
  const lattice = Array.from({ length: LATTICE + 1 }, (_, i) => room.low + ((last - room.low) * i) / LATTICE);
  const touching = others
    .flatMap(({ low, high }) => [high, low - length])
    .filter(inside)
    .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
  return [wanted, ...lattice, ...touching.slice(0, MOST_TOUCHING)].filter(inside);
}

/** Up to the next micrometre, so that rounding never brings a box back over its neighbour. */
const upToMicrometre = (value: Mm): Mm => roundMm(Math.ceil(value * 1000 - 1e-6) / 1000);

/** Steps that bring a box into the field's own box, the one that ends nearest to the foot first. */
function stepsInto({ box, foot }: Field, own: Box, taken: readonly Box[]): Step[] {
  const near = taken.filter((other) => other.minX < box.maxX && other.maxX > box.minX);
  const [width, depth] = [own.maxX - own.minX, own.maxY - own.minY];
  const [wantedX, wantedY] = [foot[0] - width / 2, foot[1] - depth / 2];
  const xs = ends(across(box), width, near.map(across), wantedX);
  const ys = ends(deep(box), depth, near.map(deep), wantedY);
  const steps = xs.flatMap((x) =>
    ys.map((y) => ({ x, y, dx: upToMicrometre(x - own.minX), dy: upToMicrometre(y - own.minY) })),
  );
  return steps.sort(
    (a, b) => Math.hypot(a.x - wantedX, a.y - wantedY) - Math.hypot(b.x - wantedX, b.y - wantedY),
  );
}

/** The step that brings a box to a free place of a field, if possible to where no other laser exposes; null where none does. */
export function stepIntoField(
  field: Field,
  own: Box,
  taken: readonly Box[],
  isFree: (box: Box) => boolean,
): Step | null {
  const free = stepsInto(field, own, taken).filter((step) => isFree(shifted(own, step.dx, step.dy)));
  const within = (regions: readonly Region[]) => (step: Step) =>
    regions.some((region) => boxInRegion(region, shifted(own, step.dx, step.dy)));
  return free.find(within(field.alone)) ?? free.find(within([field.region])) ?? null;
}
