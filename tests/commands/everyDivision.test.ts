/** The plate under every division. Expected: the strategies and bands as counted by hand; areas by mathematics. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { everyDivision, USUAL_BAND_MM } from '../../src/commands/operations/everyDivision';
import type { Layout } from '../../src/layout/types';
import { divided, LASERS, plate, QUADRANTS, rect, standing } from '../support/plates';

const part = standing('P01', 12, rect(150, 170, 250, 230));
const words = (layouts: readonly Layout[]): string[] =>
  layouts.map(({ zoning: [{ zoning }] }) =>
    'sharedBand_mm' in zoning
      ? `${zoning.strategy} ${'run_deg' in zoning ? zoning.run_deg : ''} ${zoning.sharedBand_mm}`
      : zoning.strategy,
  );

describe('every division of a plate', () => {
  it('begins with the present one and has each once: two bands of quadrants and of strips both ways, and the whole field', () => {
    const layouts = everyDivision(plate([part], QUADRANTS), 0);
    expect(words(layouts)).toEqual([
      'quadrants  0',
      `quadrants  ${USUAL_BAND_MM}`,
      'strips 90 0',
      `strips 90 ${USUAL_BAND_MM}`,
      'strips 0 0',
      `strips 0 ${USUAL_BAND_MM}`,
      'wholeField',
    ]);
  });

  it('keeps a band of its own and lines that were moved as the first', () => {
    const moved = { ...QUADRANTS, at_mm: [12, -7], sharedBand_mm: 25 };
    const layouts = everyDivision(plate([part], moved), 0);
    expect(layouts[0]!.zoning[0]!.zoning).toMatchObject(moved);
    expect(words(layouts).slice(0, 3)).toEqual([
      'quadrants  25',
      'quadrants  0',
      `quadrants  ${USUAL_BAND_MM}`,
    ]);
  });

  it('changes the zones at the height shown only, and nothing else', () => {
    const layout = plate([part], divided([0, QUADRANTS], [6, { strategy: 'wholeField' }]));
    const layouts = everyDivision(layout, 8);
    expect(layouts.length).toBeGreaterThan(5);
    for (const other of layouts) {
      expect(other.zoning[0]).toEqual(layout.zoning[0]);
      expect(other.zoning[1]!.from_mm).toBe(6);
      expect({ ...other, zoning: [] }).toEqual({ ...layout, zoning: [] });
    }
  });

  it('leaves the section what it is under each: 100 × 60 mm, unassigned none', () => {
    for (const layout of everyDivision(plate([part], QUADRANTS), 0)) {
      const { sectionArea_mm2, unassigned_mm2, lasers } = analyse(layout).layer(1);
      expect(sectionArea_mm2).toBeCloseTo(6000, 6);
      expect(unassigned_mm2).toBe(0);
      expect(lasers.map(({ id }) => id)).toEqual(LASERS);
    }
  });
});
