/**
 * Cracks: points along open edges that lie close to another such point although no edge joins them, as where a file's two
 * sides of a surface were rounded apart. Millimetres.
 */
import type { Mm } from '../../units/types';
import { NONE, sideAfter } from './edges';
import type { PreparedMesh } from './prepare';
import { PointIndex } from './weld';

/** Common practice, no source: wider gaps are holes, not rounding. */
const WIDEST_mm: Mm = 0.02;
const WIDEST_SHARE = 1e-3;

/** For each point along open edges the points that an edge joins to it. */
function rim({ triangles, across }: PreparedMesh): Map<number, Set<number>> {
  const joined = new Map<number, Set<number>>();
  for (let side = 0; side < across.length; side++) {
    if (across[side] !== NONE) continue;
    joined.set(triangles[side], new Set());
    joined.set(triangles[sideAfter(side)], new Set());
  }
  if (joined.size === 0) return joined;
  for (let side = 0; side < across.length; side++) {
    joined.get(triangles[side])?.add(triangles[sideAfter(side)]);
    joined.get(triangles[sideAfter(side)])?.add(triangles[side]);
  }
  return joined;
}

/**
 * The largest distance from a point of the rim to its nearest one that no edge joins to it, of those nearer than the widest
 * crack (0.02 mm, or a thousandth of the size); null where there are none.
 */
export function crackWidth(mesh: PreparedMesh, size_mm: Mm): Mm | null {
  const joined = rim(mesh);
  const widest = Math.min(WIDEST_mm, WIDEST_SHARE * size_mm);
  if (joined.size === 0 || !(widest > 0)) return null;
  const { points } = mesh;
  const cells = new PointIndex();
  const members: number[][] = [];
  const cellOf = (i: number, axis: number): number => Math.floor(points[3 * i + axis] / widest);
  for (const i of joined.keys())
    (members[cells.add(cellOf(i, 0), cellOf(i, 1), cellOf(i, 2))] ??= []).push(i);
  let found = 0;
  for (const [i, neighbours] of joined) {
    const x = points[3 * i];
    const y = points[3 * i + 1];
    const z = points[3 * i + 2];
    let nearest = Infinity;
    for (let n = 0; n < 27; n++) {
      const cx = cellOf(i, 0) + (n % 3) - 1;
      const cell = cells.find(
        cx,
        cellOf(i, 1) + (Math.floor(n / 3) % 3) - 1,
        cellOf(i, 2) + Math.floor(n / 9) - 1,
      );
      if (cell < 0) continue;
      for (const k of members[cell]) {
        if (k === i || neighbours.has(k)) continue;
        const far = (points[3 * k] - x) ** 2 + (points[3 * k + 1] - y) ** 2 + (points[3 * k + 2] - z) ** 2;
        if (far < nearest) nearest = far;
      }
    }
    nearest = Math.sqrt(nearest);
    if (nearest <= widest) found = Math.max(found, nearest);
  }
  return found > 0 ? found : null;
}
