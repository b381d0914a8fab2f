/**
 * Is an outline so tangled that putting it right would take minutes? Crossings of its edges are counted up to a limit;
 * edges are sorted along the longer side of their box, so that most pairs are never compared. Millimetres.
 */
import { boxOfRings } from '../geometry/region';
import type { Ring } from '../geometry/types';

/** Outlines of parts cross themselves a few times, by mistake. */
const MOST_CROSSINGS = 3_000;
const MOST_COMPARISONS = 50_000_000;
/** With fewer points there cannot be too many crossings. */
const FEW_POINTS = 64;

/** Edges as a, b (along), p, q (across) with a ≤ b, in order of a. */
function sortedEdges(rings: readonly Ring[]): Float64Array[] {
  const box = boxOfRings(rings);
  const along = box.maxX - box.minX >= box.maxY - box.minY ? 0 : 1;
  const edges: number[][] = [];
  for (const ring of rings) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [a, p, b, q] = [ring[j + along], ring[j + 1 - along], ring[i + along], ring[i + 1 - along]];
      edges.push(a <= b ? [a, b, p, q] : [b, a, q, p]);
    }
  }
  edges.sort((e, f) => e[0] - f[0]);
  return [0, 1, 2, 3].map((column) => Float64Array.from(edges, (edge) => edge[column]));
}

/** True where the outlines cross themselves or each other more than MOST_CROSSINGS times. */
export function isTangled(rings: readonly Ring[]): boolean {
  if (rings.reduce((sum, ring) => sum + ring.length / 2, 0) <= FEW_POINTS) return false;
  const [a, b, p, q] = sortedEdges(rings);
  const side = (i: number, x: number, y: number): number =>
    (b[i] - a[i]) * (y - p[i]) - (q[i] - p[i]) * (x - a[i]);
  let crossings = 0;
  let comparisons = 0;
  for (let i = 0; i < a.length; i++) {
    for (let k = i + 1; k < a.length && a[k] < b[i]; k++) {
      comparisons += 1;
      if (side(i, a[k], p[k]) * side(i, b[k], q[k]) >= 0) continue;
      if (side(k, a[i], p[i]) * side(k, b[i], q[i]) < 0) crossings += 1;
    }
    if (crossings > MOST_CROSSINGS || comparisons > MOST_COMPARISONS) return true;
  }
  return false;
}
