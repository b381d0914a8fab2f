/**
 * Several parts changed each from its own value, and two parts brought to a distance. Figures are plain arithmetic
 * [mathematics].
 */
import { describe, expect, test } from 'vitest';
import * as op from '../../../src/commands/operations';
import { nearestPoints } from '../../../src/geometry/nearest';
import { part, smallPlate } from '../../store/plates';
import { at } from './read';

const square = (x: number, y: number, size = 10) =>
  Float64Array.of(x, y, x + size, y, x + size, y + size, x, y + size);
const plate = () => ({
  ...smallPlate(),
  parts: [part('P01', 10, 20), { ...part('P02', 40, -5), turn_deg: 350 }, part('P03', 0, 0)],
});

describe('each from its own value', () => {
  test('places', () => {
    const next = op.placeEach(plate(), ['P01', 'P02'], 'x', (x) => x + 5);
    expect([at(next, 'P01'), at(next, 'P02'), at(next, 'P03')]).toEqual([
      [15, 20],
      [45, -5],
      [0, 0],
    ]);
    expect(
      at(
        op.placeEach(next, ['P02'], 'y', (y) => y - 0.5),
        'P02',
      ),
    ).toEqual([45, -5.5]);
  });
  test('turns, which come back to one turn', () => {
    const next = op.turnEach(plate(), ['P01', 'P02'], (turn) => turn + 15);
    expect(next.parts.map(({ turn_deg }) => turn_deg)).toEqual([15, 5, 0]);
  });
  test('time factors', () => {
    const next = op.timeFactorEach(plate(), ['P01', 'P03'], (factor) => factor + 0.25);
    expect(next.parts.map(({ timeFactor }) => timeFactor)).toEqual([1.25, 1, 1.25]);
  });
  test('what changes nothing gives the very layout', () => {
    const same = plate();
    expect(op.placeEach(same, ['P01', 'P02'], 'x', (x) => x)).toBe(same);
  });
});

describe('a new id', () => {
  test('is taken where it is free, and refused where another part has it', () => {
    const before = plate();
    expect(op.renamePart(before, 'P02', 'rudder').parts.map(({ id }) => id)).toEqual([
      'P01',
      'rudder',
      'P03',
    ]);
    expect(op.renamePart(before, 'P02', 'P03')).toBe(before);
  });
});

describe('the nearest points', () => {
  test('of two squares side by side lie across the gap', () => {
    const near = nearestPoints([square(0, 0)], [square(17, 3)])!;
    expect(near.distance_mm).toBeCloseTo(7, 12);
    expect([near.from.x, near.to.x]).toEqual([10, 17]);
  });
  test('of two squares corner to corner are the corners: 3, 4, 5', () => {
    expect(nearestPoints([square(0, 0)], [square(13, 14)])).toEqual({
      distance_mm: 5,
      from: { x: 10, y: 10 },
      to: { x: 13, y: 14 },
    });
  });
  test('are none where one lies in the other or they cross', () => {
    expect(nearestPoints([square(0, 0, 100)], [square(10, 10)])).toBeNull();
    expect(nearestPoints([square(0, 0)], [square(5, 5)])).toBeNull();
    const [tall, wide] = [
      Float64Array.of(4, -5, 6, -5, 6, 15, 4, 15),
      Float64Array.of(-5, 4, 15, 4, 15, 6, -5, 6),
    ];
    expect(nearestPoints([tall], [wide])).toBeNull();
  });
});

describe('a distance', () => {
  test('moves the part along the line of the nearest points', () => {
    const next = op.setDistance(plate(), 'P01', [square(13, 14)], [square(0, 0)], 10)!;
    expect(at(next, 'P01')).toEqual([10 + 3, 20 + 4]);
  });
  test('of 2.5 is where the footprints then are 2.5 apart, outlines that are not convex too', () => {
    const hook = Float64Array.of(0, 0, 30, 0, 30, 30, 25, 30, 25, 5, 0, 5);
    const from = square(8, 15, 6);
    const [x, y] = at(op.setDistance(plate(), 'P01', [from], [hook], 2.5)!, 'P01');
    const moved = from.map((value, i) => value + (i % 2 === 0 ? x - 10 : y - 20));
    expect(nearestPoints([hook], [moved])!.distance_mm).toBeCloseTo(2.5, 2);
  });
  test('is refused where the footprints overlap', () => {
    expect(op.setDistance(plate(), 'P01', [square(5, 5)], [square(0, 0)], 3)).toBeNull();
  });
});
