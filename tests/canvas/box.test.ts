/**
 * What a box drawn on the plan chooses. Expected values: mathematics, on a flange of outer radius 30 and bore 20 and an
 * angle that fills two sides of its box only. Platform millimetres.
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { chosenBy } from '../../src/canvas/gestures/box';
import { part, smallPlate } from '../store/plates';

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
