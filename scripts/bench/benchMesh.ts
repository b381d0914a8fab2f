/**
 * A mesh as a part has it: a propeller boss of 200,000 triangles, 100 mm high, with seven lobes that wind and a waist; every
 * layer's section is another one. Seeded; binary STL, millimetres.
 */
import { between, seeded } from './random';

const AROUND = 400;
const ROWS = 249;
export const HEIGHT_MM = 100;
/** Sides of two triangles, and a fan at either end. */
export const TRIANGLES = 2 * AROUND * ROWS + 2 * AROUND;

type Point = readonly [number, number, number];

/** Bytes of the STL. */
export function benchMesh(seed: number): Uint8Array {
  const random = seeded(seed);
  const [radius, waist, depth, twist] = [
    between(random, 36, 42),
    between(random, 8, 12),
    between(random, 6, 9),
    between(random, 12, 18),
  ];
  const at = (column: number, row: number): Point => {
    const angle = (2 * Math.PI * (column % AROUND)) / AROUND;
    const z = (HEIGHT_MM * row) / ROWS;
    const r = radius + waist * Math.cos(z / 16) + depth * Math.cos(7 * angle + z / twist);
    return [r * Math.cos(angle), r * Math.sin(angle), z];
  };
  const bytes = new Uint8Array(84 + 50 * TRIANGLES);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, TRIANGLES, true);
  let next = 84;
  const put = (...corners: readonly Point[]): void => {
    corners.flat().forEach((value, i) => view.setFloat32(next + 12 + 4 * i, value, true));
    next += 50;
  };
  for (let row = 0; row < ROWS; row++)
    for (let column = 0; column < AROUND; column++) {
      put(at(column, row), at(column + 1, row), at(column + 1, row + 1));
      put(at(column, row), at(column + 1, row + 1), at(column, row + 1));
    }
  for (let column = 0; column < AROUND; column++) {
    put([0, 0, 0], at(column + 1, 0), at(column, 0));
    put([0, 0, HEIGHT_MM], at(column, ROWS), at(column + 1, ROWS));
  }
  return bytes;
}
