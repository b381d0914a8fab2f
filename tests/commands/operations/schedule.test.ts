/**
 * The schedule of a layout: planned, typed, learned, dropped.
 */
import { describe, expect, test } from 'vitest';
import { nextFullHour } from '../../../src/commands/schedule/planStart';
import { demoLayout } from '../../../src/layout/demo';
import { readLayout } from '../../../src/layout/read';
import { writeLayout } from '../../../src/layout/write';
import { runCommand } from '../../../src/commands';
import { workplace } from '../bench';
import { op } from '../wholeHeight';
import { accepted } from './read';

const START = '2026-11-27T16:00';
const planned = () => accepted(op.planStart(demoLayout(), START));

describe('a schedule', () => {
  test('is planned with full feed, empty overflow, clean filters and nothing learned', () => {
    expect(planned().schedule).toMatchObject({
      start: START,
      feedFilled_l: demoLayout().machine.powder!.feed_l,
      overflowFilled_l: 0,
      residue_laserH: 0,
      correction: { factor: 1 },
    });
  });

  test('keeps everything but its start when it is planned again', () => {
    const before = accepted(op.setSchedule(planned(), { feedFilled_l: 12 }));
    const after = accepted(op.planStart(before, '2026-12-01T07:15'));
    expect(after.schedule).toEqual({ ...before.schedule, start: '2026-12-01T07:15' });
  });

  test('is written into the file and read back', () => {
    const read = readLayout(writeLayout(planned()));
    expect(read).toEqual({ ok: true, value: planned() });
  });

  test('is dropped without a trace', () => {
    expect(op.dropSchedule(planned())).toEqual(demoLayout());
    const bare = demoLayout();
    expect(op.dropSchedule(bare)).toBe(bare);
  });

  test('that is not there is not changed', () => {
    const bare = demoLayout();
    expect(accepted(op.setSchedule(bare, { start: START }))).toBe(bare);
    expect(accepted(op.setAttended(bare, 'mon', '6-22'))).toBe(bare);
    expect(accepted(op.setLearned(bare, { factor: 2, spread_pct: 1, builds: 2 }))).toBe(bare);
  });
});

describe('what is typed', () => {
  test('attended hours are read, out of order too; the same again changes nothing', () => {
    const next = accepted(op.setAttended(planned(), 'sat', '14-18, 8-12'));
    expect(next.schedule!.attended.sat).toEqual([
      ['08:00', '12:00'],
      ['14:00', '18:00'],
    ]);
    expect(next.schedule!.attended.mon).toEqual(planned().schedule!.attended.mon);
    expect(accepted(op.setAttended(next, 'sat', '08:00-12:00, 14:00-18:00'))).toBe(next);
  });

  test('what makes no sense is refused with the reason', () => {
    const refused = [
      op.planStart(demoLayout(), '2026-02-30T10:00'),
      op.setSchedule(planned(), { start: 'tomorrow' }),
      op.setSchedule(planned(), { feedFilled_l: -1 }),
      op.setSchedule(planned(), { correction: { factor: 0, spread_pct: 10 } }),
    ];
    for (const result of refused)
      expect(result).toMatchObject({ ok: false, fault: { code: 'layout-wrong-value' } });
    expect(op.setAttended(planned(), 'mon', '22:00-06:00')).toMatchObject({
      ok: false,
      fault: { code: 'attended-backwards' },
    });
  });

  test('a learned correction is rounded; a spread that is unknown stays', () => {
    const three = { factor: 68 / 60, spread_pct: 6.97561, builds: 3 };
    expect(accepted(op.setLearned(planned(), three)).schedule!.correction).toEqual({
      factor: 1.1333,
      spread_pct: 6.98,
    });
    const one = { factor: 1.2, spread_pct: null, builds: 1 };
    const before = accepted(op.setSchedule(planned(), { correction: { factor: 1, spread_pct: 7 } }));
    expect(accepted(op.setLearned(before, one)).schedule!.correction).toEqual({ factor: 1.2, spread_pct: 7 });
  });
});

describe('commands', () => {
  test('plan and drop apply in turn, each one entry of history', () => {
    const place = workplace(demoLayout());
    expect(runCommand('drop-schedule', place.context)).toBe(false);
    expect(runCommand('plan-start', place.context)).toBe(true);
    expect(place.layout().schedule).not.toBeNull();
    expect(runCommand('plan-start', place.context)).toBe(false);
    expect(runCommand('drop-schedule', place.context)).toBe(true);
    expect(place.layout()).toEqual(demoLayout());
    place.bench.undo();
    place.bench.undo();
    expect(place.bench.history().undo).toBeNull();
  });

  test('the calendar is reached by command', () => {
    const place = workplace(demoLayout());
    runCommand('calendar', place.context);
    expect(place.asked.dialogs).toEqual(['calendar']);
  });

  test('a build is planned for the next full hour of the local clock, over midnight and new year too', () => {
    expect(nextFullHour(new Date(2026, 10, 27, 15, 0, 1))).toBe('2026-11-27T16:00');
    expect(nextFullHour(new Date(2026, 10, 27, 15, 59))).toBe('2026-11-27T16:00');
    expect(nextFullHour(new Date(2026, 11, 31, 23, 30))).toBe('2027-01-01T00:00');
  });
});
