/**
 * Spreading parts over the lasers. Expected values: mathematics, on blocks 20 × 20 over four quadrants with a shared band.
 * Platform millimetres.
 */
import { describe, expect, it } from 'vitest';
import { boxedParts, spreadParts } from '../../../src/commands/operations';
import type { Layout, Zoning } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';

const quadrants: Zoning = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 20,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};
/** Which quarter of the platform holds a box whole, beyond the shared band: 1 front left … 4 rear right; 0 for none. */
const quarter = (layout: Layout, id: string): number => {
  const [{ box }] = boxedParts(layout, [id]) as [ReturnType<typeof boxedParts>[number]];
  const x = box.maxX <= -10 ? 0 : box.minX >= 10 ? 1 : null;
  const y = box.maxY <= -10 ? 0 : box.minY >= 10 ? 2 : null;
  return x === null || y === null ? 0 : 1 + x + y;
};
const crowd = (count: number): Layout => ({
  ...smallPlate(),
  parts: Array.from({ length: count }, (_, i) => part(`P0${i + 1}`, 0, 0)),
});

describe('one per laser', () => {
  it('gives each of four lasers one of four parts, outside the shared band', () => {
    const layout = crowd(4);
    const spread = spreadParts(
      layout,
      quadrants,
      layout.parts.map(({ id }) => id),
    );
    expect(spread.left).toEqual([]);
    expect(spread.layout.parts.map(({ id }) => quarter(spread.layout, id)).sort()).toEqual([1, 2, 3, 4]);
  });

  it('gives each laser two of eight, apart by the spacing of the layout', () => {
    const layout = crowd(8);
    const { parts, ...rest } = spreadParts(
      layout,
      quadrants,
      layout.parts.map(({ id }) => id),
    ).layout;
    const spread: Layout = { ...rest, parts };
    const quarters = parts.map(({ id }) => quarter(spread, id)).sort();
    expect(quarters).toEqual([1, 1, 2, 2, 3, 3, 4, 4]);
    const boxes = boxedParts(
      spread,
      parts.map(({ id }) => id),
    ).map(({ box }) => box);
    boxes.forEach((a, i) =>
      boxes.slice(i + 1).forEach((b) => {
        const gap = Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY);
        expect(gap).toBeGreaterThanOrEqual(layout.limits.spacing_mm - 1e-9);
      }),
    );
  });

  it('sends a pinned part to its laser, and none to a laser that is off', () => {
    const layout = crowd(3);
    const machine = {
      ...layout.machine,
      lasers: layout.machine.lasers.map((laser) => ({ ...laser, on: laser.id !== 'L2' })),
    };
    const parts = layout.parts.map((p) => (p.id === 'P01' ? { ...p, laser: 'L4' } : p));
    const { layout: spread } = spreadParts({ ...layout, machine, parts }, quadrants, ['P01', 'P02', 'P03']);
    expect(quarter(spread, 'P01')).toBe(4);
    expect(['P02', 'P03'].map((id) => quarter(spread, id)).sort()).toEqual([1, 3]);
  });

  it('names parts for which a zone has no room and leaves them where they stood', () => {
    const layout = crowd(2);
    const wide = {
      slabs: [
        {
          to_mm: 5,
          rings: [
            [
              [-90, -90],
              [90, -90],
              [90, 90],
              [-90, 90],
            ],
          ],
        },
      ],
    } as const;
    const shapes = { ...layout.shapes, wide };
    const parts = [layout.parts[0]!, part('P02', 5, 5, 'wide')];
    const spread = spreadParts({ ...layout, shapes, parts }, quadrants, ['P01', 'P02']);
    expect(spread.left).toEqual(['P02']);
    expect(spread.layout.parts[1]!.at_mm).toEqual([5, 5]);
    expect(quarter(spread.layout, 'P01')).toBeGreaterThan(0);
  });
});
