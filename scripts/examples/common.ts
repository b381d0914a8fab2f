/**
 * What the example plates share. The plates are given in the sources from the FRONT-LEFT corner of the platform; here
 * `fromCorner` moves them to the platform's centre, where layouts have their origin. Millimetres.
 * The process numbers are common practice, no source; they are chosen round so that the plates can be computed by hand.
 */
import { DEFAULT_LIMITS } from '../../src/layout/defaults';
import type {
  Laser,
  Layout,
  Machine,
  Outline,
  Part,
  Point,
  Process,
  Shape,
  Zoning,
} from '../../src/layout/types';

export const HAND_PROCESS: Process = {
  name: 'Computed by hand',
  density_g_cm3: 4.43,
  packing: 0.6,
  doseFactor: 2,
  layer_mm: 0.06,
  hatch_mm: 0.1,
  speed_mm_s: 1200,
  hatchInset_mm: 0,
  vector_mm: 10,
  vectorGap_ms: 0.4,
  vectorCount: 'area',
  contours: 1,
  contourSpeed_mm_s: 600,
  pieceGap_s: 0.02,
  minLayer_s: 0,
  seamOverlap_mm: 0,
};

const laser = (index: number, foot_mm: Point): Laser => ({
  id: `L${index + 1}`,
  power_W: 400,
  foot_mm,
  workingHeight_mm: 540,
  reach: null,
  on: true,
});

/** A square machine; feet front-left, front-right, rear-left, rear-right at a quarter of its width. */
export function machine(width: number, lasers: 2 | 4 = 4, oneWay_s = 10, bothWays_s = 7.5): Machine {
  const q = width / 4;
  const feet: readonly Point[] = [
    [-q, -q],
    [q, -q],
    [-q, q],
    [q, q],
  ];
  return {
    name: `Square, ${width} mm`,
    platform: { width_mm: width, depth_mm: width, margin_mm: 0, keepOuts: [] },
    buildHeight_mm: 400,
    gasFlow: { towards_deg: 270 },
    recoater: { towards_deg: 0, mode: 'oneWay', oneWay_s, bothWays_s },
    lasers: feet.slice(0, lasers).map((foot, index) => laser(index, foot)),
    powder: { feed_l: 100, overflow_l: 20, residueInterval_laserH: 240 },
  };
}

/** A rectangle with its front-left corner at the shape's origin. */
export const rectangle = (width: number, depth: number): Outline => [
  [0, 0],
  [width, 0],
  [width, depth],
  [0, depth],
];
export const block = (width: number, depth: number, height: number): Shape => ({
  slabs: [{ to_mm: height, rings: [rectangle(width, depth)] }],
});
export const part = (id: string, shape: string, at_mm: Point): Part => ({
  id,
  shape,
  at_mm,
  turn_deg: 0,
  seams: 'free',
  laser: null,
  timeFactor: 1,
});
/** From a corner-based place on a platform of this width to a centre-based one. */
export const fromCorner =
  (width: number) =>
  (x: number, y: number): Point => [
    Math.round((x - width / 2) * 1000) / 1000,
    Math.round((y - width / 2) * 1000) / 1000,
  ];

type Own = Pick<Layout, 'name' | 'note' | 'shapes' | 'parts'> &
  Partial<Omit<Layout, 'zoning'>> & { readonly zoning: Zoning };
/** A layout on the 400 mm machine with the process for hand computation, but for what `own` says. */
export const example = ({ name, note, shapes, parts, zoning, ...rest }: Own): Layout => ({
  format: 'evenplate-layout',
  version: 3,
  name,
  note,
  machine: machine(400),
  process: HAND_PROCESS,
  shapes,
  parts,
  zoning: [{ from_mm: 0, zoning }],
  allocation: 'balanced',
  limits: DEFAULT_LIMITS,
  schedule: null,
  revision: null,
  ...rest,
});
export const FOUR = ['L1', 'L2', 'L3', 'L4'];
export const QUADRANTS: Zoning = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 0,
  lasers: FOUR,
};
/** Four strips side by side in x (90) or one behind the other in y (0), lines at ± a quarter of the width. */
export const strips = (run_deg: 0 | 90, width: number): Zoning => ({
  strategy: 'strips',
  run_deg,
  lines_mm: [-width / 4, 0, width / 4],
  sharedBand_mm: 0,
  lasers: FOUR,
});
/** Two halves: front and rear (0) or left and right (90). */
export const halves = (run_deg: 0 | 90): Zoning => ({
  strategy: 'strips',
  run_deg,
  lines_mm: [0],
  sharedBand_mm: 0,
  lasers: ['L1', 'L2'],
});
