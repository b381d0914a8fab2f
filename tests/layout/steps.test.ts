/** Divisions over height: a step holds from its own height up to the next one's. Millimetres above the platform. */
import { describe, expect, test } from 'vitest';
import { emptyLayout } from '../../src/layout/defaults';
import { changeAt, layoutAt, stepAt } from '../../src/layout/steps';
import type { Layout, Zoning } from '../../src/layout/types';

const FIELD: Zoning = { strategy: 'wholeField' };
const DRAWN: Zoning = { strategy: 'drawn', zones: [] };
const layout: Layout = {
  ...emptyLayout(),
  zoning: [
    { from_mm: 0, zoning: FIELD },
    { from_mm: 20, zoning: DRAWN },
    { from_mm: 60.001, zoning: FIELD },
  ],
};

describe('the step at a height', () => {
  test.each([
    [0, 0],
    [19.999, 0],
    [20, 1],
    [60, 1],
    [60.001, 2],
    [1e6, 2],
    // below the platform there is nothing; the first step is shown
    [-5, 0],
  ])('at %d mm is %i', (z, step) => {
    expect(stepAt(layout.zoning, z)).toBe(step);
  });

  test('is the upper one where the height misses its start by a rounding error', () => {
    // (k − ½)·t in floating point: 334 layers of 0.06 mm less a half
    const middle = (334 - 0.5) * 0.06;
    expect(middle).not.toBe(20.01);
    expect(stepAt([layout.zoning[0], { from_mm: 20.01, zoning: DRAWN }], middle)).toBe(1);
    // a micrometre, the smallest length a layout holds, is no rounding error
    expect(stepAt([layout.zoning[0], { from_mm: 20.011, zoning: DRAWN }], middle)).toBe(0);
  });

  test('is the only one where there is one', () => {
    for (const z of [0, 30, 360]) expect(stepAt(emptyLayout().zoning, z)).toBe(0);
  });
});

describe('a layout as divided at one height', () => {
  test('is the layout with that step’s division', () => {
    const { zoning: _all, ...rest } = layout;
    expect(layoutAt(layout, 1)).toEqual({ ...rest, zoning: DRAWN });
    expect(layoutAt(layout, 1).zoning).toBe(DRAWN);
  });

  test('is one object per layout and step', () => {
    expect(layoutAt(layout, 1)).toBe(layoutAt(layout, 1));
    expect(layoutAt(layout, 0)).not.toBe(layoutAt(layout, 2));
    expect(layoutAt({ ...layout }, 1)).not.toBe(layoutAt(layout, 1));
  });
});

describe('a change of what holds at one height', () => {
  test('that changes nothing gives the very layout back', () => {
    expect(changeAt(layout, 1, (at) => at)).toBe(layout);
  });

  test('of the division changes that step alone and leaves the layout as it was', () => {
    const before = structuredClone(layout);
    const next = changeAt(layout, 1, (at) => ({ ...at, zoning: FIELD }));
    expect(next).toEqual({
      ...before,
      zoning: [before.zoning[0], { from_mm: 20, zoning: FIELD }, before.zoning[2]],
    });
    expect(next.zoning[0]).toBe(layout.zoning[0]);
    expect(next.zoning[2]).toBe(layout.zoning[2]);
    expect(layout).toEqual(before);
  });

  test('of anything else keeps the list of steps', () => {
    const next = changeAt(layout, 2, (at) => ({ ...at, allocation: 'wholeParts' }));
    expect(next.allocation).toBe('wholeParts');
    expect(next.zoning).toBe(layout.zoning);
  });
});
