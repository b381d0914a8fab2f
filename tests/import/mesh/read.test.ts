// STL files: binary and text told apart by content, points that are the same made one, and what is refused in one
// sentence. Files are written by the tests; those of stl-models (npm, MIT) are other people's.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readMesh } from '../../../src/import/mesh';
import { messageAdvice, messageText } from '../../../src/layout/messages';
import { binaryStl, box, revolved, tetrahedra, textStl, together } from './meshes';
import { value } from './slabs';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const model = (path: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../../node_modules/stl-models/${path}`, import.meta.url)));
const cube = box([0, 0, 0], [10, 20, 30]);
const refusal = (file: Uint8Array, name = 'part.stl'): string => {
  const read = readMesh(file, name);
  if (read.ok) throw new Error('not refused');
  const sentence = messageText(read.fault.code, read.fault.params);
  const advice = messageAdvice(read.fault.code, read.fault.params);
  expect(`${sentence} ${advice}`).not.toMatch(/\?|undefined|\n/);
  return `${read.fault.code}: ${sentence}`;
};

/** Lines that some programs add: before the solid, behind its name, between facets. */
const commented = (text: string): string =>
  `# valve seat\n; second line\n${text.replace('\n', '\ncolor 0.5 0.5 0.5\n').replaceAll('endfacet', 'endfacet\n# next')}`;

describe('an STL', () => {
  test.each([
    ['binary', binaryStl(cube)],
    ['binary, beginning with “solid”', binaryStl(cube, 'solid part exported in binary form')],
    ['text', bytes(textStl(cube))],
    ['text with a mark of the byte order', bytes(`\uFEFF${textStl(cube)}`)],
    ['text with line ends of two characters', bytes(textStl(cube).replaceAll('\n', '\r\n'))],
    ['text in capitals, all on one line', bytes(textStl(cube).toUpperCase().replace(/\s+/g, ' '))],
    ['text without a name', bytes(textStl(cube, ''))],
    ['text with comments and colours', bytes(commented(textStl(cube)))],
  ])('%s holds the cube with its 8 corners', (_, file) => {
    const { kind, unit, bodies, leftOut } = value(readMesh(file, 'cube.dat'));
    expect([kind, unit, bodies.length, leftOut.length]).toEqual(['stl', null, 1, 0]);
    expect(bodies[0].mesh.points).toHaveLength(3 * 8);
    expect(bodies[0].mesh.triangles).toHaveLength(3 * 12);
    expect(tetrahedra(bodies[0].mesh)).toBe(6000);
  });
  test('0 and −0 are one number', () => {
    const flipped = { ...cube, points: cube.points.map((v) => (v === 0 ? -0 : v)) };
    const file = bytes(textStl(cube).replace('0e+0', '-0e+0'));
    expect(value(readMesh(file, 'a.stl')).bodies[0].mesh.points).toHaveLength(24);
    expect(value(readMesh(binaryStl(flipped), 'a.stl')).bodies[0].mesh.points).toHaveLength(24);
  });
  test('of several solids makes several bodies, each with a name of its own', () => {
    const text =
      textStl(cube, 'lid') + textStl(cube, 'lid') + textStl(cube, '') + 'solid none\nendsolid none\n';
    const { bodies, leftOut } = value(readMesh(bytes(text), 'box.stl'));
    expect(bodies.map(({ name }) => name)).toEqual(['lid', 'lid 2', 'box']);
    expect(leftOut).toEqual([{ kind: 'empty', what: 'none', count: 1 }]);
  });
  test('a name may hold the words that begin a facet; a facet may follow on its line', () => {
    const bodiesOf = (text: string) => value(readMesh(bytes(text), 'box.stl')).bodies;
    const plain = textStl(cube, 'seat');
    const named = bodiesOf(plain.replace('solid seat', 'solid seat facet normal check'));
    expect(named[0]?.name).toBe('seat facet normal check');
    for (const text of [plain.replace('solid seat\n', 'solid seat '), plain.replaceAll(/\s+/g, ' ')])
      expect(tetrahedra(bodiesOf(text)[0]!.mesh)).toBeCloseTo(tetrahedra(cube), 9);
    expect(bodiesOf(plain.replaceAll(/\s+/g, ' '))[0]?.name).toBe('seat');
  });
  test('with bytes after its last triangle tells how many', () => {
    const file = new Uint8Array([...binaryStl(cube), 1, 2, 3]);
    expect(value(readMesh(file, 'a.stl')).leftOut).toEqual([{ kind: 'bytes', what: '', count: 3 }]);
  });
  test('binary, whose header names no triangles, is read to its end, and says so', () => {
    const file = binaryStl(cube);
    new DataView(file.buffer).setUint32(80, 0, true);
    const { bodies, leftOut } = value(readMesh(file, 'a.stl'));
    expect(tetrahedra(bodies[0]!.mesh)).toBe(6000);
    expect(leftOut).toEqual([{ kind: 'count', what: '', count: 12 }]);
  });
  test('numbers come through as they are written', () => {
    const numbers = ['1.5', '-0.125', '+7', '.5', '5.', '1e2', '12.3456789012345678', '1.7976e-5', '0.1E+1'];
    const facet = (a: string, b: string, c: string): string =>
      `facet normal 0 0 1 outer loop vertex ${a} 0 0 vertex ${b} 1 0 vertex ${c} 0 1 endloop endfacet `;
    const text = `solid a\n${[0, 3, 6].map((i) => facet(numbers[i], numbers[i + 1], numbers[i + 2])).join('')}endsolid`;
    const { points } = value(readMesh(bytes(text), 'a.stl')).bodies[0].mesh;
    const read = [...points].filter((_, i) => i % 3 === 0);
    expect(read).toEqual(numbers.map(Number));
  });
  test('progress rises to 1', () => {
    const many = together(...Array.from({ length: 80 }, (_, i) => revolved([[0, i], [1, i + 0.5], [0, i + 1]], 300, false))); // prettier-ignore
    for (const file of [binaryStl(many), bytes(textStl(many))]) {
      const heard: number[] = [];
      readMesh(file, 'a.stl', (share) => heard.push(share));
      expect(heard.length).toBeGreaterThan(2);
      expect(heard).toEqual([...heard].sort((a, b) => a - b));
      expect(heard.at(-1)).toBe(1);
    }
  });
});

describe('refused in one sentence', () => {
  const facet =
    'facet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\nvertex 0 1 0\nendloop\nendfacet\n';
  const withNumber = (x: number): Uint8Array => {
    const file = binaryStl(cube);
    new DataView(file.buffer).setFloat32(84 + 50 * 3 + 12, x, true);
    return file;
  };
  test.each<[string, Uint8Array, string]>([
    ['an empty file', new Uint8Array(0), 'mesh-empty'],
    ['a binary one without triangles', binaryStl({ ...cube, triangles: new Uint32Array(0) }), 'mesh-empty'],
    ['a text one without triangles', bytes('solid a\nendsolid a\n'), 'mesh-empty'],
    [
      'a binary one that was cut off',
      binaryStl(cube).subarray(0, 500),
      'mesh-truncated: .*names 12 .*holds 8',
    ],
    ['less than a header', binaryStl(cube).subarray(0, 60), 'mesh-truncated'],
    ['a text one that was cut off', bytes(textStl(cube).slice(0, 700)), 'mesh-truncated'],
    ['a text one cut off between facets', bytes(`solid a\n${facet}`), 'mesh-truncated'],
    ['NaN in a binary one', withNumber(NaN), 'mesh-bad-number: .*NaN at triangle 4'],
    ['infinity in a binary one', withNumber(-Infinity), 'mesh-bad-number: .*-Infinity at triangle 4'],
    ['1e30 in a binary one', withNumber(1e30), 'mesh-too-far: .*1.00e\\+30 at triangle 4'],
    [
      'NaN in a text one',
      bytes(`solid a\n${facet.replace('1 0 0', 'NaN 0 0')}endsolid`),
      'mesh-bad-number: .*line 5',
    ],
    [
      '1e300 in a text one',
      bytes(`solid a\n${facet.replace('1 0 0', '1e300 0 0')}endsolid`),
      'mesh-too-far: .*line 5',
    ],
    [
      'a decimal comma',
      bytes(`solid a\n${facet.replace('1 0 0', '1,5 0 0')}endsolid`),
      'mesh-bad-number: .*line 5',
    ],
    [
      'a facet of four points',
      bytes(`solid a\n${facet.replace('endloop', 'vertex 1 1 0\nendloop')}endsolid`),
      'mesh-stl-points: .*line 8 has 4',
    ],
    [
      'a facet of two points',
      bytes(`solid a\n${facet.replace('vertex 0 1 0\n', '')}endsolid`),
      'mesh-stl-points: .* 2 points',
    ],
    [
      'a wrong word',
      bytes(`solid a\n${facet.replace('endfacet', 'endface')}endsolid`),
      'mesh-stl-word: .*line 8 .*“endface”',
    ],
    ['text of another kind', bytes('{"format":"evenplate-layout"}'), 'mesh-unknown-kind'],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0]), 'mesh-unknown-kind'],
  ])('%s', (_, file, words) => {
    expect(refusal(file, words.includes('unknown-kind') ? 'part.bin' : 'part.stl')).toMatch(
      new RegExp(`^${words}`),
    );
  });
  test('a file of more than 100 MB, before anything is made of it', () => {
    expect(refusal(new Uint8Array(100_000_001))).toMatch(/^mesh-file-too-large: .*101 MB/);
  });
  test('a header that names more triangles than memory holds', () => {
    const file = binaryStl(cube);
    new DataView(file.buffer).setUint32(80, 0xffffffff, true);
    expect(refusal(file)).toMatch(/^mesh-truncated/);
  });
});

