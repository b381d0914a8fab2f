/**
 * Problems of a schedule. The build is one block on a platform of 400 × 400 mm whose hours are worked out by hand
 * [mathematics]; 23 November 2026 is a Monday [Gregorian calendar].
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { betterStart } from '../../src/build/scheduleFaults';
import { eventsOf } from '../../src/build/events';
import { messageAdvice, messageText } from '../../src/layout/messages';
import type { ClockRange, Layout, PowderStore, Schedule } from '../../src/layout/types';
import { plate, rect, standing } from '../support/plates';

const DAY: readonly ClockRange[] = [['06:00', '22:00']];
const WEEK = { mon: DAY, tue: DAY, wed: DAY, thu: DAY, fri: DAY, sat: [], sun: [] };
const STORES: PowderStore = { feed_l: 1000, overflow_l: 1000, residueInterval_laserH: 1000 };

/** 1200 layers of exactly 60 s: 20 h. */
const BLOCK = plate(
  [standing('block', 72, rect(100, 100, 140, 140))],
  { strategy: 'wholeField' },
  {
    process: { minLayer_s: 60 },
  },
);
const scheduled = (schedule: Partial<Schedule>, powder: Partial<PowderStore> = {}): Layout => ({
  ...BLOCK,
  machine: { ...BLOCK.machine, powder: { ...STORES, ...powder } },
  schedule: {
    start: '2026-11-23T10:00',
    attended: WEEK,
    feedFilled_l: powder.feed_l ?? STORES.feed_l,
    overflowFilled_l: 0,
    residue_laserH: 0,
    correction: { factor: 1, spread_pct: 10 },
    ...schedule,
  },
});
const problems = (layout: Layout) => analyse(layout).problems;
const codes = (layout: Layout): string[] => problems(layout).map(({ code }) => code);

describe('events in unattended hours', () => {
  it('the block takes 20 h', () => {
    expect(analyse(BLOCK).build.time_h).toBeCloseTo(20, 9);
  });

  it('none: nothing is listed, and the checks are counted', () => {
    // Monday 10:00 to Tuesday 06:00
    const analysis = analyse(scheduled({}));
    expect(analysis.problems).toEqual([]);
    expect(analysis.checks).toBeGreaterThan(analyse(BLOCK).checks);
  });

  it('an end at night is listed, blocks nothing, and names the next start that helps', () => {
    // Monday 08:00 ends Tuesday 04:00; from 10:00 on it ends at 06:00.
    const [end, ...more] = problems(scheduled({ start: '2026-11-23T08:00' }));
    expect(end).toMatchObject({ code: 'end-unattended', blocks: false, params: { layer: 1200 } });
    expect(messageText(end!.code, end!.params)).toContain('Tue 2026-11-24 04:00');
    expect(messageAdvice(end!.code, end!.params)).toContain('Start at Mon 2026-11-23 10:00');
    expect(more).toEqual([]);
  });

  // 0.0192 l a layer: 15.36 l last 800 layers, 13 h 20 min.
  const feed = { feed_l: 15.36 };

  it('a service at night blocks hand-over and comes before what does not', () => {
    // Started on Monday at 09:00 the feed is empty at 22:20 and the build ends on Tuesday at 05:00.
    const [service, end, ...more] = problems(scheduled({ start: '2026-11-23T09:00' }, feed));
    expect(service).toMatchObject({
      code: 'service-unattended',
      blocks: true,
      params: { event: { text: 'Feed empty' }, layer: 800 },
    });
    expect(messageText(service!.code, service!.params)).toContain('Mon 2026-11-23 22:20');
    // A start at 16:40 would put the feed at 06:00 on the next day; the next quarter is 16:45, the end is then at 12:45.
    expect(messageAdvice(service!.code, service!.params)).toContain('Start at Mon 2026-11-23 16:45');
    expect(end).toMatchObject({ code: 'end-unattended', blocks: false });
    expect(more).toEqual([]);
  });

  it('where the end cannot be had as well, a start that has every service is named', () => {
    // From 16:45 on the feed is empty after 06:05 of the next day; the end, after 12:45, finds nobody.
    const morning: readonly ClockRange[] = [
      ['06:00', '12:00'],
      ['16:00', '20:00'],
    ];
    const attended = {
      mon: morning,
      tue: morning,
      wed: morning,
      thu: morning,
      fri: morning,
      sat: [],
      sun: [],
    };
    const [service] = problems(scheduled({ start: '2026-11-23T09:00', attended }, feed));
    expect(service!.code).toBe('service-unattended-but-end');
    expect(messageAdvice(service!.code, service!.params)).toContain('Start at Mon 2026-11-23 16:45');
  });

  it('where no start helps, the problem says so', () => {
    const never = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
    expect(codes(scheduled({ attended: never }, feed))).toEqual([
      'service-unattended-always',
      'end-unattended-always',
    ]);
  });

  it('a start that was named has no event in unattended hours', () => {
    const before = scheduled({ start: '2026-11-23T09:00' }, feed);
    const better = betterStart(before.schedule!, eventsOf(before, analyse(before).stretches))!;
    expect(better).toEqual({ start: '2026-11-23T16:45', withEnd: true });
    expect(codes(scheduled({ start: better.start }, feed))).toEqual([]);
  });
});

describe('figures that cannot be', () => {
  it('a store that one layer exceeds blocks hand-over', () => {
    const found = problems(scheduled({}, { feed_l: 0.019 }));
    expect(found.find(({ code }) => code === 'store-too-small')).toMatchObject({
      blocks: true,
      params: { store: { text: 'feed ¦ store' }, layer: 1, each: 0.0192, capacity: 0.019 },
    });
  });

  it('more than a thousand services are named, not listed', () => {
    const found = problems(scheduled({ attended: { ...WEEK, mon: [['00:00', '24:00']] } }, { feed_l: 0.02 }));
    expect(found.some(({ code }) => code === 'services-too-many')).toBe(true);
  });

  it('a feed filled beyond what it holds is listed and does not block', () => {
    expect(problems(scheduled({ feedFilled_l: 1001 }))).toMatchObject([
      { code: 'feed-overfilled', blocks: false, params: { found: 1001, capacity: 1000 } },
    ]);
  });

  it('an overflow filled beyond what it holds is listed, beside its service before layer 1', () => {
    const layout = scheduled({ overflowFilled_l: 500 }, { overflow_l: 10 });
    const listed = problems(layout).find(({ code }) => code === 'overflow-overfilled');
    expect(listed).toMatchObject({ blocks: false, params: { found: 500, capacity: 10 } });
    expect(messageText(listed!.code, listed!.params)).toContain('more than it holds (10 l)');
    expect(eventsOf(layout, analyse(layout).stretches)[0]).toMatchObject({ kind: 'overflowFull', layer: 0 });
  });

  it('stores filled to the brim hold what they hold', () => {
    const found = codes(scheduled({ feedFilled_l: 1000, overflowFilled_l: 1000 }));
    expect(found).not.toContain('feed-overfilled');
    expect(found).not.toContain('overflow-overfilled');
  });
});
