// What is said about a mesh: counts known from how it was built by hand. Volumes: mathematics.
import { describe, expect, test } from 'vitest';
import { checkMesh, joinCracks, orient, type Mesh, type MeshCheck } from '../../../src/import/mesh';
import { weld } from '../../../src/import/mesh/weld';
import { messageAdvice, messageText } from '../../../src/layout/messages';
import {
  box,
  inverted,
  loft,
  meshOf,
  moved,
  rectangle,
  tetrahedra,
  together,
  without,
  type Point3,
} from './meshes';

const cube = box([0, 0, 0], [10, 10, 10]);
const codes = (check: MeshCheck): string[] => check.findings.map(({ code }) => code);
const look = (mesh: Mesh): MeshCheck => {
  const check = checkMesh(mesh, 0.01);
  for (const { code, params } of check.findings)
    expect(`${messageText(code, params)} ${messageAdvice(code, params)}`).not.toMatch(/\?|undefined|\n/);
  return check;
};
/** Every triangle with points of its own. */
const loose = ({ points, triangles }: Mesh): Mesh => ({
  points: Float64Array.from([...triangles].flatMap((p) => [...points.subarray(3 * p, 3 * p + 3)])),
  triangles: Uint32Array.from(triangles, (_, i) => i),
});

test('a sound block: size, counts, volume, nothing to say', () => {
  const check = look(box([1, 2, 3], [11, 22, 33]));
  expect(check).toMatchObject({
    size_mm: [10, 20, 30],
    triangles: 12,
    points: 8,
    shells: 1,
    hollows: 0,
    volume_mm3: expect.closeTo(6000, 9),
    openEdges: 0,
    crowdedEdges: 0,
    turnedTriangles: 0,
    insideOutShells: 0,
    degenerateTriangles: 0,
    repeatedTriangles: 0,
    overlappingShells: 0,
    closed: true,
    crack_mm: null,
    findings: [],
  });
});

describe('open meshes', () => {
  test('a block without one triangle has three open edges and no volume', () => {
    const check = look(without(cube, 5));
    expect([check.openEdges, check.closed, check.volume_mm3, check.shells]).toEqual([3, false, null, 1]);
    expect(codes(check)).toEqual(['mesh-open-edges']);
  });
  test('a block without its top has four', () => {
    const lids = [0, 1].map((k) => 12 - 1 - 3 * k);
    const top = [...Array(12).keys()].filter((t) =>
      [0, 1, 2].every((k) => cube.points[3 * cube.triangles[3 * t + k] + 2] === 10),
    );
    expect(lids).toHaveLength(2);
    expect(look(without(cube, ...top)).openEdges).toBe(4);
  });
  test('triangles that share no points are one shell; 36 points stand at 8 places', () => {
    const whole = { openEdges: 0, shells: 1, volume_mm3: expect.closeTo(1000, 9) };
    const soup = loose(cube);
    expect(look(soup)).toMatchObject({ ...whole, joinedPoints: 36 - 8 });
    expect(look(weld(soup, 1e-9))).toMatchObject({ ...whole, joinedPoints: 0 });
  });
  test('cracks of 0.004 mm are measured, and welding by that much closes them', () => {
    // The upper half stands 0.004 mm aside of the lower one.
    const lower = loft(rectangle(0, 0, 10, 10), rectangle(0, 0, 10, 10), 0, 5);
    const upper = moved(loft(rectangle(0, 0, 10, 10), rectangle(0, 0, 10, 10), 5, 10), [0.004, 0, 0]);
    const flat = (mesh: Mesh, z: number): number[] =>
      [...Array(12).keys()].filter((t) =>
        [0, 1, 2].every((k) => mesh.points[3 * mesh.triangles[3 * t + k] + 2] === z),
      );
    const cracked = together(without(lower, ...flat(lower, 5)), without(upper, ...flat(upper, 5)));
    const check = look(cracked);
    expect(check.openEdges).toBe(8);
    expect(check.crack_mm).toBeCloseTo(0.004, 9);
    expect(codes(check)).toEqual(['mesh-open-edges', 'mesh-cracks']);
    expect(look(joinCracks(cracked, check.crack_mm! * 1.001))).toMatchObject({
      openEdges: 0,
      closed: true,
      shells: 1,
    });
    // a sound plate thinner than the crack stays: 10 × 10 × 0.003 mm beside the block of 1000 mm³
    const plate = box([30, 0, 0], [30.003, 10, 10]);
    const both = look(joinCracks(together(cracked, plate), check.crack_mm! * 1.001));
    expect(both).toMatchObject({ closed: true, shells: 2, triangles: check.triangles + 12 });
    expect(both.volume_mm3).toBeCloseTo(1000.3, 1);
  });
  test('points apart by rounding only are one: a gap of 7e-15 mm leaves the block whole', () => {
    const lower = loft(rectangle(0, 0, 10, 10), rectangle(0, 0, 10, 10), 0, 5);
    const upper = loft(rectangle(0, 0, 10, 10), rectangle(0, 0, 10, 10), 5, 10);
    const level = (mesh: Mesh): number[] =>
      [...Array(12).keys()].filter((t) =>
        [0, 1, 2].every((k) => mesh.points[3 * mesh.triangles[3 * t + k] + 2] === 5),
      );
    const split = (gap: number) =>
      together(without(lower, ...level(lower)), moved(without(upper, ...level(upper)), [0, 0, gap]));
    const check = look(split(7e-15));
    expect(check).toMatchObject({ openEdges: 0, closed: true, shells: 1, joinedPoints: 4, crack_mm: null });
    expect(check.volume_mm3).toBeCloseTo(1000, 6);
    expect(codes(check)).toEqual(['mesh-points-joined']);
    expect(look(split(0.0009)).closed).toBe(true);
    expect(look(split(0.0011))).toMatchObject({ closed: false, joinedPoints: 0, openEdges: 8 });
  });
  test('joining that closes nothing is left alone and its width gets no figure', () => {
    // Two triangles that share no more than a corner, and that only nearly.
    const sheets = meshOf(
      [[0, 0, 0], [10, 0, 0], [0, 10, 5], [1e-9, 0, 0], [-10, 0, 0], [0, -10, 5]],
      [[0, 1, 2], [3, 4, 5]],
    ); // prettier-ignore
    const check = look(sheets);
    expect(check).toMatchObject({ joinedPoints: 0, openEdges: 6 });
    const crack = check.findings.find(({ code }) => code === 'mesh-cracks');
    expect(messageText('mesh-cracks', crack!.params)).toContain('under 0.001 mm apart');
  });
  test('the corners of a hole are no crack', () => {
    expect(look(without(cube, 5)).crack_mm).toBeNull();
  });
});

