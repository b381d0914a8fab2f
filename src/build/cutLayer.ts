/**
 * For which layer thickness a shape's sections were cut, told by the tops of its slabs: a mesh is cut at the middle of every
 * layer, so its slabs end on multiples of the thickness (the last one where the mesh ends). Only a stack of many slabs was
 * cut from a mesh; a few slabs are drawn. Whole micrometres; mathematics (Euclid's algorithm). Where most slabs are one such
 * layer high and no thicker than powder is laid, that is the thickness itself; else it may be a multiple of it.
 */
import type { Layout, Shape, ShapeId } from '../layout/types';
import type { Mm } from '../units/types';
import { problem } from './problem';
import type { Problem } from './types';

/** Stacks of fewer slabs are drawn by hand. */
const FEWEST_SLABS = 20;
const STEPS_PER_MM = 1000;
/** Powder is laid in layers of 0.02 to 0.1 mm [common practice, no source]; coarser steps are the shape's own. */
const THICKEST_mm: Mm = 0.12;

const steps = (length: Mm): number => Math.round(length * STEPS_PER_MM);

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

const made = new WeakMap<Shape, Mm | null>();

/** The greatest thickness that all tops but the last are multiples of; null for a shape of few slabs. */
export function cutLayer(shape: Shape): Mm | null {
  let found = made.get(shape);
  if (found === undefined) {
    const tops = shape.slabs.slice(0, -1).map(({ to_mm }) => steps(to_mm));
    found = shape.slabs.length < FEWEST_SLABS ? null : tops.reduce(greatestCommon, 0) / STEPS_PER_MM;
    made.set(shape, found);
  }
  return found;
}

export interface CutOtherwise {
  readonly shape: ShapeId;
  /** What it was cut for. */
  readonly layer_mm: Mm;
}

/** Whether most slabs are one layer high. */
function layerByLayer({ slabs }: Shape, layer_mm: Mm): boolean {
  const single = slabs.filter(
    ({ to_mm }, i) => steps(to_mm - (slabs[i - 1]?.to_mm ?? 0)) === steps(layer_mm),
  );
  return layer_mm <= THICKEST_mm && 2 * single.length > slabs.length;
}

/** Shapes of the parts whose sections were cut for layers that the process does not have. */
export function cutForOtherLayers({ shapes, parts, process }: Layout): CutOtherwise[] {
  const layer = steps(process.layer_mm);
  return [...new Set(parts.map((part) => part.shape))].flatMap((shape) => {
    const layer_mm = cutLayer(shapes[shape]!);
    if (layer_mm === null || steps(layer_mm) === layer) return [];
    const fits = steps(layer_mm) % layer === 0 && !layerByLayer(shapes[shape]!, layer_mm);
    return fits ? [] : [{ shape, layer_mm }];
  });
}

/** The same as problems of the plate; a check for every shape that stands on it. */
export function cutProblems(layout: Layout): { problems: readonly Problem[]; checks: number } {
  const { parts, process } = layout;
  const problems = cutForOtherLayers(layout).map(({ shape, layer_mm }) => {
    const ids = parts.filter((part) => part.shape === shape).map(({ id }) => id);
    return problem('cut-for-other-layers', { shape, cut: layer_mm, layer: process.layer_mm }, ids);
  });
  return { problems, checks: new Set(parts.map((part) => part.shape)).size };
}
