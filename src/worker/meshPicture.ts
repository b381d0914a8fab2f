/**
 * Pictures of a mesh as a drawing shows it: from the front (x to the right, z up), from above (x to the right, y up) and
 * obliquely from the front right (equal angles between the axes, ISO 5456-3 [memory]). Parallel projection, hidden faces by a depth buffer,
 * light from behind the viewer's left shoulder; a line where the part ends, where one face stands before another and where
 * faces meet at more than a slight bend. One byte a pixel, rows from the top; no colours: the page has them. Mathematics.
 */
import type { Mesh } from '../import/mesh/types';
import type { Mm } from '../units/types';

/** Nothing is there. */
export const EMPTY = 0;
/** A line of the drawing. */
export const LINE = 1;
/** Least of the shades; 255 is full light. */
export const DARKEST = 2;

export interface MeshView {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array<ArrayBuffer>;
}
export interface MeshViews {
  readonly front: MeshView;
  readonly above: MeshView;
  readonly oblique: MeshView;
}
type Vector = readonly [number, number, number];
/** Directions of the picture in the mesh's space: to the right, up, towards the viewer. */
interface Eye {
  readonly right: Vector;
  readonly up: Vector;
  readonly near: Vector;
}

const [R2, R3, R6] = [Math.SQRT1_2, 1 / Math.sqrt(3), 1 / Math.sqrt(6)];
const FRONT: Eye = { right: [1, 0, 0], up: [0, 0, 1], near: [0, -1, 0] };
const ABOVE: Eye = { right: [1, 0, 0], up: [0, 1, 0], near: [0, 0, 1] };
const OBLIQUE: Eye = { right: [R2, R2, 0], up: [-R6, R6, 2 * R6], near: [R3, -R3, R3] };

/** Light in the picture's own directions: right, up, near. */
const LIGHT: Vector = [-0.4, 0.5, 0.768];
const AMBIENT = 0.35;
/** Free pixels around the part. */
const BORDER = 6;
/** A step in depth of more than so many pixels, beyond what the faces' own slopes explain, is a line. */
const STEP_PIXELS = 3;
/** Faces whose normals differ by more than this (cosine) meet in a line: 25 degrees. */
const BEND = Math.cos((25 * Math.PI) / 180);

const dot = (a: Vector, x: number, y: number, z: number): number => a[0] * x + a[1] * y + a[2] * z;

/** The mesh's points in a picture's pixels: x to the right, y downwards, depth towards the viewer. */
function projected({ points, triangles }: Mesh, eye: Eye, side: number): Float32Array {
  const flat = new Float32Array(points.length);
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i]!, points[i + 1]!, points[i + 2]!];
    flat[i] = dot(eye.right, x, y, z);
    flat[i + 1] = -dot(eye.up, x, y, z);
    flat[i + 2] = dot(eye.near, x, y, z);
  }
  for (const point of triangles)
    for (const axis of [0, 1]) {
      const value = flat[3 * point + axis]!;
      if (value < low[axis]!) low[axis] = value;
      if (value > high[axis]!) high[axis] = value;
    }
  const wide: Mm = Math.max(high[0]! - low[0]!, high[1]! - low[1]!, 1e-9);
  const scale = (side - 2 * BORDER) / wide;
  const shift = [0, 1].map((axis) => side / 2 - (scale * (low[axis]! + high[axis]!)) / 2);
  for (let i = 0; i < flat.length; i += 3) {
    flat[i] = flat[i]! * scale + shift[0]!;
    flat[i + 1] = flat[i + 1]! * scale + shift[1]!;
    flat[i + 2] = flat[i + 2]! * scale;
  }
  return flat;
}

/** Depth and the number of the nearest triangle (from 1; 0: none) of each pixel. */
interface Buffers {
  readonly depth: Float32Array;
  readonly nearest: Uint32Array;
}

