/**
 * What the plan draws and what stands under the pointer. Expected values: mathematics, on quadrants and a flange placed by
 * hand. Plate millimetres with y to the back; distances to catch in px (our own choice, no source).
 */
import { describe, expect, it } from 'vitest';
import { zoneNumberPlace } from '../../src/export/plan/numberPlace';
import { linesAt, partAt, seamAt, targetAt } from '../../src/canvas/plan/hit';
import { sectionAt } from '../../src/build/sectionAt';
import { keepSame, planItems } from '../../src/canvas/plan/items';
import { edgePoint, lineEnds } from '../../src/export/plan/lineEnds';
import { gripPlaces, streamPlace, turnPlace } from '../../src/canvas/plan/places';
import { moveParts } from '../../src/commands/operations';
import { area, rectangle } from '../../src/geometry/region';
import type { Layout } from '../../src/layout/types';
import { planHands, quadrantsPlate } from './hands';

const platform = { width_mm: 340, depth_mm: 340, margin_mm: 0, keepOuts: [] };
const size = { width: 800, height: 600 };
const camera = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1.2 };
const flange = (): Layout => ({
  ...quadrantsPlate(),
  shapes: {
    flange: { slabs: [{ to_mm: 30, rings: [{ circle_mm: [0, 0, 60] }, { circle_mm: [0, 0, 20] }] }] },
  },
  parts: [{ ...quadrantsPlate().parts[0], shape: 'flange', at_mm: [80, 80] }],
});

describe('what stands under the pointer', () => {
  const { bench } = planHands();
  const analysis = bench.analysis();

  it('is a part inside its outline and nothing beside it', () => {
    expect(partAt(analysis, [], { x: -51, y: -51 }, 2)).toBe('P01');
    expect(partAt(analysis, [], { x: -49, y: -49 }, 2)).toBeNull();
  });

  it('is the part around a bore while the bore is small on screen, and nothing inside a wide one', () => {
    const plate = planHands(flange()).bench.analysis();
    expect(partAt(plate, [], { x: 80, y: 80 }, 1.2)).toBe('P01');
    expect(partAt(plate, [], { x: 80, y: 80 }, 4)).toBeNull();
    expect(partAt(plate, [], { x: 80, y: 120 }, 4)).toBe('P01');
  });

  it('is a zone line within 5 px on the platform, both at their crossing, none outside the platform', () => {
    const [division] = analysis.divisions;
    expect(linesAt(platform, division, { x: 2, y: -100 }, 2).map((line) => line.key.kind)).toEqual([
      'quadrantX',
    ]);
    expect(linesAt(platform, division, { x: 4, y: 3 }, 2)).toHaveLength(2);
    expect(linesAt(platform, division, { x: 3, y: -100 }, 2)).toHaveLength(0);
    expect(linesAt(platform, division, { x: 0, y: -180 }, 2)).toHaveLength(0);
  });

  it('is the line over a part that is not selected, the part once it is', () => {
    expect(
      targetAt(analysis, { selection: [], activeZone: null, height_mm: 10 }, { x: 0, y: 60 }, 2).kind,
    ).toBe('lines');
    expect(
      targetAt(analysis, { selection: ['P03'], activeZone: null, height_mm: 10 }, { x: 0, y: 60 }, 2),
    ).toEqual({
      kind: 'part',
      part: 'P03',
    });
  });

  it('is a seam within 6 px of its path', () => {
    const layer = analysis.layer(1);
    expect(layer.seams).toHaveLength(1);
    expect(seamAt(layer, { x: 2.9, y: 50 }, 2)).toBe(0);
    expect(seamAt(layer, { x: 3.1, y: 50 }, 2)).toBe(-1);
    expect(seamAt(layer, { x: 0, y: 40 }, 2)).toBe(-1);
    expect(seamAt(null, { x: 0, y: 60 }, 2)).toBe(-1);
  });
});

describe('what the plan draws', () => {
  it('shows the section of the slab at the height, the upper one at a border, none above the part', () => {
    const { bench } = planHands();
    const stepped = bench.analysis().parts[2];
    expect(area(sectionAt(stepped, 10))).toBeCloseTo(900, 9);
    expect(area(sectionAt(stepped, 20))).toBeCloseTo(100, 9);
    expect(area(sectionAt(stepped, 20 - 1e-12))).toBeCloseTo(100, 9);
    expect(sectionAt(stepped, 50)).toEqual([]);
  });

  it('keeps the items of parts that did not change when another part moves', () => {
    const { bench } = planHands();
    const first = bench.analysis();
    const before = keepSame([], planItems(first, first.layer(1)));
    expect(keepSame(before, planItems(first, first.layer(1)))).toBe(before);
    bench.change('Move', (layout) => moveParts(layout, ['P01'], 5, 0));
    const second = bench.analysis();
    const after = keepSame(before, planItems(second, second.layer(1)));
    expect(after[0]).not.toBe(before[0]);
    expect(after[1]).toBe(before[1]);
    expect(after[2]).toBe(before[2]);
  });

  it('fills each section with its pieces', () => {
    const { bench } = planHands();
    const analysis = bench.analysis();
    for (const item of planItems(analysis, analysis.layer(1))) {
      const pieces = item.pieces.reduce((sum, piece) => sum + area(piece.region), 0);
      expect(pieces).toBeCloseTo(area(item.section), 9);
    }
  });
});

