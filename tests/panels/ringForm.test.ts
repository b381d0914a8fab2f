/** An outline that is a disc or a rectangle is shown by its numbers [mathematics]. */
import { describe, expect, test } from 'vitest';
import { discRing, formOf, rectangleRing } from '../../src/panels/machine/ringForm';

describe('the form of an outline', () => {
  test('is a disc for a circle', () => {
    expect(formOf(discRing(1, 2, 3))).toEqual({ kind: 'disc', x: 1, y: 2, r: 3 });
  });
  test('is a rectangle for four corners of a box, whatever the order and the start', () => {
    const corners = [
      [10, 5],
      [10, -5],
      [-10, -5],
      [-10, 5],
    ] as const;
    expect(formOf(corners)).toEqual({ kind: 'rectangle', left: -10, front: -5, right: 10, back: 5 });
    expect(formOf(rectangleRing(-10, -5, 10, 5))).toEqual(formOf(corners));
  });
  test('is an outline for a diamond, which has four corners but is no box', () => {
    const diamond = [
      [0, -5],
      [5, 0],
      [0, 5],
      [-5, 0],
    ] as const;
    expect(formOf(diamond)).toEqual({ kind: 'outline', points: 4 });
  });
});
