/**
 * What a mesh is like, what is wrong with it, and what can be used all the same. Millimetres, mm³.
 */
import { DEFAULT_LIMITS } from '../../layout/defaults';
import { fail, figure, type Fault, type Result, type Words } from '../../layout/result';
import { SIZE_LIMIT_mm } from '../../layout/limits';
import { roundMm } from '../../units/round';
import type { Mm } from '../../units/types';
import { crackWidth } from './cracks';
import { NONE } from './edges';
import { extent } from './orient';
import { overlappingPairs } from './overlap';
import { prepare, SAME_POINT_mm, type PreparedMesh } from './prepare';
import type { Mesh, MeshCheck, MeshFile } from './types';

/** A length on the drawing that a mesh cannot fall short of: the grid of a layout. */
const LEAST_mm: Mm = 0.001;

/** "up to 0.0040"; below the grid of a layout no figure says anything. */
const smallLength = (value: Mm): Words =>
  value < LEAST_mm
    ? { text: 'under {length}', values: { length: LEAST_mm } }
    : { text: 'up to {length}', values: { length: figure(value.toPrecision(2)) } };

/** Size along x, y, z. */
export const sizeOf = (mesh: Mesh): readonly [Mm, Mm, Mm] => {
  const along = (axis: number): Mm => extent(mesh, axis)[1] - extent(mesh, axis)[0];
  return [along(0), along(1), along(2)];
};

function shown(size: readonly [Mm, Mm, Mm]): Words {
  const [x, y, z] = size.map((value) => Number(value.toPrecision(4))) as [Mm, Mm, Mm];
  return { text: '{x} × {y} × {z}', values: { x, y, z } };
}

/** mesh-too-large or mesh-flat where no part can have this size. */
export function sizeFault(size: readonly [Mm, Mm, Mm]): Result<never> | null {
  if (!(Math.max(...size) <= SIZE_LIMIT_mm))
    return fail('mesh-too-large', { found: shown(size), limit: SIZE_LIMIT_mm });
  return Math.min(...size) >= LEAST_mm ? null : fail('mesh-flat', { found: shown(size) });
}

/** Triangles without area: a corner repeats, or all three lie on one line. */
function degenerate({ points, triangles, collapsed }: PreparedMesh): number {
  let count = collapsed;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const [ux, uy, uz] = [0, 1, 2].map((k) => points[b + k] - points[a + k]);
    const [vx, vy, vz] = [0, 1, 2].map((k) => points[c + k] - points[a + k]);
    const area = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    if (area <= 1e-12 * Math.max(ux * ux + uy * uy + uz * uz, vx * vx + vy * vy + vz * vz)) count += 1;
  }
  return count;
}

const howMany = (counts: Uint16Array, fits: (count: number) => boolean): number =>
  counts.reduce((sum, count) => sum + (fits(count) ? 1 : 0), 0);

/** Edges of two triangles that stayed without a pair (of crowded ones, what is left over is not counted). */
function twisted({ across, edges }: PreparedMesh): number {
  let open = 0;
  for (const side of across) if (side === NONE) open += 1;
  for (const count of edges.count) {
    if (count > 2) return 0;
    if (count === 1) open -= 1;
  }
  return open / 2;
}

/**
 * Looks at a mesh as it stands.
 * @param chainGap_mm what the sections will close, for the words of the findings
 */
export function checkMesh(mesh: Mesh, chainGap_mm: Mm = DEFAULT_LIMITS.chainGap_mm): MeshCheck {
  const ready = prepare(mesh);
  const { edges, shells } = ready;
  const size_mm = sizeOf(mesh);
  const closed = ready.across.every((side) => side !== NONE);
  const counted = {
    size_mm,
    triangles: mesh.triangles.length / 3,
    points: new Set(mesh.triangles).size,
    shells: shells.length,
    hollows: shells.filter((shell, i) => shell.volume_mm3 < 0 && ready.within[i].length > 0).length,
    volume_mm3: closed ? shells.reduce((sum, shell) => sum + shell.volume_mm3, 0) : null,
    openEdges: howMany(edges.count, (count) => count === 1),
    crowdedEdges: howMany(edges.count, (count) => count > 2),
    twistedEdges: twisted(ready),
    turnedTriangles: ready.turned,
    insideOutShells: ready.insideOut,
    joinedPoints: ready.joined,
    degenerateTriangles: degenerate(ready),
    repeatedTriangles: ready.repeated,
    overlappingShells: overlappingPairs(ready),
    closed,
    crack_mm: crackWidth(ready, Math.max(...size_mm)),
  };
  return { ...counted, findings: findings(counted, chainGap_mm) };
}

function findings(check: Omit<MeshCheck, 'findings'>, chainGap_mm: Mm): Fault[] {
  const found: Fault[] = [];
  const size = sizeFault(check.size_mm);
  if (size && !size.ok) found.push(size.fault);
  const add = (code: Fault['code'], count: number, params: Fault['params'] = {}): void => {
    if (count > 0) found.push({ code, params: { count, ...params } });
  };
  add('mesh-points-joined', check.joinedPoints, { found: SAME_POINT_mm });
  add('mesh-open-edges', check.openEdges, { gap: roundMm(chainGap_mm) });
  if (check.crack_mm !== null)
    found.push({ code: 'mesh-cracks', params: { found: smallLength(check.crack_mm) } });
  add('mesh-crowded-edges', check.crowdedEdges);
  add('mesh-twisted-edges', check.twistedEdges);
  add('mesh-turned-triangles', check.turnedTriangles);
  add('mesh-inside-out', check.insideOutShells);
  add('mesh-degenerate', check.degenerateTriangles);
  add('mesh-repeated', check.repeatedTriangles);
  add('mesh-overlapping', check.overlappingShells);
  add('mesh-hollows', check.hollows);
  return found;
}

/** What the check page has to say about the file itself: its unit, and what was left out. */
export function fileFindings(file: MeshFile): Fault[] {
  const unit: Fault[] = file.unit === null ? [{ code: 'mesh-unit-unknown', params: {} }] : [];
  const left = file.leftOut.map(({ kind, what, count }): Fault => {
    return { code: `mesh-left-out-${kind}`, params: { what, count } };
  });
  return [...unit, ...left];
}
