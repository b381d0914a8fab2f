/** The pointer over time per layer: what hovering shows, what a press sets, what leaving takes back. Millimetres. */
import { beforeEach, describe, expect, it } from 'vitest';
import { HeightLook } from '../../src/canvas/heightPointer';
import type { Workbench } from '../../src/store/types';
import { planHands, quadrantsPlate } from './hands';

let bench: Workbench;
let look: HeightLook;
const height = () => bench.store.getState().view.height_mm;

beforeEach(() => {
  ({ bench } = planHands(quadrantsPlate()));
  bench.setView({ height_mm: 3 });
  look = new HeightLook(bench);
});

describe('a pointer over time per layer', () => {
  it('shows the height it is over and takes back the one that was set when it leaves', () => {
    look.move(5);
    expect([height(), look.kept_mm]).toEqual([5, 3]);
    look.move(7);
    expect([height(), look.kept_mm]).toEqual([7, 3]);
    look.leave();
    expect([height(), look.kept_mm]).toEqual([3, null]);
  });

  it('sets the height by a press, which stays when it leaves', () => {
    look.move(5);
    look.press(5);
    expect(look.kept_mm).toBeNull();
    look.release();
    look.leave();
    expect(height()).toBe(5);
  });

  it('carries the height in a drag and looks again from where it ends', () => {
    look.press(5);
    look.move(6);
    look.move(8);
    look.release();
    look.move(2);
    expect([height(), look.kept_mm]).toEqual([2, 8]);
    look.leave();
    expect(height()).toBe(8);
  });

  it('takes a drag back that the system takes away', () => {
    look.press(5);
    look.move(8);
    look.leave();
    expect(height()).toBe(3);
  });

  it('leaves a height alone that somebody else has set meanwhile', () => {
    look.move(5);
    bench.setView({ height_mm: 9 });
    expect(look.kept_mm).toBeNull();
    look.move(5);
    expect(height()).toBe(9);
    look.leave();
    expect(height()).toBe(9);
  });

  it('takes a height set meanwhile for the one to come back to', () => {
    look.move(5);
    bench.setView({ height_mm: 9 });
    look.move(6);
    expect([height(), look.kept_mm]).toEqual([6, 9]);
    look.leave();
    expect(height()).toBe(9);
  });
});
