/** Plates of pyramids whose every layer is another square: 300 slabs each, more than is computed in one go. Millimetres. */
import type { Layout, LayoutRing } from '../../src/layout/types';
import { plate } from './plates';

const SLABS = 300;
export const BANDED_QUADRANTS = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 40,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};

/** A square about the shape's origin. */
export const square = (side: number): LayoutRing => [
  [-side / 2, -side / 2],
  [side / 2, -side / 2],
  [side / 2, side / 2],
  [-side / 2, side / 2],
];
const pyramid = (side: number) =>
  Array.from({ length: SLABS }, (_, k) => ({ to_mm: 0.06 * (k + 1), rings: [square(side - 0.05 * k)] }));

interface Third {
  readonly at: readonly [number, number];
  readonly seams: 'free' | 'none';
}

/** Three of them; the first stands at x, the third as told. */
export const pyramids = (x: number, third: Third): Layout =>
  plate(
    [
      { id: 'P01', slabs: pyramid(60), at: [x, 10] },
      { id: 'P02', slabs: pyramid(40), at: [80, -70] },
      { id: 'P03', slabs: pyramid(44), ...third },
    ],
    BANDED_QUADRANTS,
  );