describe('facing', () => {
  test('one triangle that faces the other way is turned', () => {
    const { points, triangles } = cube;
    const wrong = Uint32Array.from(triangles);
    [wrong[13], wrong[14]] = [wrong[14], wrong[13]];
    const check = look({ points, triangles: wrong });
    expect(check).toMatchObject({ turnedTriangles: 1, closed: true, volume_mm3: expect.closeTo(1000, 9) });
    expect(codes(check)).toEqual(['mesh-turned-triangles']);
  });
  test('a block inside out is turned as a whole', () => {
    expect(tetrahedra(inverted(cube))).toBeCloseTo(-1000, 9);
    const check = look(inverted(cube));
    expect(check).toMatchObject({
      insideOutShells: 1,
      turnedTriangles: 0,
      volume_mm3: expect.closeTo(1000, 9),
    });
    expect(codes(check)).toEqual(['mesh-inside-out']);
  });
});

test('a strip with half a twist has no inside, and that is said', () => {
  const n = 20;
  const points = Array.from({ length: n }, (_, i): [Point3, Point3] => {
    const [turn, tilt] = [(2 * Math.PI * i) / n, (Math.PI * i) / n];
    const at = (side: number): Point3 => {
      const r = 10 + side * Math.cos(tilt);
      return [r * Math.cos(turn), r * Math.sin(turn), side * Math.sin(tilt)];
    };
    return [at(-2), at(2)];
  }).flat();
  const triangles = Array.from({ length: n }, (_, i): Point3[] => {
    const [a, b] = [2 * i, 2 * i + 1];
    const [c, d] = i === n - 1 ? [1, 0] : [2 * i + 2, 2 * i + 3];
    return [
      [a, c, b],
      [b, c, d],
    ];
  }).flat();
  const check = look(meshOf(points, triangles));
  // One rim of 2·n edges, and one edge where the twist shows.
  expect(check).toMatchObject({ openEdges: 2 * n, twistedEdges: 1, closed: false, shells: 1 });
  expect(codes(check)).toContain('mesh-twisted-edges');
});

