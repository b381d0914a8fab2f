// Sections of meshes that are not one plain shell: hollows, nested and overlapping shells, inside out, open. Areas are
// computed by hand from the blocks [mathematics].
import { describe, expect, test } from 'vitest';
import { orient, sectionMesh, sectionSteps, type Mesh, type MeshSections } from '../../../src/import/mesh';
import { DEFAULT_MACHINE, DEFAULT_PROCESS, DEFAULT_ZONING } from '../../../src/layout/defaults';
import { readLayout } from '../../../src/layout/read';
import { box, inverted, loft, meshOf, moved, rectangle, revolved, together, without } from './meshes';
import { areaAt, areaOf, cut, gauss, perimeter, slabAt, value } from './slabs';

const cube = box([0, 0, 0], [20, 20, 20]);
const signs = (sections: MeshSections, z: number): number[] =>
  slabAt(sections.slabs, z)
    .rings.map((ring) => Math.sign(gauss(ring)))
    .sort();

describe('shells', () => {
  const small = box([5, 5, 5], [15, 15, 15]);
  test('a hollow is a hole where it is, and outer rings turn the other way than holes', () => {
    const sections = cut(together(cube, inverted(small)), 1);
    expect(sections.slabs.map(({ to_mm }) => to_mm)).toEqual([5, 15, 20]);
    expect([2, 10, 18].map((z) => areaAt(sections.slabs, z))).toEqual([400, 300, 400]);
    expect(signs(sections, 10)).toEqual([-1, 1]);
    expect(sections.volume_mm3).toBeCloseTo(8000 - 1000, 9);
  });
  test('which layers are equal, which are empty and what the top gets is told', () => {
    const hollowed = cut(together(cube, inverted(small)), 1);
    expect(hollowed).toMatchObject({
      equalLayers: 17,
      firstEqual: [1, 5],
      firstEmpty: null,
      topCovered: false,
    });
    // 20.4 mm: layer 21 is cut at 20.5, above the mesh.
    const higher = cut(box([0, 0, 0], [20, 20, 20.4]), 1);
    expect(higher).toMatchObject({ layers: 21, equalLayers: 19, firstEqual: [1, 20], topCovered: true });
    const apart = cut(together(box([0, 0, 0], [9, 9, 4]), box([0, 0, 7], [9, 9, 9])), 1);
    expect(apart).toMatchObject({ emptyLayers: 3, firstEmpty: [5, 7], equalLayers: 4, firstEqual: [1, 4] });
  });
  test('an excess of less than 0.001 mm makes no layer', () => {
    expect(cut(box([0, 0, 0], [40, 30, 20.00001]), 0.05)).toMatchObject({ layers: 400, height_mm: 20 });
  });
  test('a solid in a solid changes nothing', () => {
    const sections = cut(together(cube, small), 1);
    expect(sections.slabs).toHaveLength(1);
    expect(areaAt(sections.slabs, 10)).toBe(400);
    expect(signs(sections, 10)).toEqual([1]);
  });
  test('a solid in a hollow in a solid is an island', () => {
    const sections = cut(together(cube, inverted(small), box([8, 8, 5], [12, 12, 15])), 1);
    expect(areaAt(sections.slabs, 10)).toBe(400 - 100 + 16);
    expect(signs(sections, 10)).toEqual([-1, 1, 1]);
  });
  test.each([
    ['askew', [10, 5, 0], 2 * 400 - 10 * 15],
    ['with sides in one plane', [10, 0, 0], 2 * 400 - 10 * 20],
    ['the same twice', [0, 0, 0], 400],
    ['touching', [20, 0, 0], 800],
  ] as const)('two blocks %s: the area of the union', (_, by, area) => {
    const sections = cut(together(cube, moved(cube, by)), 1);
    expect(sections.slabs).toHaveLength(1);
    expect(areaAt(sections.slabs, 10)).toBeCloseTo(area, 6);
    expect(sections.unitedLayers).toBe(20);
  });
  test('three bars through each other lose no overlap', () => {
    const bars = together(
      box([-20, -4, -4], [20, 4, 4]),
      box([-4, -20, -4], [4, 20, 4]),
      box([-4, -4, -20], [4, 4, 20]),
    );
    const sections = cut(bars, 1);
    expect(sections.slabs.map(areaOf)).toEqual([64, 2 * 320 - 64, 64].map((n) => expect.closeTo(n, 6)));
  });
  test('a hollow in one of two overlapping blocks is filled where the other one covers it', () => {
    const mesh = together(cube, inverted(small), box([10, 0, 0], [30, 20, 20]));
    // Hollow 10 × 10 at 5 … 15; the other block covers x from 10 on.
    expect(areaAt(cut(mesh, 1).slabs, 10)).toBeCloseTo(30 * 20 - 5 * 10, 6);
  });
  test('inside out, or one triangle turned, gives the same slabs', () => {
    const sound = cut(together(cube, inverted(small)), 1);
    expect(cut(inverted(together(cube, inverted(small))), 1).slabs.map(areaOf)).toEqual(
      sound.slabs.map(areaOf),
    );
    const triangles = Uint32Array.from(cube.triangles);
    [triangles[13], triangles[14]] = [triangles[14], triangles[13]];
    expect(areaAt(cut({ points: cube.points, triangles }, 1).slabs, 10)).toBe(400);
  });
  test('parts one above the other have an empty slab between them', () => {
    const sections = cut(together(cube, moved(cube, [0, 0, 30])), 1);
    expect(sections.slabs.map(({ to_mm, rings }) => [to_mm, rings.length])).toEqual([
      [20, 1],
      [30, 0],
      [50, 1],
    ]);
    expect(sections.emptyLayers).toBe(10);
    expect(sections.problems.map(({ code }) => code)).toEqual(['mesh-empty-layers']);
  });
});

