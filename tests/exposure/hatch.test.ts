/**
 * Hatch of fragments: an inset lies inside its section, so no fragment holds more hatch than area, and the fragments of a
 * section together hold the hatch that lies in its cells [mathematics]. Areas are measured by a second implementation of
 * Gauss's formula.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { plateOf, sectionsIn } from '../../src/build/plate';
import { layerRanges } from '../../src/build/layers';
import type { DividedSection } from '../../src/exposure/types';
import type { Layout } from '../../src/layout/types';
import { drawn, layouts, runs } from '../support/random';
import { areaOf } from '../support/secondLibrary';

const sectionsOf = (layout: Layout): DividedSection[] => {
  const plate = plateOf(layout);
  return layerRanges(plate.placed, layout.zoning, layout.process.layer_mm)
    .flatMap((range) => sectionsIn(plate, range))
    .filter((section) => section !== null);
};

it('no fragment of drawn zones holds more hatch than area', { timeout: 60_000 }, () => {
  let found = 0;
  const plates = layouts({ zoning: drawn, parts: 5, spread: 110, process: { hatchInset_mm: 0.05 } });
  fc.assert(
    fc.property(plates, (layout) => {
      for (const { fragments } of sectionsOf(layout))
        for (const { area_mm2, hatch_mm2, hatch } of fragments) {
          found++;
          expect(hatch_mm2).toBeLessThanOrEqual(area_mm2 * (1 + 1e-6));
          expect(Math.abs(areaOf(hatch) - hatch_mm2)).toBeLessThan(1e-6 * Math.max(1, hatch_mm2));
        }
    }),
    runs(250),
  );
  expect(found).toBeGreaterThan(1000);
});
