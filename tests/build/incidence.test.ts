/**
 * The largest angle of every part and laser, by hand: a square whose furthest corner is 3-4-5 from the foot (mathematics).
 */
import { expect, test } from 'vitest';
import { incidences } from '../../src/build/incidence';
import type { Piece } from '../../src/build/types';
import { rectangle } from '../../src/geometry/region';
import { emptyLayout } from '../../src/layout/defaults';

const base = emptyLayout();
const layout = {
  ...base,
  machine: {
    ...base.machine,
    lasers: [{ ...base.machine.lasers[0]!, id: 'L1', foot_mm: [0, 0] as const, workingHeight_mm: 500 }],
  },
};
const piece = (part: number, laser: number, ...box: [number, number, number, number]) =>
  ({ part, laser, region: rectangle(...box) }) as Piece;

test('is that of the furthest corner: 50 mm away at 500 mm height, spot √(1 + 0.1²) as long', () => {
  const [found, ...rest] = incidences(layout, [piece(0, 0, 0, 0, 30, 40)]);
  expect(rest).toEqual([]);
  expect(found?.angle_deg).toBeCloseTo((Math.atan(0.1) * 180) / Math.PI, 9);
  expect(found?.spot).toBeCloseTo(Math.sqrt(1.01), 9);
});
test('counts all pieces of a part together, the steepest part first, what no laser exposes not at all', () => {
  const pieces = [
    piece(0, 0, 0, 0, 3, 4),
    piece(1, 0, 0, 0, 6, 8),
    piece(0, 0, 0, 0, 9, 12),
    piece(2, -1, 0, 0, 90, 90),
  ];
  expect(incidences(layout, pieces).map(({ part }) => part)).toEqual([0, 1]);
});
