// Setting a mesh down: turns by hand, lowest point on z = 0, the footprint's middle on the origin.
import { describe, expect, test } from 'vitest';
import { orient, sizeOf } from '../../../src/import/mesh';
import { box, meshOf, tetrahedra } from './meshes';

const block = box([100, 200, 300], [110, 220, 330]);
/** One point away from the axes tells the turns apart. */
const pin = meshOf([[0, 0, 0], [1, 2, 3], [0, 0, 0.5]], [[0, 1, 2]]); // prettier-ignore
const tip = (...turns: readonly number[]): number[] => {
  const [turnX_deg, turnY_deg, turnZ_deg] = turns;
  const { points } = orient(pin, { turnX_deg, turnY_deg, turnZ_deg });
  return [3, 4, 5].map((i) => points[i] - points[i - 3]);
};

test('without a turn it is only moved', () => {
  const { points } = orient(block);
  const along = (axis: number): number[] => [...points].filter((_, i) => i % 3 === axis);
  expect([0, 1, 2].map((axis) => [Math.min(...along(axis)), Math.max(...along(axis))])).toEqual([
    [-5, 5],
    [-10, 10],
    [0, 30],
  ]);
});
describe('turns are counter-clockwise seen against the axis', () => {
  test.each([
    ['about x', [90, 0, 0], [1, -3, 2]],
    ['about y', [0, 90, 0], [3, 2, -1]],
    ['about z', [0, 0, 90], [-2, 1, 3]],
    ['about x, then y', [90, 90, 0], [2, -3, -1]],
    ['about x, then z', [90, 0, 90], [3, 1, 2]],
    ['about y, then z', [0, 90, 90], [-2, 3, -1]],
    ['backwards about z', [0, 0, -90], [2, -1, 3]],
    ['half a turn about y', [0, 180, 0], [-1, 2, -3]],
    ['a turn and a quarter about x', [450, 0, 0], [1, -3, 2]],
  ])('%s', (_, turns, expected) => {
    expect(tip(...turns)).toEqual(expected.map((n) => expect.closeTo(n, 12)));
  });
  test('by 30° about z the tip moves along its circle', () => {
    const [c, s] = [Math.sqrt(3) / 2, 0.5];
    expect(tip(0, 0, 30)).toEqual([c - 2 * s, s + 2 * c, 3].map((n) => expect.closeTo(n, 12)));
  });
});
test('volume stays under every turn, and grows with the third power of the scale', () => {
  const turned = orient(block, { turnX_deg: 33, turnY_deg: -71, turnZ_deg: 128, scale: 25.4 });
  expect(tetrahedra(turned)).toBeCloseTo(6000 * 25.4 ** 3, 4);
  expect(Math.min(...[...turned.points].filter((_, i) => i % 3 === 2))).toBe(0);
});
test('coordinates on the grid of 1 µm stay on it', () => {
  const odd = box([0.001, 0, 0], [10.002, 5.001, 1]);
  const { points } = orient(odd);
  for (const value of points) expect(Math.abs(value * 1000 - Math.round(value * 1000))).toBeLessThan(1e-9);
});
test('points that no triangle uses do not count', () => {
  const spare = { points: Float64Array.from([...block.points, 1e6, 1e6, -1e6]), triangles: block.triangles };
  expect(sizeOf(spare)).toEqual([10, 20, 30]);
  expect(sizeOf(orient(spare))).toEqual([10, 20, 30]);
});
test('a scale of 0 is a programmer’s error', () => {
  expect(() => orient(block, { scale: 0 })).toThrow(/scale/);
  expect(() => orient(block, { turnX_deg: NaN })).toThrow(/finite/);
});
