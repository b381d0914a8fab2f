/**
 * Sections of meshes against closed forms [mathematics] and against a published build. The bodies are tessellated here; what a
 * closed form has to allow for is the tessellation itself, whose sections are known exactly: n-gons with the area
 * (n/2)·sin(2π/n)·ρ², ρ on the chord of the profile. What is cut is rounded to 1 µm and has at most 0.5 µm taken off, so an
 * area may differ by its outline's length × 0.0012 mm.
 * The bridge: AM-Bench AMB2018-01, Heigel et al. (2020), J. Res. NIST 125:125005, doi 10.6028/jres.125.005; outlines
 * measured from AMB2018_01_Build.STL; areas 248.75 / 248.75 + 60·(z − 5) / 368.75 / 55.00 mm² and 3732.5 mm³ [derived].
 */
import { describe, expect, test } from 'vitest';
import type { Mesh } from '../../src/import/mesh';
import { areaAt, areaOf, cut, perimeter, slabAt } from '../import/mesh/slabs';
import { loft, meshOf, moved, rectangle, revolved, together, type Point2 } from '../import/mesh/meshes';

const ROUNDING = 0.0012;
const polygonShare = (n: number): number => (n / 2) * Math.sin((2 * Math.PI) / n);
/** Heights of layer middles. */
const middles = (layer: number, height: number): number[] =>
  Array.from({ length: Math.floor(height / layer) }, (_, k) => (k + 0.5) * layer);

describe('sphere of radius 20, 256 meridians, 180 steps', () => {
  const radius = 20;
  const steps = 180;
  const profile = Array.from({ length: steps + 1 }, (_, i): Point2 => {
    const angle = (Math.PI * i) / steps - Math.PI / 2;
    const r = i === 0 || i === steps ? 0 : radius * Math.cos(angle);
    return [r, radius * Math.sin(angle)];
  });
  const { slabs, layers, volume_mm3 } = cut(revolved(profile, 256, false), 0.1);
  const shrunk = radius * Math.cos(Math.PI / (2 * steps));

  test('every section lies between those of the sphere and of the one within the facets', () => {
    for (const z of middles(0.1, 40)) {
      const slab = slabAt(slabs, z);
      const outer = polygonShare(256) * (radius ** 2 - (z - radius) ** 2);
      const inner = polygonShare(256) * (shrunk ** 2 - (z - radius) ** 2);
      expect(areaOf(slab)).toBeLessThan(outer + ROUNDING * perimeter(slab) + 0.001);
      expect(areaOf(slab)).toBeGreaterThan(inner - ROUNDING * perimeter(slab) - 0.001);
    }
  });
  test('400 layers; their volume is 4/3·π·r³ but for the facets', () => {
    expect(layers).toBe(400);
    const exact = (4 / 3) * Math.PI * radius ** 3;
    expect(volume_mm3).toBeLessThan(exact);
    expect(volume_mm3 / exact).toBeGreaterThan((polygonShare(256) / Math.PI) * (shrunk / radius) ** 3 - 2e-4);
  });
});

test('cone of radius 15 and height 30: every section is (n/2)·sin(2π/n)·ρ² with ρ falling evenly', () => {
  const { slabs } = cut(
    revolved(
      [
        [0, 0],
        [15, 0],
        [0, 30],
      ],
      200,
      false,
    ),
    0.05,
  );
  for (const z of middles(0.05, 30)) {
    const slab = slabAt(slabs, z);
    const exact = polygonShare(200) * (15 * (1 - z / 30)) ** 2;
    expect(Math.abs(areaOf(slab) - exact)).toBeLessThan(ROUNDING * perimeter(slab) + 0.001);
  }
});

test('torus 30/8: every section is an annulus of 4·R·w·(n/2)·sin(2π/n), w on the chord of its circle', () => {
  const [R, r, n, steps] = [30, 8, 240, 120];
  const circle = Array.from({ length: steps }, (_, i): Point2 => {
    const angle = (2 * Math.PI * i) / steps;
    return [R + r * Math.cos(angle), r * Math.sin(angle)];
  });
  const { slabs, height_mm } = cut(revolved(circle, n, true), 0.1);
  expect(height_mm).toBeCloseTo(2 * r, 3);
  const shrunk = r * Math.cos(Math.PI / steps);
  for (const z of middles(0.1, 2 * r)) {
    const slab = slabAt(slabs, z);
    const width = (radius: number): number => Math.sqrt(Math.max(0, radius ** 2 - (z - r) ** 2));
    expect(slab.rings).toHaveLength(2);
    expect(areaOf(slab)).toBeLessThan(
      4 * R * width(r) * polygonShare(n) + ROUNDING * perimeter(slab) + 0.001,
    );
    expect(areaOf(slab)).toBeGreaterThan(
      4 * R * width(shrunk) * polygonShare(n) - ROUNDING * perimeter(slab) - 0.001,
    );
  }
});

