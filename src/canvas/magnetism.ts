/**
 * Where a box that is dragged comes to rest: edges and middles of other boxes, zone lines and edges of the platform, the
 * spacing that parts keep, gaps as wide as the gap beside it, and a grid. Each axis is pulled for itself, by what is nearest
 * within reach; the grid only where nothing else pulls. Platform millimetres.
 */
import type { Box } from '../geometry/types';
import type { Mm, PlatePoint } from '../units/types';

export type PullAxis = 'x' | 'y';
/** What stands on the platform, without what is dragged. */
export interface MagnetField {
  readonly boxes: readonly Box[];
  /** Upright lines by their x, level ones by their y. */
  readonly lines: Readonly<Record<PullAxis, readonly Mm[]>>;
  readonly spacing_mm: Mm;
  /** 0: no grid. */
  readonly grid_mm: Mm;
}
/** A line that the dragged box has come to, across the axis that was pulled. */
export interface Guide {
  readonly axis: PullAxis;
  readonly at: Mm;
  readonly from: Mm;
  readonly to: Mm;
}
/** A gap along an axis, written as a dimension at `across` on the other one. */
export interface Gap {
  readonly axis: PullAxis;
  readonly from: Mm;
  readonly to: Mm;
  readonly across: Mm;
}
export interface Pull {
  readonly dx: Mm;
  readonly dy: Mm;
}
export interface Marks {
  readonly guides: readonly Guide[];
  readonly gaps: readonly Gap[];
}

/** A box along one axis, and across it. */
interface Span {
  readonly low: Mm;
  readonly high: Mm;
  readonly crossLow: Mm;
  readonly crossHigh: Mm;
}

const SAME_MM = 0.0015;

const spanOf = ({ minX, minY, maxX, maxY }: Box, axis: PullAxis): Span =>
  axis === 'x'
    ? { low: minX, high: maxX, crossLow: minY, crossHigh: maxY }
    : { low: minY, high: maxY, crossLow: minX, crossHigh: maxX };
const middle = ({ low, high }: Span): Mm => (low + high) / 2;
const sameRow = (a: Span, b: Span): boolean => a.crossLow < b.crossHigh && b.crossLow < a.crossHigh;

interface Step {
  readonly by: Mm;
  /** Lines that are met, and gaps that come out, once the step is taken. */
  readonly guide?: { readonly at: Mm; readonly other: Span | null };
  readonly gaps?: readonly (readonly [from: Mm, to: Mm, other: Span])[];
}

function* toEdges(own: Span, others: readonly Span[]): Generator<Step> {
  for (const other of others) {
    yield { by: other.low - own.low, guide: { at: other.low, other } };
    yield { by: other.high - own.high, guide: { at: other.high, other } };
    yield { by: middle(other) - middle(own), guide: { at: middle(other), other } };
  }
}

function* toLines(own: Span, lines: readonly Mm[]): Generator<Step> {
  for (const at of lines)
    for (const part of [own.low, own.high, middle(own)]) yield { by: at - part, guide: { at, other: null } };
}

/** Beside a neighbour, the least spacing away. */
function* toSpacing(own: Span, row: readonly Span[], spacing: Mm): Generator<Step> {
  for (const other of row) {
    yield { by: other.high + spacing - own.low, gaps: [[other.high, other.high + spacing, other]] };
    yield { by: other.low - spacing - own.high, gaps: [[other.low - spacing, other.low, other]] };
  }
}

/** As far from a neighbour as that one stands from the next, or midway between two. */
function* toEqualGaps(own: Span, row: readonly Span[]): Generator<Step> {
  const size = own.high - own.low;
  for (let i = 0; i + 1 < row.length; i++) {
    const [a, b] = [row[i]!, row[i + 1]!];
    const gap = b.low - a.high;
    if (gap <= 0 || !sameRow(a, b)) continue;
    const between = [a.high, b.low, a] as const;
    yield { by: b.high + gap - own.low, gaps: [between, [b.high, b.high + gap, b]] };
    yield { by: a.low - gap - own.high, gaps: [between, [a.low - gap, a.low, a]] };
    const each = (gap - size) / 2;
    if (each <= 0) continue;
    yield {
      by: a.high + each - own.low,
      gaps: [
        [a.high, a.high + each, a],
        [b.low - each, b.low, b],
      ],
    };
  }
}

