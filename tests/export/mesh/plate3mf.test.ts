/**
 * The plate as 3MF, read back three times: by our own reader of meshes, by a plain reading of the zip and its XML (fflate,
 * saxes), and by manifold-3d, which takes closed solids only. Volumes and places of blocks [mathematics]; names of parts,
 * attributes and the order of a matrix: 3MF Core Specification 1.3, ISO/IEC 25422 [memory].
 */
import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import manifold, { type ManifoldToplevel } from 'manifold-3d';
import { SaxesParser } from 'saxes';
import { beforeAll, describe, expect, it } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { finished } from '../../../src/build/finished';
import { plate3mf } from '../../../src/export/mesh/plate3mf';
import { checkMesh, readMesh } from '../../../src/import/mesh';
import { readLayout } from '../../../src/layout/read';
import type { Layout } from '../../../src/layout/types';
import { block, partAt, rectangleRing } from '../plates';

function bytesOf(layout: Layout, isBlocked = false): Uint8Array {
  const made = finished(plate3mf(layout, isBlocked));
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
}

interface ReadObject {
  readonly points: number[];
  readonly triangles: number[];
  name: string;
}
interface ReadItem {
  readonly object: string;
  readonly part: string;
  readonly transform: readonly number[];
}

/** Reads what a 3MF holds, knowing nothing of the code that wrote it. */
function plainly(bytes: Uint8Array) {
  const files = unzipSync(bytes);
  const target = /Target="\/([^"]+)"/.exec(strFromU8(files['_rels/.rels']!))![1]!;
  const objects = new Map<string, ReadObject>();
  const items: ReadItem[] = [];
  const root: Record<string, string> = {};
  let open: ReadObject | null = null;
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const of = attributes as Record<string, string>;
    if (name === 'model') Object.assign(root, of);
    if (name === 'object') objects.set(of['id']!, (open = { points: [], triangles: [], name: of['name']! }));
    if (name === 'vertex') open!.points.push(Number(of['x']), Number(of['y']), Number(of['z']));
    if (name === 'triangle') open!.triangles.push(Number(of['v1']), Number(of['v2']), Number(of['v3']));
    if (name === 'item')
      items.push({
        object: of['objectid']!,
        part: of['partnumber']!,
        transform: of['transform']!.split(' ').map(Number),
      });
  });
  parser.write(strFromU8(files[target]!)).close();
  return { root, objects, items, names: Object.keys(files), text: strFromU8(files[target]!) };
}

/** Least and largest x, y, z of an item's points where it stands. */
function boxOf({ points }: ReadObject, m: readonly number[]) {
  const [least, most] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (let i = 0; i < points.length; i += 3)
    for (let axis = 0; axis < 3; axis++) {
      const at =
        points[i]! * m[axis]! + points[i + 1]! * m[3 + axis]! + points[i + 2]! * m[6 + axis]! + m[9 + axis]!;
      least[axis] = Math.min(least[axis]!, at);
      most[axis] = Math.max(most[axis]!, at);
    }
  return { least, most };
}

/** A foot of 40 × 20 × 5 mm with a hole of 10 × 10, on it two posts of 5 × 20 × 15. */
const STAND = {
  slabs: [
    { to_mm: 5, rings: [rectangleRing(0, 0, 40, 20), rectangleRing(15, 5, 10, 10)] },
    { to_mm: 20, rings: [rectangleRing(0, 0, 5, 20), rectangleRing(35, 0, 5, 20)] },
  ],
};
const STAND_MM3 = (40 * 20 - 100) * 5 + 2 * 5 * 20 * 15;
const stands = (): Layout => {
  const base = block();
  return {
    ...base,
    shapes: { ...base.shapes, stand: STAND },
    parts: [
      ...base.parts,
      partAt('P02', 'stand', -100, 60, { turn_deg: 90 }),
      partAt('P03', 'stand', 100, -120),
    ],
  };
};

