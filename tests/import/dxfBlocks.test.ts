// DXF blocks, layers and what is left out, held against the DXF Reference's rules of insertion, extrusion and layer
// flags [memory] and closed forms [mathematics].
import { describe, expect, test } from 'vitest';
import { areas, dxf, dxfArc, dxfCircle, dxfLine, dxfObject, fixture, leftOut, only, opened } from './drawing';

describe('blocks', () => {
  test('plain, mirrored, turned, doubled and repeated insertions keep their areas and places', () => {
    const imported = opened(fixture('mirrored-blocks.dxf'), {}, 'mirrored-blocks.dxf');
    expect(areas(imported)).toEqual(
      [300, 300, 300, 300, 1200, 300, 300, 300, 300].map((a) => expect.closeTo(a, 6)),
    );
    // Base point (5, 5). Mirrored by scale −1 at x 100: the foot points to −x. By extrusion at −200: also, at x 200.
    const boxes = imported.shapes.map(({ rings }) => {
      const points = rings[0] as readonly (readonly [number, number])[];
      return [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))];
    });
    expect(boxes[0]).toEqual([-5, 15]);
    expect(boxes[1]).toEqual([85, 105]);
    expect(boxes[2]).toEqual([185, 205]);
    expect(boxes.slice(5).map(([low]) => low)).toEqual([-5, 35, -5, 35]);
  });

  test('objects on layer 0 of a block take the layer of their insertion', () => {
    const layer = dxfObject(0, 'TABLE', 2, 'LAYER', 0, 'LAYER', 2, 'HIDE', 70, 0, 62, -7, 0, 'ENDTAB');
    const block =
      dxfObject(0, 'BLOCK', 2, 'B', 10, 0, 20, 0) +
      dxfCircle(0, 0, 5, '0') +
      dxfCircle(20, 0, 5, 'SHOW') +
      dxfObject(0, 'ENDBLK');
    const imported = opened(
      dxf(dxfObject(0, 'INSERT', 8, 'HIDE', 2, 'B', 10, 0, 20, 0), { tables: layer, blocks: block }),
    );
    expect(imported.shapes.map(({ name }) => name)).toEqual(['SHOW']);
    expect(leftOut(imported)).toEqual({ 'layer-off': 1 });
  });

  test('a block that holds itself, or that is missing, is left out', () => {
    const block =
      dxfObject(0, 'BLOCK', 2, 'B', 10, 0, 20, 0) +
      dxfCircle(0, 0, 5) +
      dxfObject(0, 'INSERT', 8, 'A', 2, 'B', 10, 1, 20, 0) +
      dxfObject(0, 'ENDBLK');
    const text = dxf(
      dxfObject(0, 'INSERT', 8, 'A', 2, 'b', 10, 0, 20, 0) +
        dxfObject(0, 'INSERT', 8, 'A', 2, 'LOST', 10, 0, 20, 0),
      { blocks: block },
    );
    const imported = opened(text);
    expect(areas(imported)).toEqual([expect.closeTo(25 * Math.PI, 6)]);
    expect(leftOut(imported)).toEqual({ missing: 1 });
    expect(imported.leftOut.map(({ what }) => what)).toEqual(['block B', 'block LOST']);
  });

  test('a mirrored circle and arc lie on the other side of the y axis', () => {
    const down = dxfObject(210, 0, 220, 0, 230, -1);
    const circle = opened(dxf(dxfCircle(30, 10, 5) + down));
    expect(only(circle).rings).toEqual([{ circle_mm: [-30, 10, 5] }]);
    // The arc from 0° to 90° becomes the one from 90° to 180°.
    const quarter = opened(
      dxf(dxfArc(0, 0, 10, 0, 90) + down + dxfLine(0, 10, 0, 0) + dxfLine(0, 0, -10, 0)),
    );
    expect(only(quarter).area_mm2).toBeCloseTo(25 * Math.PI, 6);
  });
});

describe('what is left out', () => {
  test('layers off and frozen, texts, dimensions, hatching, points and open lines are named', () => {
    const imported = opened(fixture('left-out.dxf'), {}, 'left-out.dxf');
    expect(areas(imported)).toEqual([expect.closeTo(400 * Math.PI, 6)]);
    expect(imported.leftOut.map(({ kind, what, count }) => [kind, what, count])).toEqual([
      ['layer-off', 'NOTES', 1],
      ['layer-frozen', 'OLD', 1],
      ['text', 'TEXT', 1],
      ['dimension', 'DIMENSION', 1],
      ['hatch', 'HATCH', 1],
      ['point', 'POINT', 1],
      ['open', 'OUTLINE', 1],
    ]);
  });

  test('an open chain is shown with its ends and its gap', () => {
    const open = opened(fixture('left-out.dxf'), {}, 'left-out.dxf').leftOut.find(
      ({ kind }) => kind === 'open',
    );
    expect(open?.gap_mm).toBeCloseTo(0.5, 9);
    expect(open?.places).toHaveLength(2);
    expect(open?.places).toContainEqual([30, 0]);
    expect(open?.places).toContainEqual([30, 0.5]);
    expect(open?.lines).toHaveLength(4);
  });

  test('sheet objects, tilted circles, meshes and unknown objects are named', () => {
    const text = dxf(
      dxfCircle(0, 0, 5) +
        dxfCircle(50, 0, 5) +
        dxfObject(210, 0, 220, 1, 230, 0) +
        dxfCircle(90, 0, 5) +
        dxfObject(67, 1) +
        dxfObject(0, '3DFACE', 8, 'A', 10, 0, 20, 0) +
        dxfObject(0, 'POLYLINE', 8, 'A', 70, 64, 0, 'VERTEX', 8, 'A', 10, 0, 20, 0, 0, 'SEQEND') +
        dxfObject(0, 'XLINE', 8, 'A', 10, 0, 20, 0),
    );
    const imported = opened(text);
    expect(leftOut(imported)).toEqual({ tilted: 1, paper: 1, mesh: 1, other: 1 });
    expect(imported.leftOut.filter(({ kind }) => kind === 'mesh').map(({ what }) => what)).toEqual([
      '3DFACE',
      'POLYLINE',
    ]);
  });
});
