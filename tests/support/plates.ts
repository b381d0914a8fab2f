/**
 * Layouts that tests are written on, coordinates from the FRONT-LEFT corner of a
 * 400 × 400 platform, process numbers common practice without a source. Millimetres.
 */
import { readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';

export const LASERS = ['L1', 'L2', 'L3', 'L4'];

export const PROCESS = {
  name: 'reference',
  density_g_cm3: 4.43,
  packing: 0.6,
  doseFactor: 2,
  layer_mm: 0.06,
  hatch_mm: 0.1,
  hatchInset_mm: 0,
  speed_mm_s: 1200,
  vector_mm: 10,
  vectorGap_ms: 0.4,
  vectorCount: 'area',
  contours: 1,
  contourSpeed_mm_s: 600,
  pieceGap_s: 0.02,
  minLayer_s: 0,
  seamOverlap_mm: 0,
};

export function machine(side = 400, lasers = LASERS) {
  return {
    name: 'reference machine',
    platform: { width_mm: side, depth_mm: side },
    buildHeight_mm: 400,
    gasFlow: { towards_deg: 270 },
    recoater: { towards_deg: 0, mode: 'oneWay', oneWay_s: 10, bothWays_s: 7.5 },
    lasers: lasers.map((id) => ({ id, power_W: 400, foot_mm: [0, 0], workingHeight_mm: 540 })),
  };
}

type Rings = readonly unknown[];
interface Placed {
  readonly id: string;
  readonly slabs: readonly { readonly to_mm: number; readonly rings: Rings }[];
  readonly at?: readonly [number, number];
  readonly [key: string]: unknown;
}

/** A rectangle as a ring. */
export const rect = (x0: number, y0: number, x1: number, y1: number): number[][] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/** A part whose outline is given where it stands, from the front-left corner. */
export const standing = (id: string, height: number, ...rings: Rings): Placed => ({
  id,
  slabs: [{ to_mm: height, rings }],
});

export const QUADRANTS = { strategy: 'quadrants', at_mm: [0, 0], lasers: LASERS };
export const strips = (run_deg: number, lines: readonly number[], lasers: readonly string[] = LASERS) => ({
  strategy: 'strips',
  run_deg,
  lines_mm: lines,
  lasers,
});

interface Options {
  readonly side?: number;
  readonly process?: Record<string, unknown>;
  readonly machine?: Record<string, unknown>;
  readonly allocation?: 'balanced' | 'wholeParts';
  readonly limits?: Record<string, unknown>;
}

/** Divisions over height: each from its height in mm on. */
export const divided = (...steps: readonly (readonly [from_mm: number, zoning: unknown])[]) =>
  steps.map(([from_mm, zoning]) => ({ from_mm, zoning }));

/** The layout as read from a file, of version 2 for a list of divisions; throws where the test's own layout is malformed. */
export function plate(parts: readonly Placed[], zoning: unknown, options: Options = {}): Layout {
  const side = options.side ?? 400;
  const shapes = Object.fromEntries(parts.map(({ id, slabs }) => [`shape ${id}`, { slabs }]));
  const result = readLayoutValue({
    format: 'evenplate-layout',
    version: Array.isArray(zoning) ? 2 : 1,
    name: 'reference plate',
    machine: { ...machine(side), ...options.machine },
    process: { ...PROCESS, ...options.process },
    shapes,
    parts: parts.map(({ id, slabs: _slabs, at, ...rest }) => ({
      id,
      shape: `shape ${id}`,
      at_mm: at ?? [-side / 2, -side / 2],
      ...rest,
    })),
    zoning,
    allocation: options.allocation ?? 'balanced',
    ...(options.limits ? { limits: options.limits } : {}),
  });
  if (!result.ok) throw new Error(`test layout refused: ${JSON.stringify(result.fault)}`);
  return result.value;
}
