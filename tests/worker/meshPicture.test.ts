// Pictures of a mesh: the part fills the picture, empty where there is nothing, lines where it ends and where faces meet.
// What is inside and outside is mathematics.
import { expect, test } from 'vitest';
import { DARKEST, EMPTY, LINE, meshViews, type MeshView } from '../../src/worker/meshPicture';
import { box, inverted, revolved, together } from '../import/mesh/meshes';

const SIDE = 100;
const share = ({ pixels }: MeshView, holds: (value: number) => boolean): number =>
  pixels.filter(holds).length / pixels.length;
const at = ({ pixels, width }: MeshView, x: number, y: number): number => pixels[y * width + x]!;
/** Columns and rows that hold something: first and last of each. */
function frame({ pixels, width, height }: MeshView) {
  let [left, right, top, bottom] = [width, -1, height, -1];
  pixels.forEach((value, i) => {
    if (value === EMPTY) return;
    const [x, y] = [i % width, Math.floor(i / width)];
    [left, right, top, bottom] = [
      Math.min(left, x),
      Math.max(right, x),
      Math.min(top, y),
      Math.max(bottom, y),
    ];
  });
  return { width: right - left + 1, height: bottom - top + 1, left, top };
}

test('a block of 40 × 20 × 10 is 4 : 1 from the front and 2 : 1 from above', () => {
  const { front, above } = meshViews(box([0, 0, 0], [40, 20, 10]), SIDE);
  const [f, a] = [frame(front), frame(above)];
  expect(Math.abs(f.width / f.height - 4)).toBeLessThan(0.3);
  expect(Math.abs(a.width / a.height - 2)).toBeLessThan(0.1);
  expect(f.width).toBe(a.width);
});

test('x runs to the right and z upwards from the front, y upwards from above', () => {
  // a wide foot with a post at its right rear corner
  const post = together(box([0, 0, 0], [30, 30, 5]), box([20, 20, 5], [30, 30, 30]));
  const { front, above } = meshViews(post, SIDE);
  expect(at(front, 80, 20)).not.toBe(EMPTY);
  expect(at(front, 20, 20)).toBe(EMPTY);
  // from above the post is a square of lines in the right upper corner of the foot
  expect(share(above, (value) => value === LINE)).toBeGreaterThan(0);
  const lines = [...above.pixels.keys()].filter((i) => above.pixels[i] === LINE);
  const inner = lines.filter((i) => {
    const [x, y] = [i % SIDE, Math.floor(i / SIDE)];
    return x > 15 && x < 85 && y > 15 && y < 85;
  });
  expect(inner.length).toBeGreaterThan(20);
  expect(inner.every((i) => i % SIDE >= 50 && Math.floor(i / SIDE) <= 50)).toBe(true);
});

test('a bore shows through from above', () => {
  const ring = revolved([[10, 0], [20, 0], [20, 8], [10, 8]], 96, true); // prettier-ignore
  const { above } = meshViews(ring, SIDE);
  expect(at(above, 50, 50)).toBe(EMPTY);
  const inside = share(above, (value) => value !== EMPTY) * SIDE ** 2;
  // π(R² − r²) of a picture whose outer diameter is the side less the border
  const radius = frame(above).width / 2;
  expect(inside / ((Math.PI * radius ** 2 * 3) / 4)).toBeCloseTo(1, 1);
});

test('the three faces of a cube seen obliquely have three shades, and lines between them', () => {
  const { oblique } = meshViews(box([0, 0, 0], [10, 10, 10]), SIDE);
  const shades = new Set(oblique.pixels.filter((value) => value >= DARKEST));
  expect(shades.size).toBe(3);
  // the silhouette is a regular hexagon: its area is 3√3/8 of the square of its long diagonal
  const { height } = frame(oblique);
  const filled = share(oblique, (value) => value !== EMPTY) * SIDE ** 2;
  expect(filled / (((3 * Math.sqrt(3)) / 8) * height ** 2)).toBeCloseTo(1, 1);
  // the corner where all three meet is the middle
  const middle = [49, 50].flatMap((x) => [49, 50].map((y) => at(oblique, x, y)));
  expect(middle).toContain(LINE);
});

test('a mesh that is inside out looks the same', () => {
  const cube = box([0, 0, 0], [10, 20, 10]);
  expect(meshViews(inverted(cube), SIDE)).toEqual(meshViews(cube, SIDE));
});
