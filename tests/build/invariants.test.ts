/**
 * What stays when a plate is turned, mirrored, shifted or its zones are split, on random plates [mathematics]. Where zones
 * do not overlap, every laser's figures stay; where they do, what is possible stays, while lasers may trade places.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { LayerFigures } from '../../src/build/types';
import { layoutAt } from '../../src/layout/steps';
import type { Layout, LayoutRing, Zoning } from '../../src/layout/types';
import { layouts, mm, runs } from '../support/random';

type Move = (x: number, y: number) => readonly [number, number];
const TIMEOUT = { timeout: 60_000 };

const moveRing = (ring: LayoutRing, move: Move): LayoutRing => {
  if ('circle_mm' in ring) throw new Error('circles are not expected here');
  return ring.map(([x, y]) => move(x, y));
};

/** One division for all heights. */
const fromPlatform = (zoning: Zoning): Layout['zoning'] => [{ from_mm: 0, zoning }];
const zoningOf = (layout: Layout): Zoning => layoutAt(layout, 0).zoning;

/** Machine and parts moved; parts turn by `turn`, shapes stay. */
function moved(layout: Layout, move: Move, turn: number, zoning: Zoning): Layout {
  const { machine } = layout;
  const lasers = machine.lasers.map((laser) => ({
    ...laser,
    foot_mm: move(...laser.foot_mm),
    reach: laser.reach && moveRing(laser.reach, move),
  }));
  const towards_deg = (machine.gasFlow.towards_deg + turn) % 360;
  return {
    ...layout,
    machine: { ...machine, lasers, gasFlow: { towards_deg } },
    parts: layout.parts.map((part) => ({
      ...part,
      at_mm: move(...part.at_mm),
      turn_deg: (part.turn_deg + turn) % 360,
    })),
    zoning: fromPlatform(zoning),
  };
}

/** A quarter turn counter-clockwise: (x, y) → (−y, x). */
const quarter: Move = (x, y) => [0 - y, x];
function turnedZoning(zoning: Zoning): Zoning {
  if (zoning.strategy === 'quadrants') {
    const [fl, fr, rl, rr] = zoning.lasers;
    return { ...zoning, at_mm: quarter(...zoning.at_mm), lasers: [rl, fl, rr, fr] };
  }
  if (zoning.strategy === 'strips') {
    // The normal turns with the strips; past 180° it is turned round, and lines and lasers run backwards. At 0° the
    // normal is +y, which turns to −x.
    const { run_deg } = zoning;
    const back = run_deg > 90 || run_deg === 0;
    const lines = zoning.lines_mm.map((c) => (back ? 0 - c : c));
    return {
      ...zoning,
      run_deg: (run_deg + 90) % 180,
      lines_mm: back ? lines.reverse() : lines,
      lasers: back ? [...zoning.lasers].reverse() : zoning.lasers,
    };
  }
  if (zoning.strategy === 'drawn')
    return {
      ...zoning,
      zones: zoning.zones.map((z) => ({ ...z, rings: z.rings.map((r) => moveRing(r, quarter)) })),
    };
  return zoning;
}

const near = (found: number, expected: number, what: string, relative = 2e-6): void => {
  const scale = Math.max(1, Math.abs(expected));
  expect(Math.abs(found - expected), `${what}: ${found} and ${expected}`).toBeLessThan(relative * scale);
};
function sameLasers(a: LayerFigures, b: LayerFigures, relative?: number): void {
  a.lasers.forEach((laser, k) => {
    near(laser.scanArea_mm2, b.lasers[k].scanArea_mm2, `area of ${laser.id}`, relative);
    near(laser.load_s, b.lasers[k].load_s, `load of ${laser.id}`, relative);
    near(laser.outline_mm, b.lasers[k].outline_mm, `outline of ${laser.id}`, relative);
    expect(laser.pieces).toBe(b.lasers[k].pieces);
  });
  expect(a.seams.length).toBe(b.seams.length);
  expect(a.witnessLines).toBe(b.witnessLines);
  samePossible(a, b, relative);
}
function samePossible(a: LayerFigures, b: LayerFigures, relative?: number): void {
  near(a.sectionArea_mm2, b.sectionArea_mm2, 'section', relative);
  near(a.unassigned_mm2, b.unassigned_mm2, 'unassigned', relative);
  near(a.bestPossible_s, b.bestPossible_s, 'best possible', relative);
  near(a.exposure_s - a.costOfCutting_s, b.exposure_s - b.costOfCutting_s, 'planned exposure', relative);
}
type Same = typeof sameLasers;
/** Cutting a polygon on a grid of 8e-6 mm, which turning does not keep. */
const GRID = 1e-5;

function compare(before: Layout, after: Layout, same: Same, relative?: number): void {
  const [a, b] = [analyse(before), analyse(after)];
  expect(a.stretches.length).toBe(b.stretches.length);
  a.stretches.forEach(({ figures }, i) => same(figures, b.stretches[i].figures, relative));
}

