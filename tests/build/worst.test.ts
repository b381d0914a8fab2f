// The range of height that wastes most, against plates computed by hand (Tall one: process numbers common practice, no
// source; the hours follow from 100 x 100 mm and twelve 50 x 50 mm blocks at 0.06 mm, 0.1 mm hatch, 1200 mm/s).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { worstRange } from '../../src/build/worst';
import { readLayout } from '../../src/layout/read';
import { worstText } from '../../src/panels/views/worstText';

const example = (name: string, minLayer_s = 0) => {
  const result = readLayout(
    readFileSync(new URL(`../../shared/examples/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!result.ok) throw new Error(result.fault.code);
  return analyse({ ...result.value, process: { ...result.value.process, minLayer_s } });
};
/** A/(h·v) + 0.4 ms per 10 mm vector and 0.1 mm hatch + P/600 + 0.02 s of the part of 100 x 100 mm. */
const TALL_S = 10_000 / 120 + 0.0004 * 10_000 + 400 / 600 + 0.02;

describe('the range of height that wastes most', () => {
  test('of the Tall one in quadrants is all above 60 mm, where L4 works alone: three quarters of its exposure', () => {
    const { stretches } = example('tall-one');
    const worst = worstRange(stretches, 0)!;
    expect(worst).toMatchObject({ toTop: true, working: ['L4'], waiting: ['L1', 'L2', 'L3'] });
    expect(worst.from_mm).toBeCloseTo(60, 9);
    expect(worst.to_mm).toBeCloseTo(240, 9);
    expect(worst.exposure_h).toBeCloseTo((3000 * TALL_S) / 3600, 2);
    expect(worst.lost_h).toBeCloseTo((0.75 * 3000 * TALL_S) / 3600, 2);
    expect(worstText(worst)).toMatch(/^55\.\d+.h lost from 60 mm to the top: L4 works, 3 wait$/);
  });

  test('counts what the minimum layer time leaves: 48.35 h at 40 s, nothing at 200 s', () => {
    // REFERENCE 2, Tall one: 60.763 h divided by height where it takes 109.113 h in quadrants, each layer 40 s at least
    const worst = worstRange(example('tall-one', 40).stretches, 40)!;
    expect(worst.from_mm).toBeCloseTo(60, 9);
    expect(worst.lost_h).toBeCloseTo(109.113 - 60.763, 2);
    expect(worst.held_h).toBeCloseTo((3000 * TALL_S) / 3600, 2);
    // 200 s is more than any layer takes however it is shared
    expect(worstRange(example('tall-one', 200).stretches, 200)).toBeNull();
  });

  test('does not reach into even layers: what is lost below 60 mm is named there', () => {
    const { stretches } = example('tall-one');
    const even = (figures: (typeof stretches)[number]['figures']) => ({
      ...figures,
      lasers: figures.lasers.map((laser) => ({ ...laser, load_s: 20 })),
      exposure_s: 20,
    });
    const uneven = (figures: (typeof stretches)[number]['figures']) => ({
      ...figures,
      lasers: figures.lasers.map((laser, i) => ({ ...laser, load_s: i === 0 ? 40 : 20 })),
      exposure_s: 40,
    });
    const plate = stretches.map((s) => ({
      ...s,
      figures: s.to_mm > 61 ? even(s.figures) : uneven(s.figures),
    }));
    const worst = worstRange(plate, 0)!;
    expect(worst.from_mm).toBe(0);
    expect(worst.to_mm).toBeCloseTo(60, 9);
    // 1000 layers that lose 40 − 25 s each
    expect(worst.lost_h).toBeCloseTo(15 / 3.6, 6);
  });

  test('is none where nothing is built, and even loads are called so', () => {
    expect(worstRange([], 0)).toBeNull();
    const range = {
      from_mm: 0,
      to_mm: 9,
      toTop: true,
      working: ['L1', 'L2'],
      waiting: [],
      exposure_h: 43,
      held_h: 43,
    };
    expect(worstText({ ...range, lost_h: 0.05 })).toMatch(/^Loads are even: .* 0\.05/);
    expect(worstText({ ...range, lost_h: 0.5 })).toMatch(
      /^0\.50.*lost over the whole height: all 2 lasers work unevenly$/,
    );
  });

  test('of the Ring is its whole height: all four work, none waits', () => {
    const worst = worstRange(example('ring').stretches, 0)!;
    expect(worst).toMatchObject({ from_mm: 0, toTop: true, waiting: [] });
    // idle 7.053 s a layer in all, of four lasers, 2000 layers [derived by hand, Ring plate]
    expect(worst.lost_h).toBeCloseTo((2000 * 7.053) / 4 / 3600, 2);
    expect(worstText(worst)).toContain('all 4 lasers work unevenly');
  });
});
