/**
 * Turning parts: one about its own origin, several together about the middle of their common box. Degrees
 * counter-clockwise from +x, platform millimetres; an operation that changes nothing returns the layout itself.
 */
import { cosSin } from '../../geometry/region';
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import type { Layout, Part, PartId, Point } from '../../layout/types';
import { roundDeg, roundMm } from '../../units/round';
import type { Degrees, Mm } from '../../units/types';
import { allFinite, changeParts } from './edit';
import { partBox } from './place';

function swung(part: Part, from: Part, by_deg: Degrees, [cx, cy]: Point): Part {
  const [cos, sin] = cosSin(by_deg);
  const [dx, dy] = [from.at_mm[0] - cx, from.at_mm[1] - cy];
  const [x, y]: readonly Mm[] = [roundMm(cx + cos * dx - sin * dy), roundMm(cy + sin * dx + cos * dy)];
  const turn_deg = roundDeg(from.turn_deg + by_deg);
  const near = allFinite(x!, y!) && Math.max(Math.abs(x!), Math.abs(y!)) <= COORDINATE_LIMIT_mm;
  if (!near) return part;
  const same = x === part.at_mm[0] && y === part.at_mm[1] && turn_deg === part.turn_deg;
  return same ? part : { ...part, at_mm: [x!, y!], turn_deg };
}

/**
 * Turns parts by an angle about a point of the platform, places and all. `from` says where they stood and how they were
 * turned before: a drag hands in its beginning, so that a hundred steps round as little as one.
 */
export function swingParts(
  layout: Layout,
  ids: readonly PartId[],
  by_deg: Degrees,
  about_mm: Point,
  from: Layout = layout,
): Layout {
  if (!Number.isFinite(by_deg)) return layout;
  const before = new Map(from.parts.map((part) => [part.id, part]));
  return changeParts(layout, ids, (part) => swung(part, before.get(part.id) ?? part, by_deg, about_mm));
}

const boxMiddle = (layout: Layout, ids: readonly PartId[]): Point => {
  const boxes = layout.parts.filter(({ id }) => ids.includes(id)).map((part) => partBox(layout, part));
  const low = (pick: (box: (typeof boxes)[number]) => Mm): Mm => Math.min(...boxes.map(pick));
  const high = (pick: (box: (typeof boxes)[number]) => Mm): Mm => Math.max(...boxes.map(pick));
  return [
    roundMm((low((box) => box.minX) + high((box) => box.maxX)) / 2),
    roundMm((low((box) => box.minY) + high((box) => box.maxY)) / 2),
  ];
};

interface Pivot {
  readonly ids: string;
  readonly at_mm: Point;
}
/** The pivot of the turn that led to a layout: a box changes as its parts turn, and the group would wander with it. */
const pivots = new WeakMap<Layout, Pivot>();

/** What these parts turn about together: the middle of their common box; while they are turned on, the same point. */
export function groupPivot(layout: Layout, ids: readonly PartId[]): Point {
  const kept = pivots.get(layout);
  return kept?.ids === ids.join('\n') ? kept.at_mm : boxMiddle(layout, ids);
}

/** Notes that `layout` came from turning these parts about this point. */
export function keepPivot(layout: Layout, ids: readonly PartId[], at_mm: Point): Layout {
  pivots.set(layout, { ids: ids.join('\n'), at_mm });
  return layout;
}

/** Turns one part about its own origin, several as a group about `groupPivot`. Unknown ids are left out. */
export function turnTogether(layout: Layout, ids: readonly PartId[], by_deg: Degrees): Layout {
  const known = ids.filter((id) => layout.parts.some((part) => part.id === id));
  const only = known.length === 1 ? layout.parts.find(({ id }) => id === known[0]) : undefined;
  if (known.length === 0) return layout;
  if (only) return swingParts(layout, known, by_deg, only.at_mm);
  const pivot = groupPivot(layout, known);
  const next = swingParts(layout, known, by_deg, pivot);
  return next === layout ? layout : keepPivot(next, known, pivot);
}
