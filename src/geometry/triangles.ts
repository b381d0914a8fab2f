/**
 * A connected region as triangles whose outer edges are the region's own, point by point: what is built on them closes.
 * The cutting is earcut's (ear clipping with bridges to the holes); it may pass over points that lie on the line between
 * two others, and triangles without area are put in there. The sum of the triangles' signed areas is the region's; where
 * a hole runs along the outline, some of them may lie over others and count against them. Millimetres.
 */
import earcut from 'earcut';
import { components } from './region';
import type { Region, Ring } from './types';

export interface Triangles {
  /** x0, y0, x1, y1 … of the rings' points, ring after ring. */
  readonly points: Float64Array;
  /** Of each ring, the index of its first point; at the end, the number of points. */
  readonly starts: readonly number[];
  /** Three indices of points each, counter-clockwise. */
  readonly triangles: readonly number[];
}
type Chain = Map<number, Map<number, number>>;

/** An edge more; one that runs the other way takes away instead. */
function add(chain: Chain, a: number, b: number): void {
  const back = chain.get(b)?.get(a) ?? 0;
  if (back > 1) chain.get(b)!.set(a, back - 1);
  else if (back === 1) chain.get(b)!.delete(a);
  else {
    const from = chain.get(a) ?? new Map<number, number>();
    chain.set(a, from.set(b, (from.get(b) ?? 0) + 1));
  }
}

/** The point that an edge leads to from `a`, the edge taken out; null where there is none. */
function follow(chain: Chain, a: number): number | null {
  const [next] = chain.get(a)?.keys() ?? [];
  if (next === undefined) return null;
  const left = chain.get(a)!.get(next)! - 1;
  if (left === 0) chain.get(a)!.delete(next);
  else chain.get(a)!.set(next, left);
  return next;
}

/** The closed way of a chain that is closed, in loops that pass no point twice. */
function loopsOf(chain: Chain): number[][] {
  const loops: number[][] = [];
  for (const start of chain.keys()) {
    const way = [start];
    for (let next = follow(chain, start); next !== null; next = follow(chain, way.at(-1)!)) {
      const met = way.indexOf(next);
      if (met >= 0) loops.push(way.splice(met));
      way.push(next);
    }
  }
  return loops;
}

/** The rings' edges less the outer edges of the triangles. */
function missing(starts: readonly number[], triangles: readonly number[]): Chain {
  const chain: Chain = new Map();
  for (let r = 0; r + 1 < starts.length; r++) {
    const [first, end] = [starts[r]!, starts[r + 1]!];
    for (let i = first; i < end; i++) add(chain, i, i + 1 === end ? first : i + 1);
  }
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k++) add(chain, triangles[t + ((k + 1) % 3)]!, triangles[t + k]!);
  return chain;
}

const fan = ([first, ...others]: readonly number[]): number[] =>
  others.slice(0, -1).flatMap((point, i) => [first!, point, others[i + 1]!]);

function twiceArea(points: Float64Array, triangles: readonly number[]): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [2 * triangles[t]!, 2 * triangles[t + 1]!, 2 * triangles[t + 2]!];
    const [x, y] = [points[a]!, points[a + 1]!];
    sum += (points[b]! - x) * (points[c + 1]! - y) - (points[b + 1]! - y) * (points[c]! - x);
  }
  return sum;
}

/** @param component one outer ring, counter-clockwise, and its holes, clockwise, none of which touches itself */
export function trianglesOf(component: Region): Triangles {
  const starts = [0];
  for (const ring of component) starts.push(starts.at(-1)! + ring.length / 2);
  const points = new Float64Array(2 * starts.at(-1)!);
  component.forEach((ring, i) => points.set(ring, 2 * starts[i]!));
  const cut = earcut(points, starts.slice(1, -1));
  const turned = twiceArea(points, cut) < 0 ? cut.reverse() : cut;
  return { points, starts, triangles: [...turned, ...loopsOf(missing(starts, turned)).flatMap(fan)] };
}

/** A ring that passes through a point more than once, as rings that do not. */
function splitRing(ring: Ring): Ring[] {
  const rings: Ring[] = [];
  const [way, at]: [number[], Map<string, number>] = [[], new Map()];
  for (let i = 0; i < ring.length; i += 2) {
    const key = `${ring[i]} ${ring[i + 1]}`;
    const met = at.get(key);
    if (met !== undefined) {
      const loop = way.splice(met);
      for (let k = 0; k < loop.length; k += 2) at.delete(`${loop[k]} ${loop[k + 1]}`);
      if (loop.length >= 6) rings.push(Float64Array.from(loop));
    }
    at.set(key, way.length);
    way.push(ring[i]!, ring[i + 1]!);
  }
  if (way.length >= 6) rings.push(Float64Array.from(way));
  return rings;
}

/** Connected pieces whose rings pass no point twice: where a region only touches itself, it is taken apart. */
export const pieces = (region: Region): Region[] => components(region.flatMap(splitRing));