describe('the plate as 3MF', () => {
  let wasm: ManifoldToplevel;
  beforeAll(async () => {
    wasm = await manifold();
    wasm.setup();
  });
  const volumeByManifold = ({ points, triangles }: ReadObject): number => {
    const mesh = new wasm.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(points),
      triVerts: Uint32Array.from(triangles),
    });
    const solid = new wasm.Manifold(mesh);
    expect(solid.status()).toBe('NoError');
    return solid.volume();
  };

  it('holds each shape once, in millimetres, and an item for each part', () => {
    const { root, objects, items, names } = plainly(bytesOf(stands()));
    expect(names).toEqual(['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model']);
    expect(root['unit']).toBe('millimeter');
    expect([...objects.values()].map(({ name }) => name)).toEqual(['block', 'stand']);
    expect(items.map(({ object, part }) => [object, part])).toEqual([
      ['1', 'P01'],
      ['2', 'P02'],
      ['2', 'P03'],
    ]);
  });

  it('puts each part where it stands, from the front left corner of the platform', () => {
    const layout = stands();
    const { width_mm, depth_mm } = layout.machine.platform;
    const { objects, items } = plainly(bytesOf(layout));
    const [, turned, plain] = items.map(({ object, transform }) => boxOf(objects.get(object)!, transform));
    // a quarter turn counter-clockwise: 40 × 20 from the origin becomes −20 … 0 × 0 … 40
    expect(turned!.least).toEqual([width_mm / 2 - 120, depth_mm / 2 + 60, 0]);
    expect(turned!.most).toEqual([width_mm / 2 - 100, depth_mm / 2 + 100, 20]);
    expect(plain!.least).toEqual([width_mm / 2 + 100, depth_mm / 2 - 120, 0]);
    expect(plain!.most).toEqual([width_mm / 2 + 140, depth_mm / 2 - 100, 20]);
  });

  it('is closed, of the volume counted by hand, for another library', () => {
    const { objects } = plainly(bytesOf(stands()));
    const [first, second] = [...objects.values()];
    expect(volumeByManifold(first!)).toBeCloseTo(60 * 60 * 20, 3);
    expect(volumeByManifold(second!)).toBeCloseTo(STAND_MM3, 3);
  });

  it('is closed, of the volume counted by hand, where holes run along the outline or corners touch', () => {
    const cases: readonly (readonly [readonly (readonly (readonly [number, number])[])[], number])[] = [
      [[rectangleRing(0, 0, 40, 20), rectangleRing(10, 0, 10, 10)], 700],
      [[rectangleRing(0, 0, 40, 20), rectangleRing(0, 5, 10, 10), rectangleRing(10, 5, 10, 10)], 600],
      [[rectangleRing(0, 0, 20, 20), rectangleRing(20, 20, 20, 20)], 800],
    ];
    for (const [rings, area_mm2] of cases) {
      const layout = block({ shapes: { block: { slabs: [{ to_mm: 5, rings }] } } });
      const [object] = plainly(bytesOf(layout)).objects.values();
      expect(volumeByManifold(object!)).toBeCloseTo(5 * area_mm2, 3);
    }
  });

  it('is read back by our own reader: closed, facing outwards, of the same volume', () => {
    const read = readMesh(bytesOf(stands()), 'plate.3mf');
    if (!read.ok) throw new Error(read.fault.code);
    expect(read.value).toMatchObject({ unit: 'millimeter', leftOut: [] });
    const checks = read.value.bodies.map(({ mesh }) => checkMesh(mesh));
    expect(checks.map(({ closed, insideOutShells }) => [closed, insideOutShells])).toEqual(
      checks.map(() => [true, 0]),
    );
    const volumes = checks.map(({ volume_mm3 }) => volume_mm3!);
    expect(volumes[0]).toBeCloseTo(72_000, 6);
    for (const volume of volumes.slice(1)) expect(volume).toBeCloseTo(STAND_MM3, 6);
  });

  it.each(['demo.json', 'ring.json', 'mushroom.json', 'thin-walls.json', 'tall-one.json'])(
    '%s: the volume of all its parts is that of its sections',
    (file) => {
      const text = readFileSync(new URL(`../../../shared/examples/${file}`, import.meta.url), 'utf8');
      const layout = readLayout(text);
      if (!layout.ok) throw new Error(layout.fault.code);
      const { objects, items } = plainly(bytesOf(layout.value));
      const volumes = new Map([...objects].map(([id, object]) => [id, volumeByManifold(object)]));
      const sum = items.reduce((total, { object }) => total + volumes.get(object)!, 0);
      const { layer_mm } = layout.value.process;
      const sections = analyse(layout.value).stretches.reduce(
        (total, { firstLayer, lastLayer, figures }) =>
          total + figures.sectionArea_mm2 * (lastLayer - firstLayer + 1) * layer_mm,
        0,
      );
      // layers round a part's height up to whole ones; that library holds 32 bits
      expect(sum / sections).toBeCloseTo(1, 2);
    },
  );

  it('says so where the plate is not for use, escapes what was typed, and is the same twice', () => {
    const layout = { ...stands(), name: 'a < b & "c"' };
    const { text } = plainly(bytesOf(layout, true));
    expect(text).toContain('<metadata name="Title">NOT FOR USE: a &lt; b &amp; &quot;c&quot;</metadata>');
    expect(plainly(bytesOf(layout)).text).not.toContain('NOT FOR USE');
    expect(bytesOf(layout)).toEqual(bytesOf(layout));
  });

  it('is refused where its bodies are too many triangles', () => {
    const corners = Array.from({ length: 1000 }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * i) / 1000;
      return [20 * Math.cos(angle), 20 * Math.sin(angle)];
    });
    const slabs = Array.from({ length: 600 }, (_, i) => ({ to_mm: 0.05 * (i + 1), rings: [corners] }));
    const layout = block({ shapes: { block: { slabs } } });
    // a prism of n corners has 4 n − 4 triangles: 600 × 3996 > 2 000 000
    expect(finished(plate3mf(layout, false))).toMatchObject({
      ok: false,
      fault: { code: 'export-mesh-too-large' },
    });
  });
});
