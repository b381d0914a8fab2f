/** Where a dragged box comes to rest. Boxes and distances are plain arithmetic [mathematics]. */
import { describe, expect, test } from 'vitest';
import { marksOf, pull, type MagnetField } from '../../src/canvas/magnetism';
import type { Box } from '../../src/geometry/types';
import { smallPlate } from '../store/plates';
import { planHands } from './hands';
import { createMagnet } from '../../src/canvas/gestures/later';
import { NO_MODIFIERS } from '../../src/canvas/snapping';

const box = (minX: number, minY: number, width = 10, depth = 10): Box => ({
  minX,
  minY,
  maxX: minX + width,
  maxY: minY + depth,
});
const field = (more: Partial<MagnetField> = {}): MagnetField => ({
  boxes: [],
  lines: { x: [], y: [] },
  spacing_mm: 3,
  grid_mm: 0,
  ...more,
});
const pulled = (of: MagnetField, own: Box, reach = 2) =>
  pull(of, own, { x: own.minX + 5, y: own.minY + 5 }, reach);

describe('a dragged box', () => {
  test('is left alone where nothing is within reach', () => {
    expect(pulled(field({ boxes: [box(40, 60)] }), box(0, 0))).toEqual({ x: null, y: null });
  });
  test('comes to the edge of another one, by the nearer of two', () => {
    expect(pulled(field({ boxes: [box(1.5, 60, 10)] }), box(0, 0)).x).toBeCloseTo(1.5, 9);
    expect(pulled(field({ boxes: [box(-0.5, 60), box(1.5, 80)] }), box(0, 0)).x).toBeCloseTo(-0.5, 9);
  });
  test('comes to the middle of a wider one', () => {
    expect(pulled(field({ boxes: [box(-9, 60, 30)] }), box(0, 0)).x).toBeCloseTo(1, 9);
  });
  test('comes to a zone line with its edge or its middle', () => {
    const lines = { x: [11], y: [4] };
    expect(pulled(field({ lines }), box(0, 0))).toEqual({ x: 1, y: -1 });
  });
  test('keeps the spacing from its neighbour in the row', () => {
    const beside = field({ boxes: [box(-14, 2, 10, 20)] });
    expect(pulled(beside, box(0, 0, 10, 40)).x).toBeCloseTo(-1, 9);
  });
  test('stands as far off as its neighbour does from the next one', () => {
    // Gaps: 0..10, 17..27, so the third begins at 34.
    const row = field({ boxes: [box(0, 0, 10, 30), box(17, 0, 10, 30)], spacing_mm: 1 });
    expect(pulled(row, box(35, 8)).x).toBeCloseTo(-1, 9);
  });
  test('stands midway between two neighbours', () => {
    const row = field({ boxes: [box(0, 0, 10, 30), box(40, 0, 10, 30)], spacing_mm: 1 });
    // 10..40 leaves 30; 10 wide: 20 begins it.
    expect(pulled(row, box(20.6, 8)).x).toBeCloseTo(-0.6, 9);
  });
  test('comes to the grid by its origin, but only where nothing else pulls', () => {
    expect(pulled(field({ grid_mm: 5 }), box(1, 2))).toEqual({ x: -1, y: -2 });
    expect(pulled(field({ grid_mm: 5, lines: { x: [1.5], y: [] } }), box(1, 2))).toEqual({ x: 0.5, y: -2 });
  });
});

describe('what holds it', () => {
  test('is drawn as a guide through both, and the gap between them', () => {
    expect(marksOf(field({ boxes: [box(0, 60)] }), box(0, 20))).toEqual({
      guides: [
        { axis: 'x', at: 0, from: 20, to: 70 },
        { axis: 'x', at: 10, from: 20, to: 70 },
        { axis: 'x', at: 5, from: 20, to: 70 },
      ],
      gaps: [{ axis: 'y', from: 30, to: 60, across: 0 }],
    });
  });
  test('is written as equal gaps where they are', () => {
    const row = field({ boxes: [box(0, 0, 10, 30), box(17, 0, 10, 30)], spacing_mm: 1 });
    expect(marksOf(row, box(34, 8)).gaps).toEqual([
      { axis: 'x', from: 10, to: 17, across: 13 },
      { axis: 'x', from: 27, to: 34, across: 13 },
    ]);
  });
  test('is nothing where it stands free', () => {
    expect(marksOf(field({ boxes: [box(41, 63)] }), box(0, 0))).toEqual({ guides: [], gaps: [] });
  });
});

describe('on the plate', () => {
  // Blocks 20 × 20 at (±60, −60); the reach of 4 px is 2 mm at 2 px a millimetre.
  const from = { x: 60, y: -60 };
  const magnet = (view = {}) => createMagnet(planHands(undefined, view).host, ['P02']);
  test('a part comes level with the other one and to the middle line of the platform', () => {
    expect(smallPlate().parts[1]!.at_mm).toEqual([60, -60]);
    expect(magnet()!(from, { x: 1.2, y: -58.3 }, NO_MODIFIERS)).toEqual({ x: 0, y: -60 });
  });
  test('Alt and Ctrl suspend it, and steps hold where nothing pulls', () => {
    const wanted = { x: 1.2345, y: -58.3 };
    expect(magnet()!(from, wanted, { ...NO_MODIFIERS, ctrl: true })).toEqual({ x: 1.2, y: -58.3 });
    expect(magnet()!(from, wanted, { ...NO_MODIFIERS, alt: true })).toEqual({ x: 1.235, y: -58.3 });
    expect(magnet()!(from, { x: 35.123, y: 20.77 }, NO_MODIFIERS)).toEqual({ x: 35.1, y: 20.8 });
  });
  test('there is none with snapping off, nor for a locked part', () => {
    expect(magnet({ snapping: false })).toBeNull();
    expect(magnet({ locked: ['P02'] })).toBeNull();
  });
});
