// Boxes over height and the heights at which sections overlap. Expected values: blocks placed by hand (mathematics).
import { describe, expect, it } from 'vitest';
import { boxOverHeight, heightsOfOverlap } from '../../src/build/footprints';
import type { PartView } from '../../src/build/types';
import { placedPart } from '../../src/exposure/prepared';
import { rectangle } from '../../src/geometry/region';
import type { Region } from '../../src/geometry/types';
import { emptyLayout } from '../../src/layout/defaults';
import type { Part } from '../../src/layout/types';

/** Slabs of a part; its footprint must not be asked for. */
const stack = (id: string, ...slabs: readonly [top: number, section: Region][]): PartView => ({
  id,
  height_mm: slabs.at(-1)?.[0] ?? 0,
  get footprint(): Region {
    throw new Error('the footprint was united');
  },
  sections: slabs.map(([to_mm, section], i) => ({ from_mm: slabs[i - 1]?.[0] ?? 0, to_mm, section })),
});
const left = rectangle(0, 0, 20, 10);
const right = rectangle(30, 0, 50, 10);
const SLIVER = 0.05;

describe('the box over height', () => {
  it('holds every section and unites none', () => {
    const box = boxOverHeight(stack('P1', [10, left], [20, right], [30, rectangle(5, -7, 9, 0)]));
    expect(box).toEqual({ minX: 0, minY: -7, maxX: 50, maxY: 10 });
  });
  it('of a placed part stands where the part stands, turned as it is turned', () => {
    const rings = [
      [
        [0, 0],
        [20, 0],
        [20, 10],
        [0, 10],
      ],
    ] as const;
    const part: Part = {
      id: 'P1',
      shape: 'a',
      at_mm: [100, 50],
      turn_deg: 90,
      seams: 'free',
      laser: null,
      timeFactor: 1,
    };
    const layout = { ...emptyLayout(), shapes: { a: { slabs: [{ to_mm: 5, rings }] } }, parts: [part] };
    expect(boxOverHeight(placedPart(layout, part))).toEqual({ minX: 90, minY: 50, maxX: 100, maxY: 70 });
  });
  it('of a part without sections is empty', () => {
    expect(boxOverHeight(stack('P1'))).toMatchObject({ minX: Infinity, maxX: -Infinity });
  });
});

describe('the heights at which two parts overlap', () => {
  it('are none where they only pass over one another', () => {
    const a = stack('P1', [10, left], [20, right]);
    const b = stack('P2', [10, right], [20, left]);
    expect(heightsOfOverlap(a, b, SLIVER)).toBeNull();
  });
  it('go from the lowest to the highest common one, at the tops of either', () => {
    const a = stack('P1', [10, left], [25, right], [40, left]);
    expect(heightsOfOverlap(a, stack('P2', [18, right], [60, rectangle(90, 0, 95, 5)]), SLIVER)).toEqual({
      from_mm: 10,
      to_mm: 18,
    });
    expect(heightsOfOverlap(a, stack('P2', [60, left]), SLIVER)).toEqual({ from_mm: 0, to_mm: 40 });
  });
  it('do not count slivers', () => {
    const a = stack('P1', [10, left]);
    expect(heightsOfOverlap(a, stack('P2', [10, rectangle(19.999, 0, 30, 10)]), SLIVER)).toBeNull();
    expect(heightsOfOverlap(a, stack('P2', [10, rectangle(19.99, 0, 30, 10)]), SLIVER)).not.toBeNull();
  });
});