describe('meshes that no layout could hold', () => {
  test('of more outlines in one section than a slab may have', () => {
    // 101 × 101 pillars of 0.5 × 0.5 mm; a slab holds 10,000 outlines
    const pillars = Array.from({ length: 101 * 101 }, (_, k) => {
      const [x, y] = [k % 101, Math.floor(k / 101)];
      return box([x, y, 0], [x + 0.5, y + 0.5, 1]);
    });
    expect(sectionMesh(together(...pillars), { layer_mm: 1, chainGap_mm: 0.01 })).toEqual({
      ok: false,
      fault: { code: 'mesh-too-much', params: { limit: 10_000, what: { text: 'outlines in one section' } } },
    });
  });
  test('lower than half a layer, though closed', () => {
    expect(sectionMesh(box([0, 0, 0], [10, 10, 0.03]), { layer_mm: 0.06, chainGap_mm: 0.01 })).toEqual({
      ok: false,
      fault: { code: 'mesh-no-solid-layer', params: { layer: 0.06 } },
    });
  });
  test('a blade so thin that its outlines are lines on the grid of a layout', () => {
    // 0.0003 mm across and askew, so that its size along x and y hides it
    const [low, high] = [0, 5].map((z) => [[0, 0, z], [10, 10, z], [10.0002, 9.9998, z]]); // prettier-ignore
    const blade = meshOf(
      [...low!, ...high!] as [number, number, number][],
      [[0, 1, 2], [3, 5, 4], [0, 2, 5], [0, 5, 3], [2, 1, 4], [2, 4, 5], [1, 0, 3], [1, 3, 4]], // prettier-ignore
    );
    expect(sectionMesh(blade, { layer_mm: 0.06, chainGap_mm: 0.01 })).toEqual({
      ok: false,
      fault: { code: 'mesh-no-solid-layer', params: { layer: 0.06 } },
    });
  });
});

describe('open meshes', () => {
  const wall = (z: number, axis: number, at: number): number[] =>
    [...Array(12).keys()].filter((t) =>
      [0, 1, 2].every((k) => cube.points[3 * cube.triangles[3 * t + k] + axis] === at && z >= 0),
    );
  test('without top and bottom all sections are closed', () => {
    const tube = without(cube, ...wall(0, 2, 0), ...wall(0, 2, 20));
    const sections = cut(tube, 1);
    expect(sections).toMatchObject({ openLayers: 0, widestGap_mm: null, problems: [] });
    expect(areaAt(sections.slabs, 10)).toBe(400);
  });
  test('without one side no section closes, and the gap is the side’s length', () => {
    const open = orient(without(cube, ...wall(0, 0, 20)));
    const made = sectionMesh(open, { layer_mm: 1, chainGap_mm: 0.01 });
    expect(made).toEqual({ ok: false, fault: { code: 'mesh-no-section', params: { gap: 20 } } });
    expect(areaAt(cut(open, 1, 20).slabs, 10)).toBe(400);
  });
  test('half of a side missing leaves a gap that grows with the height', () => {
    // One triangle of a side is gone: at height z its gap is z or 20 − z long.
    const [first] = wall(0, 0, 20);
    const sections = cut(without(cube, first), 1, 5);
    expect(sections.openLayers).toBe(15);
    expect(sections.widestGap_mm).toBeCloseTo(19.5, 9);
    expect(sections.problems.map(({ code }) => code)).toEqual(['mesh-open-layers']);
    const all = cut(without(cube, first), 1, sections.widestGap_mm!);
    expect(all.openLayers).toBe(0);
    expect(all.slabs.map(areaOf).every((area) => Math.abs(area - 400) < 1e-6)).toBe(true);
  });
  test('triangles without common points close over gaps of nothing', () => {
    const points = Float64Array.from(
      [...cube.triangles].flatMap((p) => [...cube.points.subarray(3 * p, 3 * p + 3)]),
    );
    const soup: Mesh = { points, triangles: Uint32Array.from(cube.triangles, (_, i) => i) };
    expect(areaAt(cut(soup, 1).slabs, 10)).toBe(400);
  });
});

