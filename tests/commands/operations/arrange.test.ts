/**
 * Aligning, distributing and mirroring. Expected values: mathematics, on blocks 20 × 20 and a stepped part
 * 30 × 30 whose places are worked out by hand. Platform millimetres, degrees counter-clockwise.
 */
import { describe, expect, it } from 'vitest';
import {
  alignParts,
  boxedParts,
  distributeParts,
  mirrorPlaces,
  type Edge,
} from '../../../src/commands/operations';
import type { Layout } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';

/** Blocks at (−60, −60) and (60, −50), the stepped part at (10, 60): boxes −70 … −50, 50 … 70 and −5 … 25 in x. */
const plate = (): Layout => ({
  ...smallPlate(),
  parts: [part('P01', -60, -60), part('P02', 60, -50), part('P03', 10, 60, 'stepped')],
});
const all = ['P01', 'P02', 'P03'];
const places = (layout: Layout) => layout.parts.map(({ at_mm }) => at_mm);

describe('align', () => {
  it.each<[Edge, readonly (readonly [number, number])[]]>([
    // box of all: x −70 … 70, y −70 … 75
    [
      'left',
      [
        [-60, -60],
        [-60, -50],
        [-55, 60],
      ],
    ],
    [
      'right',
      [
        [60, -60],
        [60, -50],
        [55, 60],
      ],
    ],
    [
      'centre',
      [
        [0, -60],
        [0, -50],
        [0, 60],
      ],
    ],
    [
      'front',
      [
        [-60, -60],
        [60, -60],
        [10, -55],
      ],
    ],
    [
      'back',
      [
        [-60, 65],
        [60, 65],
        [10, 60],
      ],
    ],
    [
      'middle',
      [
        [-60, 2.5],
        [60, 2.5],
        [10, 2.5],
      ],
    ],
  ])('%s: every box has that edge where the box of all has it', (edge, expected) => {
    expect(places(alignParts(plate(), all, edge))).toEqual(expected);
  });

  it('goes by the turned part: a square of 20 turned by 45° reaches 14.142 mm to each side', () => {
    const turned = {
      ...plate(),
      parts: plate().parts.map((p) => (p.id === 'P02' ? { ...p, turn_deg: 45 } : p)),
    };
    const [first, second] = places(alignParts(turned, ['P01', 'P02'], 'left'));
    expect(first).toEqual([-60, -60]);
    expect(second![0]).toBeCloseTo(-70 + 10 * Math.SQRT2, 3);
  });

  it('goes by a fixed part where there is one', () => {
    // the second block's left edge stands at x = 50; the stepped part reaches 15 mm to the left of its origin
    expect(places(alignParts(plate(), all, 'left', ['P02']))).toEqual([
      [60, -60],
      [60, -50],
      [65, 60],
    ]);
  });

  it('leaves parts that are not named, one part alone, and what is in line already, as they are', () => {
    const layout = plate();
    expect(places(alignParts(layout, ['P01', 'P02'], 'left'))[2]).toEqual([10, 60]);
    expect(alignParts(layout, ['P01'], 'left')).toBe(layout);
    const aligned = alignParts(layout, all, 'left');
    expect(alignParts(aligned, all, 'left')).toBe(aligned);
  });
});

describe('distribute', () => {
  it('makes the gaps equal: 140 mm hold 20 + 30 + 20 and two gaps of 35', () => {
    const layout = distributeParts(plate(), all, 'x', 'gaps');
    const boxes = boxedParts(layout, ['P01', 'P03', 'P02']).map(({ part: { id }, box }) => [
      id,
      box.minX,
      box.maxX,
    ]);
    expect(boxes).toEqual([
      ['P01', -70, -50],
      ['P02', 50, 70],
      ['P03', -15, 15],
    ]);
  });

  it('makes the centres equally distant in y: −60, 0, 60', () => {
    const layout = distributeParts(plate(), all, 'y', 'centres');
    expect(layout.parts.map(({ at_mm }) => at_mm[1])).toEqual([-60, 0, 60]);
  });

  it('keeps to the ends over a long row: twelve parts between −110 and 110 stand 20 mm apart', () => {
    const row = Array.from({ length: 12 }, (_, i) => part(`Q${i}`, i === 11 ? 110 : -110 + i * i * 0.731, 0));
    const layout = distributeParts(
      { ...plate(), parts: row },
      row.map(({ id }) => id),
      'x',
      'centres',
    );
    layout.parts.forEach(({ at_mm }, i) => expect(at_mm[0]).toBeCloseTo(-110 + 20 * i, 9));
  });

  it('needs three parts', () => {
    const layout = plate();
    expect(distributeParts(layout, ['P01', 'P02'], 'x', 'gaps')).toBe(layout);
  });
});

/** An L that no mirror leaves as it is, and a wedge that equals its mirror image in y. */
const odd = (): Layout => ({
  ...plate(),
  shapes: {
    ...plate().shapes,
    angle: {
      slabs: [
        {
          to_mm: 10,
          rings: [
            [
              [0, 0],
              [30, 0],
              [30, 10],
              [10, 10],
              [10, 20],
              [0, 20],
            ],
          ],
        },
      ],
    },
    wedge: {
      slabs: [
        {
          to_mm: 10,
          rings: [
            [
              [0, -10],
              [30, 0],
              [0, 10],
            ],
            { circle_mm: [10, 0, 2] },
          ],
        },
      ],
    },
  },
});

describe('mirror', () => {
  it('swaps left and right about the middle of the common box and changes no other coordinate', () => {
    const { layout, unlike } = mirrorPlaces(plate(), all, 'x');
    expect(places(layout)).toEqual([
      [60, -60],
      [-60, -50],
      [-10, 60],
    ]);
    expect(unlike).toEqual([]);
  });

  it('turns a shape that equals its mirror image in y by 180° less its turn, so that the plate is mirrored', () => {
    // wedge at 30° points to 30°; its mirror image points to 150°
    const parts = [part('P01', -60, 0), { ...part('P02', 40, 0, 'wedge'), turn_deg: 30 }];
    const { layout, unlike } = mirrorPlaces({ ...odd(), parts }, ['P01', 'P02'], 'x');
    expect(layout.parts[1]!.turn_deg).toBe(150);
    expect(unlike).toEqual([]);
    const [before] = boxedParts({ ...odd(), parts }, ['P02']);
    const [after] = boxedParts(layout, ['P02']);
    const axis = (-70 + before!.box.maxX) / 2;
    expect(after!.box.minX).toBeCloseTo(2 * axis - before!.box.maxX, 3);
    expect(after!.box.maxX).toBeCloseTo(2 * axis - before!.box.minX, 3);
    expect(layout.parts[1]!.at_mm[0]).toBeCloseTo(2 * axis - 40, 3);
  });

  it('names parts that are unlike their mirror image, and never changes a shape', () => {
    const parts = [part('P01', -60, 0), part('P02', 40, 0, 'angle')];
    const before = { ...odd(), parts };
    const { layout, unlike } = mirrorPlaces(before, ['P01', 'P02'], 'x');
    expect(unlike).toEqual(['P02']);
    expect(layout.shapes).toBe(before.shapes);
  });

  it('twice is as before where shapes equal their mirror image', () => {
    const once = mirrorPlaces(plate(), all, 'y').layout;
    expect(once).not.toEqual(plate());
    expect(mirrorPlaces(once, all, 'y').layout).toEqual(plate());
  });
});
