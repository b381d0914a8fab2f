/**
 * Random plates for property tests: concave outlines, holes, U and ring shapes in one to three slabs, turned and set
 * anywhere on and off a 340 mm platform; every division; lasers off, short reach, pins, seams "none". Outlines hold points
 * only, so that other libraries see the same polygons. Millimetres; seeds are fixed and printed on failure.
 */
import fc from 'fast-check';
import { readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { machine, PROCESS } from './plates';

export const SEED = 20261125;
/** Half a minute ends a property, the search for a smaller example included. */
export const runs = (numRuns: number) => ({
  seed: SEED,
  numRuns,
  interruptAfterTimeLimit: 30_000,
  markInterruptAsFailure: true,
});

type Points = [number, number][];

/** Whole micrometres. */
export const mm = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((um) => um / 1000);
const micron = (value: number): number => Math.round(value * 1000) / 1000;

/** Outlines of parts: stars alone have no edges that run along a cut. */
type Kind = 'all' | 'stars';

/** A star about (x, y): corners at even angles, radii as given. */
const star = (x: number, y: number, radii: readonly number[]): Points =>
  radii.map((r, i) => {
    const angle = (2 * Math.PI * i) / radii.length;
    return [micron(x + r * Math.cos(angle)), micron(y + r * Math.sin(angle))];
  });
const radii = (least: number, most: number, few: number, many: number): fc.Arbitrary<number[]> =>
  fc.array(mm(least, most), { minLength: few, maxLength: many });

/** Holes of a star stay within 7.1 of the centre, its outline stays outside 13·cos(π/7) > 11. */
const starRings = fc
  .record({ outer: radii(13, 55, 7, 24), holes: fc.array(radii(1, 3, 3, 8), { maxLength: 2 }) })
  .map(({ outer, holes }) => [star(0, 0, outer), ...holes.map((h, i) => star(i === 0 ? -4 : 4, 0, h))]);
const uRings = fc.tuple(mm(20, 90), mm(20, 90), mm(2, 9), mm(2, 15)).map(([w, h, wall, base]): Points[] => [
  [
    [0, 0],
    [w, 0],
    [w, h],
    [micron(w - wall), h],
    [micron(w - wall), base],
    [wall, base],
    [wall, h],
    [0, h],
  ],
]);
const ringRings = fc.tuple(mm(10, 50), mm(0.3, 0.9), fc.integer({ min: 6, max: 30 })).map(([r, ratio, n]) => {
  const round = (radius: number): Points =>
    star(
      0,
      0,
      Array.from({ length: n }, () => radius),
    );
  return [round(r), round(r * ratio)];
});
/** An outline and its holes. */
const rings: fc.Arbitrary<Points[]> = fc.oneof(
  { weight: 3, arbitrary: starRings },
  { weight: 1, arbitrary: uRings },
  { weight: 1, arbitrary: ringRings },
);

const shapeOf = (kind: Kind) =>
  fc
    .array(fc.record({ high: fc.integer({ min: 1, max: 20 }), rings: kind === 'all' ? rings : starRings }), {
      minLength: 1,
      maxLength: 3,
    })
    .map((slabs) => {
      let top = 0;
      return { slabs: slabs.map(({ high, rings: outlines }) => ({ to_mm: (top += high), rings: outlines })) };
    });

const LASER_IDS = ['L1', 'L2', 'L3', 'L4'];
const laserId = fc.constantFrom(...LASER_IDS);
const turn = fc.oneof(
  fc.constantFrom(0, 90, 180, 45),
  fc.integer({ min: 0, max: 359_999 }).map((t) => t / 1000),
);

export interface Wanted {
  /** Zones overlap. */
  readonly bands?: boolean;
  /** Lasers off, reach outlines, pins. */
  readonly faults?: boolean;
  /** false: every laser reaches the whole platform. */
  readonly reach?: boolean;
  /** Seams "none" and whole parts. */
  readonly whole?: boolean;
  /** Parts stay this far from the centre, in x and in y. */
  readonly spread?: number;
  readonly process?: Record<string, unknown>;
  readonly limits?: Record<string, unknown>;
  readonly zoning?: fc.Arbitrary<unknown>;
  readonly parts?: number;
  readonly shapes?: Kind;
}

const part = ({ faults, whole, spread = 165 }: Wanted): fc.Arbitrary<Record<string, unknown>> =>
  fc.record({
    shape: fc.constantFrom('a', 'b', 'c'),
    at_mm: fc.tuple(mm(-spread, spread), mm(-spread, spread)),
    turn_deg: turn,
    seams: whole ? fc.constantFrom('free', 'free', 'none') : fc.constant('free'),
    laser: faults ? fc.option(laserId, { freq: 4 }) : fc.constant(null),
    timeFactor: fc.constantFrom(1, 1, 1.5),
  });

const distinct = fc.shuffledSubarray(LASER_IDS, { minLength: 4, maxLength: 4 });
const band = (bands: boolean | undefined): fc.Arbitrary<number> =>
  bands ? fc.oneof(fc.constantFrom(20, 80, 400), mm(1, 120)) : fc.constant(0);

export const quadrants = (bands?: boolean): fc.Arbitrary<Record<string, unknown>> =>
  fc.record({
    strategy: fc.constant('quadrants'),
    at_mm: fc.tuple(mm(-60, 60), mm(-60, 60)),
    sharedBand_mm: band(bands),
    lasers: distinct,
  });
export const strips = (bands?: boolean): fc.Arbitrary<Record<string, unknown>> =>
  fc.record({
    strategy: fc.constant('strips'),
    run_deg: fc.oneof(
      fc.constantFrom(0, 90, 45),
      fc.integer({ min: 0, max: 179_999 }).map((t) => t / 1000),
    ),
    lines_mm: fc
      .uniqueArray(mm(-150, 150), { minLength: 3, maxLength: 3 })
      .map((lines) => lines.sort((a, b) => a - b)),
    sharedBand_mm: band(bands),
    lasers: distinct,
  });
const drawnZone = (lasers: fc.Arbitrary<string[]>): fc.Arbitrary<Record<string, unknown>> =>
  fc.record({
    lasers,
    rings: fc.tuple(mm(-120, 120), mm(-120, 120), radii(40, 160, 4, 10)).map(([x, y, r]) => [star(x, y, r)]),
  });
/** One zone for each laser, or zones for several lasers; they overlap freely. */
export const drawn: fc.Arbitrary<Record<string, unknown>> = fc.record({
  strategy: fc.constant('drawn'),
  zones: fc.array(drawnZone(fc.shuffledSubarray(LASER_IDS, { minLength: 1, maxLength: 3 })), {
    maxLength: 4,
  }),
});
export const anyZoning = (bands?: boolean): fc.Arbitrary<unknown> =>
  bands
    ? fc.oneof(quadrants(true), strips(true), drawn, fc.constant({ strategy: 'wholeField' }))
    : fc.oneof(quadrants(), strips());

const reach = fc.tuple(mm(-85, 85), mm(-85, 85), radii(90, 220, 6, 12)).map(([x, y, r]) => star(x, y, r));
const lasers = ({ faults, reach: short = true }: Wanted): fc.Arbitrary<unknown[]> =>
  fc
    .array(
      faults
        ? fc.record({
            on: fc.constantFrom(true, true, true, false),
            reach: short ? fc.option(reach, { freq: 2 }) : fc.constant(null),
          })
        : fc.constant({ on: true, reach: null }),
      { minLength: 4, maxLength: 4 },
    )
    .map((all) =>
      all.map((own, i) => ({
        id: LASER_IDS[i],
        power_W: 400,
        foot_mm: [i % 2 === 0 ? -75 : 75, i < 2 ? -75 : 75],
        workingHeight_mm: 540,
        ...own,
      })),
    );

/** Layouts with up to `most` more divisions above their own, at heights on a grid of quarter millimetres and anywhere. */
export function stepped(
  plates: fc.Arbitrary<Layout>,
  most: number,
  zoning: fc.Arbitrary<unknown>,
): fc.Arbitrary<Layout> {
  const quarters = fc.integer({ min: 1, max: 250 }).map((n) => n / 4);
  const step = fc.record({ from_mm: fc.oneof(quarters, mm(0.001, 62)), zoning });
  const steps = fc.uniqueArray(step, { maxLength: most, selector: ({ from_mm }) => from_mm });
  return fc.tuple(plates, steps).map(([layout, above]) => {
    const ascending = above.sort((a, b) => a.from_mm - b.from_mm);
    return readLayout({ ...layout, zoning: [...layout.zoning, ...ascending] });
  });
}

/** The layout as read from a file; throws where the generator made a malformed one. */
function readLayout(value: unknown): Layout {
  const read = readLayoutValue(value);
  if (!read.ok) throw new Error(`random layout refused: ${JSON.stringify(read.fault)}`);
  return read.value;
}

/** Random layouts, as read from a file. */
export function layouts(wanted: Wanted = {}): fc.Arbitrary<Layout> {
  const { bands, whole, process, limits, zoning, shapes = 'all', parts = 4 } = wanted;
  return fc
    .record({
      shapes: fc.record({ a: shapeOf(shapes), b: shapeOf(shapes), c: shapeOf(shapes) }),
      parts: fc.array(part(wanted), { minLength: 1, maxLength: parts }),
      zoning: zoning ?? anyZoning(bands),
      lasers: lasers(wanted),
      allocation: whole ? fc.constantFrom('balanced', 'wholeParts') : fc.constant('balanced'),
    })
    .map((random) =>
      readLayout({
        format: 'evenplate-layout',
        version: 1,
        name: 'random plate',
        machine: { ...machine(340), lasers: random.lasers },
        process: { ...PROCESS, layer_mm: 0.5, ...process },
        shapes: random.shapes,
        parts: random.parts.map((own, i) => ({ id: `P${i}`, ...own })),
        zoning: random.zoning,
        allocation: random.allocation,
        ...(limits ? { limits } : {}),
      }),
    );
}
