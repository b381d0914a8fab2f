/**
 * A mesh made ready for checking and cutting: triangles with a repeated corner and triangles that stand there already left
 * out, all of a surface facing the same way, shells that are inside out turned, every side paired with the one across its
 * edge. Points along open edges that lie within the grid of a layout (0.001 mm) of each other are one point where that
 * leaves fewer edges open: they differ by rounding only.
 */
import { edgesOf, NONE, sideAfter, type Edges } from './edges';
import { pairedSides, turnedTriangles, withTurned } from './facing';
import { containers, insideOut, shellsOf, type Shell } from './shells';
import type { Mm } from '../../units/types';
import type { Mesh } from './types';
import { firstNear, weld } from './weld';

export interface PreparedMesh extends Mesh {
  /** For each side (3·t + k: from corner k to the next) the side across its edge; −1 where it is open. */
  readonly across: Int32Array;
  readonly edges: Edges;
  readonly shells: readonly Shell[];
  /** For each shell the closed ones that it lies in. */
  readonly within: readonly (readonly number[])[];
  readonly turned: number;
  readonly insideOut: number;
  /** Triangles with a repeated corner. */
  readonly collapsed: number;
  /** Triangles that another one with the same corners, seen from the same side, repeats. */
  readonly repeated: number;
  /** Points along open edges that were made one with another. */
  readonly joined: number;
}

/** The grid of a layout. */
export const SAME_POINT_mm: Mm = 0.001;

function withoutCollapsed(triangles: Uint32Array): Uint32Array {
  const kept = new Uint32Array(triangles.length);
  let end = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t];
    const b = triangles[t + 1];
    const c = triangles[t + 2];
    if (a === b || b === c || c === a) continue;
    kept[end] = a;
    kept[end + 1] = b;
    kept[end + 2] = c;
    end += 3;
  }
  return end === triangles.length ? triangles : kept.slice(0, end);
}

/** Each triangle once: of those with the same corners in the same sense the first. */
function withoutRepeated(triangles: Uint32Array): Uint32Array {
  const seen = new Set<string>();
  const kept = new Uint32Array(triangles.length);
  let end = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    const least = Math.min(a, b, c);
    const key = least === a ? `${a} ${b} ${c}` : least === b ? `${b} ${c} ${a}` : `${c} ${a} ${b}`;
    if (seen.has(key)) continue;
    seen.add(key);
    kept.set([a, b, c], end);
    end += 3;
  }
  return end === triangles.length ? triangles : kept.slice(0, end);
}

/** Only where an edge is crowded can a triangle be there twice. */
function once(triangles: Uint32Array): { sound: Uint32Array; edges: Edges } {
  const edges = edgesOf(triangles);
  if (!edges.count.some((count) => count > 2)) return { sound: triangles, edges };
  const sound = withoutRepeated(triangles);
  return { sound, edges: sound === triangles ? edges : edgesOf(sound) };
}

const prepared = new WeakMap<Mesh, PreparedMesh>();

/** Kept by the mesh's identity, so that check and cut share it. */
export function prepare(mesh: Mesh): PreparedMesh {
  let made = prepared.get(mesh);
  if (made === undefined) {
    made = prepareAnew(mesh);
    prepared.set(mesh, made);
  }
  return made;
}

function prepareAnew(mesh: Mesh): PreparedMesh {
  const plain = paired(mesh);
  if (openSides(plain) === 0) return plain;
  const rim = rimOf(plain);
  const near = firstNear(mesh.points, SAME_POINT_mm, rim);
  let joined = 0;
  for (const point of rim) if (near[point] !== point) joined += 1;
  if (joined === 0) return plain;
  const closer = paired({ points: mesh.points, triangles: mesh.triangles.map((point) => near[point]) });
  return openSides(closer) < openSides(plain) ? { ...closer, joined } : plain;
}

/** The mesh with its cracks closed: points along open edges nearer than `crack_mm` are one, all others stay. */
export const joinCracks = (mesh: Mesh, crack_mm: Mm): Mesh => weld(mesh, crack_mm, rimOf(prepare(mesh)));

const openSides = ({ across }: PreparedMesh): number =>
  across.reduce((count, side) => count + (side === NONE ? 1 : 0), 0);

/** Points along open edges. */
function rimOf({ triangles, across }: PreparedMesh): Set<number> {
  const rim = new Set<number>();
  for (let side = 0; side < across.length; side++)
    if (across[side] === NONE) rim.add(triangles[side]).add(triangles[sideAfter(side)]);
  return rim;
}

/** The mesh with its points as they are. */
function paired({ points, triangles: given }: Mesh): PreparedMesh {
  const full = withoutCollapsed(given);
  const { sound, edges } = once(full);
  const turned = turnedTriangles(sound, edges);
  const count = turned.reduce((sum, flag) => sum + flag, 0);
  const faced = withTurned(sound, turned);
  const shells = shellsOf(points, faced, edges, pairedSides(faced, edges, turned));
  const within = containers(points, faced, shells);
  const flips = insideOut(shells, within);
  shells.forEach((shell, i) => {
    if (flips[i]) for (const t of shell.triangles) turned[t] = 1 - turned[t];
  });
  const triangles = withTurned(sound, turned);
  return {
    points,
    triangles,
    edges,
    within,
    across: pairedSides(triangles, edges, turned),
    shells: shells.map((shell, i) => (flips[i] ? { ...shell, volume_mm3: -shell.volume_mm3 } : shell)),
    turned: count,
    insideOut: flips.filter(Boolean).length,
    collapsed: (given.length - full.length) / 3,
    repeated: (full.length - sound.length) / 3,
    joined: 0,
  };
}
