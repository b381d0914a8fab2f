/** Reshaping drawn zones. Areas by the shoelace formula on paper; the platform of store/plates is 340 × 340. */
import { describe, expect, test } from 'vitest';
import type { Layout, Point } from '../../../src/layout/types';
import { readLayoutValue } from '../../../src/layout/read';
import { smallPlate } from '../../store/plates';
import { divided, op, type ZoneCorner } from '../wholeHeight';

const LEFT: readonly Point[] = [
  [-100, -100],
  [0, -100],
  [0, 100],
  [-100, 100],
];
const RIGHT: readonly Point[] = [
  [0, -100],
  [100, -100],
  [100, 100],
  [0, 100],
];
/** Two zones that share the side x = 0, and a disc. */
const plate = (): Layout => ({
  ...smallPlate(),
  zoning: divided({
    strategy: 'drawn',
    zones: [
      { lasers: ['L1'], rings: [LEFT] },
      { lasers: ['L2'], rings: [RIGHT] },
      { lasers: ['L3'], rings: [{ circle_mm: [0, 140, 20] }] },
    ],
  }),
});
const ringsOf = (layout: Layout, zone: number) => op.drawnZones(layout)[zone]!.rings;
const corner = (zone: number, index: number) => ({ zone, ring: 0, corner: index });
const moved = (layout: Layout, place: ZoneCorner, to: Point) =>
  op.moveZoneCorners(layout, op.cornersTogether(layout, place), to);

describe('a corner that two zones share', () => {
  test('moves for both, so that no gap opens', () => {
    const next = moved(plate(), corner(0, 1), [30.0004, -100]);
    expect(ringsOf(next, 0)[0]).toContainEqual([30, -100]);
    expect(ringsOf(next, 1)[0]).toContainEqual([30, -100]);
    expect(ringsOf(next, 2)).toEqual(ringsOf(plate(), 2));
  });

  test('moves alone where only it is named', () => {
    const next = op.moveZoneCorners(plate(), [corner(0, 1)], [30, -100]);
    expect(ringsOf(next, 0)[0]).toContainEqual([30, -100]);
    expect(ringsOf(next, 1)[0]).toEqual(RIGHT);
  });

  test('stays where a move would leave one of the zones without area', () => {
    const thin = op.removeZoneCorner(plate(), corner(1, 3));
    // the triangle (0,−100) (100,−100) (100,100) folded onto its own side x = 100
    expect(moved(thin, corner(1, 0), [100, 0])).toBe(thin);
    expect(moved(plate(), corner(0, 1), [Number.NaN, 0])).toEqual(plate());
  });
});

describe('corners', () => {
  test('are added on the side that follows, and taken away until three are left', () => {
    const more = op.addZoneCorner(plate(), corner(0, 0), [-50, -150]);
    expect(ringsOf(more, 0)[0]).toEqual([LEFT[0], [-50, -150], ...LEFT.slice(1)]);
    expect(op.removeZoneCorner(more, corner(0, 1))).toEqual(plate());
    const three = op.removeZoneCorner(plate(), corner(0, 2));
    expect(ringsOf(three, 0)[0]).toHaveLength(3);
    expect(op.removeZoneCorner(three, corner(0, 0))).toBe(three);
  });

  test('of a zone, ring or place that is not there change nothing', () => {
    const given = plate();
    for (const place of [corner(9, 0), { zone: 0, ring: 3, corner: 0 }, corner(0, 7), corner(2, 0)]) {
      expect(op.addZoneCorner(given, place, [1, 1])).toBe(given);
      expect(op.removeZoneCorner(given, place)).toBe(given);
      expect(moved(given, place, [1, 1])).toBe(given);
    }
  });
});

describe('a whole zone', () => {
  test('moves with all its rings, a disc by its centre', () => {
    expect(ringsOf(op.moveDrawnZone(plate(), 0, 5, -7.5), 0)[0]).toEqual(
      LEFT.map(([x, y]) => [x + 5, y - 7.5]),
    );
    expect(ringsOf(op.moveDrawnZone(plate(), 2, 5, -7.5), 2)).toEqual([{ circle_mm: [5, 132.5, 20] }]);
  });

  test('stays where there is no such zone, no way, or no end', () => {
    const given = plate();
    expect(op.moveDrawnZone(given, 9, 1, 1)).toBe(given);
    expect(op.moveDrawnZone(given, 0, 0, 0)).toBe(given);
    expect(op.moveDrawnZone(given, 0, 1e9, 0)).toBe(given);
    expect(op.moveDrawnZone(smallPlate(), 0, 1, 1)).toEqual(smallPlate());
  });

  test('of a circle takes another radius, never none', () => {
    expect(ringsOf(op.setZoneRadius(plate(), 2, 0, 33.3333), 2)).toEqual([{ circle_mm: [0, 140, 33.333] }]);
    const given = plate();
    expect(op.setZoneRadius(given, 2, 0, 0)).toBe(given);
    expect(op.setZoneRadius(given, 0, 0, 10)).toBe(given);
  });
});

test('what comes out is a layout that the reader accepts as it is', () => {
  const next = [
    (layout: Layout) => moved(layout, corner(0, 1), [12.34567, -88]),
    (layout: Layout) => op.addZoneCorner(layout, corner(1, 1), [120.00051, 3]),
    (layout: Layout) => op.moveDrawnZone(layout, 2, 0.1, 0.2),
    (layout: Layout) => op.setZoneRadius(layout, 2, 0, 11.11111),
  ].reduce((so, step) => step(so), plate());
  const read = readLayoutValue(JSON.parse(JSON.stringify(next)));
  expect(read.ok && read.value).toEqual(next);
});