describe('broken files of stl-models', () => {
  test.each([
    ['broken/empty.stl', 'mesh-empty'],
    ['broken/fourVertices.ascii.stl', 'mesh-stl-points'],
    ['broken/quad.ascii.stl', 'mesh-stl-points'],
    ['broken/twoVertices.ascii.stl', 'mesh-stl-points'],
    ['broken/incorrectFaceCounter.bin.stl', 'mesh-truncated'],
    ['broken/missingEndsolid.ascii.stl', 'mesh-truncated'],
    ['misc/faceless.ascii.stl', 'mesh-empty'],
  ])('%s is refused: %s', (path, code) => {
    expect(refusal(model(path))).toMatch(new RegExp(`^${code}: `));
  });
  test.each([
    ['broken/missingNormal.ascii.stl', 4],
    ['broken/notANumberNormal.ascii.stl', 4],
    ['broken/wrongNormal.ascii.stl', 4],
    ['broken/wrongNormals.ascii.stl', 4],
    ['broken/solidNameMismatch.ascii.stl', 4],
    ['broken/missingFace.ascii.stl', 3],
    ['broken/singleFace.ascii.stl', 1],
    ['broken/wrongHeader.bin.stl', 12],
  ])('%s opens with its %d triangles: normals and names do not matter', (path, count) => {
    expect(value(readMesh(model(path), path)).bodies[0].mesh.triangles).toHaveLength(3 * count);
  });
});
