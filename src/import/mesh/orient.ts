/**
 * A mesh turned and scaled as it shall stand: lowest point on z = 0, the middle of its footprint's box on the origin. Turns
 * are about x, then y, then z of the platform, counter-clockwise seen against the axis; quarter turns are exact. The
 * footprint is moved by whole micrometres, so that coordinates on that grid stay on it. Millimetres, degrees.
 */
import type { Degrees, Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import type { Mesh, MeshPlacement } from './types';

type Row = readonly [number, number, number];

/** Cosine and sine, exact for quarter turns. */
function turn(deg: Degrees): readonly [number, number] {
  const quarter = ((deg % 360) + 360) % 360;
  if (quarter === 0) return [1, 0];
  if (quarter === 90) return [0, 1];
  if (quarter === 180) return [-1, 0];
  if (quarter === 270) return [0, -1];
  const angle = (quarter * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

/** The rows of Rz·Ry·Rx, times the scale. */
function rows({
  turnX_deg = 0,
  turnY_deg = 0,
  turnZ_deg = 0,
  scale = 1,
}: MeshPlacement): readonly [Row, Row, Row] {
  const [cx, sx] = turn(turnX_deg);
  const [cy, sy] = turn(turnY_deg);
  const [cz, sz] = turn(turnZ_deg);
  const turned: readonly [Row, Row, Row] = [
    [cz * cy, cz * sy * sx - sz * cx, cz * sy * cx + sz * sx],
    [sz * cy, sz * sy * sx + cz * cx, sz * sy * cx - cz * sx],
    [-sy, cy * sx, cy * cx],
  ];
  const scaled = ([a, b, c]: Row): Row => [a * scale, b * scale, c * scale];
  return [scaled(turned[0]), scaled(turned[1]), scaled(turned[2])];
}

/** Least and greatest coordinate along an axis (0 x, 1 y, 2 z) over the points that triangles use; 0, 0 without any. */
export function extent({ points, triangles }: Mesh, axis: number): readonly [Mm, Mm] {
  let min = Infinity;
  let max = -Infinity;
  for (const point of triangles) {
    const value = points[3 * point + axis];
    if (value < min) min = value;
    if (value > max) max = value;
  }
  return triangles.length === 0 ? [0, 0] : [min, max];
}

/** Middle of a mesh's box along an axis. */
export function middle(mesh: Mesh, axis: number): Mm {
  const [least, greatest] = extent(mesh, axis);
  return roundMm((least + greatest) / 2);
}

/** The mesh scaled, turned and set down. Throws where the scale is not above 0 or a turn is not finite. */
export function orient(mesh: Mesh, placement: MeshPlacement = {}): Mesh {
  const map = rows(placement);
  if (!((placement.scale ?? 1) > 0) || !map.flat().every(Number.isFinite))
    throw new Error('orient: turns have to be finite, the scale finite and above 0');
  const [[ax, bx, cx], [ay, by, cy], [az, bz, cz]] = map;
  const points = new Float64Array(mesh.points.length);
  for (let i = 0; i < points.length; i += 3) {
    const x = mesh.points[i];
    const y = mesh.points[i + 1];
    const z = mesh.points[i + 2];
    points[i] = ax * x + bx * y + cx * z;
    points[i + 1] = ay * x + by * y + cy * z;
    points[i + 2] = az * x + bz * y + cz * z;
  }
  const turned: Mesh = { points, triangles: mesh.triangles };
  const [dx, dy, dz] = [middle(turned, 0), middle(turned, 1), extent(turned, 2)[0]];
  for (let i = 0; i < points.length; i += 3) {
    points[i] -= dx;
    points[i + 1] -= dy;
    points[i + 2] -= dz;
  }
  return turned;
}
