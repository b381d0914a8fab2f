/**
 * What a layout holds where its file says nothing, and what an empty plate starts from: a 340 mm square platform with
 * four lasers. Millimetres, seconds, watts, degrees counter-clockwise from +x. The process numbers are common
 * practice for Ti-6Al-4V and come from no source; they are a start to be replaced by the user's own.
 */
import type { Laser, Layout, Limits, Machine, PowderStore, Process, Zoning } from './types';

export const DEFAULT_LIMITS: Limits = {
  crumbArea_mm2: 4,
  crumbWidth_mm: 1.5,
  plumeHalfWidth_mm: 10,
  spacing_mm: 3,
  chainGap_mm: 0.01,
};
export const DEFAULT_POWDER: PowderStore = { feed_l: 60, overflow_l: 25, residueInterval_laserH: 240 };

const laser = (id: string, x: number, y: number): Laser => ({
  id,
  power_W: 450,
  foot_mm: [x, y],
  workingHeight_mm: 540,
  reach: null,
  on: true,
});

export const DEFAULT_MACHINE: Machine = {
  name: 'Four lasers, 340 mm',
  platform: { width_mm: 340, depth_mm: 340, margin_mm: 8, keepOuts: [] },
  buildHeight_mm: 360,
  gasFlow: { towards_deg: 270 },
  recoater: { towards_deg: 0, mode: 'oneWay', oneWay_s: 10, bothWays_s: 7.5 },
  lasers: [laser('L1', -75, -75), laser('L2', 75, -75), laser('L3', -75, 75), laser('L4', 75, 75)],
  powder: DEFAULT_POWDER,
};

export const DEFAULT_PROCESS: Process = {
  name: 'Ti-6Al-4V, 0.06 mm',
  density_g_cm3: 4.43,
  packing: 0.58,
  doseFactor: 2,
  layer_mm: 0.06,
  hatch_mm: 0.1,
  speed_mm_s: 1200,
  hatchInset_mm: 0.05,
  vector_mm: 10,
  vectorGap_ms: 0.4,
  vectorCount: 'areaAndOutline',
  contours: 1,
  contourSpeed_mm_s: 600,
  pieceGap_s: 0.02,
  minLayer_s: 0,
  seamOverlap_mm: 0.1,
};

export const DEFAULT_ZONING: Zoning = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 0,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};

/** A plate without parts on the default machine. */
export const emptyLayout = (): Layout => ({
  format: 'evenplate-layout',
  version: 3,
  name: 'Empty plate',
  note: '',
  machine: DEFAULT_MACHINE,
  process: DEFAULT_PROCESS,
  shapes: {},
  parts: [],
  zoning: [{ from_mm: 0, zoning: DEFAULT_ZONING }],
  allocation: 'balanced',
  limits: DEFAULT_LIMITS,
  schedule: null,
  revision: null,
});
