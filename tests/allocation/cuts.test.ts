/**
 * New cuts on random plates: straight, parallel to the zone lines, no crumb on either side, and the loads that
 * they join come out even. Zone borders inside a part are told from new cuts by the lines ± half the band that the layout
 * names. Coordinates of hand-made plates from the front-left corner of a 400 × 400 platform.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import type { Seam } from '../../src/build/types';
import { layoutAt } from '../../src/layout/steps';
import type { Layout } from '../../src/layout/types';
import { divided, plate, QUADRANTS, rect, standing } from '../support/plates';
import { layouts, quadrants, runs, strips } from '../support/random';
import { stripNormal } from '../support/secondLibrary';

const TIMEOUT = { timeout: 60_000 };
type Line = readonly [nx: number, ny: number, c: number];

/** Where the set of lasers changes: every zone line ± half the shared band. */
function borderLines(layout: Layout): Line[] {
  const { zoning } = layoutAt(layout, 0);
  if (zoning.strategy !== 'quadrants' && zoning.strategy !== 'strips') return [];
  const half = zoning.sharedBand_mm / 2;
  const lines: Line[] =
    zoning.strategy === 'quadrants'
      ? [
          [1, 0, zoning.at_mm[0]],
          [0, 1, zoning.at_mm[1]],
        ]
      : zoning.lines_mm.map((c) => [...stripNormal(zoning.run_deg), c] as const);
  return lines.flatMap(([nx, ny, c]) => [[nx, ny, c - half] as const, [nx, ny, c + half] as const]);
}
interface Segment {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
const segmentsOf = ({ path }: Seam): Segment[] =>
  Array.from({ length: path.length / 4 }, (_, i) => {
    const [x0, y0, x1, y1] = path.subarray(4 * i, 4 * i + 4);
    return { x0, y0, x1, y1 };
  });
const off = ({ x0, y0, x1, y1 }: Segment, [nx, ny, c]: Line): number =>
  Math.max(Math.abs(nx * x0 + ny * y0 - c), Math.abs(nx * x1 + ny * y1 - c));
/** Segments of a seam that are new cuts. */
const newCuts = (layout: Layout, seam: Seam): Segment[] => {
  const lines = borderLines(layout);
  return segmentsOf(seam).filter((segment) => !lines.some((line) => off(segment, line) < 1e-6));
};
const zonings = {
  strips: strips(true),
  quadrants: quadrants(true),
  wholeField: fc.constant({ strategy: 'wholeField' }),
};
const halves = (run_deg: number) => ({
  strategy: 'strips',
  run_deg,
  lines_mm: [0],
  sharedBand_mm: 100,
  lasers: ['L1', 'L2'],
});
/** Extent of a segment along a direction. */
const along = ({ x0, y0, x1, y1 }: Segment, nx: number, ny: number): number =>
  Math.abs(nx * (x1 - x0) + ny * (y1 - y0));

describe('new cuts', () => {
  it('run as the zones do that hold at their height', () => {
    const block = standing('block', 20, rect(160, 160, 240, 240));
    const cutsIn = (layer: number, zoning: unknown): Segment[] =>
      analyse(plate([block], zoning, { process: { layer_mm: 1 } }))
        .layer(layer)
        .seams.flatMap(segmentsOf);
    for (const [lower, upper] of [
      [90, 0],
      [0, 90],
    ]) {
      const steps = divided([0, halves(lower)], [10, halves(upper)]);
      for (const [layer, run_deg] of [
        [10, lower],
        [11, upper],
      ]) {
        const cuts = cutsIn(layer, steps);
        expect(cuts).toHaveLength(1);
        // the whole side of the block, and nothing across the strips
        expect(along(cuts[0], 1, 0)).toBeCloseTo(run_deg === 0 ? 80 : 0, 6);
        expect(along(cuts[0], 0, 1)).toBeCloseTo(run_deg === 0 ? 0 : 80, 6);
      }
    }
  });
  it.each([['strips'], ['wholeField']] as const)(
    'in %s run as the zones do (along y in the whole field)',
    (name) => {
      let found = 0;
      fc.assert(
        fc.property(layouts({ zoning: zonings[name], spread: 110 }), (layout) => {
          const { zoning } = layoutAt(layout, 0);
          const [nx, ny] = zoning.strategy === 'strips' ? stripNormal(zoning.run_deg) : [1, 0];
          for (const { figures } of analyse(layout).stretches)
            for (const seam of figures.seams)
              for (const segment of newCuts(layout, seam)) {
                found++;
                expect(along(segment, nx, ny)).toBeLessThan(1e-6);
              }
        }),
        runs(40),
      );
      expect(found).toBeGreaterThan(20);
    },
  );
  it('in quadrants run along x or y', TIMEOUT, () => {
    let found = 0;
    fc.assert(
      fc.property(layouts({ zoning: zonings.quadrants, spread: 110 }), (layout) => {
        for (const { figures } of analyse(layout).stretches)
          for (const seam of figures.seams)
            for (const segment of newCuts(layout, seam)) {
              found++;
              expect(Math.min(along(segment, 1, 0), along(segment, 0, 1))).toBeLessThan(1e-6);
            }
      }),
      runs(40),
    );
    expect(found).toBeGreaterThan(20);
  });
  it.each([
    ['left–right line', rect(190, 80, 210, 100), [1, 0]],
    ['front–rear line', rect(80, 190, 100, 210), [0, 1]],
  ])('run parallel to the nearest line: the %s', (_, block, [nx, ny]) => {
    const layout = plate([standing('block', 10, block)], { ...QUADRANTS, sharedBand_mm: 60 });
    const { seams } = figuresAt(analyse(layout), 0);
    expect(seams).toHaveLength(1);
    for (const segment of newCuts(layout, seams[0])) expect(along(segment, nx, ny)).toBeLessThan(1e-9);
    expect(seams[0].length_mm).toBeCloseTo(20, 9);
  });
});

/**
 * Stars and no gap per piece: then a load changes evenly as a cut moves. An edge along a cut, or a piece more, makes it jump,
 * and a jump cannot be evened out by moving the cut.
 */
describe('lasers joined by new cuts', () => {
  const fine = { limits: { crumbArea_mm2: 0.001, crumbWidth_mm: 0.001 } };
  const seamed = {
    process: { seamOverlap_mm: 0.1, vectorCount: 'areaAndOutline', hatchInset_mm: 0.05, pieceGap_s: 0 },
  };
  it.each([['strips'], ['quadrants'], ['wholeField']] as const)(
    'in %s end within 1e-5 of each other',
    (name) => {
      let found = 0;
      fc.assert(
        fc.property(
          layouts({ zoning: zonings[name], spread: 110, shapes: 'stars', ...fine, ...seamed }),
          (layout) => {
            for (const { figures } of analyse(layout).stretches)
              for (const seam of figures.seams) {
                if (newCuts(layout, seam).length === 0) continue;
                found++;
                const [a, b] = seam.lasers.map((k) => figures.lasers[k].load_s);
                expect(
                  Math.abs(a - b) / figures.exposure_s,
                  `${seam.lasers.join(' and ')}: ${a}, ${b}`,
                ).toBeLessThan(1e-5);
              }
          },
        ),
        runs(40),
      );
      expect(found).toBeGreaterThan(20);
    },
  );
});

describe('crumbs', () => {
  /** Smallest and largest n·p of a piece. */
  const widthOf = (region: readonly Float64Array[], [nx, ny]: readonly [number, number]): number => {
    const values = region.flatMap((ring) =>
      Array.from({ length: ring.length / 2 }, (_, i) => nx * ring[2 * i] + ny * ring[2 * i + 1]),
    );
    return Math.max(...values) - Math.min(...values);
  };
  it.each([['strips'], ['wholeField']] as const)(
    'in %s are not made: what lies in one cell and ends at a new cut is large and wide enough',
    (name) => {
      let found = 0;
      const limits = { crumbArea_mm2: 20, crumbWidth_mm: 4 };
      fc.assert(
        fc.property(layouts({ zoning: zonings[name], spread: 110, limits, parts: 3 }), (layout) => {
          const { zoning } = layoutAt(layout, 0);
          const normal = zoning.strategy === 'strips' ? stripNormal(zoning.run_deg) : ([1, 0] as const);
          const borders = borderLines(layout).map(([, , c]) => c);
          for (const { figures } of analyse(layout).stretches) {
            const cutHere = figures.seams.filter((seam) => newCuts(layout, seam).length > 0);
            for (const piece of figures.pieces) {
              const touches = cutHere.some((s) => s.part === piece.part && s.lasers.includes(piece.laser));
              if (!touches || piece.laser < 0) continue;
              const ps = piece.region.flatMap((ring) =>
                Array.from(
                  { length: ring.length / 2 },
                  (_, i) => normal[0] * ring[2 * i] + normal[1] * ring[2 * i + 1],
                ),
              );
              const [min, max] = [Math.min(...ps), Math.max(...ps)];
              const inOneCell = !borders.some((c) => c > min + 1e-6 && c < max - 1e-6);
              // A piece between two zone borders, or beside none of its part's cuts, is no work of a cut.
              const ends = cutHere
                .filter((s) => s.part === piece.part && s.lasers.includes(piece.laser))
                .flatMap((s) => newCuts(layout, s))
                .map(({ x0, y0 }) => normal[0] * x0 + normal[1] * y0);
              const endsAtCut = ends.some((c) => Math.abs(c - min) < 1e-6 || Math.abs(c - max) < 1e-6);
              if (!inOneCell || !endsAtCut) continue;
              found++;
              expect(piece.area_mm2).toBeGreaterThan(20 - 1e-6);
              expect(widthOf(piece.region, normal)).toBeGreaterThan(4 - 1e-6);
            }
          }
        }),
        runs(60),
      );
      expect(found).toBeGreaterThan(20);
    },
  );
});
