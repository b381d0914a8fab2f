/**
 * Operations on a layout. Figures beside the checks are plain arithmetic on the platform of 340 × 340 mm with lasers at
 * (±75, ±75) [mathematics].
 */
import { describe, expect, test } from 'vitest';
import * as op from '../../src/commands/operations';
import { emptyLayout } from '../../src/layout/defaults';
import { demoLayout } from '../../src/layout/demo';
import type { Result } from '../../src/layout/result';
import type { Layout, LayoutRing, Point } from '../../src/layout/types';
import { part, smallPlate } from '../store/plates';

const accepted = (result: Result<Layout>): Layout => {
  if (!result.ok) throw new Error(`expected a layout, got ${JSON.stringify(result.fault)}`);
  return result.value;
};
const at = (layout: Layout, id: string) => layout.parts.find((entry) => entry.id === id)!.at_mm;
const zoningOf = <S extends Layout['zoning']['strategy']>(layout: Layout, strategy: S) => {
  const { zoning } = layout;
  if (zoning.strategy !== strategy) throw new Error(`expected ${strategy}, got ${zoning.strategy}`);
  return zoning as Extract<Layout['zoning'], { strategy: S }>;
};
const corners = (ring: LayoutRing): readonly Point[] => ('circle_mm' in ring ? [] : ring);
/** Area of a ring by the shoelace formula [mathematics]. */
const shoelace = (ring: LayoutRing): number => {
  const points = corners(ring);
  const next = (i: number) => points[(i + 1) % points.length]!;
  return Math.abs(points.reduce((sum, [x, y], i) => sum + x * next(i)[1] - next(i)[0] * y, 0)) / 2;
};

describe('parts', () => {
  test('positions and angles are kept to 1 µm and 0.001°', () => {
    const plate = op.placePart(smallPlate(), 'P01', 1.23449, -2.00051);
    expect(at(plate, 'P01')).toEqual([1.234, -2.001]);
    const turned = op.setPartTurn(plate, ['P01'], -0.0004);
    expect(turned).toBe(plate);
    expect(op.turnParts(plate, ['P01'], -90.12345).parts[0]!.turn_deg).toBe(269.877);
  });

  test('what is not a number or far beyond any platform moves nothing', () => {
    const plate = smallPlate();
    for (const x of [Number.NaN, Infinity, 1e300, 100_000.1])
      expect(op.placePart(plate, 'P01', x, 0)).toBe(plate);
    expect(op.moveParts(plate, ['P01', 'P77'], 0, 0)).toBe(plate);
    expect(op.turnParts(plate, ['P01'], Number.NaN)).toBe(plate);
  });

  test('a pin names a laser of the machine, a time factor is positive', () => {
    const plate = smallPlate();
    expect(op.setPartFields(plate, ['P01'], { laser: 'L9' })).toBe(plate);
    expect(op.setPartFields(plate, ['P01'], { timeFactor: 0 })).toBe(plate);
    expect(op.setPartFields(plate, ['P01'], { timeFactor: Number.NaN })).toBe(plate);
    const set = op.setPartFields(plate, ['P01'], { laser: 'L4', timeFactor: 1.5, seams: 'none' });
    expect(set.parts[0]).toMatchObject({ laser: 'L4', timeFactor: 1.5, seams: 'none' });
    expect(op.setPartFields(set, ['P01'], { laser: null }).parts[0]).toMatchObject({
      laser: null,
      timeFactor: 1.5,
    });
  });

  test('a height that others share the shape of is set on a copy of the shape', () => {
    const plate = smallPlate();
    const one = op.setPartHeight(plate, ['P01'], 12.5);
    expect(one.parts.map((entry) => entry.shape)).toEqual(['block-1', 'block', 'stepped']);
    expect(one.shapes['block-1']!.slabs[0]!.to_mm).toBe(12.5);
    expect(one.shapes['block']).toBe(plate.shapes['block']);
    const both = op.setPartHeight(plate, ['P02', 'P01'], 12.5);
    expect(both.parts.map((entry) => entry.shape)).toEqual(['block', 'block', 'stepped']);
    expect(both.shapes['block']!.slabs[0]!.to_mm).toBe(12.5);
  });

  test('shapes of several slabs keep their steps, and no height is 0 or beyond 10 m', () => {
    const plate = smallPlate();
    expect(op.canSetHeight(plate, 'P01')).toBe(true);
    expect(op.canSetHeight(plate, 'P03')).toBe(false);
    expect(op.setPartHeight(plate, ['P03'], 12)).toBe(plate);
    for (const height of [0, -1, 0.0004, 10_000.1, Number.NaN])
      expect(op.setPartHeight(plate, ['P01'], height)).toBe(plate);
    expect(op.setPartHeight(plate, ['P01'], 30)).toBe(plate);
  });
});

