/**
 * Layouts side by side: rows of figures, their differences to a reference, which is best in a row (never a total score),
 * and what a seam buys. What leaves section area unexposed saves hours that nobody gains: it is best in no row but those
 * of what is left out, and has no price. Hours, seconds, millimetres, percent. Pure.
 *   price of a seam = (hours of the reference − hours of the other) / (seams of the other − seams of the reference)
 *   seams are counted in the layer shown; their length is the mean over all layers of the build, as a seam runs on over height
 */
import type { Layout } from '../layout/types';
import type { Hours, Mm } from '../units/types';
import { layerAt } from './layers';
import { leavesOut, leftOutOfBuild } from './leftOut';
import type { Analysis, BuildFigures, LayerFigures, Stretch } from './types';
import { whatChanged } from './whatChanged';

/** One layout with its figures; the layer is the one at the common height, null above the plate. */
export interface Compared {
  readonly layout: Layout;
  readonly build: BuildFigures;
  readonly stretches: readonly Stretch[];
  readonly layer: LayerFigures | null;
  /** Problems that block hand-over; null while nobody has looked. */
  readonly blocking: number | null;
}

/** The figures of an analysed layout at a height; no layer below the platform, above the parts or on an empty plate. */
export function comparedAt(analysis: Analysis, height_mm: Mm): Compared {
  const { layout, build, stretches, problems } = analysis;
  const number = layerAt(height_mm, layout.process.layer_mm, build.height_mm);
  return {
    layout,
    build,
    stretches,
    layer: number === 0 ? null : analysis.layer(number),
    blocking: problems.filter(({ blocks }) => blocks).length,
  };
}

/** There is something to build, and every layer of it is exposed whole. */
export const isWhole = ({ build, stretches }: Compared): boolean =>
  build.layers > 0 && leftOutOfBuild({ stretches }) === null;
const isWholeHere = ({ layer }: Compared): boolean => layer !== null && !leavesOut(layer);

export type FigureKey =
  | 'time_h'
  | 'exposure_h'
  | 'recoat_h'
  | 'heldByMinLayer_h'
  | 'idle_laserH'
  | 'imbalance_pct'
  | 'meanSeam_mm'
  | 'layers'
  | 'volume_cm3'
  | 'overflow_l'
  | 'leftOut_cm3'
  | 'blocking'
  | 'layerTime_s'
  | 'layerExposure_s'
  | 'bestPossible_s'
  | 'imbalanceTime_pct'
  | 'imbalanceArea_pct'
  | 'seams'
  | 'seamLength_mm'
  | 'cutParts'
  | 'witnessLines'
  | 'unassigned_mm2';

/** Length of all seams in a layer, as a mean over the layers of the build. */
export function meanSeam(stretches: readonly Stretch[]): Mm {
  let length = 0;
  let layers = 0;
  for (const { firstLayer, lastLayer, figures } of stretches) {
    const count = lastLayer - firstLayer + 1;
    length += count * figures.seamLength_mm;
    layers += count;
  }
  return layers === 0 ? 0 : length / layers;
}

const volume = ({ scanVolume_cm3 }: BuildFigures): number =>
  Object.values(scanVolume_cm3).reduce((sum, cm3) => sum + cm3, 0);

interface Figure {
  readonly key: FigureKey;
  /** Which end of the row is better; null where neither is. */
  readonly better: 'less' | null;
  readonly of: (column: Compared) => number | null;
  /** Which columns can be best. */
  readonly fit: (column: Compared) => boolean;
}

const ofBuild = (key: FigureKey & keyof BuildFigures, better: Figure['better']): Figure => ({
  key,
  better,
  of: ({ build }) => build[key],
  fit: isWhole,
});
const ofLayer = (
  key: FigureKey,
  read: (layer: LayerFigures) => number,
  better: Figure['better'] = 'less',
): Figure => ({
  key,
  better,
  of: ({ layer }) => (layer ? read(layer) : null),
  fit: isWholeHere,
});