describe('loose triangles, every corner shaken by up to 1e-6 mm', () => {
  const ring = revolved([[20, 0], [30, 0], [30, 10], [20, 10]], 40, true); // prettier-ignore
  const shaken = ({ points, triangles }: Mesh): Mesh => ({
    points: Float64Array.from(
      [...triangles].flatMap((p) => [0, 1, 2].map((axis) => points[3 * p + axis])),
    ).map((v, i) => v + 1e-6 * Math.sin(1000 * i)),
    triangles: Uint32Array.from(triangles, (_, i) => i),
  });
  // A ring of 40 corners: 20·sin(2π/40)·(30² − 20²).
  const area = 20 * Math.sin((2 * Math.PI) / 40) * (900 - 400);
  test.each([
    ['facing outwards', ring],
    ['facing inwards', inverted(ring)],
  ])('%s close to the sections of the whole', (_, mesh) => {
    const sections = cut(shaken(mesh), 0.5);
    expect(sections.openLayers).toBe(0);
    for (const slab of sections.slabs)
      expect(Math.abs(areaOf(slab) - area)).toBeLessThan(0.0012 * perimeter(slab));
  });
});

describe('many layers', () => {
  const ball = revolved(
    Array.from({ length: 61 }, (_, i) => {
      const angle = (Math.PI * i) / 60 - Math.PI / 2;
      return [i % 60 === 0 ? 0 : 20 * Math.cos(angle), 20 * Math.sin(angle)] as const;
    }),
    64,
    false,
  );
  test('progress rises to 1; a cancelled cut says how far it came', () => {
    const heard: number[] = [];
    value(
      sectionMesh(ball, { layer_mm: 0.1, chainGap_mm: 0.01 }, { progress: (share) => heard.push(share) }),
    );
    expect(heard.length).toBeGreaterThan(20);
    expect(heard).toEqual([...heard].sort((a, b) => a - b));
    expect(heard.at(-1)).toBe(1);
    let asked = 0;
    const cancelled = sectionMesh(
      ball,
      { layer_mm: 0.1, chainGap_mm: 0.01 },
      { cancelled: () => (asked += 1) > 3 },
    );
    expect(cancelled).toMatchObject({ ok: false, fault: { code: 'mesh-cancelled' } });
  });
  test('step by step comes to the same', () => {
    const steps = sectionSteps(orient(ball), { layer_mm: 0.1, chainGap_mm: 0.01 });
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(value(step.value).slabs).toEqual(cut(ball, 0.1).slabs);
  });
  test('too many layers or slabs are refused before memory is taken', () => {
    const tower = loft(rectangle(0, 0, 1, 1), rectangle(0, 0, 1, 1), 0, 9000);
    const cone = loft(rectangle(0, 0, 300, 300), rectangle(0, 0, 1, 1), 0, 500);
    const settings = { layer_mm: 0.02, chainGap_mm: 0.01 };
    expect(sectionMesh(tower, settings)).toMatchObject({ fault: { code: 'mesh-too-many-layers' } });
    expect(sectionMesh(cone, settings)).toMatchObject({
      fault: { code: 'mesh-too-many-layers', params: { what: { text: 'slabs ¦ counted' } } },
    });
  });
  test('as many slabs as a shape may have are taken, all of them', () => {
    // each of 10,000 layers 300/10,000 mm less wide than the one below
    const cone = loft(rectangle(0, 0, 301, 301), rectangle(0, 0, 1, 1), 0, 200);
    expect(cut(cone, 0.02).slabs).toHaveLength(10_000);
  });
  test('a mesh larger than 10 m or flatter than 1 µm is refused', () => {
    const settings = { layer_mm: 1, chainGap_mm: 0.01 };
    expect(sectionMesh(box([0, 0, 0], [1, 1, 10_001]), settings)).toMatchObject({
      fault: { code: 'mesh-too-large' },
    });
    expect(sectionMesh(box([0, 0, 0], [1, 1, 0]), settings)).toMatchObject({ fault: { code: 'mesh-flat' } });
  });
  test('no layer thickness is a programmer’s error', () => {
    expect(() => sectionMesh(cube, { layer_mm: 0, chainGap_mm: 0.01 })).toThrow(/0.001/);
  });
});

test('slabs are a shape that a layout accepts', () => {
  const mesh = together(cube, revolved([[0, 15], [6, 21], [0, 40]], 50, false)); // prettier-ignore
  const { slabs } = cut(mesh, 0.5);
  const layout = {
    format: 'evenplate-layout',
    version: 1,
    name: 'spare',
    machine: DEFAULT_MACHINE,
    process: DEFAULT_PROCESS,
    shapes: { spare: { slabs } },
    parts: [{ id: 'P01', shape: 'spare', at_mm: [0, 0] }],
    zoning: DEFAULT_ZONING,
    allocation: 'balanced',
  };
  const read = value(readLayout(JSON.stringify(layout)));
  expect(read.shapes.spare.slabs).toEqual(slabs);
});