/** Lays one triangle into the buffers by its edge functions, pixel middles inside or on an edge. */
function lay(
  flat: Float32Array,
  side: number,
  into: Buffers,
  a: number,
  b: number,
  c: number,
  mark: number,
): void {
  const [ax, ay, az] = [flat[a]!, flat[a + 1]!, flat[a + 2]!];
  const [bx, by, bz] = [flat[b]!, flat[b + 1]!, flat[b + 2]!];
  const [cx, cy, cz] = [flat[c]!, flat[c + 1]!, flat[c + 2]!];
  const whole = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  if (whole === 0) return;
  const fromX = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
  const toX = Math.min(side - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
  const fromY = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const toY = Math.min(side - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  for (let row = fromY; row <= toY; row++)
    for (let column = fromX; column <= toX; column++) {
      const [x, y] = [column + 0.5, row + 0.5];
      const u = ((bx - x) * (cy - y) - (by - y) * (cx - x)) / whole;
      const v = ((cx - x) * (ay - y) - (cy - y) * (ax - x)) / whole;
      const w = 1 - u - v;
      if (u < 0 || v < 0 || w < 0) continue;
      const depth = u * az + v * bz + w * cz;
      const at = row * side + column;
      if (depth <= into.depth[at]!) continue;
      into.depth[at] = depth;
      into.nearest[at] = mark;
    }
}

/** Unit normal of each triangle in the picture's directions, turned towards the viewer. */
function normals(flat: Float32Array, triangles: Uint32Array): Float32Array {
  const out = new Float32Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ux, uy, uz] = [flat[b]! - flat[a]!, flat[a + 1]! - flat[b + 1]!, flat[b + 2]! - flat[a + 2]!];
    const [vx, vy, vz] = [flat[c]! - flat[a]!, flat[a + 1]! - flat[c + 1]!, flat[c + 2]! - flat[a + 2]!];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const length = (Math.hypot(x, y, z) || 1) * (z < 0 ? -1 : 1);
    out[t] = x / length;
    out[t + 1] = y / length;
    out[t + 2] = z / length;
  }
  return out;
}

/** Do two neighbouring pixels (the second right of or below the first) have a line between them? */
function apart(
  { depth, nearest }: Buffers,
  normal: Float32Array,
  at: number,
  next: number,
  axis: 0 | 1,
): boolean {
  const [m, n] = [nearest[at]!, nearest[next]!];
  if (m === n) return false;
  if (m === 0 || n === 0) return true;
  const [i, k] = [3 * (m - 1), 3 * (n - 1)];
  const cosine = normal[i]! * normal[k]! + normal[i + 1]! * normal[k + 1]! + normal[i + 2]! * normal[k + 2]!;
  if (cosine < BEND) return true;
  const slope = (at_: number): number => Math.abs(normal[at_ + axis]! / Math.max(0.05, normal[at_ + 2]!));
  return Math.abs(depth[at]! - depth[next]!) > STEP_PIXELS + Math.max(slope(i), slope(k));
}

function shaded(buffers: Buffers, normal: Float32Array, side: number): Uint8Array<ArrayBuffer> {
  const pixels = new Uint8Array(side * side);
  const { nearest } = buffers;
  for (let at = 0; at < pixels.length; at++) {
    if (nearest[at] === 0) continue;
    const i = 3 * (nearest[at]! - 1);
    const light = Math.max(0, dot(LIGHT, normal[i]!, normal[i + 1]!, normal[i + 2]!));
    pixels[at] = DARKEST + Math.round((255 - DARKEST) * (AMBIENT + (1 - AMBIENT) * Math.min(1, light)));
  }
  for (let at = 0; at < pixels.length; at++) {
    const last = (at + 1) % side === 0;
    const right = !last && apart(buffers, normal, at, at + 1, 0);
    const below = at + side < pixels.length && apart(buffers, normal, at, at + side, 1);
    if (!right && !below) continue;
    // The line lies on the part, not beside it.
    if (nearest[at] !== 0) pixels[at] = LINE;
    else if (right) pixels[at + 1] = LINE;
    if (nearest[at] === 0 && below) pixels[at + side] = LINE;
  }
  return pixels;
}

function view(mesh: Mesh, eye: Eye, side: number): MeshView {
  const flat = projected(mesh, eye, side);
  const buffers: Buffers = {
    depth: new Float32Array(side * side).fill(-Infinity),
    nearest: new Uint32Array(side * side),
  };
  const { triangles } = mesh;
  for (let t = 0; t < triangles.length; t += 3)
    lay(flat, side, buffers, 3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!, t / 3 + 1);
  return { width: side, height: side, pixels: shaded(buffers, normals(flat, triangles), side) };
}

/** Three square pictures of a mesh; each fills its square. @param side pixels */
export const meshViews = (mesh: Mesh, side: number): MeshViews => ({
  front: view(mesh, FRONT, side),
  above: view(mesh, ABOVE, side),
  oblique: view(mesh, OBLIQUE, side),
});
