/**
 * A shape as an SVG path: union of its sections seen from above is not needed for a picture, so the slab with the
 * largest box is drawn, holes by even-odd. +y up on the page, in millimetres of the shape.
 */
import { boxOf, boxUnion } from '../../geometry/region';
import { ringFromLayout } from '../../geometry/ring';
import type { Box } from '../../geometry/types';
import type { LayoutRing, Shape } from '../../layout/types';

export interface ShapePicture {
  readonly path: string;
  /** minX, minY, width, height in the page's sense (y down). */
  readonly viewBox: string;
  readonly width_mm: number;
  readonly depth_mm: number;
  /** Size of the larger side, for line widths. */
  readonly size_mm: number;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);

function ringPath(ring: LayoutRing): string {
  const flat = ringFromLayout(ring);
  let path = '';
  for (let i = 0; i < flat.length; i += 2)
    path += `${i === 0 ? 'M' : 'L'}${short(flat[i] ?? 0)} ${short(-(flat[i + 1] ?? 0))}`;
  return `${path}Z`;
}
const boxSize = (box: Box): number => (box.maxX - box.minX) * (box.maxY - box.minY);

function picture(rings: readonly LayoutRing[], box: Box): ShapePicture {
  const [width, depth] = [box.maxX - box.minX, box.maxY - box.minY];
  const size = Math.max(width, depth);
  const pad = size * 0.05;
  return {
    path: rings.map(ringPath).join(''),
    viewBox: [box.minX - pad, -box.maxY - pad, width + 2 * pad, depth + 2 * pad].map(short).join(' '),
    width_mm: width,
    depth_mm: depth,
    size_mm: size,
  };
}
/** Slabs looked at for the largest: a mesh has thousands, and neighbours are nearly alike. */
const MOST_LOOKED_AT = 100;
const made = new WeakMap<Shape, ShapePicture>();

/** The picture of a shape; the same object for the same shape. */
export function shapePicture(shape: Shape): ShapePicture {
  const known = made.get(shape);
  if (known !== undefined) return known;
  const filled = shape.slabs.filter((slab) => slab.rings.length > 0);
  const every = Math.ceil(filled.length / MOST_LOOKED_AT);
  const slabs = filled.filter((_, i) => i % every === 0);
  const boxes = slabs.map((slab) => boxOf(slab.rings.map(ringFromLayout)));
  const largest = boxes.reduce((best, box, i) => (boxSize(box) > boxSize(boxes[best]!) ? i : best), 0);
  const whole = boxes.reduce(boxUnion);
  const result = { ...picture(slabs[largest]?.rings ?? [], boxes[largest] ?? whole) };
  made.set(shape, result);
  return result;
}

/** Top of the shape's highest slab. */
export const shapeHeight = (shape: Shape): number => shape.slabs.at(-1)?.to_mm ?? 0;
