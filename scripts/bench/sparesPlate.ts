/**
 * The second high bench plate: 40 parts of 10 shapes as a workshop prints them for ferries, 180 mm in layers of 0.06 mm. Impellers,
 * elbows, housings and bars with round necks are meshes whose section differs in every layer; blocks, brackets and flanges are
 * prisms with a few steps. Heights from 24 to 180 mm, so the plate thins out upwards, as plates do. Millimetres.
 */
import { DEFAULT_LIMITS } from '../../src/layout/defaults';
import type { Layout, LayoutRing, Part, Shape } from '../../src/layout/types';
import { roundMm } from '../../src/units/round';
import { benchLayout } from './plate';

const LAYER_MM = 0.06;
/** Of an outline as meshes give it. */
const POINTS = 96;

const around = (points: number, radius: (angle: number) => number, x = 0, y = 0): LayoutRing =>
  Array.from({ length: points }, (_, i) => {
    const a = (2 * Math.PI * i) / points;
    return [roundMm(x + radius(a) * Math.cos(a)), roundMm(y + radius(a) * Math.sin(a))] as const;
  });
const round = (radius: number, x = 0, y = 0): LayoutRing => around(POINTS / 2, () => radius, x, y);
const box = (width: number, depth: number, x = 0, y = 0): LayoutRing => [
  [x - width / 2, y - depth / 2],
  [x + width / 2, y - depth / 2],
  [x + width / 2, y + depth / 2],
  [x - width / 2, y + depth / 2],
];

/** A section of its own in every layer, by the share of the height that lies below. */
const mesh = (height_mm: number, section: (share: number) => LayoutRing[]): Shape => {
  const layers = Math.round(height_mm / LAYER_MM);
  return {
    slabs: Array.from({ length: layers }, (_, k) => ({
      to_mm: roundMm((k + 1) * LAYER_MM),
      rings: section((k + 0.5) / layers),
    })),
  };
};
const prism = (...slabs: readonly (readonly [number, readonly LayoutRing[]])[]): Shape => ({
  slabs: slabs.map(([to_mm, rings]) => ({ to_mm, rings: [...rings] })),
});

/** Blades that sweep round the hub as they rise, over a bore. */
const impeller = (height: number, tip: number, blades: number): Shape =>
  mesh(height, (share) => [
    around(
      POINTS,
      (a) => tip * (0.72 - 0.25 * share) + tip * (0.28 - 0.1 * share) * Math.sin(blades * a + 1.6 * share),
    ),
    round(tip / 5),
  ]);
/** A pipe that bends over its height. */
const elbow = (height: number): Shape =>
  mesh(height, (share) => {
    const x = 16 * (1 - Math.cos((share * Math.PI) / 2)) - 8;
    return [around(POINTS, () => 11 + 2 * share, x), around(POINTS, () => 8.5 + 2 * share, x)];
  });
/** Two bells and a neck, bored through; lugs on the foot. */
const housing = (height: number): Shape =>
  mesh(height, (share) => [
    around(POINTS, (a) => 15 + 3 * Math.cos(2 * Math.PI * share) + 2 * (1 - share) * Math.cos(4 * a)),
    round(9 - 3 * share),
  ]);
/** Heads and a round neck. */
const bar = (height: number): Shape =>
  mesh(height, (share) => [around(POINTS / 2, () => 4 + 3 * Math.cos(2 * Math.PI * share) ** 4)]);
const block = (height: number): Shape =>
  prism(
    [height * 0.3, [box(36, 30), round(5, -8), round(5, 8)]],
    [height * 0.5, [box(36, 30), box(26, 10)]],
    [height * 0.8, [box(36, 30), round(6)]],
    [height, [box(20, 20), round(6)]],
  );
const bracket = (height: number): Shape =>
  prism(
    [6, [box(38, 26), round(3, -12), round(3, 12)]],
    [height * 0.5, [box(38, 6)]],
    [height, [box(20, 6)]],
  );
const flange = (height: number): Shape =>
  prism([height / 2, [round(19), round(8), round(2, 13), round(2, -13)]], [height, [round(12), round(8)]]);

/** How many of each. */
const SPARES: readonly (readonly [string, Shape, number])[] = [
  ['impeller', impeller(60, 18, 6), 6],
  ['wide impeller', impeller(96, 19, 7), 4],
  ['valve block', block(120), 6],
  ['low valve block', block(78), 4],
  ['bracket', bracket(150), 5],
  ['elbow', elbow(180), 3],
  ['test bar', bar(108), 4],
  ['flange', flange(24), 3],
  ['bearing housing', housing(72), 3],
  ['tall housing', housing(132), 2],
];

/** A column at x = 0 is left free for what the bench moves on to the line there. */
const COLUMNS_mm = [-138, -92, -46, 46, 92, 138];
const PITCH_mm = 46;

/** Machine, process and zones of the other benches. */
export function sparesLayout(seed: number): Layout {
  const base = benchLayout(seed);
  const wanted = SPARES.flatMap(([name, , count]) => Array<string>(count).fill(name));
  // neighbours of a kind stand apart: 17 and 40 have no common divisor, so each is taken once
  const parts = wanted.map((_, i): Part => {
    const row = Math.floor(i / COLUMNS_mm.length);
    const at_mm = [COLUMNS_mm[i % COLUMNS_mm.length]!, (row - 3) * PITCH_mm] as const;
    const id = `P${String(i + 1).padStart(2, '0')}`;
    const shape = wanted[(i * 17) % wanted.length]!;
    return { id, shape, at_mm, turn_deg: 0, seams: 'free', laser: null, timeFactor: 1 };
  });
  const shapes = Object.fromEntries(SPARES.map(([name, shape]) => [name, shape]));
  const process = { ...base.process, layer_mm: LAYER_MM };
  return { ...base, name: 'ferry spares', process, shapes, parts, limits: DEFAULT_LIMITS };
}
