/**
 * When figures mean nothing: no parts, or no laser that is on. What is shown then is this page's own rule.
 */
import { describe, expect, test } from 'vitest';
import type { LayerTotals } from '../../src/build/types';
import { demoLayout } from '../../src/layout/demo';
import { nothingBuilt, nothingExposed } from '../../src/panels/readout/nothing';

const demo = demoLayout();
const switched = (on: (laser: number) => boolean) => ({
  ...demo,
  machine: { ...demo.machine, lasers: demo.machine.lasers.map((laser, i) => ({ ...laser, on: on(i) })) },
});
const layer = (...on: boolean[]) => ({ lasers: on.map((is) => ({ on: is })) }) as unknown as LayerTotals;

describe('the build', () => {
  test('has figures as long as there is a part and a laser that is on', () => {
    expect(nothingBuilt(demo)).toBeNull();
    expect(nothingBuilt(switched((i) => i === 2))).toBeNull();
  });
  test('has none without parts or without a laser, and says which', () => {
    expect(nothingBuilt({ ...demo, parts: [] })).toBe('no parts');
    expect(nothingBuilt(switched(() => false))).toBe('all lasers are off');
  });
});

test('a layer has no times where every laser is off', () => {
  expect(nothingExposed(layer(false, true))).toBeNull();
  expect(nothingExposed(layer(false, false))).toBe('all lasers are off');
  expect(nothingExposed(undefined)).toBeNull();
});
