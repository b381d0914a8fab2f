/**
 * Meshes of others, and a second library. stl-models (npm, MIT): volumes against a sum of signed tetrahedra written here,
 * straight from the bytes of the file [mathematics]; gearwheel's 8922.637 and 2,444 triangles [derived from its file].
 * manifold-3d (npm, Apache-2.0): volumes of solids and areas of their sections, computed in its own way.
 */
import { readFileSync } from 'node:fs';
import manifold, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkMesh, orient, readMesh, sectionMesh, type Mesh } from '../../src/import/mesh';
import { areaOf, cut, perimeter, slabAt, value } from '../import/mesh/slabs';
import { revolved, type Point2 } from '../import/mesh/meshes';

const bytesOf = (path: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../node_modules/stl-models/${path}`, import.meta.url)));
const bodyOf = (path: string): Mesh => value(readMesh(bytesOf(path), path)).bodies[0].mesh;

/** Σ x·(y × z)/6 over the triangles of a binary STL, read straight from its bytes. */
function volumeInBytes(bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer);
  let six = 0;
  for (let t = 0; t < view.getUint32(80, true); t++) {
    const [a, b, c] = [0, 1, 2].map((k) =>
      [0, 1, 2].map((axis) => view.getFloat32(84 + 50 * t + 12 + 12 * k + 4 * axis, true)),
    );
    six +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return six / 6;
}

describe('files of stl-models', () => {
  test.each([
    ['objects/gearwheel.bin.stl', 2444],
    ['polytopes/cube.bin.stl', 12],
    ['polytopes/tetrahedron.bin.stl', 4],
    ['polytopes/tetrahedronIrregular.bin.stl', 4],
    ['polytopes/tetrahedronMinusZero.bin.stl', 4],
    ['polytopes/unitCube.binary.stl', 12],
  ])('%s: %d triangles, closed, volume as in its bytes', (path, triangles) => {
    const check = checkMesh(bodyOf(path), 0.01);
    expect([check.triangles, check.closed, check.shells]).toEqual([triangles, true, 1]);
    expect(check.volume_mm3).toBeCloseTo(Math.abs(volumeInBytes(bytesOf(path))), 3);
  });
  test('gearwheel holds 8922.637; its sections add up to that', () => {
    const gearwheel = bodyOf('objects/gearwheel.bin.stl');
    expect(checkMesh(gearwheel, 0.01).volume_mm3).toBeCloseTo(8922.637, 3);
    expect(cut(gearwheel, 0.06).volume_mm3 / 8922.637).toBeCloseTo(1, 4);
  });
  test('gearwheel as text and as bytes is one mesh', () => {
    const text = bodyOf('objects/gearwheel.ascii.stl');
    const binary = bodyOf('objects/gearwheel.bin.stl');
    expect(text.triangles).toEqual(binary.triangles);
    text.points.forEach((number, i) => expect(Math.abs(number - binary.points[i])).toBeLessThan(1e-5));
  });
  test('bunny is open, and in its sections that shows', () => {
    const bunny = orient(bodyOf('objects/bunny.bin.stl'), { scale: 500 });
    const check = checkMesh(bunny, 0.01);
    expect([check.triangles, check.closed, check.volume_mm3]).toEqual([69451, false, null]);
    expect(check.openEdges).toBeGreaterThan(0);
    const sections = value(sectionMesh(bunny, { layer_mm: 0.2, chainGap_mm: 0.01 }));
    expect(sections.openLayers).toBeGreaterThan(0);
    const wide = value(sectionMesh(bunny, { layer_mm: 0.2, chainGap_mm: sections.widestGap_mm! }));
    expect([wide.openLayers, wide.slabs.length]).toEqual([0, wide.layers]);
    expect(wide.volume_mm3).toBeGreaterThan(sections.volume_mm3);
  });
});

describe('beside manifold-3d', () => {
  let wasm: ManifoldToplevel;
  beforeAll(async () => {
    wasm = await manifold();
    wasm.setup();
  });
  /** Coordinates of 32 bits, as that library holds them. */
  const toMesh = (solid: Manifold): Mesh => {
    const { vertProperties, triVerts, numProp } = solid.getMesh();
    expect(numProp).toBe(3);
    return { points: Float64Array.from(vertProperties), triangles: Uint32Array.from(triVerts) };
  };
  const fromMesh = ({ points, triangles }: Mesh): Manifold =>
    new wasm.Manifold(
      new wasm.Mesh({
        numProp: 3,
        vertProperties: Float32Array.from(points),
        triVerts: Uint32Array.from(triangles),
      }),
    );
  /** Volume, and area of every `step`-th section off the vertices, of a solid that stands on z = 0. */
  function expectSame(mesh: Mesh, layer: number, step: number): void {
    const standing = orient(mesh);
    const solid = fromMesh(standing);
    expect(solid.status()).toBe('NoError');
    const check = checkMesh(standing, 0.01);
    expect(check.volume_mm3! / solid.volume()).toBeCloseTo(1, 5);
    const { slabs, layers } = value(sectionMesh(standing, { layer_mm: layer, chainGap_mm: 0.01 }));
    for (let k = 1; k < layers; k += step) {
      const z = (k - 0.5) * layer;
      const slab = slabAt(slabs, z);
      expect(Math.abs(areaOf(slab) - solid.slice(z).area())).toBeLessThan(0.0014 * perimeter(slab) + 0.002);
    }
  }
  const wave = Array.from({ length: 90 }, (_, i): Point2 => {
    const angle = (2 * Math.PI * i) / 90;
    const r = 9 + 1.5 * Math.sin(5 * angle + 0.4);
    return [30 + r * Math.cos(angle), r * Math.sin(angle)];
  });

  test('gearwheel', () => expectSame(bodyOf('objects/gearwheel.bin.stl'), 0.073, 9));
  test('gearwheel leaning', () =>
    expectSame(orient(bodyOf('objects/gearwheel.bin.stl'), { turnX_deg: 37, turnY_deg: 21 }), 0.31, 3));
  test('a wavy ring lying and leaning', () => {
    expectSame(revolved(wave, 150, true), 0.173, 5);
    expectSame(orient(revolved(wave, 150, true), { turnX_deg: 64, turnZ_deg: 5 }), 0.517, 3);
  });
  test('a valve block: drilled three ways, a hollow inside', () => {
    const { Manifold } = wasm;
    const drill = (length: number, radius: number): Manifold =>
      Manifold.cylinder(length, radius, radius, 90, true);
    const block = Manifold.cube([60, 40, 30], true)
      .subtract(drill(100, 6))
      .subtract(drill(100, 5).rotate([90, 0, 0]).translate([12, 0, 3]))
      .subtract(drill(100, 4).rotate([0, 90, 0]).translate([0, 8, -4]))
      .subtract(Manifold.sphere(5, 64).translate([-20, -10, 0]));
    expectSame(toMesh(block), 0.123, 7);
    expectSame(orient(toMesh(block), { turnX_deg: 12, turnY_deg: 48, turnZ_deg: 100 }), 0.377, 5);
  });
  test('overlapping solids in one file measure what their union measures', () => {
    const { Manifold } = wasm;
    const solids = [
      Manifold.sphere(10, 80),
      Manifold.sphere(9, 72).translate([8, 3, 1]),
      Manifold.cylinder(30, 4, 3, 70, true).translate([3, -2, 0]),
    ];
    const points: number[] = [];
    const triangles: number[] = [];
    for (const solid of solids) {
      const mesh = toMesh(solid);
      const shift = points.length / 3;
      points.push(...mesh.points);
      triangles.push(...Array.from(mesh.triangles, (point) => point + shift));
    }
    const standing = orient({ points: Float64Array.from(points), triangles: Uint32Array.from(triangles) });
    expect(checkMesh(standing, 0.01).overlappingShells).toBe(3);
    const sections = value(sectionMesh(standing, { layer_mm: 0.2, chainGap_mm: 0.01 }));
    const union = Manifold.union(solids);
    expect(sections.volume_mm3 / union.volume()).toBeCloseTo(1, 3);
    const bottom = union.boundingBox().min[2];
    for (let k = 1; k < sections.layers; k += 4) {
      const z = (k - 0.5) * 0.2;
      const slab = slabAt(sections.slabs, z);
      const area = union.slice(bottom + z).area();
      expect(Math.abs(areaOf(slab) - area)).toBeLessThan(0.0014 * perimeter(slab) + 0.002);
    }
  });
});
