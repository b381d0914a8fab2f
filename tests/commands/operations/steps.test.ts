/**
 * Steps of the zoning over height. Layers of 0.06 mm: layer k covers (k−1)·0.06 … k·0.06 and is divided as at its middle,
 * a middle exactly on a step belongs to the upper one; 60 mm are 1000 layers [mathematics].
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { buildTop } from '../../../src/layout/height';
import { readLayout } from '../../../src/layout/read';
import { writeLayout } from '../../../src/layout/write';
import type { Layout, Zoning } from '../../../src/layout/types';
import { divided, plate, QUADRANTS, rect, standing, strips } from '../../support/plates';
import { layouts, mm, runs } from '../../support/random';
import { op } from '../wholeHeight';
import { accepted } from './read';

const FIELD: Zoning = { strategy: 'wholeField' };
const STRIPS = strips(90, [-100, 0, 100]);
const block = standing('block', 240, rect(250, 250, 350, 350));
const quadrants = plate([block], QUADRANTS);
const three = plate([block], divided([0, QUADRANTS], [60, STRIPS], [120, FIELD]));
const steps = ({ zoning }: Layout) => zoning.map((step) => [step.from_mm, step.zoning.strategy]);
const heights = ({ zoning }: Layout) => zoning.map((step) => step.from_mm);

describe('a step that is added', () => {
  test('divides as what held there, the very same', () => {
    const two = op.addStep(quadrants, 60);
    expect(heights(two)).toEqual([0, 60]);
    expect(two.zoning[1]!.zoning).toBe(quadrants.zoning[0]!.zoning);
    expect(steps(op.addStep(three, 90))).toEqual([
      [0, 'quadrants'],
      [60, 'strips'],
      [90, 'strips'],
      [120, 'wholeField'],
    ]);
    expect(steps(op.addStep(three, 180)).at(-1)).toEqual([180, 'wholeField']);
  });

  test.each([
    [60.029, 60],
    [60.03, 60], // the middle of layer 1001 belongs to the step
    [60.031, 60.06],
    [59.971, 60],
    [20.01, 19.98],
    [60.96, 60.96], // 2.4 in: 1016 layers
  ])('at %f mm begins with a layer, at %f mm', (typed, from_mm) => {
    expect(heights(op.addStep(quadrants, typed))).toEqual([0, from_mm]);
  });

  test('changes nothing in the first layer, where one begins already, above the machine and at no number', () => {
    for (const from_mm of [0, -5, 0.03, 400, 401, 1e300, NaN, Infinity])
      expect(op.addStep(quadrants, from_mm)).toBe(quadrants);
    for (const from_mm of [60, 60.02, 59.98, 120]) expect(op.addStep(three, from_mm)).toBe(three);
    expect(op.stepHeight(quadrants, 0.031)).toBe(0.06);
    // 400 / 0.06 are 6666.7: the last layer is layer 6667, which begins at 399.96 mm
    expect(op.stepHeight(quadrants, 399.98)).toBe(399.96);
  });

  test('at a height off the raster that divides the layers as one that is there does is none', () => {
    const odd = plate([block], divided([0, QUADRANTS], [60.02, STRIPS]));
    expect(op.addStep(odd, 60)).toBe(odd);
    expect(heights(op.addStep(odd, 60.06))).toEqual([0, 60.02, 60.06]);
  });

  test('keeps to the bottom of the layer that is looked at', () => {
    expect([0, 59.99, 60, 60.03, 60.059, 240].map((z) => op.bottomOfLayer(quadrants, z))).toEqual([
      0, 59.94, 60, 60, 60, 239.94,
    ]);
  });
});

describe('a step that is taken away', () => {
  test('leaves its layers to the one below', () => {
    expect(steps(op.removeStep(three, 1))).toEqual([
      [0, 'quadrants'],
      [120, 'wholeField'],
    ]);
    expect(op.removeStep(op.addStep(quadrants, 60), 1)).toEqual(quadrants);
  });
  test('is never the first, and none that does not exist', () => {
    for (const index of [0, -1, 3, NaN]) expect(op.removeStep(three, index)).toBe(three);
  });
});

describe('a step that is moved', () => {
  test.each([
    [90, 90],
    [90.04, 90.06],
    [-10, 0.06],
    [0, 0.06],
    [120, 119.94],
    [500, 119.94],
  ])('to %f mm begins at %f mm, a layer away from its neighbours', (to, from_mm) => {
    expect(heights(op.moveStep(three, 1, to))).toEqual([0, from_mm, 120]);
  });
  test('may go up to the last layer of the machine where none is above it', () => {
    expect(heights(op.moveStep(three, 2, 1e6))).toEqual([0, 60, 399.96]);
  });
  test('stays the same layout where it stays, is the first, or has no room', () => {
    for (const [index, to] of [
      [1, 60.01],
      [0, 30],
      [3, 30],
      [1, NaN],
    ] as const)
      expect(op.moveStep(three, index, to)).toBe(three);
    const tight = plate([block], divided([0, QUADRANTS], [0.06, STRIPS], [0.12, FIELD]));
    expect(op.moveStep(tight, 1, 50)).toBe(tight);
    expect(op.stepLimits(plate([block], divided([0, QUADRANTS], [0.02, STRIPS], [0.06, FIELD])), 1)).toBe(
      null,
    );
  });
  test('goes by layers', () => {
    expect(heights(op.moveStepByLayers(three, 1, 1))).toEqual([0, 60.06, 120]);
    expect(heights(op.moveStepByLayers(three, 1, -10))).toEqual([0, 59.4, 120]);
  });
});

describe('the middle of a step', () => {
  test('is the middle of the middle one of its layers', () => {
    // layers 1…1000, 1001…2000, 2001…4000; their middle ones are 500, 1500, 3000
    expect([0, 1, 2].map((i) => op.middleOfStep(three, i))).toEqual([29.97, 89.97, 179.97]);
  });
  test('is none above the top, between two middles and on an empty plate', () => {
    const high = plate([block], divided([0, QUADRANTS], [240, FIELD]));
    expect(op.middleOfStep(high, 1)).toBe(null);
    const thin = plate([block], divided([0, QUADRANTS], [60.04, STRIPS], [60.08, FIELD]));
    expect(op.middleOfStep(thin, 1)).toBe(null);
    expect(op.middleOfStep({ ...three, parts: [] }, 0)).toBe(null);
  });
});

describe('the whole field over a range of height', () => {
  test('to the top gives up what changed there', () => {
    expect(steps(op.wholeFieldBetween(three, 30, null))).toEqual([
      [0, 'quadrants'],
      [30, 'wholeField'],
    ]);
    expect(steps(op.wholeFieldBetween(three, 60, null))).toEqual([
      [0, 'quadrants'],
      [60, 'wholeField'],
    ]);
    expect(steps(op.wholeFieldBetween(three, 0, null))).toEqual([[0, 'wholeField']]);
  });
  test('up to a height leaves what is above as it was divided', () => {
    expect(steps(op.wholeFieldBetween(three, 30, 90))).toEqual([
      [0, 'quadrants'],
      [30, 'wholeField'],
      [90, 'strips'],
      [120, 'wholeField'],
    ]);
    expect(steps(op.wholeFieldBetween(three, 0, 60))).toEqual([
      [0, 'wholeField'],
      [60, 'strips'],
      [120, 'wholeField'],
    ]);
  });
});

describe('the whole field over no range', () => {
  test('changes nothing', () => {
    for (const [from_mm, to_mm] of [
      [NaN, null],
      [400, null],
      [60, 60.02],
      [90, 30],
      [30, NaN],
      [120, null],
    ] as const)
      expect(op.wholeFieldBetween(three, from_mm, to_mm)).toBe(three);
  });
});

describe('on random plates', () => {
  const height = mm(0.07, 60);
  /** Every layer's exposure, to 1e-9. */
  const layers = (layout: Layout): number[] => {
    const found = analyse(layout);
    return Array.from({ length: found.build.layers }, (_, k) => found.layer(k + 1).exposure_s);
  };
  test('a step begun, moved and taken away again leaves the plate', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(layouts({ faults: true }), height, height, (layout, from_mm, to_mm) => {
        const two = op.addStep(layout, from_mm);
        if (two === layout) return;
        const moved = op.moveStep(two, 1, to_mm);
        expect(accepted(readLayout(writeLayout(moved)))).toEqual(moved);
        expect(op.removeStep(moved, 1)).toEqual(layout);
      }),
      runs(60),
    );
  });
  test('the raster divides every layer as the height that was typed', { timeout: 60_000 }, () => {
    let compared = 0;
    fc.assert(
      fc.property(layouts(), height, (layout, typed) => {
        const whole = op.wholeFieldBetween(layout, typed, null);
        if (whole.zoning.length < 2 || buildTop(layout) < typed) return;
        compared++;
        const [below, above] = whole.zoning;
        const asTyped: Layout = { ...whole, zoning: [below!, { ...above!, from_mm: typed }] };
        expect(layers(asTyped)).toEqual(layers(whole));
      }),
      runs(60),
    );
    expect(compared).toBeGreaterThan(10);
  });
});
