/**
 * Figures agree with each other and with their own outlines on random plates of every strategy, with lasers off, short
 * reach, pins, seams "none" and whole parts. Most figures come from sweeps over the part and outlines are made when somebody
 * looks, so areas and lengths are measured again on the outlines by Gauss's formula and by distances [mathematics].
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { coverage } from '../../src/build/checkers';
import { layerIsSound } from '../../src/build/sound';
import type { LayerFigures } from '../../src/build/types';
import type { Layout } from '../../src/layout/types';
import { layouts, quadrants, runs, strips } from '../support/random';
import { areaOf, perimeterOf } from '../support/secondLibrary';

const TIMEOUT = { timeout: 60_000 };
const processes = fc.record({
  hatchInset_mm: fc.constantFrom(0, 0.05, 0.8),
  vectorCount: fc.constantFrom('area' as const, 'areaAndOutline' as const),
  seamOverlap_mm: fc.constantFrom(0, 0.1),
});
const any = fc
  .tuple(layouts({ bands: true, faults: true, whole: true }), processes)
  .map(([layout, own]): Layout => ({ ...layout, process: { ...layout.process, ...own } }));
/** Zones made of lines, every laser on and reaching all: then all that a piece ends at is outline or seam. */
const lines = fc.oneof(quadrants(true), strips(true), fc.constant({ strategy: 'wholeField' }));
const whole = fc
  .tuple(layouts({ zoning: lines, whole: true, spread: 60 }), processes)
  .map(([layout, own]): Layout => ({ ...layout, process: { ...layout.process, ...own } }));

const layersOf = (layout: Layout): LayerFigures[] => analyse(layout).stretches.map(({ figures }) => figures);
const near = (found: number, expected: number, what: string, relative = 1e-6): void =>
  expect(Math.abs(found - expected), `${what}: ${found}, on the outlines ${expected}`).toBeLessThan(
    relative * Math.max(100, Math.abs(expected)),
  );
const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

it('every layer of every division is sound', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      const analysis = analyse(layout);
      for (const { figures } of analysis.stretches) expect(layerIsSound(analysis, figures)).toBeNull();
    }),
    runs(80),
  );
});

it('cells lie apart, their areas by Gauss no more than the platform', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      const [division] = analyse(layout).divisions;
      const all = sum(division.cells.map(({ region }) => areaOf(region)));
      const platform = 340 * 340;
      expect(coverage(division).twice).toBeLessThan(1e-7);
      expect(all).toBeLessThan(platform * (1 + 1e-7));
      expect(coverage(division).covered).toBeCloseTo(all / platform, 9);
    }),
    runs(40),
  );
});

it('a cut costs time or none', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      for (const { costOfCutting_s } of layersOf(layout)) expect(costOfCutting_s).toBeGreaterThanOrEqual(0);
    }),
    runs(40),
  );
});

it('pieces have the area of their outlines', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      for (const { pieces } of layersOf(layout))
        for (const { area_mm2, region } of pieces) near(area_mm2, areaOf(region), 'area', 2e-6);
    }),
    runs(40),
  );
});

it('seams are as long as their paths', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      for (const figures of layersOf(layout)) {
        const lengths = figures.seams.map(({ path }) => {
          let length = 0;
          for (let i = 0; i < path.length; i += 4)
            length += Math.hypot(path[i + 2] - path[i], path[i + 3] - path[i + 1]);
          return length;
        });
        figures.seams.forEach((seam, i) => near(seam.length_mm, lengths[i], 'seam'));
        near(figures.seamLength_mm, sum(lengths), 'all seams', 1e-5);
      }
    }),
    runs(40),
  );
});

it('true outline and seams together are the outline of a piece', TIMEOUT, () => {
  fc.assert(
    fc.property(whole, (layout) => {
      for (const { pieces, unassigned_mm2 } of layersOf(layout)) {
        if (unassigned_mm2 > 0) continue;
        for (const { outline_mm, seam_mm, region } of pieces)
          near(outline_mm + seam_mm, perimeterOf(region), 'outline', 2e-5);
      }
    }),
    runs(40),
  );
});

it('hatch lies in its piece: no more than the area and half the overlap', TIMEOUT, () => {
  fc.assert(
    fc.property(any, (layout) => {
      const half = layout.process.seamOverlap_mm / 2;
      for (const { pieces } of layersOf(layout)) {
        for (const { laser, hatchArea_mm2, area_mm2, seam_mm } of pieces) {
          if (laser < 0) continue;
          const most = area_mm2 + seam_mm * half;
          expect(hatchArea_mm2).toBeLessThan(most * (1 + 1e-6) + 1e-6);
          if (layout.process.hatchInset_mm === 0) near(hatchArea_mm2, most, 'hatch');
        }
      }
    }),
    runs(40),
  );
});
