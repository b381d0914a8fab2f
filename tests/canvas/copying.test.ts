/**
 * Dragging copies on the plan. Expected values: mathematics, places worked out by hand on the plate of hands.ts. Plate
 * millimetres with y to the back.
 */
import { describe, expect, it } from 'vitest';
import { ALT, planHands } from './hands';

describe('copying with Alt', () => {
  it('drags a copy on 0.1 mm steps, leaves the original, and is one entry of history', () => {
    const hands = planHands();
    const before = hands.layout();
    hands.press(-60, -60, ALT);
    hands.move(-20.04, -60, ALT);
    expect(hands.part('P01')?.at_mm).toEqual([-60, -60]);
    expect(hands.part('P04')).toMatchObject({ shape: 'block', at_mm: [-20, -60] });
    hands.move(10, 0, ALT);
    hands.release(10, 0, ALT);
    expect(hands.part('P04')?.at_mm).toEqual([10, 0]);
    expect(hands.view().selection).toEqual(['P04']);
    expect(hands.bench.history().undo).toBe('Copy P01');
    hands.bench.undo();
    expect(hands.layout()).toEqual(before);
    expect(hands.bench.history().undo).toBeNull();
  });

  it('drags copies of the whole selection, each as far from the other as the originals', () => {
    const hands = planHands();
    hands.bench.setView({ selection: ['P01', 'P03'] });
    hands.press(0, 62, ALT);
    hands.move(20, 72, ALT);
    hands.release(20, 72, ALT);
    expect(hands.part('P04')).toMatchObject({ shape: 'block', at_mm: [-40, -50] });
    expect(hands.part('P05')).toMatchObject({ shape: 'stepped', at_mm: [20, 70] });
  });

  it('Escape takes the copies away and chooses the originals again', () => {
    const hands = planHands();
    const before = hands.layout();
    hands.bench.setView({ selection: ['P02', 'P01'] });
    hands.press(-60, -60, ALT);
    hands.move(0, 0, ALT);
    hands.controller.key('Escape');
    expect(hands.layout()).toEqual(before);
    expect(hands.view().selection).toEqual(['P02', 'P01']);
    expect(hands.bench.history().undo).toBeNull();
  });

  it('is a click below 3 px: nothing is copied', () => {
    const hands = planHands();
    hands.press(-60, -60, ALT);
    hands.release(-60, -60, ALT);
    expect(hands.layout().parts).toHaveLength(3);
    expect(hands.view().selection).toEqual(['P01']);
  });
});
