/**
 * What a drag snaps to. Expected values: mathematics; 0.1 mm, 15° and the keys that change them are our own choice (no
 * source). Millimetres, degrees counter-clockwise from +x.
 */
import { describe, expect, it } from 'vitest';
import { NO_MODIFIERS, directionOf, snapMm, snapPoint, snapTurn } from '../../src/canvas/snapping';

const alt = { ...NO_MODIFIERS, alt: true };
const shift = { ...NO_MODIFIERS, shift: true };

describe('snapping', () => {
  it('keeps a drag to 0.1 mm, and to whole micrometres with Alt', () => {
    expect(snapMm(12.3449, NO_MODIFIERS)).toBe(12.3);
    expect(snapMm(-12.3651, NO_MODIFIERS)).toBe(-12.4);
    expect(snapMm(12.34449, alt)).toBe(12.344);
    expect(snapPoint({ x: 1.26, y: -3.333333 }, alt)).toEqual({ x: 1.26, y: -3.333 });
  });

  it('gives the nearest decimal, never one with rounding noise', () => {
    for (let k = -3000; k <= 3000; k++)
      expect(snapMm(k / 10 + 0.0001, NO_MODIFIERS)).toBe(Number((k / 10).toFixed(1)) + 0);
  });

  it('turns freely to 0.1 degrees and in steps of 15 with Shift, always within 0 ≤ a < 360', () => {
    expect(snapTurn(37.26, NO_MODIFIERS)).toBe(37.3);
    expect(snapTurn(37.26, shift)).toBe(30);
    expect(snapTurn(37.6, shift)).toBe(45);
    expect(snapTurn(-7, shift)).toBe(0);
    expect(snapTurn(359.99, NO_MODIFIERS)).toBe(0);
    expect(snapTurn(-0.2, NO_MODIFIERS)).toBe(359.8);
    expect(snapTurn(725, shift)).toBe(0);
  });

  it('measures directions counter-clockwise from +x', () => {
    const origin = { x: 0, y: 0 };
    expect(directionOf(origin, { x: 5, y: 0 })).toBe(0);
    expect(directionOf(origin, { x: 0, y: 5 })).toBe(90);
    expect(directionOf(origin, { x: 0, y: -5 })).toBe(270);
    expect(directionOf({ x: 1, y: 1 }, { x: 0, y: 0 })).toBe(225);
  });
});
