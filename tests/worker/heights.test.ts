// The whole height beside the page: what arrives in the end equals the analysis made at once; a newer question wins; a
// long drag sees the height follow.
import { describe, expect, test } from 'vitest';
import { analyse, analyseLive, fitsAFrame, type KnownHeight } from '../../src/build/analyse';
import { checksum } from '../../src/layout/checksum';
import { totalsOf } from '../../src/build/totals';
import type { Layout } from '../../src/layout/types';
import { heights, type HeightNews } from '../../src/worker/heights';
import { plate } from '../support/plates';
import { BANDED_QUADRANTS, pyramids, square } from '../support/pyramids';

const high = (x: number): Layout => pyramids(x, { at: [-90, 90], seams: 'none' });

interface Heard {
  readonly known: KnownHeight[];
  readonly progress: number[];
  last(): Promise<KnownHeight>;
  checksum(): Promise<string>;
}
function listening(service: ReturnType<typeof heights>): Heard {
  const known: KnownHeight[] = [];
  const progress: number[] = [];
  const done: { last?: (found: KnownHeight) => void; sum?: (checksum: string) => void } = {};
  service.listen((news: HeightNews) => {
    if (news.kind === 'failed') throw new Error(news.detail);
    if (news.kind === 'progress') {
      progress.push(news.share);
      return;
    }
    if (news.kind === 'checksum') {
      done.sum?.(news.checksum);
      return;
    }
    known.push(news.known);
    if (news.known.every === 1 && news.known.checks > 0) done.last?.(news.known);
  });
  return {
    known,
    progress,
    last: () => new Promise((resolve) => (done.last = resolve)),
    checksum: () => new Promise((resolve) => (done.sum = resolve)),
  };
}

describe('the whole height of a plate beside the page', () => {
  test('is in the end what the analysis at once gives, problems and rules included', async () => {
    const layout = high(0);
    const service = heights(null);
    const heard = listening(service);
    const last = heard.last();
    const sum = heard.checksum();
    service.ask(layout);
    const known = await last;
    expect(await sum).toBe(checksum(layout));
    const whole = analyse(layout);
    expect(known.layout).toBe(layout);
    expect(known.stretches).toEqual(
      whole.stretches.map((stretch) => ({ ...stretch, figures: totalsOf(stretch.figures) })),
    );
    expect(known.build).toEqual(whole.build);
    expect([known.problems, known.checks]).toEqual([whole.problems, whole.checks]);
    const live = analyseLive(layout, known);
    expect(live.whole).toBe('present');
    for (const layer of [1, 77, 300]) expect(live.layer(layer).lasers).toEqual(whole.layer(layer).lasers);
  });

  test('begins with a first look that covers the height without gaps and says so', async () => {
    const service = heights(null);
    const heard = listening(service);
    const last = heard.last();
    const layout = high(0);
    service.ask(layout);
    await last;
    const [first, whole] = heard.known;
    expect(first!.every).toBe(2);
    expect(analyseLive(layout, first!).whole).toBe('sampled');
    expect(first!.stretches[0]!.firstLayer).toBe(1);
    first!.stretches
      .slice(1)
      .forEach((s, i) => expect(s.firstLayer).toBe(first!.stretches[i]!.lastLayer + 1));
    expect(first!.stretches.at(-1)!.lastLayer).toBe(300);
    expect(first!.build.exposure_h / whole!.build.exposure_h).toBeCloseTo(1, 2);
  });

  test('is told before anybody has looked for its problems, which follow; nothing says 100 % while something is left', async () => {
    const service = heights(null);
    const heard = listening(service);
    const last = heard.last();
    const layout = high(0);
    const parts = layout.parts.map((part) => ({ ...part, at_mm: [0, 0] as const }));
    service.ask({ ...layout, parts });
    await last;
    const whole = heard.known.filter(({ every }) => every === 1);
    expect(whole.map(({ problems, checks }) => [problems.length > 0, checks > 0])).toEqual([
      [false, false],
      [true, true],
    ]);
    expect(whole[1]!.build).toBe(whole[0]!.build);
    // Three parts on one spot: three pairs.
    expect(whole[1]!.problems.filter(({ code }) => code === 'parts-overlap')).toHaveLength(3);
    expect(Math.max(...heard.progress)).toBeLessThan(0.995);
  });

  test('keeps the problems of the plate before until its own are known, with no check behind them', async () => {
    const service = heights(null);
    const heard = listening(service);
    const layout = high(0);
    const parts = layout.parts.map((part) => ({ ...part, at_mm: [0, 0] as const }));
    const first = heard.last();
    service.ask({ ...layout, parts });
    const { problems } = await first;
    const second = heard.last();
    service.ask(layout);
    await second;
    const whole = heard.known.filter((known) => known.every === 1 && known.layout === layout);
    expect(whole.map(({ checks }) => checks > 0)).toEqual([false, true]);
    expect(whole[0]!.problems).toBe(problems);
    expect(whole[1]!.problems).toEqual(analyse(layout).problems);
  });

  test('is computed for the newest question: one that waits is forgotten', async () => {
    const service = heights(null);
    const heard = listening(service);
    const last = heard.last();
    const asked = [high(0), high(5), high(10), high(15)];
    for (const layout of asked) service.ask(layout);
    const known = await last;
    expect(known.layout).toBe(asked[3]);
    expect(heard.known.some(({ layout }) => layout === asked[1] || layout === asked[2])).toBe(false);
  });

  test('of an earlier plate says so and lets the layers shown be of the present one', async () => {
    const service = heights(null);
    const last = listening(service).last();
    service.ask(high(0));
    const known = await last;
    const moved = high(40);
    const live = analyseLive(moved, known);
    expect(live.whole).toBe('earlier');
    expect(live.build.time_h).toBe(known.build.time_h);
    expect(live.layer(10).sectionArea_mm2).toBeCloseTo(analyse(moved).layer(10).sectionArea_mm2, 9);
    expect(analyseLive(moved, null).whole).toBe('none');
  });
});

test('a hundred different parts of one height fit a frame', () => {
  const parts = Array.from({ length: 100 }, (_, i) => ({
    id: `P${i}`,
    slabs: [{ to_mm: 40, rings: [square(10 + 0.1 * i)] }],
  }));
  expect(fitsAFrame(plate(parts, BANDED_QUADRANTS))).toBe(true);
});

test('a plate of few slabs fits a frame, one of many layers does not', () => {
  expect(fitsAFrame(high(0))).toBe(false);
  expect(
    fitsAFrame(plate([{ id: 'P01', slabs: [{ to_mm: 5, rings: [square(20)] }] }], BANDED_QUADRANTS)),
  ).toBe(true);
});
