/**
 * Strategies and zones. Figures beside the checks are plain arithmetic on the platform of
 * 340 × 340 mm with lasers at (±75, ±75) [mathematics].
 */
import { describe, expect, test } from 'vitest';
import type { Layout, LayoutRing } from '../../../src/layout/types';
import { smallPlate } from '../../store/plates';
import { op } from '../wholeHeight';
import { accepted, corners, shoelace, zoningOf } from './read';

describe('strategies', () => {
  const plate = smallPlate();

  test('strips are as many as lasers are on, of equal width, given in the order of their feet', () => {
    const across = zoningOf(op.setStrategy(plate, 'strips'), 'strips');
    expect(across.lines_mm).toEqual([-85, 0, 85]);
    expect(across.lasers).toEqual(['L1', 'L3', 'L2', 'L4']);
    const along = zoningOf(op.setStrategy(plate, 'strips', 0), 'strips');
    expect(along.lasers).toEqual(['L1', 'L2', 'L3', 'L4']);
    const three = zoningOf(op.setStrategy(op.switchLaser(plate, 'L1', false), 'strips'), 'strips');
    expect(three.lines_mm).toEqual([-56.667, 56.667]);
    expect(three.lasers).toEqual(['L3', 'L2', 'L4']);
  });

  test('quadrants go to the nearest lasers, each as often as the others at most', () => {
    const quadrants = (layout: Layout) =>
      zoningOf(op.setStrategy(op.setStrategy(layout, 'wholeField'), 'quadrants'), 'quadrants').lasers;
    expect(quadrants(plate)).toEqual(['L1', 'L2', 'L3', 'L4']);
    const mirrored = accepted(op.setLaser(plate, 'L1', { foot_mm: [75, -75] }));
    expect(quadrants(accepted(op.setLaser(mirrored, 'L2', { foot_mm: [-75, -75] })))).toEqual([
      'L2',
      'L1',
      'L3',
      'L4',
    ]);
    const two = op.switchLaser(op.switchLaser(plate, 'L3', false), 'L4', false);
    expect(quadrants(two)).toEqual(['L1', 'L2', 'L1', 'L2']);
  });

  test('with every laser off the zones are made for all of them', () => {
    const off = ['L1', 'L2', 'L3', 'L4'].reduce((next, id) => op.switchLaser(next, id, false), plate);
    expect(zoningOf(op.setStrategy(off, 'strips'), 'strips').lasers).toHaveLength(4);
  });

  test('the shared band goes along from quadrants to strips and back', () => {
    const banded = op.setSharedBand(plate, 40);
    const strips = op.setStrategy(banded, 'strips');
    expect(zoningOf(strips, 'strips').sharedBand_mm).toBe(40);
    expect(zoningOf(op.setStrategy(strips, 'quadrants'), 'quadrants').sharedBand_mm).toBe(40);
  });

  test('drawn zones start as the zones were: four of (170 + 20)² mm² with a band of 40 mm', () => {
    const { zones } = zoningOf(op.setStrategy(op.setSharedBand(plate, 40), 'drawn'), 'drawn');
    expect(zones.map(({ lasers }) => lasers)).toEqual([['L1'], ['L2'], ['L3'], ['L4']]);
    for (const { rings } of zones) {
      expect(rings).toHaveLength(1);
      expect(shoelace(rings[0]!)).toBeCloseTo(190 ** 2, 6);
    }
    const [first] = corners(zones[0]!.rings[0]!);
    expect(first).toBeDefined();
    expect(Math.min(...corners(zones[0]!.rings[0]!).map(([x]) => x))).toBe(-170);
  });

  test('the whole field becomes one drawn zone of every laser', () => {
    const drawn = zoningOf(op.setStrategy(op.setStrategy(plate, 'wholeField'), 'drawn'), 'drawn');
    expect(drawn.zones.map(({ lasers }) => lasers)).toEqual([['L1', 'L2', 'L3', 'L4']]);
    expect(shoelace(drawn.zones[0]!.rings[0]!)).toBe(340 ** 2);
  });

  test('one laser has two strips and four quadrants', () => {
    const single = ['L2', 'L3', 'L4'].reduce(op.removeLaser, plate);
    expect(zoningOf(op.setStrategy(single, 'strips'), 'strips').lasers).toEqual(['L1', 'L1']);
    expect(zoningOf(single, 'quadrants').lasers).toEqual(['L1', 'L1', 'L1', 'L1']);
    expect(op.removeLaser(single, 'L1')).toBe(single);
  });
});

