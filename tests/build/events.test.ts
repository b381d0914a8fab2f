/**
 * Service events against the clock. Expected values come from walking a build layer by layer in whole sixteenths of a
 * litre and whole seconds [mathematics], from figures chosen so that all sums are exact.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { events, minutesTo, type EventInput, type EventKind } from '../../src/build/events';
import type { ClockRange, Schedule } from '../../src/layout/types';
import { runs } from '../support/random';

const ALWAYS: readonly ClockRange[] = [['00:00', '24:00']];
const DAY: readonly ClockRange[] = [['06:00', '22:00']];
const week = (day: readonly ClockRange[]): Schedule['attended'] => ({
  mon: day,
  tue: day,
  wed: day,
  thu: day,
  fri: day,
  sat: day,
  sun: day,
});
const SCHEDULE: Schedule = {
  start: '2026-11-27T16:00',
  attended: week(ALWAYS),
  feedFilled_l: 1000,
  overflowFilled_l: 0,
  residue_laserH: 0,
  correction: { factor: 1, spread_pct: 10 },
};
/** 1 m² in layers of 1 mm: a dose of 2 l, of which a layer without a section needs 1 l. */
const platform = { width_mm: 1000, depth_mm: 1000, margin_mm: 0, keepOuts: [] };
const process = { layer_mm: 1, doseFactor: 2, packing: 0.5 };
const powder = { feed_l: 1000, overflow_l: 1000, residueInterval_laserH: 1000 };
const layers = (count: number, fields: Partial<EventInput['stretches'][number]> = {}) => ({
  layers: count,
  sectionArea_mm2: 0,
  time_s: 60,
  load_s: 0,
  ...fields,
});
interface Own {
  readonly schedule?: Partial<Schedule>;
  readonly powder?: Partial<typeof powder> | null;
}
const input = (stretches: EventInput['stretches'], own: Own = {}): EventInput => ({
  stretches,
  process,
  machine: { platform, powder: own.powder === null ? null : { ...powder, ...own.powder } },
  schedule: { ...SCHEDULE, ...own.schedule },
});
const kinds = (stretches: EventInput['stretches'], own: Own = {}): string[] =>
  events(input(stretches, own)).map(({ kind, layer }) => `${kind} ${layer}`);

describe('events', () => {
  it('a small feed of 7 l at 2 l a layer lasts three layers, then every three', () => {
    expect(kinds([layers(10)], { powder: { feed_l: 7 }, schedule: { feedFilled_l: 7 } })).toEqual([
      'feedEmpty 3',
      'feedEmpty 6',
      'feedEmpty 9',
      'end 10',
    ]);
  });

  it('a feed that is not filled up at the start is filled up at its first service', () => {
    expect(kinds([layers(10)], { powder: { feed_l: 10 }, schedule: { feedFilled_l: 3 } })).toEqual([
      'feedEmpty 1',
      'feedEmpty 6',
      'end 10',
    ]);
  });

  it('an overflow of 4 l takes four bare layers of 1 l, or eight that need half a litre more', () => {
    const own = { powder: { overflow_l: 4 } };
    expect(kinds([layers(6)], own)).toEqual(['overflowFull 4', 'end 6']);
    expect(kinds([layers(10, { sectionArea_mm2: 500_000 })], own)).toEqual(['overflowFull 8', 'end 10']);
  });

  it('what lies in the overflow at the start counts', () => {
    const own = { powder: { overflow_l: 4 }, schedule: { overflowFilled_l: 1.5 } };
    expect(kinds([layers(6)], own)).toEqual(['overflowFull 2', 'end 6']);
  });

  it('residue counts in laser-hours: four lasers of 15 minutes each make one in a layer of 20 minutes', () => {
    const stretch = layers(10, { time_s: 1200, load_s: 4 * 900 });
    const own = { powder: { residueInterval_laserH: 6 }, schedule: { residue_laserH: 2 } };
    const [first] = events(input([stretch], own));
    expect(first).toMatchObject({ kind: 'residueDue', layer: 4, at: '2026-11-27T17:20' });
    expect(first!.hour).toBeCloseTo(4 / 3, 12);
  });

  it('hours carry the correction factor, layers do not', () => {
    const own = {
      powder: { feed_l: 7 },
      schedule: { feedFilled_l: 7, correction: { factor: 1.5, spread_pct: 10 } },
    };
    expect(events(input([layers(4)], own)).map(({ layer, hour, at }) => [layer, hour, at])).toEqual([
      [3, expect.closeTo(0.075, 12), '2026-11-27T16:04'],
      [4, expect.closeTo(0.1, 12), '2026-11-27T16:06'],
    ]);
  });

  it('clock times are cut to the minute, and a full minute missed by rounding counts', () => {
    const [end] = events(input([layers(1, { time_s: 119 })]));
    expect(end!.at).toBe('2026-11-27T16:01');
    expect([minutesTo(0.7 * 3), minutesTo((1 / 3) * 0.3 * 10)]).toEqual([126, 60]);
  });

  it('attended or not is judged by the minute shown', () => {
    const shut = { schedule: { attended: week(DAY) } };
    const at = (hours: number): boolean =>
      events(input([layers(1, { time_s: 3600 * hours })], shut))[0]!.attended;
    expect([at(5.99), at(6), at(13.99), at(14)]).toEqual([true, false, false, true]);
  });

  it('a machine without stated stores has its end alone, a plate without layers nothing', () => {
    expect(kinds([layers(10)], { powder: null })).toEqual(['end 10']);
    expect(kinds([])).toEqual([]);
  });
});

