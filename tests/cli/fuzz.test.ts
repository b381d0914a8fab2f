// A layout that reading accepts always gets a report: nothing is thrown, every figure is a finite number and the books
// are in order (Σ scan areas − double exposure + unassigned = section area, 1e-6). Layouts are random: shapes with
// holes, islands and outlines that cross themselves, parts anywhere on and off the platform, every division, lasers
// switched off, short reach, pins, seams "none". The seed is fixed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reportAt } from '../../src/cli/analyse';
import type { Report } from '../../src/export/report';
import { emptyLayout } from '../../src/layout/defaults';
import { readLayoutValue } from '../../src/layout/read';

const mm = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
const coarse = (min: number, max: number) =>
  fc.integer({ min: min / 10, max: max / 10 }).map((tens) => tens * 10);
const laserId = fc.constantFrom('L1', 'L2', 'L3', 'L4');

/** Points on a coarse grid: edges that touch, cross and lie on each other are common. */
const gridPoint = fc.tuple(coarse(-30, 30), coarse(-30, 30));
const ring = fc.oneof(
  fc.array(gridPoint, { minLength: 3, maxLength: 8 }),
  fc.array(fc.tuple(mm(-30, 30), mm(-30, 30)), { minLength: 3, maxLength: 8 }),
  fc.record({ circle_mm: fc.tuple(coarse(-20, 20), coarse(-20, 20), coarse(10, 30)) }),
);
const shape = fc
  .array(
    fc.record({
      high: fc.integer({ min: 1, max: 20 }),
      rings: fc.array(ring, { minLength: 1, maxLength: 3 }),
    }),
    {
      minLength: 1,
      maxLength: 3,
    },
  )
  .map((slabs) => {
    let top = 0;
    return { slabs: slabs.map(({ high, rings }) => ({ to_mm: (top += high), rings })) };
  });
const part = fc.record({
  shape: fc.constantFrom('a', 'b', 'c'),
  at_mm: fc.oneof(fc.tuple(coarse(-200, 200), coarse(-200, 200)), fc.tuple(mm(-200, 200), mm(-200, 200))),
  turn_deg: fc.oneof(fc.constantFrom(0, 90, 45), fc.integer({ min: 0, max: 359 })),
  seams: fc.constantFrom('free', 'free', 'none'),
  laser: fc.option(laserId, { freq: 4 }),
  timeFactor: fc.constantFrom(1, 1, 1.5),
});
const band = fc.constantFrom(0, 0, 10, 40, 400);
const strips = fc.uniqueArray(coarse(-160, 160), { minLength: 1, maxLength: 6 }).chain((lines) =>
  fc.record({
    strategy: fc.constant('strips'),
    run_deg: fc.constantFrom(0, 30, 45, 90, 135),
    lines_mm: fc.constant([...lines].sort((a, b) => a - b)),
    sharedBand_mm: band,
    lasers: fc.array(laserId, { minLength: lines.length + 1, maxLength: lines.length + 1 }),
  }),
);
const zoning = fc.oneof(
  fc.record({
    strategy: fc.constant('quadrants'),
    at_mm: fc.tuple(coarse(-180, 180), coarse(-180, 180)),
    sharedBand_mm: band,
    lasers: fc.array(laserId, { minLength: 4, maxLength: 4 }),
  }),
  strips,
  fc.constant({ strategy: 'wholeField' }),
  fc.record({
    strategy: fc.constant('drawn'),
    zones: fc.array(
      fc.record({
        lasers: fc.array(laserId, { minLength: 1, maxLength: 3 }),
        rings: fc.tuple(
          fc.record({ circle_mm: fc.tuple(coarse(-100, 100), coarse(-100, 100), coarse(20, 150)) }),
        ),
      }),
      { maxLength: 4 },
    ),
  }),
);
/** One to three divisions over height. */
const steps = fc
  .tuple(
    zoning,
    fc.uniqueArray(fc.record({ from_mm: mm(1, 40), zoning }), {
      maxLength: 2,
      selector: ({ from_mm }) => from_mm,
    }),
  )
  .map(([lowest, above]) => [{ from_mm: 0, zoning: lowest }, ...above.sort((a, b) => a.from_mm - b.from_mm)]);
const lasers = fc.tuple(
  ...emptyLayout().machine.lasers.map((laser) =>
    fc
      .record({
        on: fc.constantFrom(true, true, true, false),
        reach: fc.constantFrom(null, null, { circle_mm: [...laser.foot_mm, 130] }),
      })
      .map((own) => ({ ...laser, ...own })),
  ),
);
const layout = fc
  .record({
    shapes: fc.record({ a: shape, b: shape, c: shape }),
    parts: fc.array(part, { maxLength: 8 }),
    zoning: steps,
    lasers,
    allocation: fc.constantFrom('balanced', 'balanced', 'wholeParts'),
    vectorCount: fc.constantFrom('area', 'areaAndOutline'),
    seamOverlap_mm: fc.constantFrom(0, 0.1),
  })
  .map(({ shapes, parts, zoning: chosen, lasers: some, allocation, vectorCount, seamOverlap_mm }) => {
    const empty = emptyLayout();
    return {
      ...empty,
      machine: { ...empty.machine, lasers: some },
      process: { ...empty.process, vectorCount, seamOverlap_mm },
      shapes,
      parts: parts.map((own, index) => ({ id: `P${index}`, ...own })),
      zoning: chosen,
      allocation,
    };
  });

/** What is wrong with a report; null where nothing is. */
function wrongWith({ lasers: each, layer }: Report, text: string): string | null {
  if (/null/.test(text)) return 'a figure that is no number';
  const scanned = each.reduce((sum, laser) => sum + laser.scanArea_mm2, 0);
  const books = scanned - layer.doubleExposed_mm2 + layer.unassigned_mm2;
  if (Math.abs(books - layer.sectionArea_mm2) > 1e-6 * Math.max(1, layer.sectionArea_mm2))
    return 'books out of order';
  const slowest = Math.max(...each.map((laser) => laser.load_s));
  if (Math.abs(slowest - layer.exposure_s) > 1e-9 * Math.max(1, slowest))
    return 'exposure is not the slowest load';
  if (layer.bestPossible_s > layer.exposure_s * (1 + 1e-9) + 1e-9) return 'better than the best possible';
  return null;
}

test('whatever reading accepts gets a sound report at every height', { timeout: 120_000 }, () => {
  let reports = 0;
  fc.assert(
    fc.property(layout, fc.integer({ min: 0, max: 30 }), (json, height) => {
      const read = readLayoutValue(json);
      if (!read.ok) return;
      const made = reportAt(read.value, height);
      if (!made.ok) return;
      reports++;
      expect(
        wrongWith(made.value, JSON.stringify(made.value.lasers) + JSON.stringify(made.value.build)),
      ).toBeNull();
    }),
    { seed: 31, numRuns: 400 },
  );
  expect(reports).toBeGreaterThan(100);
});
