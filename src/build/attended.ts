/**
 * Attended hours of a day as people type them and as they are written out. Whole minutes of one day; what runs over
 * midnight is two ranges, one on each day; "24:00" ends a day.
 */
import { fail, ok, type Result } from '../layout/result';
import type { ClockRange } from '../layout/types';

const MIN_PER_H = 60;
const RANGE = /^(\d{1,2})(?:[:.](\d{2}))?\s*[-–—]\s*(\d{1,2})(?:[:.](\d{2}))?$/;

function clockTime(hour: string, minute = '00'): string | null {
  const time = `${hour.padStart(2, '0')}:${minute}`;
  return Number(minute) < MIN_PER_H && time <= '24:00' ? time : null;
}

function parseRange(text: string): Result<ClockRange> {
  const [, fromHour, fromMinute, toHour, toMinute] = RANGE.exec(text) ?? [];
  const from = fromHour === undefined ? null : clockTime(fromHour, fromMinute);
  const to = toHour === undefined ? null : clockTime(toHour, toMinute);
  if (from === null || to === null) return fail('attended-unreadable', { found: text });
  return from < to ? ok([from, to]) : fail('attended-backwards', { from, to });
}

/**
 * Attended hours of one day as a person types them: "06:00-22:00, 23:00-24:00", also "6-22"; nothing at all where nobody
 * comes. Ranges come out ascending.
 * Faults: attended-unreadable, attended-backwards (over midnight or empty), attended-overlap.
 */
export function parseAttended(text: string): Result<ClockRange[]> {
  const ranges: ClockRange[] = [];
  for (const entry of text.split(/[,;]/)) {
    if (entry.trim() === '') continue;
    const range = parseRange(entry.trim());
    if (!range.ok) return range;
    ranges.push(range.value);
  }
  ranges.sort(([a], [b]) => (a < b ? -1 : Number(a > b)));
  const overlap = ranges.findIndex(([from], i) => i > 0 && from < ranges[i - 1]![1]);
  if (overlap < 0) return ok(ranges);
  return fail('attended-overlap', { one: ranges[overlap - 1]!.join('-'), other: ranges[overlap]!.join('-') });
}

/** The same written out: "06:00-22:00, 23:00-24:00". */
export const formatAttended = (ranges: readonly ClockRange[]): string =>
  ranges.map((range) => range.join('-')).join(', ');
