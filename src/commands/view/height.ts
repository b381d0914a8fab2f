/** Steps the height from one stretch of equal sections to the next: to the middle of each. */
import type { Text } from '../../language/index';
import type { Mm } from '../../units/types';
import { heightCommand, viewOf } from '../make';
import type { Command, Context } from '../types';

/** Heights of the middles of the stretches, and which of them the plan is cut in (−1 for an empty plate). */
function stretches({ bench }: Context, height_mm: Mm) {
  const all = bench.analysis().stretches;
  const present = all.findLastIndex((stretch) => stretch.from_mm <= height_mm);
  return { middles: all.map((stretch) => (stretch.from_mm + stretch.to_mm) / 2), present };
}

const step = (id: string, label: Text, lack: Text, key: string, by: 1 | -1): Command =>
  heightCommand({ id, label, keys: [key], lack }, (context) => {
    const { middles, present } = stretches(context, viewOf(context).height_mm);
    return present < 0 ? null : (middles[present + by] ?? null);
  });

export const heightUp = step('height-up', 'Height to the next stretch', 'no stretch above', 'PageUp', 1);
export const heightDown = step(
  'height-down',
  'Height to the stretch below',
  'no stretch below',
  'PageDown',
  -1,
);
