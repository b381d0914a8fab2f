/**
 * Moving, turning, raising and drawing parts. Figures beside the checks are plain arithmetic on the platform of
 * 340 × 340 mm with lasers at (±75, ±75) [mathematics].
 */
import { describe, expect, test } from 'vitest';
import * as op from '../../../src/commands/operations';
import type { Layout, Point } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';
import { at, corners, shoelace } from './read';

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
