/** The height range that wastes most, in words. Millimetres, hours (estimates). */
import type { WorstRange } from '../../build/worst';
import { formatField, formatHours } from '../../units/format';

const place = ({ from_mm, to_mm, toTop }: WorstRange): string => {
  if (from_mm === 0 && toTop) return 'over the whole height';
  const end = toTop ? 'mm to the top' : `to ${formatField(to_mm)} mm`;
  return `from ${formatField(from_mm)} ${end}`;
};

const some = (ids: readonly string[], verb: string): string =>
  ids.length === 1 ? `${ids[0]} ${verb}s` : `${ids.length} ${verb}`;

function who({ working, waiting }: WorstRange): string {
  if (waiting.length === 0)
    return working.length === 1 ? `${working[0]} is alone` : `all ${working.length} lasers work unevenly`;
  return `${some(working, 'work')}, ${some(waiting, 'wait')}`;
}

/** Less than this part of the exposure is not worth naming a height for. */
const EVEN = 0.01;

/** "55.01 h lost from 60 mm to the top: L4 works, 3 wait" */
export const worstText = (worst: WorstRange): string =>
  worst.lost_h < EVEN * worst.exposure_h
    ? `Loads are even: no height loses more than ${formatHours(worst.lost_h)}`
    : `${formatHours(worst.lost_h)} lost ${place(worst)}: ${who(worst)}`;

/** What "lost" means, and who waits. */
export const worstMeaning = ({ working, waiting, lost_h, exposure_h }: WorstRange): string =>
  `An even share of the same loads would take ${formatHours(exposure_h - lost_h)} instead of ${formatHours(exposure_h)} there (estimate). Working: ${working.join(' ')}${waiting.length > 0 ? `; waiting: ${waiting.join(' ')}` : ''}. Press to see the middle of this range.`;
