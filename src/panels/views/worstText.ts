/** The height range that wastes most, in words. Millimetres, hours (estimates). */
import { t } from '../../language/index';
import type { WorstRange } from '../../build/worst';
import { formatField, formatHours } from '../../units/format';

const place = ({ from_mm, to_mm, toTop }: WorstRange): string => {
  if (from_mm === 0 && toTop) return t('over the whole height');
  const [from, to] = [formatField(from_mm), formatField(to_mm)];
  return toTop ? t('from {from} mm to the top', { from }) : t('from {from} to {to} mm', { from, to });
};

/** One by its name, several by their number. */
const named = (ids: readonly string[]) => ({
  count: ids.length,
  who: ids.length === 1 ? ids[0]! : ids.length,
});

function who({ working, waiting }: WorstRange): string {
  if (waiting.length === 0)
    return working.length === 1
      ? t('{laser} is alone', { laser: working[0]! })
      : t('all {count} lasers work unevenly', { count: working.length });
  return `${t('{who} [works|work]', named(working))}, ${t('{who} [waits|wait]', named(waiting))}`;
}

/** Less than this part of the exposure is not worth naming a height for. */
const EVEN = 0.01;

/** "55.01 h lost from 60 mm to the top: L4 works, 3 wait" */
export const worstText = (worst: WorstRange): string =>
  worst.lost_h < EVEN * worst.exposure_h
    ? t('Loads are even: no height loses more than {lost}', { lost: formatHours(worst.lost_h) })
    : t('{lost} lost {where}: {who}', {
        lost: formatHours(worst.lost_h),
        where: place(worst),
        who: who(worst),
      });

/** What "lost" means, and who waits. */
export const worstMeaning = ({ working, waiting, lost_h, held_h }: WorstRange): string =>
  t(
    waiting.length > 0
      ? 'Shared evenly, the same loads and their waiting for the minimum layer time would take {even} instead of {now} there (estimate). Working: {working}; waiting: {waiting}. Press to see the middle of this range.'
      : 'Shared evenly, the same loads and their waiting for the minimum layer time would take {even} instead of {now} there (estimate). Working: {working}. Press to see the middle of this range.',
    {
      even: formatHours(held_h - lost_h),
      now: formatHours(held_h),
      working: working.join(' '),
      waiting: waiting.join(' '),
    },
  );
