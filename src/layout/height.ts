/** How high a plate is: the top of its highest part. Millimetres above the platform. */
import type { Layout } from './types';
import type { Mm } from '../units/types';

/** Top of the highest part, 0 for an empty plate. */
export function buildTop(layout: Layout): Mm {
  const tops = layout.parts.map((part) => layout.shapes[part.shape]?.slabs.at(-1)?.to_mm ?? 0);
  return tops.reduce((highest, top) => Math.max(highest, top), 0);
}