interface Found {
  readonly kind: EventKind;
  readonly layer: number;
  readonly seconds: number;
}

/** A store in sixteenths of its unit: takes layer by layer what it is told and notes when it has to be served. */
class Counted {
  readonly after: number[] = [];
  private stuck = false;
  constructor(
    private readonly capacity: number,
    private left: number,
  ) {}
  take(layer: number, amount: number): void {
    if (this.stuck || amount <= 0) return;
    if (amount > this.left) {
      this.after.push(layer - 1);
      this.left = this.capacity;
      this.stuck = amount > this.capacity;
    }
    this.left -= amount;
  }
}

/** The build walked layer by layer. */
function walked({ stretches, machine, schedule }: EventInput): Found[] {
  const { feed_l, overflow_l, residueInterval_laserH } = machine.powder!;
  const { feedFilled_l, overflowFilled_l, residue_laserH } = schedule;
  const overflow = new Counted(16 * overflow_l, 16 * (overflow_l - overflowFilled_l));
  const feed = new Counted(16 * feed_l, Math.min(16 * feed_l, 16 * feedFilled_l));
  const residue = new Counted(16 * residueInterval_laserH, 16 * (residueInterval_laserH - residue_laserH));
  const ends = [0];
  for (const { layers: count, sectionArea_mm2, time_s, load_s } of stretches)
    for (let i = 0; i < count; i++) {
      const layer = ends.push(ends.at(-1)! + time_s) - 1;
      // 2 l − (1 l + the section in m²) at packing 0.5
      overflow.take(layer, 16 - (16 * sectionArea_mm2) / 1e6);
      feed.take(layer, 32);
      residue.take(layer, (16 * load_s) / 3600);
    }
  if (ends.length === 1) return [];
  const of = (kind: EventKind, after: readonly number[]): Found[] =>
    after.map((layer) => ({ kind, layer, seconds: ends[layer]! }));
  const services = [
    ...of('overflowFull', overflow.after),
    ...of('feedEmpty', feed.after),
    ...of('residueDue', residue.after),
  ].sort((a, b) => a.layer - b.layer);
  return [...services, ...of('end', [ends.length - 1])];
}

it('events by stretches are those of the build walked layer by layer', () => {
  const stretch = fc.record({
    layers: fc.integer({ min: 1, max: 80 }),
    sectionArea_mm2: fc.integer({ min: 0, max: 16 }).map((n) => n * 62_500),
    time_s: fc.integer({ min: 0, max: 400 }),
    load_s: fc.integer({ min: 0, max: 40 }).map((n) => n * 225),
  });
  const litres = fc.integer({ min: 0, max: 60 });
  const own = fc.record({
    powder: fc.record({ feed_l: litres, overflow_l: litres, residueInterval_laserH: litres }),
    schedule: fc.record({ feedFilled_l: litres, overflowFilled_l: litres, residue_laserH: litres }),
  });
  fc.assert(
    fc.property(fc.array(stretch, { maxLength: 10 }), own, (stretches, settings) => {
      const given = input(stretches, settings);
      const expected = walked(given);
      const found = events(given);
      expect(found.map(({ kind, layer }) => [kind, layer])).toEqual(
        expected.map(({ kind, layer }) => [kind, layer]),
      );
      found.forEach(({ hour, at }, i) => {
        const { seconds } = expected[i]!;
        expect(hour).toBeCloseTo(seconds / 3600, 9);
        const minutes = 16 * 60 + Math.floor(seconds / 60);
        const clock = [Math.floor(minutes / 60) % 24, minutes % 60].map((n) => String(n).padStart(2, '0'));
        expect(at.slice(11)).toBe(clock.join(':'));
      });
    }),
    runs(500),
  );
});
