// 3MF packages (ISO/IEC 25422) written by hand: units, components, transforms, build items, what is left out, what is
// refused. All numbers are computed by hand beside them.
import { strToU8, Zip, ZipDeflate, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readMesh, type Mesh } from '../../../src/import/mesh';
import { MOST_UNPACKED_BYTES } from '../../../src/import/mesh/limits';
import { unpack } from '../../../src/import/mesh/threeMf/unpack';
import { messageAdvice, messageText } from '../../../src/layout/messages';
import { box, item, meshXml, model, object, package3mf, tetrahedra, threeMf } from './meshes';
import { value } from './slabs';

const cube = meshXml(box([0, 0, 0], [1, 2, 3]));
const components = (...list: string[]): string => `<components>${list.join('')}</components>`;
const component = (id: number, transform = ''): string =>
  `<component objectid="${id}" ${transform === '' ? '' : `transform="${transform}"`}/>`;

/** Least and greatest x, y, z. */
const boxOf = ({ points }: Mesh): number[][] =>
  [0, 1, 2].map((axis) => {
    const along = [...points].filter((_, i) => i % 3 === axis);
    return [Math.min(...along), Math.max(...along)];
  });
const read = (resources: string, build: string, attributes?: string) =>
  value(readMesh(threeMf(resources, build, attributes), 'part.3mf'));
const refusal = (file: Uint8Array): string => {
  const made = readMesh(file, 'part.3mf');
  if (made.ok) throw new Error('not refused');
  const { code, params } = made.fault;
  expect(`${messageText(code, params)} ${messageAdvice(code, params)}`).not.toMatch(/\?|undefined|\n/);
  return `${code}: ${messageText(code, params)}`;
};

describe('units', () => {
  test.each([
    ['micron', 0.001],
    ['millimeter', 1],
    ['centimeter', 10],
    ['inch', 25.4],
    ['foot', 304.8],
    ['meter', 1000],
  ])('a cube of 1 × 2 × 3 %s', (unit, mm) => {
    const file = read(object(1, cube), item(1), `unit="${unit}"`);
    expect(file.unit).toBe(unit);
    expect(boxOf(file.bodies[0].mesh)).toEqual([1, 2, 3].map((n) => [0, expect.closeTo(n * mm, 9)]));
  });
  test('without one it is in millimetres', () => {
    expect(read(object(1, cube), item(1), '').unit).toBe('millimeter');
  });
  test('another one is refused', () => {
    expect(refusal(threeMf(object(1, cube), item(1), 'unit="furlong"'))).toMatch(
      /^mesh-3mf-broken: .*furlong/,
    );
  });
});

describe('transforms', () => {
  test('a build item is turned a quarter about z and shifted', () => {
    // x' = −y + 10, y' = x + 20, z' = z + 30.
    const file = read(object(1, cube), item(1, 'transform="0 1 0 -1 0 0 0 0 1 10 20 30"'));
    expect(boxOf(file.bodies[0].mesh)).toEqual([
      [8, 10],
      [20, 21],
      [30, 33],
    ]);
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(6, 12);
  });
  test('a mirroring one keeps the outside outside', () => {
    const file = read(object(1, cube), item(1, 'transform="-1 0 0 0 1 0 0 0 1 0 0 0"'));
    expect(boxOf(file.bodies[0].mesh)[0]).toEqual([-1, 0]);
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(6, 12);
  });
  test('of components nest, the inner one first', () => {
    // Inner: doubled. Middle: shifted by 5 in x. Item: x and y changed over (a mirror). x' = 2y, y' = 2x + 5.
    const file = read(
      object(1, cube) +
        object(2, components(component(1, '2 0 0 0 2 0 0 0 2 0 0 0'))) +
        object(3, components(component(2, '1 0 0 0 1 0 0 0 1 5 0 0'))),
      item(3, 'transform="0 1 0 1 0 0 0 0 1 0 0 0"'),
    );
    expect(boxOf(file.bodies[0].mesh)).toEqual([
      [0, 4],
      [5, 7],
      [0, 6],
    ]);
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(48, 9);
  });
  test('two components are one body of two cubes', () => {
    const file = read(
      object(1, cube) + object(2, components(component(1), component(1, '1 0 0 0 1 0 0 0 1 9 0 0'))),
      item(2),
    );
    expect(file.bodies).toHaveLength(1);
    expect(file.bodies[0].mesh.triangles).toHaveLength(3 * 24);
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(12, 9);
  });
});

