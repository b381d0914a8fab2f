/**
 * Rings to shapes: an outer ring and the rings inside it are one shape, an island inside a hole is another. Millimetres.
 * A ring's depth is the number of rings around it; even depths are outer rings, odd depths holes of the ring next
 * around them.
 */
import { clean } from '../geometry/clipper';
import { boxesMeet, boxUnion } from '../geometry/region';
import { reversed, ringContains, ringInRing, signedArea } from '../geometry/ring';
import type { Box, Ring } from '../geometry/types';
import { plainName } from '../layout/ids';
import type { LayoutRing, Point } from '../layout/types';
import { layoutBox, type FoundRing } from './rings';
import { isTangled } from './tangle';
import type { ImportShape } from './types';

interface Nested extends FoundRing {
  readonly area: number;
  readonly box: Box;
  parent: number;
  depth: number;
}
export interface Nesting {
  readonly shapes: readonly ImportShape[];
  readonly box: Box | null;
  /** Names of rings that were drawn a second time. */
  readonly duplicates: readonly string[];
  /** Shapes whose holes overlapped and were united. */
  readonly repaired: number;
}
/** Outlines whose boxes and areas differ by less are the same outline drawn twice. */
const SAME_mm = 0.001;

/** Sorts rings into shapes, in the order of their outer rings. */
export function nest(found: readonly FoundRing[]): Nesting {
  const { kept, duplicates } = distinct(found);
  findParents(kept);
  const holesOf = kept.map((): Nested[] => []);
  for (const ring of kept) if (ring.depth % 2 === 1) holesOf[ring.parent].push(ring);
  const names = new Map<string, number>();
  let repaired = 0;
  const shapes = kept.flatMap((outer, i) => {
    if (outer.depth % 2 === 1) return [];
    const holes = holesOf[i];
    const united = uniteHoles(holes);
    if (united !== null) repaired += 1;
    return [shapeOf(outer, united ?? holes, freeName(outer.name, names))];
  });
  const box = kept.length === 0 ? null : kept.map((ring) => ring.box).reduce(boxUnion);
  return { shapes, box, duplicates, repaired };
}

/** Sets each ring's parent, the smallest ring around it, and its depth. */
function findParents(rings: readonly Nested[]): void {
  const order = rings.map((_, i) => i).sort((a, b) => rings[b].area - rings[a].area || a - b);
  // Boxes in order of size, in flat arrays: with thousands of rings almost all pairs end at the first comparison.
  const minX = Float64Array.from(order, (i) => rings[i].box.minX - SAME_mm);
  const maxX = Float64Array.from(order, (i) => rings[i].box.maxX + SAME_mm);
  const minY = Float64Array.from(order, (i) => rings[i].box.minY - SAME_mm);
  const maxY = Float64Array.from(order, (i) => rings[i].box.maxY + SAME_mm);
  order.forEach((i, rank) => {
    const { box, ring } = rings[i];
    for (let k = rank - 1; k >= 0; k--) {
      if (box.minX < minX[k] || box.maxX > maxX[k] || box.minY < minY[k] || box.maxY > maxY[k]) continue;
      const around = rings[order[k]];
      if (!liesInside(ring, around.ring)) continue;
      rings[i].parent = order[k];
      rings[i].depth = around.depth + 1;
      break;
    }
  });
}

/** Points tried before a ring counts as inside another. */
const MOST_TRIED = 64;

/** True where the ring lies inside; rings that cross do not. */
function liesInside(inner: Ring, outer: Ring): boolean {
  if (!ringInRing(inner, outer)) return false;
  const stride = 2 * Math.max(1, Math.ceil(inner.length / 2 / MOST_TRIED));
  for (let i = 0; i < inner.length; i += stride) {
    const [x, y] = [inner[i], inner[i + 1]];
    if (!ringContains(outer, x, y) && distanceToRing(outer, x, y) > SAME_mm) return false;
  }
  return true;
}

