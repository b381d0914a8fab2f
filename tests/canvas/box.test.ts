/**
 * What a box drawn on the plan chooses. Expected values: mathematics, on a flange of outer radius 30 and bore 20 and an
 * angle that fills two sides of its box only. Platform millimetres.
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { chosenBy } from '../../src/canvas/gestures/box';
import { part, smallPlate } from '../store/plates';
import { SHIFT, planHands } from './hands';

const { parts } = analyse({
  ...smallPlate(),
  shapes: {
    flange: { slabs: [{ to_mm: 10, rings: [{ circle_mm: [0, 0, 30] }, { circle_mm: [0, 0, 20] }] }] },
    angle: {
      slabs: [
        {
          to_mm: 10,
          rings: [
            [
              [0, 0],
              [40, 0],
              [40, 5],
              [5, 5],
              [5, 40],
              [0, 40],
            ],
          ],
        },
      ],
    },
  },
  parts: [part('F', -60, 0, 'flange'), part('A', 40, 0, 'angle')],
});
const box = (x0: number, y0: number, x1: number, y1: number) =>
  chosenBy(parts, { x: x0, y: y0 }, { x: x1, y: y1 });

describe('a box', () => {
  it('to the right takes what lies whole inside, however it is drawn up or down', () => {
    expect(box(-95, -35, 100, 45)).toEqual(['F', 'A']);
    expect(box(-95, 45, 79, -35)).toEqual(['F']);
    expect(box(-89, -35, 100, 45)).toEqual(['A']);
  });

  it('to the left takes what it touches', () => {
    expect(box(-35, 5, -100, -5)).toEqual(['F']);
    expect(box(42, 50, -32, 30)).toEqual(['A']);
    expect(box(60, 3, 50, -3)).toEqual(['A']);
  });

  it('to the left takes no part whose bore or open corner alone it covers', () => {
    expect(box(-50, 10, -70, -10)).toEqual([]);
    expect(box(75, 38, 50, 10)).toEqual([]);
  });

  it('to the left takes a part that is larger than it', () => {
    expect(box(-84, 1, -86, -1)).toEqual(['F']);
  });
});

describe('drawing one', () => {
  it('chooses with a box to the left what it touches, and says how many beside the pointer', () => {
    const hands = planHands();
    // the block P01 covers x −70 … −50; this frame covers x −55 … 20, the part P03 begins at y 45
    hands.press(20, -30);
    hands.move(-55, -65);
    expect(hands.view().selection).toEqual(['P01']);
    expect(hands.host.ui.getState().tip?.lines).toEqual(['1 touched']);
    hands.move(-45, 50);
    expect(hands.view().selection).toEqual(['P03']);
    hands.release(-45, 50);
    hands.press(-45, -100);
    hands.move(-100, -20);
    expect(hands.view().selection).toEqual(['P01']);
    hands.release(-100, -20);
    expect(hands.host.ui.getState()).toMatchObject({ draft: null, tip: null });
  });

  it('adds with Shift what a box chooses, and gives all back when it is cancelled', () => {
    const hands = planHands();
    hands.bench.setView({ selection: ['P03'] });
    hands.press(-120, -120, SHIFT);
    hands.move(120, -20, SHIFT);
    expect(hands.view().selection).toEqual(['P03', 'P01', 'P02']);
    hands.controller.cancel();
    expect(hands.view().selection).toEqual(['P03']);
  });
});