describe('where zone numbers stand', () => {
  it('is the outer corner of a quadrant', () => {
    expect(zoneNumberPlace(rectangle(-170, -170, 10, 10), platform)).toMatchObject({
      at: { x: -170, y: -170 },
    });
    expect(zoneNumberPlace(rectangle(-10, -10, 170, 170), platform)).toMatchObject({
      at: { x: 170, y: 170 },
    });
  });

  it('is the middle of the rear end of a strip in x, of the left end of a strip in y', () => {
    expect(zoneNumberPlace(rectangle(-90, -170, 0, 170), platform)).toMatchObject({ at: { x: -45, y: 170 } });
    expect(zoneNumberPlace(rectangle(-170, 0, 170, 90), platform)).toMatchObject({ at: { x: -170, y: 45 } });
  });

  it('is the centre of area of any other outline', () => {
    // mathematics: the centroid of a triangle is the mean of its corners
    const triangle = [Float64Array.of(-60, -60, 60, -60, 0, 120)];
    const { at } = zoneNumberPlace(triangle, platform);
    expect([at.x, at.y]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });
});

describe('where handles stand', () => {
  it('finds where a line meets the platform, front or left end first', () => {
    const line = (nx: number, ny: number, c: number) => ({
      key: { kind: 'strip', index: 0 } as const,
      nx,
      ny,
      c,
    });
    expect(lineEnds(line(1, 0, 30), platform)).toEqual([
      { x: 30, y: -170 },
      { x: 30, y: 170 },
    ]);
    expect(lineEnds(line(0, 1, -20), platform)).toEqual([
      { x: -170, y: -20 },
      { x: 170, y: -20 },
    ]);
    const half = Math.SQRT1_2;
    const [from, to] = lineEnds(line(half, -half, 0), platform)!;
    expect([from.x, from.y, to.x, to.y].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([
      -170, -170, 170, 170,
    ]);
    expect(lineEnds(line(1, 0, 171), platform)).toBeNull();
  });

  it('finds the edge in a direction', () => {
    expect(edgePoint(0, platform).x).toBeCloseTo(170, 9);
    expect(edgePoint(45, platform)).toEqual({ x: expect.closeTo(170, 9), y: expect.closeTo(170, 9) });
    expect(edgePoint(270, { ...platform, depth_mm: 200 }).y).toBeCloseTo(-100, 9);
  });

  it('sets the flow arrow outside the edge the gas comes from, and inside the canvas at every zoom', () => {
    const rear = streamPlace(270, 1, platform, camera, size);
    expect(rear.top).toBeLessThan(300 - 170 * camera.pxPerMm);
    const left = streamPlace(0, 1, platform, camera, size);
    expect(left.left).toBeLessThan(400 - 170 * camera.pxPerMm);
    for (const pxPerMm of [0.1, 1, 20, 300]) {
      for (let towards = 0; towards < 360; towards += 15) {
        const at = streamPlace(towards, -1, platform, { ...camera, pxPerMm }, size);
        expect(at.left >= 0 && at.left <= size.width && at.top >= 0 && at.top <= size.height).toBe(true);
      }
    }
  });

  it('keeps two arrows from the same edge apart', () => {
    for (let towards = 0; towards < 360; towards += 15) {
      for (const [centreX_mm, centreY_mm, pxPerMm] of [
        [0, 0, 1.2],
        [-40, 60, 4],
        [160, -160, 40],
      ]) {
        const [gas, blade] = ([1, -1] as const).map((side) =>
          streamPlace(towards, side, platform, { centreX_mm, centreY_mm, pxPerMm }, size),
        );
        expect(Math.hypot(gas.left - blade.left, gas.top - blade.top)).toBeGreaterThanOrEqual(36);
      }
    }
  });

  it('sets grips at both ends of a line while it is in sight, and none while it is not', () => {
    const line = { key: { kind: 'quadrantX' } as const, nx: 1, ny: 0, c: 0 };
    const [front, rear] = gripPlaces(line, platform, camera, size)!;
    expect(front.top).toBeGreaterThan(300 + 170 * camera.pxPerMm);
    expect(rear.top).toBeLessThan(300 - 170 * camera.pxPerMm);
    expect(gripPlaces(line, platform, { ...camera, centreX_mm: 900 }, size)).toBeNull();
    const near = gripPlaces(line, platform, { ...camera, pxPerMm: 50 }, size)!;
    for (const at of near) expect(at.top >= 12 && at.top <= size.height - 12).toBe(true);
  });

  it('sets the turn handle beyond the part, turning with it', () => {
    const { bench } = planHands();
    const { layout, parts } = bench.analysis();
    const place = turnPlace(layout.parts[0], parts[0], camera, size);
    expect(place.root.left).toBeCloseTo(400 - 60 * 1.2, 6);
    expect(place.root.top).toBeCloseTo(300 + 50 * 1.2, 6);
    expect(place.handle.top).toBeLessThan(place.root.top - 12);
  });
});
