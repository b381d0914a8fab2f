// Shapes and stretches survive being packed for another thread: what is unpacked equals what was packed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { totalsOf } from '../../src/build/totals';
import { packShape, unpackShape } from '../../src/worker/packShape';
import { packStretches, unpackStretches } from '../../src/worker/packStretches';
import { layouts } from '../support/random';

test('shapes with circles, empty sections and several rings come back equal', () => {
  const shape = {
    slabs: [
      {
        to_mm: 5,
        rings: [
          { circle_mm: [1, -2, 3.5] as const },
          [
            [0, 0],
            [1.001, 0],
            [0, 1],
          ] as const,
        ],
      },
      { to_mm: 7.5, rings: [] },
      {
        to_mm: 9,
        rings: [
          [
            [-1, -1],
            [4, 0],
            [4, 4],
            [0, 4],
          ] as const,
        ],
      },
    ],
  };
  expect(unpackShape(packShape(shape))).toEqual(shape);
});

test('stretches of random plates come back equal', () => {
  fc.assert(
    fc.property(layouts({ bands: true, faults: true, whole: true }), (layout) => {
      const { stretches } = analyse(layout);
      const totals = stretches.map((stretch) => ({ ...stretch, figures: totalsOf(stretch.figures) }));
      const packed = packStretches(stretches, layout.machine.lasers);
      expect(unpackStretches(packed, layout.machine.lasers)).toEqual(totals);
    }),
    { numRuns: 40, seed: 20261125 },
  );
});