function stepsOf(field: MagnetField, box: Box, axis: PullAxis): Step[] {
  const own = spanOf(box, axis);
  const others = field.boxes.map((other) => spanOf(other, axis));
  const row = others.filter((other) => sameRow(own, other)).sort((a, b) => a.low - b.low);
  return [
    ...toEdges(own, others),
    ...toLines(own, field.lines[axis]),
    ...toSpacing(own, row, field.spacing_mm),
    ...toEqualGaps(own, row),
  ];
}

/** To the nearest of the steps within reach; else to the grid, by the origin of what is dragged; 0 where nothing pulls. */
function pullAlong(steps: readonly Step[], reach: Mm, origin: Mm, grid: Mm): Mm {
  let best: Mm | null = null;
  for (const { by } of steps)
    if (Math.abs(by) <= reach && (best === null || Math.abs(by) < Math.abs(best))) best = by;
  if (best !== null) return best;
  return grid > 0 ? Math.round(origin / grid) * grid - origin : 0;
}

/** How far a box is pulled; null along an axis where nothing holds it. */
export function pull(
  field: MagnetField,
  box: Box,
  origin: PlatePoint,
  reach: Mm,
): { readonly [axis in PullAxis]: Mm | null } {
  const along = (axis: PullAxis): Mm | null => {
    const steps = stepsOf(field, box, axis);
    const held = field.grid_mm > 0 || steps.some(({ by }) => Math.abs(by) <= reach);
    return held ? pullAlong(steps, reach, origin[axis], field.grid_mm) : null;
  };
  return { x: along('x'), y: along('y') };
}

/** The guide through own and all others that it meets at the same place. */
function guidesOf(axis: PullAxis, own: Span, steps: readonly Step[]): Guide[] {
  const found = new Map<number, Guide>();
  for (const { guide } of steps) {
    if (guide === undefined) continue;
    const key = Math.round(guide.at / SAME_MM);
    const now = found.get(key) ?? { axis, at: guide.at, from: own.crossLow, to: own.crossHigh };
    found.set(key, {
      ...now,
      from: Math.min(now.from, guide.other?.crossLow ?? now.from),
      to: Math.max(now.to, guide.other?.crossHigh ?? now.to),
    });
  }
  return [...found.values()];
}

/** Along a guide, how far it is to the nearest box on each side. */
function alongGuide(axis: PullAxis, own: Span, steps: readonly Step[]): Gap[] {
  const others = steps.flatMap(({ guide }) => guide?.other ?? []);
  const before = others.filter(({ crossHigh }) => crossHigh <= own.crossLow);
  const behind = others.filter(({ crossLow }) => crossLow >= own.crossHigh);
  const ends: (readonly [Mm, Mm])[] = [];
  if (before.length > 0) ends.push([Math.max(...before.map((other) => other.crossHigh)), own.crossLow]);
  if (behind.length > 0) ends.push([own.crossHigh, Math.min(...behind.map((other) => other.crossLow))]);
  const at = steps.find(({ guide }) => guide?.other)?.guide?.at ?? middle(own);
  return ends
    .filter(([from, to]) => to > from)
    .map(([from, to]) => ({ axis: axis === 'x' ? 'y' : 'x', from, to, across: at }));
}

const gapsOf = (axis: PullAxis, own: Span, steps: readonly Step[]): Gap[] =>
  (steps.find(({ gaps }) => gaps?.length === 2) ?? steps.find(({ gaps }) => gaps))?.gaps?.map(
    ([from, to, other]) => ({
      axis,
      from,
      to,
      across: (Math.max(own.crossLow, other.crossLow) + Math.min(own.crossHigh, other.crossHigh)) / 2,
    }),
  ) ?? [];

/** What a box that has come to rest is held by: guides through edges, middles and lines, and gaps with their widths. */
export function marksOf(field: MagnetField, box: Box): Marks {
  const marks = (['x', 'y'] as const).map((axis) => {
    const own = spanOf(box, axis);
    const held = stepsOf(field, box, axis).filter(({ by }) => Math.abs(by) <= SAME_MM);
    const gaps = [...gapsOf(axis, own, held), ...alongGuide(axis, own, held)];
    return { guides: guidesOf(axis, own, held), gaps };
  });
  return { guides: marks.flatMap(({ guides }) => guides), gaps: marks.flatMap(({ gaps }) => gaps) };
}
