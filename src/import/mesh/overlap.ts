/**
 * Do two shells of a mesh overlap? Either one lies in the other's solid, or an edge of one passes through a triangle of the
 * other. The smaller one is shrunk by a millionth about its middle first, so that shells which only touch do not count, and
 * shells with sides in one plane do. Triangles are swept along x. Source: segment and triangle by signed volumes
 * [mathematics].
 */
import type { PreparedMesh } from './prepare';
import type { Shell } from './shells';

const SHRINK = 1 - 1e-6;

const boxesMeet = (a: Shell, b: Shell): boolean =>
  a.min[0] < b.max[0] &&
  b.min[0] < a.max[0] &&
  a.min[1] < b.max[1] &&
  b.min[1] < a.max[1] &&
  a.min[2] < b.max[2] &&
  b.min[2] < a.max[2];

/** Pairs of closed shells (by index) whose boxes overlap, by a sweep along x. */
function candidates(shells: readonly Shell[]): [number, number][] {
  const order = shells.flatMap((shell, i) => (shell.closed ? [i] : []));
  order.sort((a, b) => shells[a].min[0] - shells[b].min[0]);
  const pairs: [number, number][] = [];
  order.forEach((a, p) => {
    for (let q = p + 1; q < order.length && shells[order[q]].min[0] < shells[a].max[0]; q++)
      if (boxesMeet(shells[a], shells[order[q]])) pairs.push([a, order[q]]);
  });
  return pairs;
}

/** Does a triangle reach into a box? Asked of every triangle for every pair: nothing is allocated. */
function reachesInto({ points, triangles }: PreparedMesh, t: number, { min, max }: Shell): boolean {
  for (let axis = 0; axis < 3; axis++) {
    const a = points[3 * triangles[3 * t] + axis];
    const b = points[3 * triangles[3 * t + 1] + axis];
    const c = points[3 * triangles[3 * t + 2] + axis];
    if (
      (a > max[axis] && b > max[axis] && c > max[axis]) ||
      (a < min[axis] && b < min[axis] && c < min[axis])
    )
      return false;
  }
  return true;
}

/** Triangles of a shell that reach into a box, nine coordinates each, in order of their least x. */
function triangleList(mesh: PreparedMesh, shell: Shell, box: Shell, shrink: number): Float64Array[] {
  const list: Float64Array[] = [];
  const middle = [0, 1, 2].map((axis) => (shell.min[axis] + shell.max[axis]) / 2);
  for (const t of shell.triangles) {
    if (!reachesInto(mesh, t, box)) continue;
    const corners = new Float64Array(9);
    for (let i = 0; i < 9; i++) {
      const axis = i % 3;
      const value = mesh.points[3 * mesh.triangles[3 * t + (i - axis) / 3] + axis];
      corners[i] = middle[axis] + shrink * (value - middle[axis]);
    }
    list.push(corners);
  }
  return list.sort((a, b) => low(a, 0) - low(b, 0));
}
const low = (c: Float64Array, axis: number): number => Math.min(c[axis], c[3 + axis], c[6 + axis]);
const high = (c: Float64Array, axis: number): number => Math.max(c[axis], c[3 + axis], c[6 + axis]);

/** Six times the signed volume of p, and corners i, j, k of t. */
function side(
  t: Float64Array,
  i: number,
  j: number,
  px: number,
  py: number,
  pz: number,
  qx: number,
  qy: number,
  qz: number,
): number {
  const ax = t[i] - px;
  const ay = t[i + 1] - py;
  const az = t[i + 2] - pz;
  const bx = t[j] - px;
  const by = t[j + 1] - py;
  const bz = t[j + 2] - pz;
  const dx = qx - px;
  const dy = qy - py;
  const dz = qz - pz;
  return dx * (ay * bz - az * by) + dy * (az * bx - ax * bz) + dz * (ax * by - ay * bx);
}

/** On which side of the triangle's plane a point lies. */
function planeSide(t: Float64Array, x: number, y: number, z: number): number {
  const ux = t[3] - t[0];
  const uy = t[4] - t[1];
  const uz = t[5] - t[2];
  const vx = t[6] - t[0];
  const vy = t[7] - t[1];
  const vz = t[8] - t[2];
  return (
    (uy * vz - uz * vy) * (x - t[0]) + (uz * vx - ux * vz) * (y - t[1]) + (ux * vy - uy * vx) * (z - t[2])
  );
}

/** Does an edge of `e` pass through `t`? */
function edgePierces(e: Float64Array, t: Float64Array): boolean {
  for (let i = 0; i < 9; i += 3) {
    const j = (i + 3) % 9;
    const before = planeSide(t, e[i], e[i + 1], e[i + 2]);
    const after = planeSide(t, e[j], e[j + 1], e[j + 2]);
    if (before * after >= 0) continue;
    const s = (a: number, b: number): number =>
      side(t, a, b, e[i], e[i + 1], e[i + 2], e[j], e[j + 1], e[j + 2]);
    const u = s(0, 3);
    const v = s(3, 6);
    const w = s(6, 0);
    if ((u >= 0 && v >= 0 && w >= 0) || (u <= 0 && v <= 0 && w <= 0)) return true;
  }
  return false;
}

function surfacesCut(mesh: PreparedMesh, one: Shell, other: Shell): boolean {
  const sizeOf = ({ min, max }: Shell): number => Math.hypot(...[0, 1, 2].map((a) => max[a] - min[a]));
  const [small, large] = sizeOf(one) <= sizeOf(other) ? [one, other] : [other, one];
  const a = triangleList(mesh, small, large, SHRINK);
  const b = triangleList(mesh, large, small, 1);
  let start = 0;
  const widest = b.reduce((most, t) => Math.max(most, high(t, 0) - low(t, 0)), 0);
  for (const t of a) {
    const from = low(t, 0);
    const to = high(t, 0);
    while (start < b.length && low(b[start], 0) < from - widest) start += 1;
    for (let k = start; k < b.length && low(b[k], 0) <= to; k++) if (trianglesCut(t, b[k])) return true;
  }
  return false;
}

function trianglesCut(t: Float64Array, u: Float64Array): boolean {
  for (let axis = 0; axis < 3; axis++)
    if (low(t, axis) > high(u, axis) || low(u, axis) > high(t, axis)) return false;
  return edgePierces(t, u) || edgePierces(u, t);
}

/** Number of pairs of closed shells that overlap; an open one has no inside. */
export function overlappingPairs(mesh: PreparedMesh): number {
  const { shells, within } = mesh;
  const sign = (i: number): number => Math.sign(shells[i].volume_mm3);
  // Within the other one's solid: more shells around it face outwards than inwards.
  const inSolid = (i: number): boolean => sign(i) > 0 && within[i].reduce((sum, k) => sum + sign(k), 0) > 0;
  return candidates(shells).filter(
    ([a, b]) =>
      (inSolid(a) && within[a].includes(b) && sign(b) > 0) ||
      (inSolid(b) && within[b].includes(a) && sign(a) > 0) ||
      surfacesCut(mesh, shells[a], shells[b]),
  ).length;
}
