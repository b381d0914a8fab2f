/**
 * The sums that a layer's figures keep, as functions that tests and the screen both call, beside the books themselves (books.ts):
 *   a laser's figures = Σ over its pieces; exposure = the slowest load; load + idle = exposure for every working laser
 *   time = max(minLayer, recoating + exposure); doubly exposed = seam length · seam overlap
 * and what a division must keep whatever the plate: cells lie apart and inside the platform. Figures only; where pieces lie
 * is asked in sound.ts. Square millimetres, millimetres, seconds.
 */
import { intersect } from '../geometry/clipper';
import { area, boxesMeet } from '../geometry/region';
import type { Text } from '../language/index';
import type { SoundCode } from '../layout/messages/soundMessages';
import type { Fault, Param, Params } from '../layout/result';
import type { Process } from '../layout/types';
import type { Division } from '../zoning/types';
import { books, BOOKS_TOLERANCE } from './books';
import type { LaserFigures, LayerFigures, Piece } from './types';

/** How a division's cells lie on its platform. */
export interface Coverage {
  /** Σ cell areas as a part of the platform: what some laser may expose. */
  readonly covered: number;
  /** Area in two cells at once, as a part of the platform: 0 but for rounding. */
  readonly twice: number;
}

const measured = new WeakMap<Division, Coverage>();

/** How the cells lie on the platform; measured once per division. */
export function coverage(division: Division): Coverage {
  let found = measured.get(division);
  if (!found) measured.set(division, (found = measureCells(division)));
  return found;
}

function measureCells({ platform, cells }: Division): Coverage {
  let twice = 0;
  cells.forEach((cell, i) => {
    for (const other of cells.slice(0, i))
      if (boxesMeet(cell.box, other.box)) twice += area(intersect(cell.region, other.region));
  });
  const whole = area(platform);
  return { covered: sum(cells, (cell) => area(cell.region)) / whole, twice: twice / whole };
}

const sum = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((total, item) => total + of(item), 0);

/** A fault of the program; `by` is how much is wrong. */
export const soundFault = (code: SoundCode, params: Params): Fault => ({ code, params });

/** A difference as a sentence says it. */
export const shownBy = (by: number): number => Number(by.toPrecision(3));

/** True where two figures that have to be equal differ by more than rounding; NaN differs. */
const differ = (found: number, expected: number): boolean =>
  !(Math.abs(found - expected) <= BOOKS_TOLERANCE * Math.max(1, Math.abs(expected)));

type Sum = readonly [figure: Text, found: number, expected: number, unit: string];

/** The first sum that is off, as a fault of the layer or of one laser. */
function faultOf(
  code: 'layer-sum-off' | 'laser-sum-off',
  sums: readonly Sum[],
  params: Params,
): Fault | null {
  const wrong = sums.find(([, found, expected]) => differ(found, expected));
  if (!wrong) return null;
  const [figure, found, expected, unit] = wrong;
  const value = shownBy(Math.abs(found - expected));
  const by: Param = unit === '' ? value : { text: '{value} {unit}', values: { value, unit } };
  return soundFault(code, { ...params, figure: { text: figure }, by });
}

function laserFault(laser: LaserFigures, own: readonly Piece[], exposure_s: number, half: number) {
  const filled = laser.on ? laser.load_s + laser.idle_s : exposure_s + laser.idle_s;
  const sums: Sum[] = [
    ['scan area ¦ books', laser.scanArea_mm2, sum(own, (p) => p.area_mm2 + p.seam_mm * half), 'mm²'],
    ['true outline ¦ books', laser.outline_mm, sum(own, (p) => p.outline_mm), 'mm'],
    ['number of pieces ¦ books', laser.pieces, own.length, ''],
    ['load ¦ books', laser.load_s, sum(own, (p) => p.load_s), 's'],
    ['load and idle time ¦ books', filled, exposure_s, 's'],
  ];
  return faultOf('laser-sum-off', sums, { laser: laser.id });
}

function layerSums(layer: LayerFigures, process: Process): Sum[] {
  const { exposure_s, recoat_s, time_s, seamLength_mm, doubleExposed_mm2, pieces, seams } = layer;
  const slowest = Math.max(0, ...layer.lasers.map((laser) => laser.load_s));
  const unassigned = pieces.filter((piece) => piece.laser < 0);
  return [
    ['exposure ¦ books', exposure_s, slowest, 's'],
    ['time ¦ books', time_s, Math.max(process.minLayer_s, recoat_s + exposure_s), 's'],
    ['doubly exposed area ¦ books', doubleExposed_mm2, seamLength_mm * process.seamOverlap_mm, 'mm²'],
    ['seam length ¦ books', 2 * seamLength_mm, sum(pieces, (piece) => piece.seam_mm), 'mm'],
    ['number of cut parts ¦ books', layer.cutParts, new Set(seams.map((seam) => seam.part)).size, ''],
    ['unassigned area ¦ books', layer.unassigned_mm2, sum(unassigned, (piece) => piece.area_mm2), 'mm²'],
  ];
}

/** The first figure of a layer that disagrees with the others; null where all agree (1e-6). */
export function figuresFault(layer: LayerFigures, process: Process): Fault | null {
  const { error, section_mm2 } = books(layer);
  if (!(error <= BOOKS_TOLERANCE))
    return soundFault('books-unbalanced', { by: shownBy(error * (section_mm2 || 1)) });
  const faster = layer.bestPossible_s - (layer.exposure_s - layer.costOfCutting_s);
  if (!(faster <= BOOKS_TOLERANCE * Math.max(1, layer.exposure_s)))
    return soundFault('faster-than-possible', { by: shownBy(faster) });
  for (const [k, laser] of layer.lasers.entries()) {
    const own = layer.pieces.filter((piece) => piece.laser === k);
    const fault = laserFault(laser, own, layer.exposure_s, process.seamOverlap_mm / 2);
    if (fault) return fault;
  }
  return faultOf('layer-sum-off', layerSums(layer, process), {});
}
