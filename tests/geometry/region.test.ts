// Source of the expected values: mathematics (closed forms) unless another one stands beside the check.
import { describe, expect, it } from 'vitest';
import { CHORD_ERROR_MM, circleRing } from '../../src/geometry/circle';
import {
  area,
  boxOf,
  components,
  containsPoint,
  mirrorX,
  outlineLength,
  rectangle,
  turnAndMove,
} from '../../src/geometry/region';
import { reversed, ringFromLayout, ringOf, signedArea } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';

const hole = (x0: number, y0: number, x1: number, y1: number) => reversed(rectangle(x0, y0, x1, y1)[0]);
const frame: Region = [...rectangle(0, 0, 30, 20), hole(5, 5, 15, 15)];

describe('rings', () => {
  it('drop the repeated last point and repeated neighbours', () => {
    const ring = ringOf([
      [0, 0],
      [4, 0],
      [4, 0],
      [4, 3],
      [0, 0],
    ]);
    expect([...ring]).toEqual([0, 0, 4, 0, 4, 3]);
    expect(signedArea(ring)).toBe(6);
    expect(signedArea(reversed(ring))).toBe(-6);
  });
  it('keep their area far from the origin', () => {
    const far = ringOf([
      [1e6, 1e6],
      [1e6 + 0.001, 1e6],
      [1e6 + 0.001, 1e6 + 0.001],
    ]);
    expect(signedArea(far) / 0.5e-6).toBeCloseTo(1, 5);
  });
  it('of a layout circle is the circle', () => {
    expect(signedArea(ringFromLayout({ circle_mm: [3, 4, 10] })) / (100 * Math.PI)).toBeCloseTo(1, 12);
  });
});

describe('circles', () => {
  it.each([0.05, 0.5, 3, 10, 50, 150, 400])(
    'of radius %d have the area π r² and keep the chord error',
    (r) => {
      const ring = circleRing(7, -3, r);
      expect(Math.abs(signedArea(ring) / (Math.PI * r * r) - 1)).toBeLessThan(1e-12);
      for (let i = 0; i < ring.length; i += 2) {
        const j = (i + 2) % ring.length;
        const vertex = Math.hypot(ring[i] - 7, ring[i + 1] + 3);
        const middle = Math.hypot((ring[i] + ring[j]) / 2 - 7, (ring[i + 1] + ring[j + 1]) / 2 + 3);
        expect(Math.abs(vertex - r)).toBeLessThanOrEqual(CHORD_ERROR_MM + 1e-12);
        expect(Math.abs(middle - r)).toBeLessThanOrEqual(CHORD_ERROR_MM + 1e-12);
      }
    },
  );
  it('never reach past the box of the true circle', () => {
    const box = boxOf([circleRing(0, 0, 150)]);
    expect(box.maxX).toBeLessThanOrEqual(150);
    expect(box.minY).toBeGreaterThanOrEqual(-150);
    expect(box.maxX).toBeGreaterThan(149.99);
  });
  it('look the same after a quarter turn', () => {
    const ring = circleRing(0, 0, 20);
    const turned = turnAndMove([ring], 90, 0, 0)[0];
    const n = ring.length;
    const shift = n / 4;
    for (let i = 0; i < n; i++) expect(turned[i]).toBeCloseTo(ring[(i + shift) % n], 12);
  });
});

describe('regions', () => {
  it('subtract their holes and count their outlines', () => {
    expect(area(frame)).toBe(500);
    expect(outlineLength(frame)).toBe(140);
    expect(boxOf(frame)).toEqual({ minX: 0, minY: 0, maxX: 30, maxY: 20 });
  });
  it('contain a point of the material and not one of the hole', () => {
    expect(containsPoint(frame, 2, 2)).toBe(true);
    expect(containsPoint(frame, 10, 10)).toBe(false);
    expect(containsPoint(frame, 31, 10)).toBe(false);
  });
  it('fall apart into connected parts, an island in a hole being a part of its own', () => {
    const nested: Region = [
      hole(10, 10, 90, 90),
      ...rectangle(0, 0, 100, 100),
      ...rectangle(20, 20, 80, 80),
      hole(30, 30, 40, 40),
      ...rectangle(200, 0, 210, 10),
    ];
    const parts = components(nested);
    const areas = parts.map(area).sort((a, b) => a - b);
    expect(areas).toEqual([100, 3500, 3600]);
  });
  it('give a hole that touches the outline to the ring around it', () => {
    const touching: Region = [
      ...rectangle(0, 0, 10, 10),
      ringOf([
        [0, 5],
        [3, 7],
        [3, 3],
      ]),
      ...rectangle(-10, 0, 0, 10),
    ];
    expect(components(touching).map(area)).toEqual([94, 100]);
  });
  it('keep area and outline under turning, moving and mirroring', () => {
    for (const turn of [0, 17.3, 90, 180, 270, 333]) {
      const placed = turnAndMove(frame, turn, -40, 12.5);
      expect(area(placed)).toBeCloseTo(500, 9);
      expect(outlineLength(placed)).toBeCloseTo(140, 9);
    }
    expect(area(mirrorX(frame))).toBe(500);
    expect(boxOf(mirrorX(frame))).toEqual({ minX: -30, minY: 0, maxX: 0, maxY: 20 });
  });
  it('turn by right angles without rounding', () => {
    const [ring] = turnAndMove(
      [
        ringOf([
          [1.234, 5.678],
          [2, 0],
          [3, 3],
        ]),
      ],
      90,
      0,
      0,
    );
    expect([...ring]).toEqual([-5.678, 1.234, 0, 2, -3, 3]);
    expect([...turnAndMove(frame, -90, 0, 0)[0]]).toEqual([...turnAndMove(frame, 270, 0, 0)[0]]);
  });
});
