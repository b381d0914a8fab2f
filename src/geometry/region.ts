/**
 * Clean areas (outer rings counter-clockwise, holes clockwise): measures, box, connected parts, placing.
 * Millimetres, mm²; +x right, +y back; angles in degrees counter-clockwise from +x.
 */
import type { Degrees, Mm, Mm2 } from '../units/types';
import { ringContains, ringInRing, ringLength, signedArea } from './ring';
import type { Box, Region, Ring } from './types';

const EMPTY_BOX: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

/** Area: the sum of the rings' signed areas. */
export function area(region: Region): Mm2 {
  let sum = 0;
  for (const ring of region) sum += signedArea(ring);
  return sum;
}

/** Length of all outlines, holes included. */
export function outlineLength(region: Region): Mm {
  let sum = 0;
  for (const ring of region) sum += ringLength(ring);
  return sum;
}

/** Box of one ring. */
export function boxOfRing(ring: Ring): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    const x = ring[i];
    const y = ring[i + 1];
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Box around rings; inside out (min > max) where there is none. */
export const boxOfRings = (rings: readonly Ring[]): Box => rings.map(boxOfRing).reduce(boxUnion, EMPTY_BOX);

const boxes = new WeakMap<Region, Box>();

/** Box around a region; kept by the region's identity. An empty region's box is inside out (min > max). */
export function boxOf(region: Region): Box {
  if (region.length === 0) return EMPTY_BOX;
  let box = boxes.get(region);
  if (box === undefined) {
    box = boxOfRings(region);
    boxes.set(region, box);
  }
  return box;
}

/** Smallest box around two boxes. */
export const boxUnion = (a: Box, b: Box): Box => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

/** What two boxes have in common; inside out (min > max) where they lie apart. */
export const boxOverlap = (a: Box, b: Box): Box => ({
  minX: Math.max(a.minX, b.minX),
  minY: Math.max(a.minY, b.minY),
  maxX: Math.min(a.maxX, b.maxX),
  maxY: Math.min(a.maxY, b.maxY),
});

/** True where two boxes come within `slack` of each other (touching counts). */
export const boxesMeet = (a: Box, b: Box, slack: Mm = 0): boolean =>
  a.minX - slack <= b.maxX &&
  b.minX - slack <= a.maxX &&
  a.minY - slack <= b.maxY &&
  b.minY - slack <= a.maxY;

const boxInside = (inner: Box, outer: Box): boolean =>
  inner.minX >= outer.minX &&
  inner.maxX <= outer.maxX &&
  inner.minY >= outer.minY &&
  inner.maxY <= outer.maxY;

/** Point in region; on the outline it falls either way. */
export function containsPoint(region: Region, x: Mm, y: Mm): boolean {
  let inside = false;
  for (const ring of region) if (ringContains(ring, x, y)) inside = !inside;
  return inside;
}

/** For every ring, the indices of its component, outer ring first. Holes without an outer ring are left out. */
export function componentRings(region: Region): number[][] {
  const areas = region.map(signedArea);
  const outers = region.map((_, i) => i).filter((i) => areas[i] > 0);
  if (outers.length === 1) return [[outers[0], ...region.map((_, i) => i).filter((i) => areas[i] <= 0)]];
  const groups = new Map(outers.map((i) => [i, [i]]));
  const ringBoxes = region.map(boxOfRing);
  outers.sort((a, b) => areas[a] - areas[b]);
  region.forEach((ring, i) => {
    if (areas[i] > 0) return;
    const home = outers.filter((o) => areas[o] >= -areas[i] && boxInside(ringBoxes[i], ringBoxes[o]));
    const outer = home.length === 1 ? home[0] : home.find((o) => ringInRing(ring, region[o]));
    if (outer !== undefined) groups.get(outer)?.push(i);
  });
  return [...groups.values()];
}

/** Connected parts: each outer ring with its own holes; an island inside a hole is a part of its own. */
export function components(region: Region): Region[] {
  if (region.length <= 1) return region.length === 0 ? [] : [region];
  return componentRings(region).map((indices) => indices.map((i) => region[i]));
}

/** Cosine and sine, exact for multiples of 90°. */
export function cosSin(turn_deg: Degrees): readonly [number, number] {
  const quarter = turn_deg / 90;
  if (Number.isInteger(quarter)) {
    const q = ((quarter % 4) + 4) % 4;
    return q === 0 ? [1, 0] : q === 1 ? [0, 1] : q === 2 ? [-1, 0] : [0, -1];
  }
  const angle = (turn_deg * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

/** Turned about the origin, then moved. */
export function turnAndMove(region: Region, turn_deg: Degrees, x_mm: Mm, y_mm: Mm): Region {
  const [c, s] = cosSin(turn_deg);
  return region.map((ring) => {
    const out = new Float64Array(ring.length);
    for (let i = 0; i < ring.length; i += 2) {
      out[i] = c * ring[i] - s * ring[i + 1] + x_mm;
      out[i + 1] = s * ring[i] + c * ring[i + 1] + y_mm;
    }
    return out;
  });
}

/** Mirrored in the y axis (x → −x); rings keep their sense of turning. */
export function mirrorX(region: Region): Region {
  return region.map((ring) => {
    const n = ring.length;
    const out = new Float64Array(n);
    for (let i = 0; i < n; i += 2) {
      out[i] = 0 - ring[n - 2 - i];
      out[i + 1] = ring[n - 1 - i];
    }
    return out;
  });
}

/** Axis-aligned rectangle, counter-clockwise. */
export const rectangle = (minX: Mm, minY: Mm, maxX: Mm, maxY: Mm): Region => [
  Float64Array.of(minX, minY, maxX, minY, maxX, maxY, minX, maxY),
];
