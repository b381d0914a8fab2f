/**
 * Whether an outline is one at all: three different points, and an area that is not zero under even-odd fill.
 * Millimetres. Area by the shoelace formula; where that is zero the outline may still enclose area (a bow tie), so a
 * few horizontal lines are laid through it and the lengths inside are looked at.
 */
import type { Mm } from '../units/types';
import type { Outline, Point } from './types';

/** The least area that counts: a thousandth of a square micrometre would be less than the grid of 1 µm can hold. */
const LEAST_AREA_mm2 = 1e-7;
/** Longest chord that may be a rounding error. */
const CHORD_ERROR_mm = 1e-9;
/** Above this number of points the lines are not tried; the polygon engine reports an empty section instead. */
const MOST_POINTS_FOR_LINES = 2000;
/** Where between two neighbouring heights of vertices a line is laid; two, as two edges may cross on one of them. */
const LINE_PLACES = [0.271, 0.618];

/** Number of different points, counted up to `enough`. */
export function differentPoints(points: Outline, enough = 3): number {
  const seen = new Set<string>();
  for (const [x, y] of points) {
    seen.add(`${x},${y}`);
    if (seen.size >= enough) break;
  }
  return seen.size;
}

function signedArea(points: Outline): number {
  const [originX, originY] = points[0] as Point;
  let twice = 0;
  for (let i = 1; i + 1 < points.length; i++) {
    const [ax, ay] = points[i] as Point;
    const [bx, by] = points[i + 1] as Point;
    twice += (ax - originX) * (by - originY) - (bx - originX) * (ay - originY);
  }
  return twice / 2;
}

/** Length inside the outline along the horizontal at y, which passes through no vertex. */
function chordAt(points: Outline, y: Mm): Mm {
  const crossings: number[] = [];
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length] as Point;
    if (ay < y !== by < y) crossings.push(ax + ((y - ay) * (bx - ax)) / (by - ay));
  });
  crossings.sort((a, b) => a - b);
  let inside = 0;
  for (let i = 0; i + 1 < crossings.length; i += 2) inside += (crossings[i + 1] ?? 0) - (crossings[i] ?? 0);
  return inside;
}

function someLineIsInside(points: Outline): boolean {
  const heights = [...new Set(points.map(([, y]) => y))].sort((a, b) => a - b);
  return heights.some((low, i) => {
    const high = heights[i + 1];
    if (high === undefined) return false;
    return LINE_PLACES.some((place) => chordAt(points, low + place * (high - low)) > CHORD_ERROR_mm);
  });
}

/** Whether the outline encloses an area under even-odd fill. */
export function enclosesArea(points: Outline): boolean {
  if (Math.abs(signedArea(points)) > LEAST_AREA_mm2) return true;
  return points.length > MOST_POINTS_FOR_LINES || someLineIsInside(points);
}