function distinct(found: readonly FoundRing[]): { kept: Nested[]; duplicates: string[] } {
  const kept: Nested[] = [];
  const duplicates: string[] = [];
  const seen = new Map<string, Nested[]>();
  for (const ring of found) {
    const box = layoutBox(ring.circle, ring.ring);
    const area = Math.abs(signedArea(ring.ring));
    const entry: Nested = { ...ring, area, box, parent: -1, depth: 0 };
    const column = Math.round(box.minX);
    const near = [-1, 0, 1].flatMap((step) => seen.get(`${column + step}`) ?? []);
    if (near.some((other) => sameOutline(other, entry))) {
      duplicates.push(ring.name);
      continue;
    }
    kept.push(entry);
    const list = seen.get(`${column}`);
    if (list === undefined) seen.set(`${column}`, [entry]);
    else list.push(entry);
  }
  return { kept, duplicates };
}

function sameOutline(a: Nested, b: Nested): boolean {
  const corners = ['minX', 'minY', 'maxX', 'maxY'] as const;
  if (corners.some((corner) => Math.abs(a.box[corner] - b.box[corner]) > SAME_mm)) return false;
  const wide = a.box.maxX - a.box.minX + a.box.maxY - a.box.minY;
  return (
    Math.abs(a.area - b.area) <= SAME_mm * wide && onOutline(a.ring, b.ring) && onOutline(b.ring, a.ring)
  );
}

/** True where no point of `inner` lies off the other outline (vertices of equal curves may differ: half a hundredth). */
function onOutline(points: Ring, outline: Ring): boolean {
  for (let i = 0; i < points.length; i += 2)
    if (distanceToRing(outline, points[i], points[i + 1]) > 0.005) return false;
  return true;
}

function distanceToRing(ring: Ring, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const dx = ring[i] - ring[j];
    const dy = ring[i + 1] - ring[j + 1];
    const length = dx * dx + dy * dy;
    const along = length === 0 ? 0 : ((x - ring[j]) * dx + (y - ring[j + 1]) * dy) / length;
    const t = Math.min(Math.max(along, 0), 1);
    least = Math.min(least, Math.hypot(x - ring[j] - t * dx, y - ring[j + 1] - t * dy));
  }
  return least;
}

/** Holes that overlap become one; null where none do. */
function uniteHoles(holes: readonly Nested[]): FoundRing[] | null {
  const meet = holes.some((a, i) => holes.some((b, j) => j > i && boxesMeet(a.box, b.box)));
  if (!meet) return null;
  const rings = holes.map(({ ring }) => (signedArea(ring) > 0 ? ring : reversed(ring)));
  if (isTangled(rings)) return null;
  const { region, repaired } = clean(rings, 'nonZero');
  return repaired ? region.map((ring) => ({ ring, circle: null, name: holes[0].name })) : null;
}

const layoutRing = ({ ring, circle }: FoundRing): LayoutRing =>
  circle ?? Array.from({ length: ring.length / 2 }, (_, i): Point => [ring[2 * i], ring[2 * i + 1]]);

function shapeOf(outer: Nested, holes: readonly FoundRing[], name: string): ImportShape {
  const inside = holes.reduce((sum, hole) => sum + Math.abs(signedArea(hole.ring)), 0);
  return {
    name,
    rings: [outer, ...holes].map(layoutRing),
    area_mm2: outer.area - inside,
    holes: holes.length,
    width_mm: outer.box.maxX - outer.box.minX,
    height_mm: outer.box.maxY - outer.box.minY,
  };
}

/** Longest name a layout accepts, less room for a number. */
const LONGEST_NAME = 56;

/** A name without control characters, with a number where it was used before. */
export function freeName(wanted: string, used: Map<string, number>): string {
  const tidy = plainName(wanted, ' ').replace(/\s+/g, ' ').trim();
  const base = [...tidy].slice(0, LONGEST_NAME).join('').trim() || 'outline';
  let count = (used.get(base) ?? 0) + 1;
  while (count > 1 && used.has(`${base} ${count}`)) count += 1;
  used.set(base, count);
  if (count === 1) return base;
  used.set(`${base} ${count}`, 1);
  return `${base} ${count}`;
}