describe('drawn parts', () => {
  const drawnRings = (layout: Layout) => {
    const last = layout.parts.at(-1)!;
    return { last, rings: layout.shapes[last.shape]!.slabs[0]!.rings };
  };

  test('a rectangle stands with its origin in its middle, whichever corner was first', () => {
    const plate = op.addDrawnPart(smallPlate(), { kind: 'rectangle', from: [30, 20], to: [-10, -5] }, 20);
    const { last, rings } = drawnRings(plate);
    expect(last).toEqual({ ...part('P04', 10, 7.5), shape: 'rectangle-1' });
    expect(rings).toEqual([
      [
        [-20, -12.5],
        [20, -12.5],
        [20, 12.5],
        [-20, 12.5],
      ],
    ]);
  });

  test('a rectangle of an odd number of micrometres keeps its corners where they were drawn', () => {
    const plate = op.addDrawnPart(smallPlate(), { kind: 'rectangle', from: [0, 0], to: [10.001, 7.003] }, 20);
    const { last, rings } = drawnRings(plate);
    const placed = corners(rings[0]!).map(([x, y]) => [x + last.at_mm[0], y + last.at_mm[1]]);
    placed.forEach(([x, y], i) => {
      expect(x).toBeCloseTo([0, 10.001, 10.001, 0][i]!, 9);
      expect(y).toBeCloseTo([0, 0, 7.003, 7.003][i]!, 9);
    });
  });

  test('a polygon keeps its corners where they were drawn', () => {
    const points: Point[] = [
      [0, 0],
      [30, 0],
      [30, 10],
      [10, 10],
      [10, 25],
      [0, 25],
    ];
    const { last, rings } = drawnRings(op.addDrawnPart(smallPlate(), { kind: 'polygon', points }, 20));
    expect(last.at_mm).toEqual([15, 12.5]);
    expect(corners(rings[0]!).map(([x, y]) => [x + 15, y + 12.5])).toEqual(points);
    expect(shoelace(rings[0]!)).toBe(450);
  });

  test('discs and rings stay circles', () => {
    const disc = op.addDrawnPart(smallPlate(), { kind: 'disc', centre: [5, 6], radius_mm: 12 }, 33);
    expect(drawnRings(disc).rings).toEqual([{ circle_mm: [0, 0, 12] }]);
    const ring = op.addDrawnPart(disc, { kind: 'ring', centre: [50, 60], outer_mm: 25, inner_mm: 20 }, 33);
    expect(drawnRings(ring).rings).toEqual([{ circle_mm: [0, 0, 25] }, { circle_mm: [0, 0, 20] }]);
    expect(ring.parts.map(({ id }) => id)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
  });

  const slips: Record<string, op.Drawing> = {
    'a click': { kind: 'rectangle', from: [3, 3], to: [3, 3] },
    'a line': { kind: 'rectangle', from: [3, 3], to: [90, 3.02] },
    'two points': {
      kind: 'polygon',
      points: [
        [0, 0],
        [20, 20],
      ],
    },
    'three points on a line': {
      kind: 'polygon',
      points: [
        [0, 0],
        [20, 20],
        [40, 40],
      ],
    },
    'no points': { kind: 'polygon', points: [] },
    'a disc of nothing': { kind: 'disc', centre: [0, 0], radius_mm: 0 },
    'a ring turned inside out': { kind: 'ring', centre: [0, 0], outer_mm: 5, inner_mm: 8 },
    'a disc nowhere': { kind: 'disc', centre: [Number.NaN, 0], radius_mm: 5 },
    'a disc of 1e300': { kind: 'disc', centre: [0, 0], radius_mm: 1e300 },
  };
  test.each(Object.entries(slips))('%s adds nothing', (_, drawing) => {
    const plate = smallPlate();
    expect(op.addDrawnPart(plate, drawing, 20)).toBe(plate);
  });

  test('a bow tie encloses area and is taken', () => {
    const points: Point[] = [
      [0, 0],
      [20, 20],
      [20, 0],
      [0, 20],
    ];
    expect(op.addDrawnPart(smallPlate(), { kind: 'polygon', points }, 20).parts).toHaveLength(4);
  });

  test('a drawn shape goes with its last part, an opened one stays in the list', () => {
    const drawing: op.Drawing = { kind: 'disc', centre: [0, 0], radius_mm: 12 };
    const plate = op.addDrawnPart(smallPlate(), drawing, 33);
    const twice = op.copyInRows(plate, ['P04'], { countX: 2, countY: 1, pitchX_mm: 30, pitchY_mm: 0 });
    expect(Object.keys(op.removeParts(twice, ['P04']).shapes)).toContain('disc-1');
    expect(op.removeParts(twice, ['P04', 'P05'])).toEqual(smallPlate());
    const bare = op.removeParts(smallPlate(), ['P01', 'P02']);
    expect(Object.keys(bare.shapes)).toEqual(['block', 'stepped']);
    expect(Object.keys(op.removeShape(bare, 'block').shapes)).toEqual(['stepped']);
    expect(op.removeShape(bare, 'stepped')).toBe(bare);
  });
});

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

describe('machine and process', () => {
  test('arrows turn to whole thousandths of a degree within one turn', () => {
    expect(op.setGasFlow(demoLayout(), -90.00049).machine.gasFlow.towards_deg).toBe(270);
    expect(op.setRecoater(demoLayout(), 725.5).machine.recoater.towards_deg).toBe(5.5);
    expect(op.setGasFlow(demoLayout(), Number.NaN)).toEqual(demoLayout());
  });

  test('a removed laser leaves its zones to the nearest and no part pinned to it', () => {
    const pinned = op.setPartFields(smallPlate(), ['P01', 'P02'], { laser: 'L2' });
    const next = op.removeLaser(accepted(op.setLaser(pinned, 'L4', { foot_mm: [75, -40] })), 'L2');
    expect(next.machine.lasers.map(({ id }) => id)).toEqual(['L1', 'L3', 'L4']);
    expect(zoningOf(next, 'quadrants').lasers).toEqual(['L1', 'L4', 'L3', 'L4']);
    expect(next.parts.map(({ laser }) => laser)).toEqual([null, null, null]);
  });

  test('a removed laser leaves a drawn zone of its own to all others', () => {
    const drawn = op.setStrategy(smallPlate(), 'drawn');
    const next = op.removeLaser(op.setZoneLasers(drawn, 0, ['L1', 'L2']), 'L2');
    expect(zoningOf(next, 'drawn').zones.map(({ lasers }) => lasers)).toEqual([
      ['L1'],
      ['L1', 'L3', 'L4'],
      ['L3'],
      ['L4'],
    ]);
  });

  test('a new laser has the first free number, and there are at most 31', () => {
    const gap = op.addLaser(op.removeLaser(smallPlate(), 'L2'));
    expect(gap.machine.lasers.map(({ id }) => id)).toEqual(['L1', 'L3', 'L4', 'L2']);
    let many = smallPlate();
    for (let i = 0; i < 40; i++) many = op.addLaser(many);
    expect(many.machine.lasers).toHaveLength(31);
  });

  test('typed fields are rounded where they fit and refused with the reason where they do not', () => {
    const plate = smallPlate();
    expect(accepted(op.setProcess(plate, { layer_mm: 0.04049 })).process.layer_mm).toBe(0.04);
    expect(accepted(op.setPlatform(plate, { margin_mm: 12 })).machine.platform.margin_mm).toBe(12);
    expect(accepted(op.setMachine(plate, { recoater: { oneWay_s: 12 } })).machine.recoater).toEqual({
      ...plate.machine.recoater,
      oneWay_s: 12,
    });
    expect(accepted(op.setTexts(plate, { name: 'Spares' })).name).toBe('Spares');
    const refusals = [
      op.setProcess(plate, { packing: 1.2 }),
      op.setProcess(plate, { contours: 1.5 }),
      op.setLimits(plate, { spacing_mm: Number.NaN }),
      op.setPlatform(plate, { width_mm: -1 }),
      op.setMachine(plate, { buildHeight_mm: 1e300 }),
      op.setLaser(plate, 'L1', { workingHeight_mm: 0 }),
    ];
    for (const refused of refusals)
      expect(refused).toMatchObject({ ok: false, fault: { code: 'layout-wrong-value' } });
  });

  test('what is typed as it was changes nothing', () => {
    const plate = smallPlate();
    expect(accepted(op.setProcess(plate, { hatch_mm: 0.10000001 }))).toBe(plate);
    expect(accepted(op.setLaser(plate, 'L9', { on: false }))).toBe(plate);
    expect(op.switchLaser(plate, 'L1', true)).toBe(plate);
    expect(op.setAllocation(plate, 'balanced')).toBe(plate);
  });

  test('keep-outs come and go', () => {
    const one = accepted(op.addKeepOut(smallPlate(), { circle_mm: [100, 100, 12.00049] }));
    expect(one.machine.platform.keepOuts).toEqual([{ circle_mm: [100, 100, 12] }]);
    expect(op.removeKeepOut(one, 0)).toEqual(smallPlate());
    expect(op.removeKeepOut(one, 3)).toBe(one);
  });
});
