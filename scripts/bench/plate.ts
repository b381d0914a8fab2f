/**
 * The bench's plate: 100 parts of 25 shapes (60 to 400 vertices, one to three holes) on 400 × 400 mm, eight strips
 * side by side with a shared band of 20 mm between neighbours. Millimetres, origin at the centre. Seeded.
 */
import type { Layout, Part, Point, Shape, Zoning } from '../../src/layout/types';
import { between, seeded, type Random } from './random';

export const PLATFORM_MM = 400;
export const LASERS = 8;
export const BAND_MM = 20;
export const INSET_MM = 0.05;
const SHAPES = 25;
const PARTS = 100;
const COLUMNS = 10;

const toMicrometres = (value: number): number => Math.round(value * 1000) / 1000;

/** A closed curve r(a) = R (1 + Σ c_k cos(k a + p_k)) whose waves are small enough to keep it free of crossings. */
const outline = (random: Random, radius: number, vertices: number): Point[] => {
  const waves = [2, 3, 5, 7].map((k) => ({
    k,
    size: between(random, 0, 0.09),
    phase: between(random, 0, 2 * Math.PI),
  }));
  return Array.from({ length: vertices }, (_, i) => {
    const a = (2 * Math.PI * i) / vertices;
    const r =
      radius * (1 + waves.reduce((sum, { k, size, phase }) => sum + size * Math.cos(k * a + phase), 0));
    return [toMicrometres(r * Math.cos(a)), toMicrometres(r * Math.sin(a))];
  });
};
const hole = (x: number, y: number, radius: number, vertices: number): Point[] =>
  Array.from({ length: vertices }, (_, i) => {
    const a = (2 * Math.PI * i) / vertices;
    return [toMicrometres(x + radius * Math.cos(a)), toMicrometres(y + radius * Math.sin(a))];
  });

const shape = (random: Random): Shape => {
  const vertices = Math.round(between(random, 60, 400));
  const holes = 1 + Math.floor(random() * 3);
  const perHole = Math.max(8, Math.floor((vertices * 0.3) / holes));
  const rings = Array.from({ length: holes }, (_, i) => {
    const a = (2 * Math.PI * (i + random() * 0.4)) / holes;
    return hole(5 * Math.cos(a), 5 * Math.sin(a), between(random, 1, 3), perHole);
  });
  const outer = outline(random, between(random, 11, 12), vertices - perHole * holes);
  return { slabs: [{ to_mm: 40, rings: [outer, ...rings] }] };
};

const place = (random: Random, index: number, columns: number): Part => {
  const pitch = PLATFORM_MM / COLUMNS;
  const centre = (k: number): number => (k + 0.5 - columns / 2) * pitch + between(random, -3, 3);
  return {
    id: `P${String(index + 1).padStart(3, '0')}`,
    shape: `S${String(index % SHAPES).padStart(2, '0')}`,
    at_mm: [toMicrometres(centre(index % columns)), toMicrometres(centre(Math.floor(index / columns)))],
    turn_deg: toMicrometres(between(random, 0, 359)),
    seams: 'free',
    laser: null,
    timeFactor: 1,
  };
};

const LASER_IDS = Array.from({ length: LASERS }, (_, k) => `L${k + 1}`);
const lines = (): number[] =>
  Array.from({ length: LASERS - 1 }, (_, k) => -PLATFORM_MM / 2 + ((k + 1) * PLATFORM_MM) / LASERS);

const machine: Layout['machine'] = {
  name: 'bench',
  platform: { width_mm: PLATFORM_MM, depth_mm: PLATFORM_MM, margin_mm: 0, keepOuts: [] },
  buildHeight_mm: 400,
  gasFlow: { towards_deg: 270 },
  recoater: { towards_deg: 0, mode: 'oneWay', oneWay_s: 10, bothWays_s: 7.5 },
  lasers: LASER_IDS.map((id, k) => ({
    id,
    power_W: 400,
    foot_mm: [-175 + 50 * k, 0],
    workingHeight_mm: 540,
    reach: null,
    on: true,
  })),
  powder: null,
};
const processSettings: Layout['process'] = {
  name: 'bench',
  density_g_cm3: 4.43,
  packing: 0.58,
  doseFactor: 2,
  layer_mm: 0.06,
  hatch_mm: 0.1,
  speed_mm_s: 1200,
  hatchInset_mm: INSET_MM,
  vector_mm: 10,
  vectorGap_ms: 0.4,
  vectorCount: 'areaAndOutline',
  contours: 1,
  contourSpeed_mm_s: 600,
  pieceGap_s: 0.02,
  minLayer_s: 0,
  seamOverlap_mm: 0.1,
};

