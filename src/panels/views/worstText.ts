/** The height range that wastes most, in one sentence. Millimetres, hours (estimates). */
import type { WorstRange } from '../../build/worst';
import { formatHours, formatMm } from '../../units/format';

const place = ({ from_mm, to_mm, toTop }: WorstRange): string => {
  if (from_mm === 0 && toTop) return 'Over the whole height';
  return `From ${formatMm(from_mm)} to ${toTop ? 'the top' : formatMm(to_mm)}`;
};

function who({ working, waiting }: WorstRange): string {
  if (waiting.length === 0)
    return working.length === 1 ? `${working[0]} works alone` : `all ${working.length} lasers work unevenly`;
  const works = working.length === 1 ? `${working[0]} works` : `${working.length} lasers work`;
  return `${works} and ${waiting.length === 1 ? `${waiting[0]} waits` : `${waiting.length} wait`}`;
}

/** "From 60 mm to the top L4 works and 3 wait: 62.7 h of 83.6 h exposure are waiting." */
export const worstText = (worst: WorstRange): string =>
  `${place(worst)} ${who(worst)}: an even share would save ${formatHours(worst.lost_h)} of ${formatHours(worst.exposure_h)} exposure.`;
