/**
 * For which layer thickness a shape's sections were cut, told by the tops of its slabs: a mesh is cut at the middle of every
 * layer, so its slabs end on multiples of the thickness (the last one where the mesh ends). Only a stack of many slabs was
 * cut from a mesh; a few slabs are drawn. Whole micrometres; mathematics (Euclid's algorithm).
 */
import type { Layout, Shape, ShapeId } from '../layout/types';
import type { Mm } from '../units/types';

/** Stacks of fewer slabs are drawn by hand. */
const FEWEST_SLABS = 20;
const STEPS_PER_MM = 1000;

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

/** Shapes of the parts whose sections were cut for layers that the process does not have: their slabs end within layers. */
export function cutForOtherLayers({ shapes, parts, process }: Layout): CutOtherwise[] {
  const layer = steps(process.layer_mm);
  return [...new Set(parts.map((part) => part.shape))].flatMap((shape) => {
    const layer_mm = cutLayer(shapes[shape]!);
    return layer_mm === null || steps(layer_mm) % layer === 0 ? [] : [{ shape, layer_mm }];
  });
}
