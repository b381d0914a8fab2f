/**
 * Shells: the connected surfaces of a mesh, their volumes by signed tetrahedra [mathematics], which lies in which, and
 * which are inside out. A shell that faces inwards with nothing around it is inside out, and so is what lies in it; a
 * shell that faces inwards within another one bounds a hollow. Sheets (loose triangles, say) are judged together: the sum
 * of their tetrahedra says which way the surface faces that they make up. Millimetres, mm³.
 */
import type { Mm, Mm3 } from '../../units/types';
import type { Edges } from './edges';
import { NONE } from './edges';

export interface Shell {
  /** Its triangles. */
  readonly triangles: Uint32Array;
  /** Least and greatest x, y, z. */
  readonly min: readonly [Mm, Mm, Mm];
  readonly max: readonly [Mm, Mm, Mm];
  /** Positive where it faces outwards; of an open shell measured from its box's middle, of a sheet from the mesh's. */
  readonly volume_mm3: Mm3;
  /** Every side has a partner. */
  readonly closed: boolean;
  /** Open, and more a part of a surface than an almost closed one. */
  readonly sheet: boolean;
}
/** Areas of a closed surface add up to nothing as vectors; where this share of the whole remains, it is a sheet. */
const SHEET_SHARE = 0.5;

function rootOf(parents: Int32Array, start: number): number {
  let at = start;
  while (parents[at] !== at) {
    parents[at] = parents[parents[at]];
    at = parents[at];
  }
  return at;
}

/** Triangles that share an edge belong together: for each shell its triangles. */
function groups(count: number, edges: Edges): Uint32Array[] {
  const parents = Int32Array.from({ length: count }, (_, t) => t);
  for (const start of edges.first) {
    const root = rootOf(parents, Math.floor(start / 3));
    for (let side = edges.next[start]; side !== NONE; side = edges.next[side])
      parents[rootOf(parents, Math.floor(side / 3))] = root;
  }
  const sizes = new Int32Array(count);
  for (let t = 0; t < count; t++) sizes[rootOf(parents, t)] += 1;
  const lists = new Map<number, Uint32Array>();
  const filled = new Int32Array(count);
  for (let t = 0; t < count; t++) {
    const root = rootOf(parents, t);
    let list = lists.get(root);
    if (list === undefined) {
      list = new Uint32Array(sizes[root]);
      lists.set(root, list);
    }
    list[filled[root]] = t;
    filled[root] += 1;
  }
  return [...lists.values()];
}

interface Extent {
  readonly min: [Mm, Mm, Mm];
  readonly max: [Mm, Mm, Mm];
}
function extentOf(points: Float64Array, triangles: Uint32Array, members: Uint32Array): Extent {
  const min: [Mm, Mm, Mm] = [Infinity, Infinity, Infinity];
  const max: [Mm, Mm, Mm] = [-Infinity, -Infinity, -Infinity];
  for (const t of members)
    for (let side = 3 * t; side < 3 * t + 3; side++)
      for (let axis = 0; axis < 3; axis++) {
        const value = points[3 * triangles[side] + axis];
        if (value < min[axis]) min[axis] = value;
        if (value > max[axis]) max[axis] = value;
      }
  return { min, max };
}
const middleOf = ({ min, max }: Extent): number[] => min.map((low, axis) => (low + max[axis]) / 2);

/** |Σ areas as vectors| / Σ areas. */
function vectorShare(points: Float64Array, triangles: Uint32Array, members: Uint32Array): number {
  const sum = [0, 0, 0];
  let whole = 0;
  for (const t of members) {
    const [a, b, c] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    const [ux, uy, uz] = [
      points[b] - points[a],
      points[b + 1] - points[a + 1],
      points[b + 2] - points[a + 2],
    ];
    const [vx, vy, vz] = [
      points[c] - points[a],
      points[c + 1] - points[a + 1],
      points[c + 2] - points[a + 2],
    ];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    sum[0] += nx;
    sum[1] += ny;
    sum[2] += nz;
    whole += Math.hypot(nx, ny, nz);
  }
  return whole > 0 ? Math.hypot(sum[0], sum[1], sum[2]) / whole : 0;
}

