/**
 * The plate a newcomer sees first: a workshop's spares for harbour ferries on a 340 mm platform with four lasers.
 * A working plate without a problem, divided into quadrants at the platform's middle, whose imbalance is there to be
 * improved: the front right quarter is light, and the high parts stand on the left. Millimetres; origin at the platform's centre. All of it is invented;
 * the process numbers are common practice for 316L and come from no source.
 */
import { DEFAULT_LIMITS, DEFAULT_MACHINE, DEFAULT_PROCESS } from './defaults';
import { DEMO_SHAPES } from './demoShapes';
import type { Layout, Part, Process } from './types';

const DEMO_PROCESS: Process = {
  ...DEFAULT_PROCESS,
  name: '316L, 0.05 mm',
  density_g_cm3: 7.95,
  layer_mm: 0.05,
  speed_mm_s: 1000,
};

type DemoShape = keyof typeof DEMO_SHAPES;
/** shape, x, y, turn */
type Place = readonly [DemoShape, number, number, number];

const PLACES: readonly Place[] = [
  ['impeller', 110, 112, 15],
  ['impeller', 112, 20, 40],
  ['housing', 15, 100, 0],
  ['housing', 15, -8, 0],
  ['housing', 18, -104, 0],
  ['valve block', -128, 130, 0],
  ['valve block', -128, 80, 0],
  ['valve block', -128, 30, 180],
  ['valve block', -128, -24, 180],
  ['manifold', -105, -66, 0],
  ['manifold', -105, -100, 180],
  ['bracket', -58, 126, 90],
  ['bracket', -58, 58, 90],
  ['bracket', -58, -10, 270],
  ['seal ring', 130, -62, 0],
  ['seal ring', 130, -112, 0],
  ['seal ring', -136, -140, 0],
  ['seal ring', -90, -140, 0],
  ['seal ring', -45, -140, 0],
  ['test bar', -89, 145, 0],
  ['test bar', -89, 110, 0],
  ['test bar', -89, 55, 0],
  ['test bar', -89, 5, 0],
  ['test bar', 62, 62, 0],
  ['test bar', 66, -44, 0],
  ['test bar', 92, -82, 0],
  ['test bar', 92, -130, 0],
];
/** The first impeller is balanced to grade after the build and may not carry a seam. */
const WITHOUT_SEAMS = new Set(['P01']);

const partAt = ([shape, x, y, turn]: Place, index: number): Part => {
  const id = `P${String(index + 1).padStart(2, '0')}`;
  const seams = WITHOUT_SEAMS.has(id) ? 'none' : 'free';
  return { id, shape, at_mm: [x, y], turn_deg: turn, seams, laser: null, timeFactor: 1 };
};

/** The demo plate. */
export const demoLayout = (): Layout => ({
  format: 'evenplate-layout',
  version: 3,
  name: 'Ferry spares, plate 1',
  note: 'Spares for harbour ferries: impellers, bearing housings, valve blocks, manifolds, brackets, seal rings and test bars.',
  machine: DEFAULT_MACHINE,
  process: DEMO_PROCESS,
  shapes: DEMO_SHAPES,
  parts: PLACES.map(partAt),
  zoning: [
    {
      from_mm: 0,
      zoning: { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 20, lasers: ['L1', 'L2', 'L3', 'L4'] },
    },
  ],
  allocation: 'balanced',
  limits: DEFAULT_LIMITS,
  schedule: null,
  revision: null,
});