test('mushroom: stem Ø20 to z = 50 under a cap Ø100 is two slabs of 314.16 and 7853.98 mm² but for 512 corners', () => {
  const profile: Point2[] = [
    [0, 0],
    [10, 0],
    [10, 50],
    [50, 50],
    [50, 70],
    [0, 70],
  ];
  const { slabs } = cut(revolved(profile, 512, false), 0.06);
  expect(slabs).toHaveLength(2);
  expect(areaAt(slabs, 25)).toBeCloseTo(polygonShare(512) * 100, 1);
  expect(Math.abs(areaAt(slabs, 25) / 314.16 - 1)).toBeLessThan(1e-4);
  expect(Math.abs(areaAt(slabs, 60) / 7853.98 - 1)).toBeLessThan(1e-4);
});

describe('bridge of AM-Bench AMB2018-01 as a mesh, layers of 0.02 mm', () => {
  const legs: readonly Point2[] = [
    [0, 5],
    [7, 7.5],
    [9.5, 12],
    [14, 19],
    [21, 21.5],
    [23.5, 26],
    [28, 33],
    [35, 35.5],
    [37.5, 40],
    [42, 47],
    [49, 49.5],
    [51.5, 54],
  ];
  const tip = (from: number): Point2[] => [
    [from, 0],
    [72.5, 0],
    [75, 2.5],
    [72.5, 5],
    [from, 5],
  ];
  /** A leg of constant width to z = 5, then leaning over the gaps on both sides to z = 7. */
  const leg = ([from, to]: Point2): Mesh[] => {
    const foot = rectangle(from, 0, to, 5);
    const wide = rectangle(from === 0 ? 0 : from - 1, 0, to + 1, 5);
    return [loft(foot, foot, 0, 5), loft(foot, wide, 5, 7)];
  };
  const parts = [
    ...legs.flatMap(leg),
    loft(tip(56), tip(56), 0, 5),
    loft(tip(56), tip(55), 5, 7),
    loft(tip(0), tip(0), 7, 12),
    ...Array.from({ length: 11 }, (_, i) => {
      const ridge = rectangle(7 * i, 0, 7 * i + 1, 5);
      return loft(ridge, ridge, 12, 12.5);
    }),
  ];
  const { slabs, layers, volume_mm3 } = cut(together(...parts), 0.02);

  test('625 layers; legs, bridge and ridges are one slab each, every layer of the overhang is its own', () => {
    expect(layers).toBe(625);
    expect(slabs).toHaveLength(1 + 100 + 1 + 1);
    expect(slabs.map(({ to_mm }) => to_mm)).toEqual([
      5,
      ...Array.from({ length: 100 }, (_, i) => Math.round(5020 + 20 * i) / 1000),
      12,
      12.5,
    ]);
  });
  test.each([
    ['legs', 2.5, 248.75],
    ['lowest layer of the overhang', 5.01, 248.75 + 60 * 0.01],
    ['overhang', 6.01, 248.75 + 60 * 1.01],
    ['highest layer of the overhang', 6.99, 248.75 + 60 * 1.99],
    ['bridge', 9, 368.75],
    ['ridges', 12.25, 55],
  ])('%s at %d mm measure %d mm² [derived]', (_, z, area) => {
    expect(areaAt(slabs, z)).toBeCloseTo(area, 6);
  });
  test('the volume is 3732.5 mm³ [derived]', () => {
    expect(volume_mm3).toBeCloseTo(3732.5, 6);
  });
});

describe('a leaning prism [mathematics]', () => {
  // Same area in every layer, another place: Cavalieri. 12 × 8 mm, leaning 0.5 mm in x per mm of height.
  const leaning = loft(rectangle(0, 0, 12, 8), rectangle(10, 0, 22, 8), 0, 20);
  const { slabs } = cut(leaning, 0.1);
  test('has a slab for every layer although all areas are 96 mm²', () => {
    expect(slabs).toHaveLength(200);
    for (const slab of slabs) expect(areaOf(slab)).toBeCloseTo(96, 6);
  });
  test('leaning by 1e-5 mm per mm, a layer differs by 1.6e-5 mm² from the next, 62 layers from the first by 0.001', () => {
    // Sides of 8 mm move by 1e-5·0.1 mm a layer: 2·8·1e-6 = 1.6e-5 mm²; the 63rd step makes 0.001008 mm².
    const slightly = loft(rectangle(0, 0, 12, 8), rectangle(2e-4, 0, 12 + 2e-4, 8), 0, 20);
    const tops = cut(slightly, 0.1).slabs.map(({ to_mm }) => to_mm);
    expect(tops).toEqual([6.3, 12.6, 18.9, 20]);
  });
});