/** Σ of the tetrahedra between a point and each triangle. */
function volumeFrom(
  points: Float64Array,
  triangles: Uint32Array,
  members: Uint32Array,
  [ox, oy, oz]: readonly number[],
): Mm3 {
  let six = 0;
  for (const t of members) {
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ax = points[a] - ox;
    const ay = points[a + 1] - oy;
    const az = points[a + 2] - oz;
    const bx = points[b] - ox;
    const by = points[b + 1] - oy;
    const bz = points[b + 2] - oz;
    const cx = points[c] - ox;
    const cy = points[c + 1] - oy;
    const cz = points[c + 2] - oz;
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return six / 6;
}

/** All shells of triangles that already face the same way within each surface. */
export function shellsOf(
  points: Float64Array,
  triangles: Uint32Array,
  edges: Edges,
  across: Int32Array,
): Shell[] {
  const count = triangles.length / 3;
  const all = Uint32Array.from({ length: count }, (_, t) => t);
  const centre = middleOf(extentOf(points, triangles, all));
  const isOpen = (t: number): boolean =>
    across[3 * t] === NONE || across[3 * t + 1] === NONE || across[3 * t + 2] === NONE;
  return groups(count, edges).map((members): Shell => {
    const extent = extentOf(points, triangles, members);
    const closed = !members.some(isOpen);
    const sheet = !closed && vectorShare(points, triangles, members) > SHEET_SHARE;
    const volume_mm3 = volumeFrom(points, triangles, members, sheet ? centre : middleOf(extent));
    return { triangles: members, ...extent, closed, sheet, volume_mm3 };
  });
}

/** Does the box of `inner` lie within that of `outer`? */
const boxWithin = ({ min, max }: Shell, outer: Shell): boolean =>
  min[0] >= outer.min[0] &&
  max[0] <= outer.max[0] &&
  min[1] >= outer.min[1] &&
  max[1] <= outer.max[1] &&
  min[2] >= outer.min[2] &&
  max[2] <= outer.max[2];

/** Share of each corner in the point of a triangle that is tested: no symmetry of a mesh is met by chance. */
const SHARES = [0.5077, 0.3049, 0.1874];

/** Is a point of shell `inner` inside shell `outer`? Counts crossings of the ray upwards, half-open in the plane. */
function inside(points: Float64Array, triangles: Uint32Array, inner: Shell, outer: Shell): boolean {
  const [x, y, z] = [0, 1, 2].map((axis) =>
    SHARES.reduce(
      (sum, share, k) => sum + share * points[3 * triangles[3 * inner.triangles[0] + k] + axis],
      0,
    ),
  );
  let odd = false;
  for (const t of outer.triangles)
    if (rayMeets(points, 3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2], x, y, z))
      odd = !odd;
  return odd;
}

function rayMeets(
  p: Float64Array,
  a: number,
  b: number,
  c: number,
  x: number,
  y: number,
  z: number,
): boolean {
  if (p[a + 2] <= z && p[b + 2] <= z && p[c + 2] <= z) return false;
  const u = leftOf(p, a, b, x, y);
  if (leftOf(p, b, c, x, y) !== u || leftOf(p, c, a, x, y) !== u) return false;
  const nx = (p[b + 1] - p[a + 1]) * (p[c + 2] - p[a + 2]) - (p[b + 2] - p[a + 2]) * (p[c + 1] - p[a + 1]);
  const ny = (p[b + 2] - p[a + 2]) * (p[c] - p[a]) - (p[b] - p[a]) * (p[c + 2] - p[a + 2]);
  const nz = (p[b] - p[a]) * (p[c + 1] - p[a + 1]) - (p[b + 1] - p[a + 1]) * (p[c] - p[a]);
  return nz !== 0 && p[a + 2] - (nx * (x - p[a]) + ny * (y - p[a + 1])) / nz > z;
}

/** Is (x, y) left of a → b? The lower end of an edge decides first, so that both triangles of an edge say the same. */
function leftOf(p: Float64Array, a: number, b: number, x: number, y: number): boolean {
  const swap = p[b] < p[a] || (p[b] === p[a] && p[b + 1] < p[a + 1]);
  const i = swap ? b : a;
  const k = swap ? a : b;
  const left = (p[k] - p[i]) * (y - p[i + 1]) - (p[k + 1] - p[i + 1]) * (x - p[i]) >= 0;
  return left !== swap;
}

/** For each shell the closed shells that it lies in, by a sweep along x over their boxes. */
export function containers(
  points: Float64Array,
  triangles: Uint32Array,
  shells: readonly Shell[],
): number[][] {
  const within: number[][] = shells.map(() => []);
  const order = shells.map((_, i) => i).sort((a, b) => shells[a].min[0] - shells[b].min[0]);
  let open: number[] = [];
  for (let at = 0; at < order.length;) {
    // Boxes that begin at the same x may hold one another: they are opened together.
    const x = shells[order[at]].min[0];
    open = open.filter((k) => shells[k].max[0] >= x);
    let end = at;
    for (; end < order.length && shells[order[end]].min[0] === x; end++)
      if (shells[order[end]].closed) open.push(order[end]);
    for (; at < end; at++) {
      const inner = shells[order[at]];
      for (const k of open)
        if (k !== order[at] && boxWithin(inner, shells[k]) && inside(points, triangles, inner, shells[k]))
          within[order[at]].push(k);
    }
  }
  return within;
}

/** Which shells have to be turned, given what each lies in. */
export function insideOut(shells: readonly Shell[], within: readonly (readonly number[])[]): boolean[] {
  const size = (i: number): number => Math.abs(shells[i].volume_mm3);
  const sheets = shells.reduce((sum, { sheet, volume_mm3 }) => sum + (sheet ? volume_mm3 : 0), 0);
  const alone = shells.map((shell, i) => within[i].length === 0 && shell.volume_mm3 < 0);
  return shells.map((shell, i) => {
    if (shell.sheet) return sheets < 0;
    const outermost = within[i].filter((k) => within[k].length === 0).sort((a, b) => size(b) - size(a))[0];
    return alone[outermost ?? i];
  });
}