const strips = (sharedBand_mm: number): Zoning => ({
  strategy: 'strips',
  run_deg: 90,
  lines_mm: lines(),
  sharedBand_mm,
  lasers: LASER_IDS,
});

/** @param bandWidth shared band in mm; 0 makes the zones meet without sharing */
export const benchLayout = (seed: number, bandWidth = BAND_MM): Layout => {
  const random = seeded(seed);
  const shapes = Array.from({ length: SHAPES }, (_, i) => [`S${String(i).padStart(2, '0')}`, shape(random)]);
  return {
    format: 'evenplate-layout',
    version: 3,
    name: 'bench plate',
    note: '',
    machine,
    process: processSettings,
    shapes: Object.fromEntries(shapes) as Layout['shapes'],
    parts: Array.from({ length: PARTS }, (_, index) => place(random, index, COLUMNS)),
    zoning: [{ from_mm: 0, zoning: strips(bandWidth) }],
    allocation: 'balanced',
    limits: { crumbArea_mm2: 4, crumbWidth_mm: 1.5, plumeHalfWidth_mm: 10, spacing_mm: 3, chainGap_mm: 0.01 },
    schedule: null,
    revision: null,
  };
};

/** Four times as many parts at the same pitch, on a platform twice as wide and deep under strips twice as wide. */
export const largeBenchLayout = (seed: number): Layout => {
  const base = benchLayout(seed);
  const random = seeded(seed + 1);
  const { platform } = base.machine;
  const zoning = { ...strips(BAND_MM), lines_mm: lines().map((at) => 2 * at) } as Zoning;
  return {
    ...base,
    machine: {
      ...base.machine,
      platform: { ...platform, width_mm: 2 * PLATFORM_MM, depth_mm: 2 * PLATFORM_MM },
    },
    parts: Array.from({ length: 4 * PARTS }, (_, index) => place(random, index, 2 * COLUMNS)),
    zoning: [{ from_mm: 0, zoning }],
  };
};

/** The same layout with one part moved; everything else keeps its identity, as after a drag on the screen. */
export const movedLayout = (layout: Layout, index: number, dx: number, dy: number): Layout => ({
  ...layout,
  parts: layout.parts.map((part, k) =>
    k === index
      ? { ...part, at_mm: [toMicrometres(part.at_mm[0] + dx), toMicrometres(part.at_mm[1] + dy)] }
      : part,
  ),
});

/** Each zone of a strips layout as [minX, minY, maxX, maxY], its half of the shared bands included. */
export const zoneRectangles = (bandWidth: number): [number, number, number, number][] => {
  const half = PLATFORM_MM / 2;
  const edges = [-half, ...lines(), half];
  return LASER_IDS.map((_, k) => [
    Math.max(-half, edges[k]! - (k === 0 ? 0 : bandWidth / 2)),
    -half,
    Math.min(half, edges[k + 1]! + (k === LASERS - 1 ? 0 : bandWidth / 2)),
    half,
  ]);
};

/** The placed outlines of every part, as plain rings for the libraries; outer ring first, then the holes. */
export const placedRings = (layout: Layout): Point[][][] =>
  layout.parts.map((part) => {
    const turn = (part.turn_deg * Math.PI) / 180;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [x0, y0] = part.at_mm;
    const rings = layout.shapes[part.shape]!.slabs[0]!.rings as readonly (readonly Point[])[];
    return rings.map((ring) => ring.map(([x, y]): Point => [x0 + c * x - s * y, y0 + s * x + c * y]));
  });
