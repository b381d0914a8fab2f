/**
 * Free places, copies, opened shapes. Figures beside the checks are plain arithmetic on the platform of
 * 340 × 340 mm with lasers at (±75, ±75) [mathematics].
 */
import { describe, expect, test } from 'vitest';
import * as op from '../../../src/commands/operations';
import { emptyLayout } from '../../../src/layout/defaults';
import type { Layout, LayoutRing } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';
import { accepted, at } from './read';

describe('free places and copies', () => {
  /** Smallest gap between upright boxes of parts; negative where they overlap. */
  const smallestGap = (layout: Layout): number => {
    const boxes = layout.parts.map((entry) => op.partBox(layout, entry));
    const gaps = boxes.flatMap((a, i) =>
      boxes
        .slice(0, i)
        .map((b) => Math.max(b.minX - a.maxX, a.minX - b.maxX, b.minY - a.maxY, a.minY - b.maxY)),
    );
    return Math.min(...gaps);
  };
  const inField = (layout: Layout): boolean =>
    layout.parts.every((entry) => {
      const box = op.partBox(layout, entry);
      return Math.min(box.minX, box.minY) >= -162 - 1e-9 && Math.max(box.maxX, box.maxY) <= 162 + 1e-9;
    });

  test('parts added one by one keep the spacing of 3 mm and stay inside the margin of 8 mm', () => {
    let plate = smallPlate();
    for (let i = 0; i < 40; i++) plate = op.addPart(plate, i % 4 === 0 ? 'stepped' : 'block');
    expect(plate.parts).toHaveLength(43);
    expect(smallestGap(plate)).toBeGreaterThanOrEqual(3 - 1e-9);
    expect(inField(plate)).toBe(true);
  });

  test('the one gap in a full field of 70 × 70 parts is found', () => {
    const block = smallPlate().shapes['block']!;
    const place = (i: number) => [(i % 70) * 23 - 793.5, Math.floor(i / 70) * 23 - 793.5] as const;
    const gap = 50 * 70 + 40;
    const parts = Array.from({ length: 4900 }, (_, i) => part(`Q${i}`, ...place(i)));
    const width = 69 * 23 + 20 + 2 * 8;
    const wide = accepted(op.setPlatform(smallPlate(), { width_mm: width, depth_mm: width }));
    const full = { ...wide, parts };
    expect(op.freePlace(full, block, 0, op.takenBoxes(full))).toBeNull();
    const open = { ...wide, parts: parts.toSpliced(gap, 1) };
    expect(op.freePlace(open, block, 0, op.takenBoxes(open))).toEqual(place(gap));
  });

  test('keep-outs are not built on', () => {
    const wall: LayoutRing = [
      [-170, -170],
      [170, -170],
      [170, -40],
      [-170, -40],
    ];
    const plate = accepted(op.addKeepOut({ ...smallPlate(), parts: [] }, wall));
    const next = op.addPart(op.addPart(plate, 'block'), 'block');
    for (const entry of next.parts) expect(op.partBox(next, entry).minY).toBeGreaterThanOrEqual(-40);
  });

  test('a full plate puts the part at the centre, for the problems to say so', () => {
    const big = { ...smallPlate(), parts: [] };
    const slab: LayoutRing = [
      [-150, -150],
      [150, -150],
      [150, 150],
      [-150, 150],
    ];
    const full = accepted(
      op.addShapes(big, [{ name: 'slab', shape: { slabs: [{ to_mm: 5, rings: [slab] }] } }]),
    );
    expect(at(op.addPart(full, 'slab', undefined, 30), 'P02')).toEqual([0, 0]);
  });

  test('a group is copied as a group beside itself', () => {
    const plate: Layout = {
      ...smallPlate(),
      parts: [part('P01', -140, -140), part('P02', -110, -140), { ...part('P03', 100, 100), turn_deg: 30 }],
    };
    const next = op.duplicateParts(plate, ['P01', 'P02']);
    expect(op.addedParts(plate, next)).toEqual(['P04', 'P05']);
    expect(at(next, 'P04')).toEqual([-140 + 53, -140]);
    expect(at(next, 'P05')).toEqual([-110 + 53, -140]);
    expect(smallestGap(next)).toBeGreaterThanOrEqual(3);
  });

  test('copies of a turned part stand turned', () => {
    const plate = op.setPartTurn(smallPlate(), ['P03'], 45);
    const next = op.duplicateParts(plate, ['P03']);
    expect(next.parts.at(-1)).toMatchObject({ id: 'P04', turn_deg: 45, shape: 'stepped' });
    expect(smallestGap(next)).toBeGreaterThanOrEqual(3 - 1e-9);
  });

  test('rows hold count × count parts at the pitch, the original included', () => {
    const plate = smallPlate();
    const rows = { countX: 3, countY: 2, pitchX_mm: 25, pitchY_mm: -30.5 };
    const next = op.copyInRows(plate, ['P01'], rows);
    const places = [...op.addedParts(plate, next), 'P01'].map((id) => at(next, id));
    const expected = [-60, -35, -10].flatMap((x) => [-60, -90.5].map((y) => [x, y]));
    expect(places.map(String).sort()).toEqual(expected.map(String).sort());
  });

  test('rows of no sensible count or pitch copy nothing', () => {
    const plate = smallPlate();
    const rows = { countX: 2, countY: 2, pitchX_mm: 25, pitchY_mm: 25 };
    const bad = [
      { countX: 0 },
      { countY: 1.5 },
      { countX: 101 },
      { pitchX_mm: Number.NaN },
      { pitchY_mm: 1e6 },
    ];
    for (const patch of bad) expect(op.copyInRows(plate, ['P01'], { ...rows, ...patch })).toBe(plate);
    expect(op.copyInRows(plate, [], rows)).toBe(plate);
    expect(op.copyInRows(plate, ['P01'], { ...rows, countX: 1, countY: 1 })).toBe(plate);
  });

  test('a plate takes no more parts than a layout may hold', () => {
    const plate = { ...smallPlate(), parts: [part('P01', 0, 0)] };
    const most = { countX: 100, countY: 50, pitchX_mm: 1, pitchY_mm: 1 };
    const full = op.copyInRows(plate, ['P01'], most);
    expect(full.parts).toHaveLength(5000);
    expect(op.duplicateParts(full, ['P01'])).toBe(full);
    expect(op.addDrawnPart(full, { kind: 'disc', centre: [0, 0], radius_mm: 3 }, 5)).toBe(full);
    const shape = smallPlate().shapes['block']!;
    expect(op.addShapes(full, [{ name: 'x', shape }])).toMatchObject({
      ok: false,
      fault: { code: 'too-many-parts' },
    });
  });
});