describe('shells', () => {
  const small = box([3, 3, 3], [7, 7, 7]);
  test('an inner shell that faces inwards is a hollow', () => {
    const check = look(together(cube, inverted(small)));
    expect(check).toMatchObject({ shells: 2, hollows: 1, insideOutShells: 0, overlappingShells: 0 });
    expect(check.volume_mm3).toBeCloseTo(1000 - 64, 9);
    expect(codes(check)).toEqual(['mesh-hollows']);
  });
  test('a block with a hollow, all of it inside out, is turned as a whole', () => {
    const check = look(inverted(together(cube, inverted(small))));
    expect(check).toMatchObject({ hollows: 1, insideOutShells: 2 });
    expect(check.volume_mm3).toBeCloseTo(1000 - 64, 9);
  });
  test('a solid inside a solid overlaps it, a solid inside a hollow does not', () => {
    const core = box([4, 4, 4], [6, 6, 6]);
    expect(look(together(cube, small)).overlappingShells).toBe(1);
    expect(look(together(cube, inverted(small), core))).toMatchObject({
      shells: 3,
      hollows: 1,
      overlappingShells: 0,
      volume_mm3: expect.closeTo(1000 - 64 + 8, 9),
    });
  });
  test.each([
    ['askew', [5, 6, 7], 1],
    ['along one axis, sides in one plane', [5, 0, 0], 1],
    ['touching with a whole side', [10, 0, 0], 0],
    ['touching with half a side', [10, 5, 0], 0],
    ['touching along an edge', [10, 10, 0], 0],
    ['apart by 0.01 mm', [10.01, 0, 0], 0],
    ['overlapping by 0.01 mm', [9.99, 3, 3], 1],
  ] as const)('two blocks %s: %s overlap', (_, by, pairs) => {
    expect(look(together(cube, moved(cube, by))).overlappingShells).toBe(pairs);
  });
  test('of blocks in a row that overlap, every pair is counted', () => {
    const row = [0, 1, 2, 3].map((i) => moved(cube, [8 * i, i, i]));
    expect(look(together(...row)).overlappingShells).toBe(3);
  });
  test('edges that four triangles share are counted', () => {
    // Two blocks along one edge, as one mesh of shared points: its edge of two sides each has four.
    const two = weld(together(cube, moved(cube, [10, 10, 0])), 1e-9);
    const check = look(two);
    expect(check).toMatchObject({ crowdedEdges: 1, openEdges: 0, closed: true });
    expect(check.volume_mm3).toBeCloseTo(2000, 9);
  });
});

describe('triangles that are there twice', () => {
  /** The same corners: exact points are one point, as the readers make them. */
  const twice = ({ points, triangles }: Mesh): Mesh => ({
    points,
    triangles: Uint32Array.from([...triangles, ...triangles]),
  });
  test('a block written twice has the volume of one', () => {
    const check = look(twice(cube));
    expect(check).toMatchObject({
      repeatedTriangles: 12,
      crowdedEdges: 0,
      closed: true,
      shells: 1,
      volume_mm3: expect.closeTo(1000, 9),
    });
    expect(codes(check)).toEqual(['mesh-repeated']);
  });
  test('one triangle written three times, from another corner each time, leaves the block as it is', () => {
    const [a, b, c] = cube.triangles;
    const check = look({ points: cube.points, triangles: Uint32Array.from([...cube.triangles, b!, c!, a!, c!, a!, b!]) }); // prettier-ignore
    expect(check).toMatchObject({ repeatedTriangles: 2, closed: true, volume_mm3: expect.closeTo(1000, 9) });
  });
  test('a triangle and its back stay both', () => {
    const [a, b, c] = cube.triangles;
    const check = look({ points: cube.points, triangles: Uint32Array.from([...cube.triangles, a!, c!, b!]) });
    expect(check).toMatchObject({ repeatedTriangles: 0, crowdedEdges: 3 });
  });
});

describe('sizes and needles', () => {
  test('triangles without area are counted', () => {
    const needle = meshOf([[0, 0, 0], [1, 0, 0], [2, 0, 0]], [[0, 1, 2], [0, 0, 1]]); // prettier-ignore
    expect(look(together(cube, needle)).degenerateTriangles).toBe(2);
  });
  test('a mesh in the wrong unit is told by its size', () => {
    expect(codes(look(orient(cube, { scale: 1001 })))).toEqual(['mesh-too-large']);
    expect(codes(look(orient(cube, { scale: 0.00001 })))).toEqual(['mesh-flat']);
  });
});