describe('what is left out is told', () => {
  test('supports, surfaces, others and what the build does not name', () => {
    const file = read(
      object(1, cube) +
        object(2, cube, 'type="support" name="post"') +
        object(3, cube, 'type="solidsupport"') +
        object(4, cube, 'type="surface"') +
        object(5, cube, 'type="other" name="plate"') +
        object(6, cube, 'name="spare"') +
        object(7, components(component(1), component(2))),
      item(7) + item(3) + item(4) + item(5),
    );
    expect(file.bodies).toHaveLength(1);
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(6, 12);
    expect(file.leftOut).toEqual([
      { kind: 'support', what: 'post', count: 1 },
      { kind: 'support', what: 'object 3', count: 1 },
      { kind: 'surface', what: 'object 4', count: 1 },
      { kind: 'other', what: 'plate', count: 1 },
      { kind: 'unused', what: 'spare', count: 1 },
    ]);
  });
});

test('a build without a solid is refused by its names, a triangle without a point too', () => {
  const resources = object(1, cube, 'type="support" name="post"') + object(2, '');
  expect(refusal(threeMf(resources, item(1) + item(2)))).toMatch(
    /^mesh-3mf-broken: .*solid \(post, object 2\)/,
  );
  const torn = cube.replace(/v1="\d+"/, 'v1=""');
  expect(refusal(threeMf(object(1, torn), item(1)))).toMatch(/^mesh-3mf-broken: /);
});

describe('packages', () => {
  test('a prefix before every element changes nothing', () => {
    const xml = model(object(1, cube), item(1))
      .replaceAll(/<(\/?)(\w)/g, '<$1m:$2')
      .replace('xmlns=', 'xmlns:m=');
    const file = value(readMesh(package3mf({ '3D/3dmodel.model': xml }), 'a.3mf'));
    expect(tetrahedra(file.bodies[0].mesh)).toBeCloseTo(6, 12);
  });
  test('the production extension’s paths lead to other parts', () => {
    const production =
      'xmlns:p="http://schemas.microsoft.com/3dmanufacturing/production/2015/06" requiredextensions="p"';
    const root = model(
      object(1, components('<component objectid="8" p:path="/3D/./Parts/../Objects/Body.model"/>')),
      item(1),
      production,
    );
    const file = package3mf({
      '3D/3dmodel.model': root,
      '3D/Objects/body.model': model(object(8, cube), ''),
    });
    expect(tetrahedra(value(readMesh(file, 'a.3mf')).bodies[0].mesh)).toBeCloseTo(6, 12);
  });
  test('points that are the same become one', () => {
    const loose = box([0, 0, 0], [1, 1, 1]);
    const soup = {
      points: Float64Array.from(
        [...loose.triangles].flatMap((p) => [...loose.points.subarray(3 * p, 3 * p + 3)]),
      ),
      triangles: Uint32Array.from(loose.triangles, (_, i) => i),
    };
    expect(read(object(1, meshXml(soup)), item(1)).bodies[0].mesh.points).toHaveLength(24);
  });
});

