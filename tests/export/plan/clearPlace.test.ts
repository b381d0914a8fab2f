/**
 * Tags keep clear of names: boxes on a screen, by hand and by chance (mathematics).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxAround, boxesMeet, clearPlace } from '../../../src/export/plan/clearPlace';

const half = { width: 12, height: 10 };
const anywhere = () => true;

describe('a tag', () => {
  test('stands where it is wanted when nothing is there', () => {
    const wanted = { left: 100, top: 100 };
    expect(clearPlace(wanted, half, [boxAround({ left: 100, top: 125 }, 20, 8)], anywhere)).toBe(wanted);
  });
  test('goes straight to the nearest clear place: 24 px up from a name 16 px high', () => {
    const name = boxAround({ left: 100, top: 104 }, 20, 8);
    expect(clearPlace({ left: 100, top: 100 }, half, [name], anywhere)).toEqual({ left: 100, top: 76 });
  });
  test('stays in the places that are allowed', () => {
    const name = boxAround({ left: 100, top: 104 }, 20, 8);
    const below = clearPlace({ left: 100, top: 100 }, half, [name], ({ top }) => top >= 100);
    expect(below.top).toBeGreaterThanOrEqual(100);
    expect(boxesMeet(boxAround(below, half.width, half.height), name)).toBe(false);
  });
  test('stays where it is wanted when all around is taken', () => {
    const wanted = { left: 100, top: 100 };
    expect(clearPlace(wanted, half, [boxAround(wanted, 500, 500)], anywhere)).toBe(wanted);
  });
  test('never covers one of a few names, wherever they stand', () => {
    const at = fc.record({ left: fc.integer({ min: 0, max: 200 }), top: fc.integer({ min: 0, max: 200 }) });
    fc.assert(
      fc.property(fc.array(at, { maxLength: 8 }), (names) => {
        const taken = names.map((name) => boxAround(name, 14, 8));
        const place = clearPlace({ left: 100, top: 100 }, half, taken, anywhere);
        const box = boxAround(place, half.width, half.height);
        expect(taken.some((name) => boxesMeet(box, name))).toBe(false);
      }),
      { seed: 20261125 },
    );
  });
});
