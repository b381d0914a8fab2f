// The parts of a 3MF package: their text in either coding, and broken ones beside the one that is built.
import { describe, expect, test } from 'vitest';
import { readMesh } from '../../../src/import/mesh';
import { messageText } from '../../../src/layout/messages';
import { box, meshXml, model, package3mf, tetrahedra } from './meshes';
import { value } from './slabs';

const cube = meshXml(box([0, 0, 0], [1, 2, 3]));
const object = (id: number, inside: string, more = ''): string =>
  `<object id="${id}" ${more}>${inside}</object>`;
const item = (id: number, more = ''): string => `<item objectid="${id}" ${more}/>`;
const refusal = (file: Uint8Array): string => {
  const made = readMesh(file, 'part.3mf');
  if (made.ok) throw new Error('not refused');
  const { code, params } = made.fault;
  return `${code}: ${messageText(code, params)}`;
};

describe('text in UTF-16, as packages may have it', () => {
  // long enough to come in several pieces, with a name beyond one unit
  const bodies = Array.from({ length: 400 }, (_, i) => object(i + 1, cube, 'name="Flügelrad 𝛥"')).join('');
  const text = `\uFEFF${model(bodies, item(400)).replace('UTF-8', 'UTF-16')}`;
  const inUnits = (lowFirst: boolean): Uint8Array => {
    const bytes = new Uint8Array(2 * text.length);
    const view = new DataView(bytes.buffer);
    for (let i = 0; i < text.length; i++) view.setUint16(2 * i, text.charCodeAt(i), lowFirst);
    return bytes;
  };
  test.each([
    ['low byte first', true],
    ['high byte first', false],
  ])('%s', (_, lowFirst) => {
    const { bodies: made } = value(readMesh(package3mf({ '3D/3dmodel.model': inUnits(lowFirst) }), 'a.3mf'));
    expect(made.map(({ name }) => name)).toEqual(['Flügelrad 𝛥']);
    expect(tetrahedra(made[0]!.mesh)).toBeCloseTo(6, 12);
  });
  test('that ends in the middle of a letter is refused', () => {
    const torn = inUnits(true).subarray(0, -1);
    expect(refusal(package3mf({ '3D/3dmodel.model': torn }))).toMatch(/^mesh-zip-broken: .*UTF-16/);
  });
});

describe('a broken model part beside the one that is built', () => {
  const attributes =
    'unit="millimeter" xmlns:p="http://schemas.microsoft.com/3dmanufacturing/production/2015/06"';
  const beside = (build: string) =>
    package3mf({
      '3D/3dmodel.model': model(object(1, cube), build, attributes),
      '3D/other.model': '<model><resources',
    });
  test('to which nothing leads is told', () => {
    const { bodies, leftOut } = value(readMesh(beside(item(1)), 'a.3mf'));
    expect(bodies).toHaveLength(1);
    expect(leftOut).toEqual([{ kind: 'unread', what: '3d/other.model', count: 1 }]);
  });
  test('to which an item leads is refused by its name', () => {
    const led = item(1) + item(2, 'p:path="/3D/other.model"');
    expect(refusal(beside(led))).toMatch(/^mesh-3mf-broken: .*other\.model/);
  });
});