describe('zone lines', () => {
  const strips = op.setStrategy(smallPlate(), 'strips');
  const lines = (layout: Layout) => zoningOf(layout, 'strips').lines_mm;
  const strip = (index: number) => ({ kind: 'strip', index }) as const;

  test('a line stops 1 mm from its neighbours and from the edge', () => {
    expect(lines(op.setZoneLine(strips, strip(1), 500))).toEqual([-85, 84, 85]);
    expect(lines(op.setZoneLine(strips, strip(1), -500))).toEqual([-85, -84, 85]);
    expect(lines(op.setZoneLine(strips, strip(0), -500))).toEqual([-169, 0, 85]);
    expect(lines(op.setZoneLine(strips, strip(2), 12.34567))).toEqual([-85, 0, 12.346]);
  });

  test('the crossing of the quadrants stays 1 mm inside the platform', () => {
    const x = op.setZoneLine(smallPlate(), { kind: 'quadrantX' }, 999);
    const both = op.setZoneLine(x, { kind: 'quadrantY' }, -12.5);
    expect(zoningOf(both, 'quadrants').at_mm).toEqual([169, -12.5]);
  });

  test('lines of another strategy, unknown lines and no numbers change nothing', () => {
    expect(op.setZoneLine(strips, { kind: 'quadrantX' }, 5)).toBe(strips);
    expect(op.setZoneLine(strips, strip(7), 5)).toBe(strips);
    expect(op.setZoneLine(strips, strip(1), Number.NaN)).toBe(strips);
    expect(op.setZoneLine(smallPlate(), strip(1), 5)).toEqual(smallPlate());
  });

  test('lines that a smaller platform left outside can be brought in again', () => {
    const small = accepted(op.setPlatform(strips, { width_mm: 100 }));
    expect(lines(small)).toEqual([-85, 0, 85]);
    expect(lines(op.setZoneLine(small, strip(0), -20))).toEqual([-20, 0, 85]);
  });

  test('a strip more cuts the widest in two, a strip less widens the narrower neighbour', () => {
    const wide = op.setZoneLine(strips, strip(0), -150);
    const more = zoningOf(op.addStrip(wide), 'strips');
    expect(more.lines_mm).toEqual([-150, -75, 0, 85]);
    expect(more.lasers).toHaveLength(5);
    const less = zoningOf(op.removeStrip(wide), 'strips');
    expect(less.lines_mm).toEqual([0, 85]);
    expect(less.lasers).toEqual(['L3', 'L2', 'L4']);
    expect(zoningOf(op.removeStrip(wide, 3), 'strips')).toMatchObject({
      lines_mm: [-150, 0],
      lasers: ['L1', 'L3', 'L2'],
    });
  });

  test('a count makes strips of equal width, 2 to 12', () => {
    expect(lines(op.setStripCount(strips, 5))).toEqual([-102, -34, 34, 102]);
    for (const count of [1, 13, 2.5, Number.NaN]) expect(op.setStripCount(strips, count)).toBe(strips);
  });

  test('turned strips keep their share: at 45° the platform is √2 wider', () => {
    const turned = op.setStripDirection(strips, 45);
    expect(zoningOf(turned, 'strips').run_deg).toBe(45);
    expect(lines(turned)).toEqual([-120.208, 0, 120.208]);
    expect(lines(op.setStripDirection(turned, 270))).toEqual([-85, 0, 85]);
  });

  test('the shared band lies between 0 and the platform', () => {
    const band = (width: number) => zoningOf(op.setSharedBand(strips, width), 'strips').sharedBand_mm;
    expect([band(-5), band(33.3333), band(9999)]).toEqual([0, 33.333, 340]);
    expect(op.setSharedBand(strips, Number.NaN)).toBe(strips);
  });

  test('a zone goes to the laser it is given to; unknown lasers and zones change nothing', () => {
    expect(zoningOf(op.setZoneLasers(strips, 1, ['L4']), 'strips').lasers).toEqual(['L1', 'L4', 'L2', 'L4']);
    for (const [index, ids] of [
      [9, ['L1']],
      [0, ['L9']],
      [0, []],
    ] as const)
      expect(op.setZoneLasers(strips, index, ids)).toBe(strips);
  });

  const triangle: LayoutRing = [
    [0, 0],
    [100, 0],
    [0, 100],
  ];
  test('drawn zones are added, given to lasers, changed and removed', () => {
    const first = op.addDrawnZone(strips, [triangle], ['L2', 'L2', 'L9']);
    expect(zoningOf(first, 'drawn').zones).toEqual([{ lasers: ['L2'], rings: [triangle] }]);
    const second = op.addDrawnZone(first, [{ circle_mm: [0, 0, 50.00049] }], ['L1']);
    const given = op.setZoneLasers(second, 1, ['L4', 'L1']);
    expect(zoningOf(given, 'drawn').zones[1]).toEqual({
      lasers: ['L1', 'L4'],
      rings: [{ circle_mm: [0, 0, 50] }],
    });
    expect(zoningOf(op.setDrawnZone(given, 0, [{ circle_mm: [1, 2, 3] }]), 'drawn').zones[0]!.rings).toEqual([
      { circle_mm: [1, 2, 3] },
    ]);
    expect(zoningOf(op.removeDrawnZone(given, 0), 'drawn').zones).toHaveLength(1);
  });

  test('a drawn zone without area or laser is none', () => {
    const line: LayoutRing = [
      [0, 0],
      [50, 50],
      [100, 100],
    ];
    expect(op.addDrawnZone(strips, [line], ['L1'])).toBe(strips);
    expect(op.addDrawnZone(strips, [triangle], ['L9'])).toBe(strips);
    const drawn = op.addDrawnZone(strips, [triangle], ['L1']);
    expect(op.setDrawnZone(drawn, 0, [line])).toBe(drawn);
    expect(op.removeDrawnZone(drawn, 5)).toBe(drawn);
  });
});
