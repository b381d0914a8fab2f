/**
 * A mesh made ready for checking and cutting: triangles with a repeated corner left out, all of a surface facing the same
 * way, shells that are inside out turned, every side paired with the one across its edge.
 */
import { edgesOf, type Edges } from './edges';
import { pairedSides, turnedTriangles, withTurned } from './facing';
import { containers, insideOut, shellsOf, type Shell } from './shells';
import type { Mesh } from './types';

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
}

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

function prepareAnew({ points, triangles: given }: Mesh): PreparedMesh {
  const sound = withoutCollapsed(given);
  const edges = edgesOf(sound);
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
    collapsed: (given.length - sound.length) / 3,
  };
}
