// A layout that reading accepts always gets a report: nothing is thrown, every figure is a finite number and the books
// are in order (Σ scan areas − double exposure + unassigned = section area, 1e-6). Layouts are random: shapes with
// holes, islands and outlines that cross themselves, parts anywhere on and off the platform, every division, lasers
// switched off, short reach, pins, seams "none". The seeds are pinned and stand in the
// names of the tests; acceptance and refusal have a floor each, so a run that tries nothing fails.
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

/** What happened to the layouts of one run. */
interface Tally {
  accepted: number;
  refused: Record<string, number>;
  reports: number;
  outside: number;
}
const RUNS = 100;
const SEEDS = [31, 1999, 20261125, 7] as const;

/** One layout through reading and reporting; what is unsound fails the test. */
function tried(json: unknown, height: number, tally: Tally): void {
  const read = readLayoutValue(json);
  if (!read.ok) {
    tally.refused[read.fault.code] = (tally.refused[read.fault.code] ?? 0) + 1;
    return;
  }
  tally.accepted += 1;
  const made = reportAt(read.value, height);
  if (!made.ok) {
    expect(made.fault.code).toBe('height-outside-build');
    tally.outside += 1;
    return;
  }
  tally.reports += 1;
  const { lasers: each, build } = made.value;
  expect(wrongWith(made.value, JSON.stringify(each) + JSON.stringify(build))).toBeNull();
}
const newTally = (): Tally => ({ accepted: 0, refused: {}, reports: 0, outside: 0 });

test.each(SEEDS)('seed %i: whatever reading accepts gets a sound report', { timeout: 60_000 }, (seed) => {
  const tally = newTally();
  fc.assert(
    fc.property(layout, fc.integer({ min: 0, max: 30 }), (json, height) => tried(json, height, tally)),
    { seed, numRuns: RUNS },
  );
  // Random outlines on a coarse grid: some enclose nothing and are refused, most do not and are read.
  const refused = Object.values(tally.refused).reduce((sum, count) => sum + count, 0);
  expect(tally.accepted + refused).toBe(RUNS);
  expect(tally.reports + tally.outside).toBe(tally.accepted);
  // The whole tally is shown where the floor is missed.
  expect({ ...tally, enough: tally.reports >= RUNS / 4 && refused > 0 }).toMatchObject({ enough: true });
});

/** Something every layout must not hold, put into one that may be sound, with the code it is refused by. */
type Json = Record<string, unknown>;
const SPOILS: readonly (readonly [code: string, spoil: (json: Json) => Json])[] = [
  ['layout-wrong-format', (json) => ({ ...json, format: 'evenplate' })],
  ['layout-newer-version', (json) => ({ ...json, version: 99 })],
  ['layout-unknown-key', (json) => ({ ...json, colour: 'red' })],
  [
    'layout-missing-key',
    (json) => Object.fromEntries(Object.entries(json).filter(([key]) => key !== 'process')),
  ],
  ['layout-wrong-value', (json) => ({ ...json, allocation: 'fair' })],
  [
    'layout-wrong-value',
    (json) => ({ ...json, process: { ...(json['process'] as Json), speed_mm_s: 1e300 } }),
  ],
];

test.each(SEEDS)('seed %i: the same layouts with one thing spoilt are all refused', (seed) => {
  const seen: Record<string, number> = {};
  fc.assert(
    fc.property(layout, fc.constantFrom(...SPOILS), (json, [code, spoil]) => {
      const read = readLayoutValue(spoil(json as unknown as Json));
      expect(read.ok ? 'accepted' : read.fault.code).toBe(code);
      seen[code] = (seen[code] ?? 0) + 1;
    }),
    { seed, numRuns: RUNS },
  );
  expect(new Set(Object.keys(seen))).toEqual(new Set(SPOILS.map(([code]) => code)));
});
