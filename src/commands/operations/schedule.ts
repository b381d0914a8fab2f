/**
 * The schedule of a build: start, attended hours, fill levels, correction. Typed values come back as a result, so that
 * the field can say what was wrong. Local time, litres, laser-hours.
 */
import { parseAttended } from '../../build/attended';
import { corrected, type Learned } from '../../build/correction';
import { ok, type Result } from '../../layout/result';
import type { Layout, Schedule, Weekday } from '../../layout/types';
import { reviewed } from './review';

/** Two shifts on weekdays: common practice, no source; a first value to be changed. */
const FIRST_ATTENDED: Schedule['attended'] = {
  mon: [['06:00', '22:00']],
  tue: [['06:00', '22:00']],
  wed: [['06:00', '22:00']],
  thu: [['06:00', '22:00']],
  fri: [['06:00', '22:00']],
  sat: [],
  sun: [],
};
/** Nothing learned yet; the spread is common practice, no source. */
const FIRST_CORRECTION: Schedule['correction'] = { factor: 1, spread_pct: 10 };

/** A layout that starts then, with a full feed, an empty overflow, clean filters; one that has a schedule starts then. */
export function planStart(layout: Layout, start: string): Result<Layout> {
  const schedule: Schedule = layout.schedule ?? {
    start,
    attended: FIRST_ATTENDED,
    feedFilled_l: layout.machine.powder?.feed_l ?? 0,
    overflowFilled_l: 0,
    residue_laserH: 0,
    correction: FIRST_CORRECTION,
  };
  return reviewed(layout, { ...layout, schedule: { ...schedule, start } });
}

/** Takes the schedule away; the layout itself where it has none. */
export const dropSchedule = (layout: Layout): Layout =>
  layout.schedule === null ? layout : { ...layout, schedule: null };

/** Typed fields of the schedule; the layout itself where it has none. */
export function setSchedule(layout: Layout, fields: Partial<Schedule>): Result<Layout> {
  const { schedule } = layout;
  return schedule === null
    ? ok(layout)
    : reviewed(layout, { ...layout, schedule: { ...schedule, ...fields } });
}

/** Attended hours of one weekday as typed: "06:00-22:00, 23:00-24:00"; faults as of parseAttended. */
export function setAttended(layout: Layout, day: Weekday, text: string): Result<Layout> {
  const { schedule } = layout;
  if (schedule === null) return ok(layout);
  const ranges = parseAttended(text);
  if (!ranges.ok) return ranges;
  return setSchedule(layout, { attended: { ...schedule.attended, [day]: ranges.value } });
}

/** Factor (to 0.0001) and spread (to 0.01 %) of recorded builds; a spread that is unknown stays what it is. */
export function setLearned(layout: Layout, learned: Learned): Result<Layout> {
  if (layout.schedule === null) return ok(layout);
  const { factor, spread_pct } = corrected(learned, layout.schedule.correction);
  const correction = {
    factor: Math.round(factor * 1e4) / 1e4,
    spread_pct: Math.round(spread_pct * 100) / 100,
  };
  return setSchedule(layout, { correction });
}