/** Figures of the whole build. */
export const BUILD_FIGURES: readonly Figure[] = [
  ofBuild('time_h', 'less'),
  ofBuild('exposure_h', 'less'),
  ofBuild('recoat_h', 'less'),
  ofBuild('heldByMinLayer_h', 'less'),
  ofBuild('idle_laserH', 'less'),
  ofBuild('imbalance_pct', 'less'),
  { key: 'meanSeam_mm', better: 'less', of: ({ stretches }) => meanSeam(stretches), fit: isWhole },
  {
    key: 'leftOut_cm3',
    better: 'less',
    of: (column) => leftOutOfBuild(column)?.volume_cm3 ?? 0,
    fit: () => true,
  },
  { key: 'blocking', better: 'less', of: ({ blocking }) => blocking, fit: isWhole },
  ofBuild('layers', null),
  { key: 'volume_cm3', better: null, of: ({ build }) => volume(build), fit: isWhole },
  ofBuild('overflow_l', null),
];
/** Figures of the layer at the common height. */
export const LAYER_FIGURES: readonly Figure[] = [
  ofLayer('layerTime_s', (layer) => layer.time_s),
  ofLayer('layerExposure_s', (layer) => layer.exposure_s),
  ofLayer('bestPossible_s', (layer) => layer.bestPossible_s),
  ofLayer('imbalanceTime_pct', (layer) => layer.imbalanceTime_pct),
  ofLayer('imbalanceArea_pct', (layer) => layer.imbalanceArea_pct),
  ofLayer('seams', (layer) => layer.seams.length),
  ofLayer('seamLength_mm', (layer) => layer.seamLength_mm),
  ofLayer('cutParts', (layer) => layer.cutParts),
  ofLayer('witnessLines', (layer) => layer.witnessLines),
  { ...ofLayer('unassigned_mm2', (layer) => layer.unassigned_mm2), fit: () => true },
];

export interface Row {
  readonly key: FigureKey;
  /** By column; null where the column has no such figure. */
  readonly values: readonly (number | null)[];
  /** Minus the reference's, by column; null where either is missing. */
  readonly differences: readonly (number | null)[];
  /**
   * Columns with the best value of those that expose all; none where these are alike or fewer than two, where neither end
   * is better, or where a figure is missing.
   */
  readonly best: readonly number[];
}

/** Values nearer than this part of the largest are alike: they differ by rounding. */
const ALIKE = 1e-9;

function bestOf(values: readonly (number | null)[], fit: readonly boolean[]): number[] {
  if (values.includes(null)) return [];
  const fair = values.filter((value, i): value is number => value !== null && fit[i] === true);
  const [least, most] = [Math.min(...fair), Math.max(...fair)];
  const close = ALIKE * Math.max(...fair.map(Math.abs));
  if (fair.length < 2 || most - least <= close) return [];
  return values.flatMap((value, i) => (fit[i] && value !== null && value - least <= close ? [i] : []));
}

/** A row of figures over all columns. @param reference the column that differences count from */
export function rowOf(figure: Figure, columns: readonly Compared[], reference = 0): Row {
  const { key, better, of, fit } = figure;
  const values = columns.map(of);
  const from = values[reference] ?? null;
  const differences = values.map((value) => (value === null || from === null ? null : value - from));
  return { key, values, differences, best: better === null ? [] : bestOf(values, columns.map(fit)) };
}

/**
 * True where hours can differ by places, zones and rules only: the same parts and shapes, machine and process, whatever
 * these are called. Between other plates a seam has no price.
 */
export function sameWork(a: Layout, b: Layout): boolean {
  const { added, removed, reshaped, process, machine } = whatChanged(a, b);
  const keys = [...process, ...machine].filter((key) => key !== 'name');
  return [added, removed, reshaped, keys].every(({ length }) => length === 0);
}

/** What more seams gain, or fewer cost, against a reference. */
export interface SeamPrice {
  /** Hours that the build is shorter than the reference; negative where it is longer. */
  readonly gained_h: Hours;
  /** In the layer shown; null where it has as many as the reference, or no such layer. */
  readonly perSeam_h: Hours | null;
  /** Of the mean seam length; null where it is as long as the reference's. */
  readonly perMm_h: Hours | null;
}

/** Lengths nearer than this are alike. */
const SAME_LENGTH_MM: Mm = 1e-6;

/** The price of a seam against a reference. */
export function seamPrice(reference: Compared, other: Compared): SeamPrice {
  const gained_h = reference.build.time_h - other.build.time_h;
  const [from, to] = [reference.layer, other.layer];
  const more = from && to ? to.seams.length - from.seams.length : 0;
  const longer_mm = meanSeam(other.stretches) - meanSeam(reference.stretches);
  return {
    gained_h,
    perSeam_h: more === 0 ? null : gained_h / more,
    perMm_h: Math.abs(longer_mm) < SAME_LENGTH_MM ? null : gained_h / longer_mm,
  };
}
