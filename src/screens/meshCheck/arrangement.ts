/**
 * Where the parts of a 3MF stand as the file places them: for each copy of a body the middle of the first one's footprint,
 * carried along. A file has no origin of the platform, so the whole arrangement tells: it lies on a platform measured from
 * its front left corner, or from its middle, or it is moved to the middle as a whole. Millimetres, degrees.
 */
import type { CopyPlace } from '../../commands/operations/shapes';
import { cosSin } from '../../geometry/region';
import { SIZE_LIMIT_mm } from '../../layout/limits';
import type { Machine, Point } from '../../layout/types';
import type { Mm } from '../../units/types';
import type { MeshBodyNamed, MeshFileFound } from '../../worker/meshMessages';
import type { MeshLook } from '../../worker/meshes';
import { chosenPlaces, scaleFor, type MeshChoices } from './choices';

export type Origin = 'corner' | 'middle' | 'moved';
export interface Arrangement {
  readonly origin: Origin;
  /** By body of the file. */
  readonly places: ReadonlyMap<number, readonly CopyPlace[]>;
}

const SLACK_mm: Mm = 0.01;

/** True while the bodies stand as in the file; turned ones have no place there. */
export const standsAsInFile = ({ turns }: MeshChoices): boolean =>
  Object.values(turns).every((turn) => turn === 0);

/** The copies of one body, in the coordinates of the file times a scale. */
function copiesOf({ items, middle_mm: [cx, cy] }: MeshBodyNamed, scale: number): CopyPlace[] {
  const [first] = items;
  return items.map(({ x_mm, y_mm, turn_deg }) => {
    const [c, s] = cosSin(turn_deg);
    const [dx, dy] = [cx - first!.x_mm, cy - first!.y_mm];
    return { at_mm: [scale * (c * dx - s * dy + x_mm), scale * (s * dx + c * dy + y_mm)], turn_deg };
  });
}

/**
 * Files that place several parts, each elsewhere. One part alone says only where its drawing had its origin, and parts that
 * all have the same place were never placed.
 */
export function placesParts({ bodies }: MeshFileFound): boolean {
  const all = bodies.flatMap((body) => copiesOf(body, 1));
  const grid = (value: Mm): number => Math.round(value / SLACK_mm);
  const different = new Set(all.map(({ at_mm }) => `${grid(at_mm![0])} ${grid(at_mm![1])}`));
  return all.length > 1 && different.size === all.length;
}

interface Span {
  readonly min: Mm;
  readonly max: Mm;
}
const liesIn = ({ min, max }: Span, low: Mm, high: Mm): boolean =>
  min >= low - SLACK_mm && max <= high + SLACK_mm;

/** From where a side of the platform is measured, and how far the arrangement moves along it. */
function shiftOf([x, y]: readonly [Span, Span], { platform }: Machine): { origin: Origin; by: Point } {
  const [w, d] = [platform.width_mm, platform.depth_mm];
  if (liesIn(x, 0, w) && liesIn(y, 0, d)) return { origin: 'corner', by: [-w / 2, -d / 2] };
  if (liesIn(x, -w / 2, w / 2) && liesIn(y, -d / 2, d / 2)) return { origin: 'middle', by: [0, 0] };
  return { origin: 'moved', by: [-(x.min + x.max) / 2, -(y.min + y.max) / 2] };
}

/** Where boxes of a size stand along x and y. */
function spansOf(
  copies: readonly CopyPlace[],
  [sx, sy]: readonly [Mm, Mm, Mm],
): readonly (readonly [Span, Span])[] {
  return copies.map(({ at_mm, turn_deg }) => {
    const [cos, sin] = cosSin(turn_deg).map(Math.abs) as [number, number];
    const half = [(cos * sx + sin * sy) / 2, (sin * sx + cos * sy) / 2];
    const along = (axis: 0 | 1): Span => ({
      min: at_mm![axis] - half[axis]!,
      max: at_mm![axis] + half[axis]!,
    });
    return [along(0), along(1)] as const;
  });
}

/** The arrangement of the bodies that are taken; null where the file places none of them, too far apart, or they are turned. */
export function arrangementOf(
  file: MeshFileFound,
  look: MeshLook,
  choices: MeshChoices,
  machine: Machine,
): Arrangement | null {
  if (!placesParts(file) || !standsAsInFile(choices)) return null;
  const scale = scaleFor(file, choices.unit);
  const taken = chosenPlaces(file, choices).map((place) => ({
    place,
    copies: copiesOf(file.bodies[place]!, scale),
  }));
  const spans = taken.flatMap(({ place, copies }) => spansOf(copies, look.bodies[place]!.size_mm));
  if (spans.length === 0) return null;
  const whole = (axis: 0 | 1): Span => ({
    min: Math.min(...spans.map((span) => span[axis].min)),
    max: Math.max(...spans.map((span) => span[axis].max)),
  });
  const sides = [whole(0), whole(1)] as const;
  if (sides.some(({ min, max }) => max - min > SIZE_LIMIT_mm)) return null;
  const { origin, by } = shiftOf(sides, machine);
  const moved = ({ at_mm, turn_deg }: CopyPlace): CopyPlace => ({
    at_mm: [at_mm![0] + by[0], at_mm![1] + by[1]],
    turn_deg,
  });
  return { origin, places: new Map(taken.map(({ place, copies }) => [place, copies.map(moved)])) };
}

/** The places of one body's copies: those of the arrangement where it is kept, else free ones at the file's turns. */
export function placesFor(
  file: MeshFileFound,
  choices: MeshChoices,
  place: number,
  kept: Arrangement | null,
): readonly CopyPlace[] {
  const held = kept?.places.get(place);
  if (held) return held;
  if (!standsAsInFile(choices)) return [];
  return file.bodies[place]!.items.map(({ turn_deg }) => ({ at_mm: null, turn_deg }));
}
