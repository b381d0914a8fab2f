/**
 * Which plate is tried for a suggestion. Plates by hand [mathematics], coordinates from the front-left corner of a 400 × 400
 * platform: a block of 50 × 50 mm in each quadrant keeps all four lasers equally busy.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { Layout } from '../../src/layout/types';
import { candidateOf } from '../../src/panels/division/useSuggestion';
import { divided, plate, QUADRANTS, rect, standing } from '../support/plates';

const CORNERS = [50, 300].flatMap((x) => [50, 300].map((y) => [x, y] as const));
const square = ([x, y]: readonly [number, number]) => rect(x, y, x + 50, y + 50);
/** Four blocks of these heights, front left, rear left, front right, rear right. */
const blocks = (...heights: readonly number[]) =>
  heights.map((height, i) => standing(`b${i}`, height, square(CORNERS[i]!)));
const FIELD = { strategy: 'wholeField' };
const tried = (layout: Layout) => candidateOf(analyse(layout));
const steps = (layout: Layout) => layout.zoning.map((step) => [step.from_mm, step.zoning.strategy]);

describe('the whole field is tried', () => {
  test('from where one laser is alone on, to the top', () => {
    const found = tried(plate(blocks(30, 30, 30, 120), QUADRANTS))!;
    expect(found.worst).toMatchObject({ working: ['L4'], toTop: true });
    expect(steps(found.candidate)).toEqual([
      [0, 'quadrants'],
      [30, 'wholeField'],
    ]);
  });
  test('between two heights, with the division above as it was', () => {
    // from 60 to 90 mm nothing stands on the ground of the other three
    const three = CORNERS.slice(0, 3).map(square);
    const stepped = {
      id: 'stepped',
      slabs: [
        { to_mm: 60, rings: three },
        { to_mm: 90, rings: [rect(320, 320, 330, 330)] },
        { to_mm: 120, rings: three },
      ],
    };
    const found = tried(plate([stepped, standing('b3', 120, square(CORNERS[3]!))], QUADRANTS))!;
    expect(found.worst).toMatchObject({ working: ['L4'], toTop: false });
    expect(steps(found.candidate)).toEqual([
      [0, 'quadrants'],
      [60, 'wholeField'],
      [90, 'quadrants'],
    ]);
  });
});

describe('nothing is tried', () => {
  test('where the waste is the same over the whole height, or none', () => {
    expect(tried(plate(blocks(30, 30), QUADRANTS))).toBeNull();
    expect(tried(plate(blocks(30, 30, 30, 30), QUADRANTS))).toBeNull();
  });
  test('where the whole field holds already', () => {
    const parts = blocks(30, 30, 30, 120).map((part) => ({ ...part, seams: 'none' }));
    expect(tried(plate(parts, divided([0, QUADRANTS], [30, FIELD])))).toBeNull();
  });
  test('while the height is known of an earlier plate only', () => {
    const analysis = analyse(plate(blocks(30, 30, 30, 120), QUADRANTS));
    expect(candidateOf({ ...analysis, whole: 'earlier' })).toBeNull();
  });
});
