/**
 * One cause gives one entry of the list of problems: parts off the platform or out of reach, on plates where it is plain
 * to see what else is missing. Millimetres from the front-left corner of 400 × 400; areas are mathematics.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { paramText } from '../../src/layout/messages';
import type { Layout } from '../../src/layout/types';
import { LASERS, machine, plate, QUADRANTS, rect, standing } from '../support/plates';

const codes = (layout: Layout) =>
  analyse(layout).problems.map(({ code, params }) => [code, paramText(params['area'] ?? '')]);
const drawn = {
  strategy: 'drawn',
  zones: [{ lasers: ['L1'], rings: [rect(-200, -200, 180, 200)] }],
};
const reaching = (half: number) => ({
  lasers: machine().lasers.map((laser) => ({ ...laser, reach: rect(-half, -half, half, half) })),
});

describe('a part', () => {
  test('far off the platform is listed once', () => {
    const layout = plate([standing('A', 60, rect(5000, 0, 5040, 40))], QUADRANTS);
    expect(codes(layout)).toEqual([['part-off-platform', '1600']]);
  });
  test('half off the platform is listed once', () => {
    const layout = plate([standing('A', 60, rect(380, 100, 420, 140))], QUADRANTS);
    expect(codes(layout)).toEqual([['part-off-platform', '800']]);
  });
  test('10 mm off the platform and 20 mm in no zone is listed for both, with its own area each', () => {
    const layout = plate([standing('A', 60, rect(370, 100, 410, 140))], drawn);
    expect(codes(layout)).toEqual(
      expect.arrayContaining([
        ['part-off-platform', '400'],
        ['part-unassigned', '800'],
      ]),
    );
    expect(codes(layout)).toHaveLength(2);
  });
  test('on the platform and out of every laser’s reach is listed once', () => {
    const layout = plate([standing('A', 60, rect(360, 360, 380, 380))], QUADRANTS, {
      machine: reaching(100),
    });
    expect(codes(layout)).toEqual([['part-out-of-reach', '400']]);
  });
  test('pinned to a laser that is off is told so wherever it stands', () => {
    const off = { lasers: machine().lasers.map((laser) => ({ ...laser, on: laser.id !== LASERS[0] })) };
    const layout = plate([{ ...standing('A', 60, rect(5000, 0, 5040, 40)), laser: 'L1' }], QUADRANTS, {
      machine: off,
    });
    expect(
      codes(layout)
        .map(([code]) => code)
        .sort(),
    ).toEqual(['part-off-platform', 'pinned-laser-off']);
  });
  test('under a laser that is off stays unassigned', () => {
    const off = { lasers: machine().lasers.map((laser) => ({ ...laser, on: laser.id !== LASERS[0] })) };
    const layout = plate([standing('A', 60, rect(20, 20, 60, 60))], QUADRANTS, { machine: off });
    expect(codes(layout)).toEqual([['part-unassigned', '1600']]);
  });
});