describe('a quarter turn of plate, zones, reach and flow', () => {
  it('changes nothing for any laser where zones do not overlap', TIMEOUT, () => {
    const turn = (layout: Layout): void =>
      compare(layout, moved(layout, quarter, 90, turnedZoning(zoningOf(layout))), sameLasers);
    fc.assert(fc.property(layouts(), turn), runs(60));
  });
  it('changes nothing in what is possible where they do', TIMEOUT, () => {
    const turn = (layout: Layout): void =>
      compare(layout, moved(layout, quarter, 90, turnedZoning(zoningOf(layout))), samePossible, GRID);
    fc.assert(fc.property(layouts({ bands: true, faults: true, reach: false }), turn), runs(60));
  });
});

describe('a mirror', () => {
  const mirror: Move = (x, y) => [0 - x, y];
  const mirrored = (layout: Layout): Layout => {
    const zoning = zoningOf(layout);
    const shapes = Object.fromEntries(
      Object.entries(layout.shapes).map(([id, shape]) => [
        id,
        { slabs: shape.slabs.map((s) => ({ ...s, rings: s.rings.map((r) => moveRing(r, mirror)) })) },
      ]),
    );
    const other = moved({ ...layout, shapes }, mirror, 0, zoning);
    const parts = other.parts.map((part) => ({ ...part, turn_deg: (360 - part.turn_deg) % 360 }));
    if (zoning.strategy !== 'quadrants') throw new Error('quadrants are expected here');
    const [fl, fr, rl, rr] = zoning.lasers;
    return {
      ...other,
      parts,
      zoning: fromPlatform({ ...zoning, at_mm: mirror(...zoning.at_mm), lasers: [fr, fl, rr, rl] }),
    };
  };
  const inQuadrants = (layout: Layout, sharedBand_mm: number): Layout => ({
    ...layout,
    zoning: fromPlatform({
      strategy: 'quadrants',
      at_mm: [12.5, -20.25],
      sharedBand_mm,
      lasers: ['L1', 'L2', 'L3', 'L4'],
    }),
  });
  it('left and right trade places, no figure changes', TIMEOUT, () => {
    fc.assert(
      fc.property(layouts(), (random) => {
        const layout = inQuadrants(random, 0);
        compare(layout, mirrored(layout), sameLasers);
      }),
      runs(40),
    );
  });
  it('with a shared band, what is possible stays', TIMEOUT, () => {
    fc.assert(
      fc.property(layouts(), (random) => {
        const layout = inQuadrants(random, 35.5);
        compare(layout, mirrored(layout), samePossible);
      }),
      runs(40),
    );
  });
});

describe('a shift of parts and zones', () => {
  it('changes nothing while all stays on the platform', TIMEOUT, () => {
    const onPlate = layouts({ spread: 40 });
    fc.assert(
      fc.property(onPlate, mm(-10, 10), mm(-10, 10), (random, dx, dy) => {
        const z = zoningOf(random);
        const shift: Move = (x, y) => [x + dx, y + dy];
        // Lines of turned strips would have to move by parts of a micrometre, which layouts do not hold.
        const run = (a: number): number => (a < 90 ? 0 : 90);
        const before = z.strategy === 'strips' ? { ...z, run_deg: run(z.run_deg) } : z;
        const platform = { ...random.machine.platform, width_mm: 400, depth_mm: 400 };
        const layout = { ...random, zoning: fromPlatform(before), machine: { ...random.machine, platform } };
        const after =
          before.strategy === 'strips'
            ? { ...before, lines_mm: before.lines_mm.map((c) => c + (before.run_deg === 0 ? dy : dx)) }
            : before.strategy === 'quadrants'
              ? { ...before, at_mm: shift(...before.at_mm) }
              : before;
        compare(layout, moved(layout, shift, 0, after), sameLasers);
      }),
      { ...runs(40), endOnFailure: true },
    );
  });
});

describe('a zone split in two for the same laser', () => {
  it('changes no area, load, seam or piece', TIMEOUT, () => {
    fc.assert(
      fc.property(layouts(), fc.integer({ min: 0, max: 3 }), mm(0.001, 0.999), (random, which, share) => {
        const zoning = zoningOf(random);
        if (zoning.strategy !== 'strips') return;
        const low = zoning.lines_mm[which - 1] ?? -200;
        const high = zoning.lines_mm[which] ?? 200;
        const extra = low + share * (high - low);
        const lines_mm = [...zoning.lines_mm, extra].sort((a, b) => a - b);
        const lasers = [...zoning.lasers];
        lasers.splice(which, 0, zoning.lasers[which]);
        compare(random, { ...random, zoning: fromPlatform({ ...zoning, lines_mm, lasers }) }, sameLasers);
      }),
      runs(80),
    );
  });
  it('changes nothing in quadrants that name one laser twice: they are strips', TIMEOUT, () => {
    fc.assert(
      fc.property(layouts(), mm(-60, 60), mm(-60, 60), (random, x, y) => {
        const lasers = ['L1', 'L2', 'L1', 'L2'];
        const quadrants: Zoning = { strategy: 'quadrants', at_mm: [x, y], sharedBand_mm: 0, lasers };
        const strips: Zoning = {
          strategy: 'strips',
          run_deg: 90,
          lines_mm: [x],
          sharedBand_mm: 0,
          lasers: ['L1', 'L2'],
        };
        compare(
          { ...random, zoning: fromPlatform(quadrants) },
          { ...random, zoning: fromPlatform(strips) },
          sameLasers,
        );
      }),
      runs(40),
    );
  });
});
