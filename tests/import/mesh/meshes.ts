/**
 * Meshes and mesh files made by hand for the tests, without the code under test. Millimetres; triangles run
 * counter-clockwise seen from outside.
 */
import { zipSync, strToU8 } from 'fflate';
import type { Mesh } from '../../../src/import/mesh';

export type Point3 = readonly [number, number, number];
export type Point2 = readonly [number, number];

export const meshOf = (points: readonly Point3[], triangles: readonly Point3[]): Mesh => ({
  points: Float64Array.from(points.flat()),
  triangles: Uint32Array.from(triangles.flat()),
});

/** The solid between a convex outline at z = low and one with as many points at z = high, both counter-clockwise. */
export function loft(bottom: readonly Point2[], top: readonly Point2[], low: number, high: number): Mesh {
  const n = bottom.length;
  const points: Point3[] = [
    ...bottom.map(([x, y]): Point3 => [x, y, low]),
    ...top.map(([x, y]): Point3 => [x, y, high]),
  ];
  const triangles: Point3[] = [];
  for (let i = 0; i < n; i++) {
    const k = (i + 1) % n;
    triangles.push([i, k, n + k], [i, n + k, n + i]);
    if (i > 1) triangles.push([0, i, i - 1], [n, n + i - 1, n + i]);
  }
  return meshOf(points, triangles);
}
export const rectangle = (x: number, y: number, u: number, v: number): Point2[] => [
  [x, y],
  [u, y],
  [u, v],
  [x, v],
];
export const box = ([x, y, z]: Point3, [u, v, w]: Point3): Mesh =>
  loft(rectangle(x, y, u, v), rectangle(x, y, u, v), z, w);

/** A profile of (radius, z) turned about z in n steps. Closed profiles make rings, others begin and end on the axis. */
export function revolved(profile: readonly Point2[], n: number, closed: boolean): Mesh {
  const points: Point3[] = [];
  const triangles: Point3[] = [];
  const rows = profile.map(([r, z]) => {
    if (r === 0) return [points.push([0, 0, z]) - 1];
    return Array.from({ length: n }, (_, i) => {
      const angle = (2 * Math.PI * i) / n;
      return points.push([r * Math.cos(angle), r * Math.sin(angle), z]) - 1;
    });
  });
  const count = closed ? profile.length : profile.length - 1;
  for (let row = 0; row < count; row++) {
    const a = rows[row];
    const b = rows[(row + 1) % rows.length];
    for (let i = 0; i < n; i++) {
      const k = (i + 1) % n;
      if (a.length > 1) triangles.push([a[i], a[k], b[k % b.length]]);
      if (b.length > 1) triangles.push([a[i % a.length], b[k], b[i]]);
    }
  }
  return meshOf(points, triangles);
}

/** Several meshes as one. */
export function together(...meshes: readonly Mesh[]): Mesh {
  const points: number[] = [];
  const triangles: number[] = [];
  for (const mesh of meshes) {
    const shift = points.length / 3;
    points.push(...mesh.points);
    triangles.push(...Array.from(mesh.triangles, (point) => point + shift));
  }
  return { points: Float64Array.from(points), triangles: Uint32Array.from(triangles) };
}
/** Every triangle the other way round. */
export const inverted = ({ points, triangles }: Mesh): Mesh => ({
  points,
  triangles: Uint32Array.from(triangles, (_, i) => triangles[i % 3 === 0 ? i : i % 3 === 1 ? i + 1 : i - 1]),
});
/** Without the triangles of these indices. */
export const without = ({ points, triangles }: Mesh, ...gone: readonly number[]): Mesh => ({
  points,
  triangles: triangles.filter((_, i) => !gone.includes(Math.floor(i / 3))),
});
export const moved = ({ points, triangles }: Mesh, by: Point3): Mesh => ({
  points: points.map((value, i) => value + by[i % 3]),
  triangles,
});

/** Σ of signed tetrahedra between the origin and each triangle [mathematics]. */
export function tetrahedra({ points, triangles }: Mesh): number {
  let six = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((axis) => points[3 * triangles[t + k] + axis]));
    six +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) -
      a[1] * (b[0] * c[2] - b[2] * c[0]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return six / 6;
}

const corner = ({ points, triangles }: Mesh, i: number, axis: number): number =>
  points[3 * triangles[i] + axis];

/** A binary STL as the format has it: 80 bytes, the count, 50 bytes a triangle. */
export function binaryStl(mesh: Mesh, header = ''): Uint8Array {
  const count = mesh.triangles.length / 3;
  const bytes = new Uint8Array(84 + 50 * count);
  bytes.set(strToU8(header).subarray(0, 80));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, count, true);
  for (let i = 0; i < mesh.triangles.length; i++)
    for (let axis = 0; axis < 3; axis++)
      view.setFloat32(
        84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3) + 4 * axis,
        corner(mesh, i, axis),
        true,
      );
  return bytes;
}
export function textStl(mesh: Mesh, name = 'part'): string {
  let text = `solid ${name}\n`;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    text += '  facet normal 0 0 0\n    outer loop\n';
    for (let k = 0; k < 3; k++)
      text += `      vertex ${[0, 1, 2].map((axis) => corner(mesh, t + k, axis).toExponential()).join(' ')}\n`;
    text += '    endloop\n  endfacet\n';
  }
  return `${text}endsolid ${name}\n`;
}

const TYPES = `<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>`;
const relations = (target: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="${target}" Id="r0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`;

/** A 3MF package around model parts; the first one is the model. */
export function package3mf(
  parts: Readonly<Record<string, string | Uint8Array>>,
  leaveOut: readonly string[] = [],
): Uint8Array {
  const [first] = Object.keys(parts);
  const all: Record<string, string | Uint8Array> = {
    '[Content_Types].xml': TYPES,
    ...parts,
    '_rels/.rels': relations(`/${first}`),
  };
  const files = Object.entries(all).filter(([name]) => !leaveOut.includes(name));
  const bytesOf = (part: string | Uint8Array) => (typeof part === 'string' ? strToU8(part) : part);
  return zipSync(Object.fromEntries(files.map(([name, part]) => [name, bytesOf(part)])));
}
const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
export const model = (resources: string, build: string, attributes = 'unit="millimeter"'): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<model ${attributes} xml:lang="en" xmlns="${CORE}"><resources>${resources}</resources><build>${build}</build></model>`;
/** The XML of a mesh. */
export function meshXml({ points, triangles }: Mesh): string {
  let text = '<mesh><vertices>';
  for (let i = 0; i < points.length; i += 3)
    text += `<vertex x="${points[i]}" y="${points[i + 1]}" z="${points[i + 2]}"/>`;
  text += '</vertices><triangles>';
  for (let t = 0; t < triangles.length; t += 3)
    text += `<triangle v1="${triangles[t]}" v2="${triangles[t + 1]}" v3="${triangles[t + 2]}"/>`;
  return `${text}</triangles></mesh>`;
}
export const threeMf = (resources: string, build: string, attributes?: string): Uint8Array =>
  package3mf({ '3D/3dmodel.model': model(resources, build, attributes) });
/** An object and a build item of a model. */
export const object = (id: number, inside: string, more = ''): string =>
  `<object id="${id}" ${more}>${inside}</object>`;
export const item = (id: number, more = ''): string => `<item objectid="${id}" ${more}/>`;
