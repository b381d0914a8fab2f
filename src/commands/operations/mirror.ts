/**
 * Mirroring where parts stand and how they are turned. A part itself is never mirrored: a mirrored casting is another
 * part. Platform millimetres, degrees counter-clockwise from +x. Mathematics: with M: x → −x and a turn R,
 * M·R(θ)·S = R(−θ)·M·S; so a shape that equals its own mirror image in x is turned by −θ, one that equals it in y by
 * 180° − θ, and the plate is then truly mirrored. (For a mirror of y the other way round.)
 */
import type { Box } from '../../geometry/types';
import type { Layout, LayoutRing, Part, PartId, Point, Shape } from '../../layout/types';
import { roundDeg } from '../../units/round';
import type { Degrees, Mm } from '../../units/types';
import type { Axis } from './arrange';
import { boxAroundAll, boxedParts } from './boxes';
import { changeParts } from './edit';
import { movedTo } from './parts';
import { partBox } from './place';

/** Sections of larger shapes are not compared point by point: they count as unlike their mirror image. */
const MOST_COMPARED = 50_000;

const micrometres = (value: Mm): number => Math.round(value * 1000) + 0;

/** One text per point or circle, y or x turned over where asked. */
function marks(ring: LayoutRing, flip: Axis | null): string[] {
  const [sx, sy] = [flip === 'x' ? -1 : 1, flip === 'y' ? -1 : 1];
  const mark = ([x, y]: Point, r: Mm = 0): string =>
    `${micrometres(sx * x)} ${micrometres(sy * y)} ${micrometres(r)}`;
  if ('circle_mm' in ring) return [mark([ring.circle_mm[0], ring.circle_mm[1]], ring.circle_mm[2])];
  return ring.map((point) => mark(point));
}

const pointCount = ({ slabs }: Shape): number =>
  slabs.reduce(
    (sum, { rings }) => sum + rings.reduce((n, ring) => n + ('circle_mm' in ring ? 1 : ring.length), 0),
    0,
  );

/** True where every section of a shape has the same points as its mirror image, with x (or y) turned over. */
function equalsMirror(shape: Shape, axis: Axis): boolean {
  if (pointCount(shape) > MOST_COMPARED) return false;
  return shape.slabs.every(({ rings }) => {
    const own = new Set(rings.flatMap((ring) => marks(ring, null)));
    return rings.every((ring) => marks(ring, axis).every((mark) => own.has(mark)));
  });
}

/** What a mirrored part is turned by, and whether it then is its own mirror image. */
interface Mirrored {
  readonly turn_deg: Degrees;
  readonly exact: boolean;
}
function mirroredTurn(shape: Shape, turn_deg: Degrees, axis: Axis): Mirrored {
  if (equalsMirror(shape, axis)) return { turn_deg: roundDeg(-turn_deg), exact: true };
  const other = equalsMirror(shape, axis === 'x' ? 'y' : 'x');
  return { turn_deg: roundDeg(other ? 180 - turn_deg : -turn_deg), exact: other };
}

export interface MirroredLayout {
  readonly layout: Layout;
  /** Parts whose shape is unlike its mirror image: place and turn are mirrored, the part stays what it is. */
  readonly unlike: readonly PartId[];
}

const middle = ({ minX, minY, maxX, maxY }: Box): Point => [(minX + maxX) / 2, (minY + maxY) / 2];

/** A part so that its box, turned as told, has its middle at a point. */
function centredAt(layout: Layout, part: Part, turn_deg: Degrees, [x, y]: Point): Part {
  const turned = { ...part, turn_deg };
  const [nowX, nowY] = middle(partBox(layout, turned));
  const next = movedTo(turned, part.at_mm[0] + x - nowX, part.at_mm[1] + y - nowY);
  const [oldX, oldY] = part.at_mm;
  const same = next.at_mm[0] === oldX && next.at_mm[1] === oldY && turn_deg === part.turn_deg;
  return same ? part : next;
}

/** Mirrors places and turns about the middle of the common box: 'x' swaps left and right, 'y' front and back. */
export function mirrorPlaces(layout: Layout, ids: readonly PartId[], axis: Axis): MirroredLayout {
  const chosen = boxedParts(layout, ids);
  const [cx, cy] = middle(boxAroundAll(chosen.map(({ box }) => box)));
  const unlike: PartId[] = [];
  const mirrored = (part: Part): Part => {
    const { turn_deg, exact } = mirroredTurn(layout.shapes[part.shape]!, part.turn_deg, axis);
    if (!exact) unlike.push(part.id);
    const [x, y] = middle(partBox(layout, part));
    return centredAt(layout, part, turn_deg, axis === 'x' ? [2 * cx - x, y] : [x, 2 * cy - y]);
  };
  return { layout: changeParts(layout, ids, mirrored), unlike };
}