describe('refused in one sentence', () => {
  const nested = (depth: number): string =>
    object(1, cube) +
    Array.from({ length: depth }, (_, i) => object(i + 2, components(component(i + 1)))).join('');
  const doubled = (levels: number): string =>
    object(1, cube) +
    Array.from({ length: levels }, (_, i) =>
      object(i + 2, components(component(i + 1), component(i + 1))),
    ).join('');
  const good = threeMf(object(1, cube), item(1));
  const bad = (from: string | RegExp, to: string): Uint8Array =>
    package3mf({ '3D/3dmodel.model': model(object(1, cube), item(1)).replace(from, to) });
  const beams =
    'xmlns:b="http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02" requiredextensions="b"';
  test.each<[string, Uint8Array, string]>([
    [
      'an object that contains itself',
      threeMf(object(1, components(component(2))) + object(2, components(component(1))), item(1)),
      'mesh-3mf-cycle',
    ],
    ['components too deep', threeMf(nested(200), item(201)), 'mesh-too-much: .*levels'],
    ['components that double over and over', threeMf(doubled(30), item(31)), 'mesh-too-much'],
    ['a required extension', threeMf(object(1, cube), item(1), beams), 'mesh-3mf-extension: .*beamlattice'],
    ['a triangle of points that are not there', bad('v1="0"', 'v1="8"'), 'mesh-3mf-broken: .*8, .* of 8'],
    ['a point that is no number', bad('x="0"', 'x="zero"'), 'mesh-bad-number: .*vertex 0 of object 1'],
    ['a point without x', bad('x="0"', ''), 'mesh-bad-number'],
    ['a point at 1e300', bad('x="0"', 'x="1e300"'), 'mesh-too-far: .*1.00e\\+300'],
    [
      'a transform of eleven numbers',
      bad('<item', '<item transform="1 0 0 0 1 0 0 0 1 0 0"'),
      'mesh-3mf-broken: .*transform',
    ],
    [
      'a transform that flattens',
      bad('<item', '<item transform="1 0 0 0 1 0 0 0 0 0 0 0"'),
      'mesh-3mf-broken: .*transform',
    ],
    [
      'a transform that leads away',
      bad('<item', '<item transform="1 0 0 0 1 0 0 0 1 1e9 0 0"'),
      'mesh-too-far: .*object 1',
    ],
    ['an item of no object', bad('objectid="1"', 'objectid="7"'), 'mesh-3mf-broken: .*no object “7”'],
    ['an object without an id', bad('<object id="1"', '<object'), 'mesh-3mf-broken: .*no id'],
    [
      'two objects of one id',
      threeMf(object(1, cube) + object(1, cube), item(1)),
      'mesh-3mf-broken: .*two objects',
    ],
    ['an empty build', threeMf(object(1, cube), ''), 'mesh-3mf-broken: .*no items'],
    ['XML that is broken', bad('</resources>', ''), 'mesh-3mf-broken: .*line 2'],
    ['entities', bad('<model', '<!DOCTYPE x [<!ENTITY a "b">]><model'), 'mesh-3mf-broken: .*document type'],
    ['another document', package3mf({ '3D/3dmodel.model': '<svg/>' }), 'mesh-3mf-broken: .*“svg”'],
    [
      'a package without content types',
      package3mf({ '3D/a.model': model(object(1, cube), item(1)) }, ['[Content_Types].xml']),
      'mesh-3mf-no-model',
    ],
    [
      'a package without relations',
      package3mf({ '3D/a.model': model(object(1, cube), item(1)) }, ['_rels/.rels']),
      'mesh-3mf-no-model',
    ],
    ['a package without its model', package3mf({ '3D/a.model': '' }, ['3D/a.model']), 'mesh-3mf-no-model'],
    ['a file that was cut off', good.subarray(0, good.length / 2), 'mesh-truncated'],
    ['another ZIP', zipSync({ 'a.txt': strToU8('text') }), 'mesh-3mf-no-model'],
    [
      'bytes behind the mark of a ZIP',
      new Uint8Array([0x50, 0x4b, 3, 4, ...Array.from({ length: 99 }, () => 7)]),
      'mesh-(truncated|zip-broken)',
    ],
  ])('%s', (_, file, words) => {
    expect(refusal(file)).toMatch(new RegExp(`^${words}`));
  });
});

describe('files made to swell', () => {
  /** `megabytes` of one character, packed without ever being held. */
  const swelling = (name: string, character: string, megabytes: number): Uint8Array => {
    const chunks: Uint8Array[] = [];
    const zip = new Zip((_, chunk) => chunks.push(chunk));
    const part = new ZipDeflate(name, { level: 1 });
    zip.add(part);
    const piece = strToU8(character.repeat(1_000_000));
    for (let i = 1; i <= megabytes; i++) part.push(piece, i === megabytes);
    zip.end();
    return Uint8Array.from(chunks.flatMap((chunk) => [...chunk]));
  };
  test('may hold 300 MB', () => {
    expect(MOST_UNPACKED_BYTES).toBe(300_000_000);
  });
  test('are stopped at the limit, whatever is in them', () => {
    const limit = 12_000_000;
    let taken = 0;
    const made = unpack(
      swelling('a.model', ' ', 20),
      () => (text) => {
        taken += text.length;
        return null;
      },
      () => {},
      limit,
    );
    expect(made).toEqual({
      ok: false,
      fault: { code: 'mesh-too-much', params: { limit: 12, what: { text: 'MB when unpacked' } } },
    });
    // A push yields at most 4 MB.
    expect(taken).toBeLessThanOrEqual(limit);
    expect(taken).toBeGreaterThan(limit - 4_500_000);
  });
  test('and much earlier where nothing but blanks comes', () => {
    const file = package3mf({
      '3D/3dmodel.model': model(' '.repeat(6_000_000) + object(1, cube), item(1)),
    });
    expect(file.length).toBeLessThan(20_000);
    expect(refusal(file)).toMatch(/^mesh-3mf-broken: .*4000000 characters/);
  });
});
