/**
 * What of the chaining stays open, for the check page: each connected group of edges with its free ends, its lines and
 * the gap between its two ends. Millimetres.
 */
import type { Point } from '../layout/types';
import type { Chains } from './chain';
import { nodesOf } from './chainEnds';
import type { Edge } from './graph';
import type { LeftOutList } from './leftOut';

const pointsOf = ({ points }: Edge): Point[] =>
  Array.from({ length: points.length / 2 }, (_, i): Point => [points[2 * i], points[2 * i + 1]]);

/** Counts open groups by the layer of their first edge, and edges left over at branches. */
export function noteChains(chains: Chains, chainGap_mm: number, leftOut: LeftOutList): void {
  for (const group of chains.open) {
    const places = freeEnds(group, chainGap_mm);
    const gap_mm =
      places.length === 2 ? Math.hypot(places[0][0] - places[1][0], places[0][1] - places[1][1]) : undefined;
    leftOut.add('open', group[0].name, { places, lines: group.map(pointsOf), gap_mm });
  }
  for (const edge of chains.branches) leftOut.add('branch', edge.name, { lines: [pointsOf(edge)] });
}

/** Ends of the group that meet no other end of it. */
function freeEnds(group: readonly Edge[], chainGap_mm: number): Point[] {
  const flat = group.flatMap(({ points }) => [points.slice(0, 2), points.slice(-2)]);
  const x = Float64Array.from(flat, ([value]) => value);
  const y = Float64Array.from(flat, ([, value]) => value);
  const node = nodesOf({ x, y, length: new Float64Array(group.length) }, chainGap_mm);
  const count = new Map<number, number>();
  for (const n of node) count.set(n, (count.get(n) ?? 0) + 1);
  return flat.filter((_, i) => count.get(node[i]) === 1).map(([px, py]): Point => [px, py]);
}
