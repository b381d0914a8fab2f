/**
 * Slabs looked at from outside: area at a height by Gauss's formula over even-odd rings, and whether the outlines cross.
 */
import { orient, sectionMesh, type Mesh, type MeshSections } from '../../../src/import/mesh';
import type { LayoutRing, Slab } from '../../../src/layout/types';
import type { Result } from '../../../src/layout/result';

export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.fault.code} ${JSON.stringify(result.fault.params)}`);
  return result.value;
}
const points = (ring: LayoutRing): readonly (readonly [number, number])[] => {
  if ('circle_mm' in ring) throw new Error('a mesh has no circles');
  return ring;
};
/** Gauss's formula: positive where the ring runs counter-clockwise. */
export const gauss = (ring: LayoutRing): number => {
  const list = points(ring);
  const [ox, oy] = list[0];
  return list.reduce((sum, [x, y], i) => {
    const [u, v] = list[(i + 1) % list.length];
    return sum + ((x - ox) * (v - oy) - (u - ox) * (y - oy)) / 2;
  }, 0);
};
export const perimeter = (slab: Slab): number =>
  slab.rings
    .map(points)
    .flatMap((list) =>
      list.map(([x, y], i) =>
        Math.hypot(x - list[(i + 1) % list.length][0], y - list[(i + 1) % list.length][1]),
      ),
    )
    .reduce((sum, length) => sum + length, 0);
export const areaOf = (slab: Slab): number => slab.rings.reduce((sum, ring) => sum + gauss(ring), 0);
/** The slab that a height lies in; a top belongs to the slab above. */
export const slabAt = (slabs: readonly Slab[], z: number): Slab => {
  const found = slabs.find(({ to_mm }) => to_mm > z + 1e-9);
  if (!found) throw new Error(`no slab at ${z}`);
  return found;
};
export const areaAt = (slabs: readonly Slab[], z: number): number => areaOf(slabAt(slabs, z));
/** The mesh set down and cut. */
export const cut = (mesh: Mesh, layer_mm: number, chainGap_mm = 0.01): MeshSections =>
  value(sectionMesh(orient(mesh), { layer_mm, chainGap_mm }));
