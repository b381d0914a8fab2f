/**
 * Powder and calendar of the tall-one plate: 400 × 400 mm in layers of 0.06 mm, packing 0.60, dose factor 2; twelve blocks
 * 50 × 50 × 60 and one part 100 × 100 × 240 in quadrants. Computed by hand, process numbers common practice without a source.
 * 27 November 2026 is a Friday [Gregorian calendar].
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { alikeLayers, eventsOf } from '../../src/build/events';
import { powderOfLayer } from '../../src/build/powder';
import { readLayout } from '../../src/layout/read';
import type { ClockRange, Layout, PowderStore, Schedule } from '../../src/layout/types';

const FILE = new URL('../../shared/examples/tall-one.json', import.meta.url);
const WEEKDAY: readonly ClockRange[] = [['06:00', '22:00']];
const SCHEDULE: Schedule = {
  start: '2026-11-27T16:00',
  attended: { mon: WEEKDAY, tue: WEEKDAY, wed: WEEKDAY, thu: WEEKDAY, fri: WEEKDAY, sat: [], sun: [] },
  feedFilled_l: 60,
  overflowFilled_l: 0,
  residue_laserH: 0,
  correction: { factor: 1, spread_pct: 10 },
};
const STORES: PowderStore = { feed_l: 100, overflow_l: 100, residueInterval_laserH: 1000 };

function tallOne(powder: Partial<PowderStore>, schedule: Partial<Schedule> = {}): Layout {
  const read = readLayout(readFileSync(FILE, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  const machine = { ...read.value.machine, powder: { ...STORES, ...powder } };
  const full = { feedFilled_l: machine.powder.feed_l };
  return { ...read.value, machine, schedule: { ...SCHEDULE, ...full, ...schedule } };
}
const found = (powder: Partial<PowderStore>, schedule?: Partial<Schedule>) => {
  const layout = tallOne(powder, schedule);
  return eventsOf(layout, analyse(layout).stretches);
};

/** Seconds of a layer: 10 s of recoating and A/(h·v) + gap·A/(s·h) + P/v_c + piece gap of the slowest laser. */
const BELOW_S = 10 + 10_000 / 120 + 10_000 * 0.4e-3 + 800 / 600 + 4 * 0.02;
const ABOVE_S = 10 + 10_000 / 120 + 10_000 * 0.4e-3 + 400 / 600 + 0.02;

describe('powder', () => {
  it('the dose is 76.80 l, the overflow 8.00 then 9.20 cm³ a layer, 35.60 l in all', () => {
    const layout = tallOne({});
    const { stretches, build } = analyse(layout);
    const each = alikeLayers(stretches).map(
      ({ sectionArea_mm2 }) => powderOfLayer(400 * 400, sectionArea_mm2, layout.process).overflow_l,
    );
    expect(each).toEqual([expect.closeTo(0.008, 9), expect.closeTo(0.0092, 9)]);
    expect(build.dose_l).toBeCloseTo(76.8, 6);
    expect(build.overflow_l).toBeCloseTo(35.6, 6);
  });

  it('an overflow of 20 l: layer 2304 is the last that finishes, on Monday at 06:56, and once emptied it lasts', () => {
    const [full, end, ...more] = found({ overflow_l: 20 });
    expect(full).toMatchObject({ kind: 'overflowFull', layer: 2304, at: '2026-11-30T06:56', attended: true });
    expect(full!.hour).toBeCloseTo((1000 * BELOW_S + 1304 * ABOVE_S) / 3600, 6);
    expect(end).toMatchObject({ kind: 'end', layer: 4000, at: '2026-12-02T05:06', attended: false });
    expect(end!.hour).toBeCloseTo(109.113, 3);
    expect(more).toEqual([]);
  });

  it('a feed of 60 l lasts 3125 layers of 19.2 cm³ exactly', () => {
    const [empty] = found({ feed_l: 60 });
    expect(empty).toMatchObject({ kind: 'feedEmpty', layer: 3125 });
  });

  it('residue is due after 100 laser-hours, not clock hours', () => {
    // Three lasers with four blocks and one with the tall part below, that one alone above.
    const below = 3 * (BELOW_S - 10) + (ABOVE_S - 10);
    const above = ABOVE_S - 10;
    const layer = 1000 + Math.floor((100 * 3600 - 1000 * below) / above);
    expect(layer).toBe(1065);
    const [due] = found({ residueInterval_laserH: 100 });
    expect(due).toMatchObject({ kind: 'residueDue', layer });
    expect(due!.hour).toBeCloseTo((1000 * BELOW_S + 65 * ABOVE_S) / 3600, 6);
  });

  it('a build that takes a tenth longer has its events a tenth later', () => {
    const [full] = found({ overflow_l: 20 }, { correction: { factor: 1.1, spread_pct: 10 } });
    expect(full!.hour).toBeCloseTo((1.1 * (1000 * BELOW_S + 1304 * ABOVE_S)) / 3600, 6);
    // 69 h 13.7 min after Friday 16:00
    expect(full!.at).toBe('2026-11-30T13:13');
  });
});
