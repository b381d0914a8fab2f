/**
 * Straight sides of a section that the blade runs on to nearly parallel to its own line. Millimetres, degrees; the blade
 * travels towards (ux, uy). A side is a run of edges that stays within STRAIGHT_MM of a straight line, so that one broken
 * up by a mesh counts once and the outline of a circle, which only passes through the direction, does not count.
 */
import type { Region, Ring } from '../geometry/types';
import type { Degrees, Mm } from '../units/types';

const STRAIGHT_MM: Mm = 0.01;

export interface Side {
  readonly x0: Mm;
  readonly y0: Mm;
  readonly x1: Mm;
  readonly y1: Mm;
  readonly length_mm: Mm;
  /** To the blade's line, 0 to 90. */
  readonly angle_deg: Degrees;
}
export interface SideRule {
  /** A side counts up to this angle to the blade's line. */
  readonly most_deg: Degrees;
  readonly least_mm: Mm;
  /** The blade also runs back: sides that face the other way count, too. */
  readonly bothWays: boolean;
}

/** The sides of a clean region that the rule counts, in the order of its rings. */
export const sidesMet = (region: Region, ux: number, uy: number, rule: SideRule): Side[] =>
  region.flatMap((ring) => sidesOfRing(ring, ux, uy, rule));

function sidesOfRing(ring: Ring, ux: number, uy: number, rule: SideRule): Side[] {
  const tolerance = Math.sin((rule.most_deg * Math.PI) / 180) + 1e-9;
  return runsAlong(ring, ux, uy, tolerance).flatMap(({ first, edges, forwards }) =>
    forwards || rule.bothWays ? straightSides(ring, first, edges, ux, uy, rule) : [],
  );
}

interface Run {
  /** Index of the vertex that the first edge begins at. */
  readonly first: number;
  edges: number;
  /** Material lies ahead of the travelling blade. */
  readonly forwards: boolean;
}

/** Edges in a row that all run along the blade in one sense: 1, −1; 0 where not; NaN for one too short to tell. */
function sense(ring: Ring, i: number, ux: number, uy: number, tolerance: number): number {
  const n = ring.length;
  const j = (2 * i + 2) % n;
  const dx = ring[j] - ring[2 * i];
  const dy = ring[j + 1] - ring[2 * i + 1];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length < STRAIGHT_MM) return NaN;
  if (Math.abs(ux * dx + uy * dy) > tolerance * length) return 0;
  return ux * dy - uy * dx > 0 ? 1 : -1;
}

function runsAlong(ring: Ring, ux: number, uy: number, tolerance: number): Run[] {
  const count = ring.length >> 1;
  const senses = Array.from({ length: count }, (_, i) => sense(ring, i, ux, uy, tolerance));
  // A ring turns round: but for a sliver, some edge is not along the blade, and no run reaches over it.
  const begin = Math.max(0, senses.indexOf(0));
  const runs: Run[] = [];
  let open: Run | null = null;
  let openSense = 0;
  for (let k = 0; k < count; k++) {
    const i = (begin + k) % count;
    if (open && (Number.isNaN(senses[i]) || senses[i] === openSense)) open.edges++;
    else if (senses[i] === 1 || senses[i] === -1) {
      // Material lies on the left of an edge: ahead of the blade where the edge runs to smaller t.
      open = { first: i, edges: 1, forwards: senses[i] === -1 };
      openSense = senses[i];
      runs.push(open);
    } else open = null;
  }
  return runs;
}

/** A run taken apart where it leaves a straight line. */
function straightSides(
  ring: Ring,
  first: number,
  edges: number,
  ux: number,
  uy: number,
  rule: SideRule,
): Side[] {
  const sides: Side[] = [];
  let from = 0;
  while (from < edges) {
    let to = from + 1;
    while (to < edges && isStraight(ring, first + from, first + to + 1)) to++;
    const side = sideOf(ring, first + from, first + to, ux, uy);
    if (side.length_mm >= rule.least_mm - 1e-6 && side.angle_deg <= rule.most_deg + 1e-6) sides.push(side);
    from = to;
  }
  return sides;
}

/** True where all vertices between two stay near the straight line from one to the other. */
function isStraight(ring: Ring, from: number, to: number): boolean {
  const n = ring.length;
  const [a, b] = [(2 * from) % n, (2 * to) % n];
  const dx = ring[b] - ring[a];
  const dy = ring[b + 1] - ring[a + 1];
  const reach = STRAIGHT_MM * Math.hypot(dx, dy);
  for (let k = from + 1; k < to; k++) {
    const i = (2 * k) % n;
    if (Math.abs(dx * (ring[i + 1] - ring[a + 1]) - dy * (ring[i] - ring[a])) > reach) return false;
  }
  return true;
}

function sideOf(ring: Ring, from: number, to: number, ux: number, uy: number): Side {
  const n = ring.length;
  const [a, b] = [(2 * from) % n, (2 * to) % n];
  const [x0, y0, x1, y1] = [ring[a], ring[a + 1], ring[b], ring[b + 1]];
  const length_mm = Math.hypot(x1 - x0, y1 - y0);
  const along = Math.abs(ux * (x1 - x0) + uy * (y1 - y0));
  const angle_deg = (Math.asin(Math.min(1, along / length_mm)) * 180) / Math.PI;
  return { x0, y0, x1, y1, length_mm, angle_deg };
}