test('a twisted prism keeps its area and changes its place: every layer is its own slab', () => {
  const square = (turn: number): Point2[] =>
    Array.from({ length: 4 }, (_, i): Point2 => {
      const angle = turn + (i * Math.PI) / 2;
      return [10 * Math.cos(angle), 10 * Math.sin(angle)];
    });
  const stack = Array.from({ length: 20 }, (_, i) => loft(square(i / 20), square(i / 20), i, i + 1));
  const { slabs } = cut(together(...stack), 0.5);
  expect(slabs).toHaveLength(20);
  for (const slab of slabs) expect(Math.abs(areaOf(slab) - 200)).toBeLessThan(ROUNDING * perimeter(slab));
});

test('a pyramid of 3 × 4 steps: a middle exactly on a step belongs to the step above', () => {
  // Steps at z = 1 and 2, layers of 2 mm: middles at 1 and 3.
  const steps = [0, 1, 2, 3].map((k) =>
    loft(rectangle(k, k, 10 - k, 10 - k), rectangle(k, k, 10 - k, 10 - k), k, k + 1),
  );
  const { slabs, layers } = cut(together(...steps), 2);
  expect(layers).toBe(2);
  expect(areaAt(slabs, 1)).toBeCloseTo(64, 9);
  expect(areaAt(slabs, 3)).toBeCloseTo(16, 9);
});

test.each([
  [1.00004, 'a step 0.04 µm above the cut counts as on it: what stands above it is cut', 16],
  [1.0001, 'a step 0.1 µm above the cut is not reached', 64],
  [0.99996, 'a step 0.04 µm below the cut is passed', 16],
])('a step at %d mm, layers of 2 mm: %s', (step, _, area) => {
  const wide = loft(rectangle(0, 0, 8, 8), rectangle(0, 0, 8, 8), 0, step);
  const narrow = loft(rectangle(2, 2, 6, 6), rectangle(2, 2, 6, 6), step, 2);
  expect(areaAt(cut(together(wide, narrow), 2).slabs, 1)).toBeCloseTo(area, 9);
});

describe('layers and heights', () => {
  const block = (height: number): Mesh => loft(rectangle(0, 0, 5, 4), rectangle(0, 0, 5, 4), 0, height);
  test.each([
    [12, 0.06, 200],
    [12.01, 0.06, 201],
    [12.04, 0.06, 201],
    [0.06, 0.06, 1],
    [0.05, 0.06, 1],
  ])(
    '%d mm in layers of %d mm are %d layers, and the last slab ends at the mesh’s top',
    (height, layer, count) => {
      const { slabs, layers, volume_mm3 } = cut(block(height), layer);
      expect(layers).toBe(count);
      expect(slabs.at(-1)!.to_mm).toBe(height);
      expect(volume_mm3).toBeCloseTo(20 * height, 9);
    },
  );
  test('numbers of 32 bits make no extra layer', () => {
    const height = Math.fround(54.06);
    expect(height).toBeGreaterThan(54.06 + 1e-6);
    expect(cut(block(height), 0.06).layers).toBe(901);
  });
  test('where it stands does not matter', () => {
    const there = cut(moved(block(3), [123.4, -56.7, -8.9]), 0.06);
    expect(there.slabs).toEqual(cut(block(3), 0.06).slabs);
  });
});

test('an octahedron cut through its four middle corners has its full section there', () => {
  // Corners exactly on the cut at z = 10: layers of 4 mm are cut at 2, 6, 10, 14, 18. |x| + |y| ≤ 10 − |z − 10|.
  const octahedron = meshOf(
    [
      [10, 0, 10],
      [0, 10, 10],
      [-10, 0, 10],
      [0, -10, 10],
      [0, 0, 20],
      [0, 0, 0],
    ],
    [
      [0, 1, 4],
      [1, 2, 4],
      [2, 3, 4],
      [3, 0, 4],
      [1, 0, 5],
      [2, 1, 5],
      [3, 2, 5],
      [0, 3, 5],
    ],
  );
  const { slabs } = cut(octahedron, 4);
  expect(slabs.map(areaOf)).toEqual([8, 72, 200, 72, 8].map((area) => expect.closeTo(area, 6)));
});
