// Areas held against a second general-purpose library: jsts 2.12, a port of JTS. Random plates; zones, reach and sections
// are set up there from the layout's own words. 1e-6 of the section area; slivers of rounding up to 1e-3 mm².
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { LayerFigures, Stretch } from '../../src/build/types';
import type { Layout } from '../../src/layout/types';
import { anyZoning, drawn, layouts, mm, runs, stepped } from '../support/random';
import { allowedFor, areaOf, bySet, holder, holds, sectionAt, zoningAt } from '../support/secondLibrary';

const middle = (layout: Layout, stretch: Stretch): number =>
  (stretch.firstLayer - 0.5) * layout.process.layer_mm;
const near = (found: number, expected: number, scale: number, what: string): void => {
  expect(Math.abs(found - expected), `${what}: ${found}, jsts ${expected}`).toBeLessThan(1e-3 + 1e-6 * scale);
};

/** Per laser the area that it alone may expose, then unassigned area, then the area of all sections. */
function expectedAreas(layout: Layout, z: number): { own: number[]; unassigned: number; all: number } {
  const allowed = allowedFor(layout, z);
  const own = layout.machine.lasers.map(() => 0);
  let unassigned = 0;
  let all = 0;
  for (const part of layout.parts) {
    const section = sectionAt(layout, part, z);
    all += section.getArea();
    for (const { set, region } of bySet(section, allowed(part))) {
      const laser = own.findIndex((_, k) => set === 1 << k);
      if (laser >= 0) own[laser] += region.getArea();
      if (set === 0) unassigned += region.getArea();
    }
  }
  return { own, unassigned, all };
}
/** The lowest and the highest sections of the build. */
const ends = (layout: Layout): Stretch<LayerFigures>[] => {
  const { stretches } = analyse(layout);
  return stretches.length > 1 ? [stretches[0], stretches[stretches.length - 1]] : [...stretches];
};
const TIMEOUT = 60_000;

describe('where zones do not overlap', () => {
  it('every laser exposes section ∩ zone ∩ reach, and the rest is unassigned', { timeout: TIMEOUT }, () => {
    fc.assert(
      fc.property(layouts({ faults: true, parts: 3 }), (layout) => {
        for (const stretch of ends(layout)) {
          const { figures } = stretch;
          const { own, unassigned, all } = expectedAreas(layout, middle(layout, stretch));
          figures.lasers.forEach(({ id, scanArea_mm2 }, k) => near(scanArea_mm2, own[k], all, id));
          near(figures.unassigned_mm2, unassigned, all, 'unassigned');
          near(figures.sectionArea_mm2, all, all, 'section');
        }
      }),
      runs(40),
    );
  });
});

describe('where zones change over height', () => {
  it('every layer is divided as its own step says', { timeout: TIMEOUT }, () => {
    let divisions = 0;
    const any = stepped(layouts({ faults: true, parts: 2 }), 2, anyZoning(false));
    fc.assert(
      fc.property(any, (layout) => {
        const { stretches } = analyse(layout);
        divisions += new Set(stretches.map((s) => zoningAt(layout, middle(layout, s)))).size > 1 ? 1 : 0;
        for (const stretch of stretches) {
          const { figures } = stretch;
          const { own, unassigned, all } = expectedAreas(layout, middle(layout, stretch));
          figures.lasers.forEach(({ id, scanArea_mm2 }, k) => near(scanArea_mm2, own[k], all, id));
          near(figures.unassigned_mm2, unassigned, all, 'unassigned');
        }
      }),
      runs(30),
    );
    expect(divisions).toBeGreaterThan(8);
  });
});

/** Points spread evenly over a box, by the additive sequence of the plastic number (Roberts 2018 [memory]). */
const spots = (count: number, from: number, to: number): [number, number][] =>
  Array.from({ length: count }, (_, i) => [
    from + ((0.5 + (i + 1) * 0.7548776662466927) % 1) * (to - from),
    from + ((0.5 + (i + 1) * 0.5698402909980532) % 1) * (to - from),
  ]);

/** Every spot of the section lies in one piece, and the piece's laser may expose it; no piece lies elsewhere. */
function liesWell(layout: Layout, stretch: Stretch<LayerFigures>): void {
  const allowed = allowedFor(layout, middle(layout, stretch));
  const { pieces } = stretch.figures;
  layout.parts.forEach((part, p) => {
    const mine = pieces.filter((piece) => piece.part === p);
    for (const { area_mm2, region } of mine) near(area_mm2, areaOf(region), area_mm2, 'piece');
    const inSection = holder(sectionAt(layout, part, middle(layout, stretch)));
    const mayExpose = allowed(part).map(holder);
    for (const [x, y] of spots(400, -60, 60)) {
      const spot = [part.at_mm[0] + x, part.at_mm[1] + y] as const;
      const within = mine.filter(({ region }) => holds(region, ...spot));
      expect(within.length, `pieces at ${spot.join(', ')}`).toBe(inSection(...spot) ? 1 : 0);
      const able = mayExpose.map((may) => may(...spot));
      for (const { laser } of within)
        expect(laser < 0 ? !able.includes(true) : able[laser], `laser at ${spot.join(', ')}`).toBe(true);
    }
  });
}

describe('where zones overlap', () => {
  const check = (layout: Layout): void => ends(layout).forEach((stretch) => liesWell(layout, stretch));
  it(
    'pieces lie side by side in what their laser may expose and fill the section',
    { timeout: TIMEOUT },
    () => {
      fc.assert(fc.property(layouts({ bands: true, faults: true, parts: 3 }), check), runs(25));
    },
  );
  it('the same with parts that keep one laser', { timeout: TIMEOUT }, () => {
    fc.assert(fc.property(layouts({ bands: true, whole: true, parts: 3 }), check), runs(15));
  });
  it('unassigned is what no zone in reach of a working laser holds', { timeout: TIMEOUT }, () => {
    const any = fc.oneof(layouts({ faults: true, zoning: drawn }), layouts({ bands: true, faults: true }));
    fc.assert(
      fc.property(any, (layout) => {
        const [stretch] = ends(layout);
        const { unassigned, own, all } = expectedAreas(layout, middle(layout, stretch));
        near(stretch.figures.unassigned_mm2, unassigned, all, 'unassigned');
        stretch.figures.lasers.forEach(({ id, scanArea_mm2 }, k) => {
          expect(scanArea_mm2, `${id}, exclusive ${own[k]}`).toBeGreaterThan(own[k] - 1e-3 - 1e-6 * all);
        });
      }),
      runs(40),
    );
  });
});

describe('a platform that is no square', () => {
  it('ends at its own edges', () => {
    fc.assert(
      fc.property(layouts({ parts: 3 }), mm(100, 400), mm(100, 400), (square, width_mm, depth_mm) => {
        const platform = { ...square.machine.platform, width_mm, depth_mm };
        const layout = { ...square, machine: { ...square.machine, platform } };
        const [stretch] = ends(layout);
        const { unassigned, all } = expectedAreas(layout, middle(layout, stretch));
        near(stretch.figures.unassigned_mm2, unassigned, all, 'unassigned');
      }),
      runs(30),
    );
  });
});