describe('many copies, each at the first free place', () => {
  // The field of 324 × 324 mm takes blocks of 20 mm every 23 mm: 14 in a row, 14 rows.
  test('fill the field row by row and no further: 14 × 14 blocks', () => {
    const shape = smallPlate().shapes['block']!;
    const plate = accepted(op.addShapes({ ...smallPlate(), parts: [] }, [{ name: 'b', shape, copies: 200 }]));
    const first = -162 + 10;
    const expected = Array.from({ length: 196 }, (_, i) => [
      first + 23 * (i % 14),
      first + 23 * Math.floor(i / 14),
    ]);
    plate.parts.slice(0, 196).forEach(({ at_mm }, i) => {
      expect(at_mm[0]).toBeCloseTo(expected[i]![0]!, 2);
      expect(at_mm[1]).toBeCloseTo(expected[i]![1]!, 2);
    });
    expect(plate.parts.slice(196).map(({ at_mm }) => at_mm)).toEqual(Array(4).fill([0, 0]));
  });

  test('stand where a search from the front would put each of them, whatever shapes and turns take turns', () => {
    const shapes = ['block', 'stepped'];
    const standing = Array.from({ length: 60 }, (_, i) => ({
      ...part(`P${i}`, i % 7 === 0 ? -100 + i : 1000, i, shapes[(i * i) % 2]),
      turn_deg: (i % 3) * 20,
    }));
    const plate = { ...smallPlate(), parts: standing };
    const ids = standing.map(({ id }) => id);
    const copies = op.duplicateParts(plate, ids).parts.slice(60);
    let grown: Layout = plate;
    standing.forEach((original, i) => {
      const shape = plate.shapes[original.shape]!;
      const found = op.freePlace(grown, shape, original.turn_deg, op.takenBoxes(grown));
      expect(copies[i]!.at_mm).toEqual(found);
      grown = { ...grown, parts: [...grown.parts, copies[i]!] };
    });
  });
});

describe('opened shapes', () => {
  const shape = smallPlate().shapes['block']!;

  test('get names of their own and as many parts as wanted', () => {
    const names = ['flange', 'flange', '', ' \u0007', 'constructor', '__proto__', 'ÄÖ'.repeat(40)];
    const plate = accepted(
      op.addShapes(
        emptyLayout(),
        names.map((name, i) => ({ name, shape, copies: i === 0 ? 3 : 0 })),
      ),
    );
    const keys = Object.keys(plate.shapes);
    expect(keys.slice(0, 6)).toEqual(['flange', 'flange-1', 'shape', 'shape-1', 'shape-2', 'shape-3']);
    expect(keys[6]).toHaveLength(28);
    expect(plate.parts.map((entry) => `${entry.id} ${entry.shape}`)).toEqual([
      'P01 flange',
      'P02 flange',
      'P03 flange',
    ]);
  });

  test('that no layout may hold are refused with the reason', () => {
    const flat = { slabs: [{ to_mm: -4, rings: shape.slabs[0]!.rings }] };
    const refused = op.addShapes(emptyLayout(), [{ name: 'flat', shape: flat }]);
    expect(refused).toMatchObject({ ok: false, fault: { code: 'layout-wrong-value' } });
  });
});
