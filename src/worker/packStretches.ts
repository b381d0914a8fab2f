/**
 * The stretches of a build as one array of numbers, handed over between threads without being copied. Lasers are known
 * by their index; names and what is on come from the layout that both sides hold. Units as in LayerTotals.
 */
import type { LaserFigures, LayerTotals, Stretch } from '../build/types';
import type { Laser } from '../layout/types';

/** Figures of a layer that are one number. */
const SINGLE = [
  'layer',
  'height_mm',
  'cutParts',
  'seamLength_mm',
  'sectionArea_mm2',
  'unassigned_mm2',
  'doubleExposed_mm2',
  'exposure_s',
  'recoat_s',
  'wait_s',
  'time_s',
  'imbalanceTime_pct',
  'imbalanceArea_pct',
  'bestPossible_s',
  'costOfCutting_s',
] as const satisfies readonly (keyof LayerTotals)[];
const PER_LASER = [
  'scanArea_mm2',
  'outline_mm',
  'pieces',
  'load_s',
  'idle_s',
] as const satisfies readonly (keyof LaserFigures)[];
const BOUNDS = ['firstLayer', 'lastLayer', 'from_mm', 'to_mm'] as const satisfies readonly (keyof Stretch)[];
/** Beside these: the set of lasers that sets the best possible, and whether the fewest cuts are proven. */
const FLAGS = 2;

const widthFor = (lasers: number): number =>
  BOUNDS.length + SINGLE.length + FLAGS + PER_LASER.length * lasers;

/** Stretches as numbers. */
export function packStretches(
  stretches: readonly Stretch[],
  lasers: readonly Laser[],
): Float64Array<ArrayBuffer> {
  const packed = new Float64Array(stretches.length * widthFor(lasers.length));
  const bits = new Map(lasers.map((laser, i) => [laser.id, 1 << i]));
  let at = 0;
  for (const stretch of stretches) {
    const { figures } = stretch;
    for (const key of BOUNDS) packed[at++] = stretch[key];
    for (const key of SINGLE) packed[at++] = figures[key];
    packed[at++] = figures.bestSetBy.reduce((set, id) => set | bits.get(id)!, 0);
    packed[at++] = figures.fewestCutsProven ? 1 : 0;
    for (const laser of figures.lasers) for (const key of PER_LASER) packed[at++] = laser[key];
  }
  return packed;
}

type Numbers<K extends string> = { -readonly [key in K]: number };

/** The stretches that were packed for these lasers. */
export function unpackStretches(packed: Float64Array, lasers: readonly Laser[]): Stretch[] {
  let at = 0;
  const read = <K extends string>(keys: readonly K[]): Numbers<K> => {
    const values = {} as Numbers<K>;
    for (const key of keys) values[key] = packed[at++]!;
    return values;
  };
  const stretch = (): Stretch => {
    const bounds = read(BOUNDS);
    const single = read(SINGLE);
    const set = packed[at++]!;
    const fewestCutsProven = packed[at++] === 1;
    const bestSetBy = lasers.flatMap((laser, i) => ((set >>> i) & 1 ? [laser.id] : []));
    const figures = lasers.map(({ id, on }) => ({ id, on, ...read(PER_LASER) }));
    return { ...bounds, figures: { ...single, bestSetBy, fewestCutsProven, lasers: figures } };
  };
  return Array.from({ length: packed.length / widthFor(lasers.length) }, stretch);
}
