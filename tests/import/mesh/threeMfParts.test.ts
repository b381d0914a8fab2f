// 3MF packages: which items are copies of one body and where they stand; the text of parts in either coding, and broken
// parts beside the one that is built. Numbers by hand.
import { describe, expect, test } from 'vitest';
import { readMesh } from '../../../src/import/mesh';
import { messageText } from '../../../src/layout/messages';
import { box, item, meshXml, model, object, package3mf, tetrahedra, threeMf } from './meshes';
import { value } from './slabs';

const cube = meshXml(box([0, 0, 0], [1, 2, 3]));
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

describe('copies', () => {
  const read = (resources: string, build: string) => value(readMesh(threeMf(resources, build), 'part.3mf'));
  test('items that differ by a shift and a turn about z are copies, a mirrored and a tilted one are other bodies', () => {
    const file = read(
      object(1, cube, 'name="flange"'),
      item(1) +
        item(1, 'transform="1 0 0 0 1 0 0 0 1 50 0 0"') +
        item(1, 'transform="1 0 0 0 1 0 0 0 1 100 0 0"') +
        item(1, 'transform="0 1 0 -1 0 0 0 0 1 7 8 0"') +
        item(1, 'transform="-1 0 0 0 1 0 0 0 1 0 0 0"') +
        item(1, 'transform="1 0 0 0 0 1 0 -1 0 0 0 0"'),
    );
    expect(file.bodies.map(({ name, copies }) => [name, copies])).toEqual([
      ['flange', 4],
      ['flange 2', 1],
      ['flange 3', 1],
    ]);
    // x' = −y + 7, y' = x + 8: a quarter counter-clockwise
    expect(file.bodies[0]!.items).toEqual([
      { x_mm: 0, y_mm: 0, turn_deg: 0 },
      { x_mm: 50, y_mm: 0, turn_deg: 0 },
      { x_mm: 100, y_mm: 0, turn_deg: 0 },
      { x_mm: 7, y_mm: 8, turn_deg: 90 },
    ]);
  });
  test.each([10, 45, 133.7, -60])(
    'a turn by %d° is read from an item that is tilted and stretched as well',
    (deg) => {
      const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      // first 2 times as long along x and tilted a quarter about x (y to z), then turned about z
      const tilted = [2, 0, 0, 0, 0, 1, 0, -1, 0];
      const turned = [0, 1, 2].flatMap((row) => {
        const [x, y, z] = tilted.slice(3 * row, 3 * row + 3) as [number, number, number];
        return [c * x - s * y, s * x + c * y, z];
      });
      const at = (numbers: readonly number[]) => item(1, `transform="${numbers.map((v) => v.toFixed(12)).join(' ')} 3 4 5"`); // prettier-ignore
      const { bodies } = read(object(1, cube), at(tilted) + at(turned));
      expect(bodies).toHaveLength(1);
      expect(bodies[0]!.items!.map(({ turn_deg }) => (turn_deg + 360) % 360)).toEqual([0, (deg + 360) % 360]);
    },
  );
});
