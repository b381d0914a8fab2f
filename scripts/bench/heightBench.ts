/**
 * `npm run bench:height`: the whole height of a plate as meshes make it, 40 parts and 3,000 layers of which no two are
 * alike, the way the worker computes it. Seconds on this machine, and how many times faster following a move is than
 * computing anew; only the ratios carry over to another machine. Megabytes as Node counts them after collecting garbage.
 */
import { cpus, loadavg } from 'node:os';
import { plateOf } from '../../src/build/plate';
import { sameAnswer } from '../../src/build/sameAnswer';
import { Stacks } from '../../src/build/stack';
import { totalsOf } from '../../src/build/totals';
import { DEFAULT_MACHINE } from '../../src/layout/defaults';
import type { Layout, Zoning } from '../../src/layout/types';
import { highLayout } from './highPlate';
import { movedLayout } from './plate';
import { table } from './table';

const SEED = 20_261_125;
const SIDE_mm = 400;
const FIRST_LOOK = 120;
const MOVES = 6;
/** A move inside a zone. */
const INSIDE_mm = 0.5;

const LASERS = ['L1', 'L2', 'L3', 'L4'];
const DIVISIONS: readonly (readonly [string, Zoning])[] = [
  ['quadrants, band of 20 mm', { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 20, lasers: LASERS }],
  [
    'four strips, band of 20 mm',
    { strategy: 'strips', run_deg: 90, lines_mm: [-85, 0, 85], sharedBand_mm: 20, lasers: LASERS },
  ],
  ['whole field', { strategy: 'wholeField' }],
];

const heapMb = (): number => {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed / 1e6;
};

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

function finish(run: Generator<unknown>): void {
  while (!run.next().done);
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

interface Row {
  readonly anew: number;
  readonly look: number;
  readonly inside: number;
  readonly onLine: number;
}

/** One division: the whole height from sections that are ready, a first look after a move, the whole after it. */
function measure(layout: Layout): Row {
  const stacks = new Stacks(totalsOf, sameAnswer);
  const whole = (next: Layout) => timed(() => finish(stacks.run(plateOf(next))));
  const ready = new Stacks(totalsOf, sameAnswer);
  finish(ready.run(plateOf(layout)));
  const anew = whole(layout);
  const groups = Math.floor(layout.shapes[layout.parts[0]!.shape]!.slabs.length / FIRST_LOOK);
  const moves = (to: (next: Layout, part: number) => Layout) =>
    Array.from({ length: MOVES }, (_, i) => {
      const next = to(layout, (i * 7) % layout.parts.length);
      whole(layout);
      const look = timed(() => finish(stacks.run(plateOf(next), groups)));
      return { look, all: look + whole(next) };
    });
  const inside = moves((from, part) => movedLayout(from, part, INSIDE_mm, INSIDE_mm / 2));
  const onLine = moves((from, part) => movedLayout(from, part, -from.parts[part]!.at_mm[0], 0));
  return {
    anew,
    look: median([...inside, ...onLine].map(({ look }) => look)),
    inside: median(inside.map(({ all }) => all)),
    onLine: median(onLine.map(({ all }) => all)),
  };
}

const base = highLayout(SEED);
const platform = { ...DEFAULT_MACHINE.platform, width_mm: SIDE_mm, depth_mm: SIDE_mm };
const machine = { ...DEFAULT_MACHINE, platform };
const before = heapMb();
const rows = DIVISIONS.map(([name, zoning], i) => {
  const layout: Layout = { ...base, machine, zoning: [{ from_mm: 0, zoning }] };
  const first = i === 0 ? timed(() => finish(new Stacks(totalsOf, sameAnswer).run(plateOf(layout)))) : null;
  return { name, first, ...measure(layout) };
});
const seconds = (value: number): string => `${value.toFixed(value < 1 ? 2 : 1)} s`;
console.log(
  `Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}, load ${loadavg()[0]!.toFixed(1)}`,
);
console.log(
  `${base.parts.length} parts, 3,000 layers, no two alike; sections cleaned and inset for the first time: ${seconds(rows[0]!.first!)}`,
);
console.log(
  `heap: ${before.toFixed(0)} MB with the layout, ${heapMb().toFixed(0)} MB with everything remembered\n`,
);
console.log(
  table(
    [
      'whole height',
      'anew',
      'first look after a move',
      'whole, moved inside its zone',
      'whole, moved on to a line',
      'anew / inside',
    ],
    rows.map((r) => [
      r.name,
      seconds(r.anew),
      seconds(r.look),
      seconds(r.inside),
      seconds(r.onLine),
      `${(r.anew / r.inside).toFixed(0)} x`,
    ]),
  ),
);
