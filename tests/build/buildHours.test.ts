// Hours one way and both ways, the corrected hours and the scan volume: the Ring plate computed by hand (process numbers:
// common practice, no source): 44.748 h one way, 43.359 h both ways.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { correctedTime, totalVolume } from '../../src/panels/readout/buildValues';
import { explain } from '../../src/panels/readout/explain';

function ring(): Layout {
  const text = readFileSync(new URL('../../shared/examples/ring.json', import.meta.url), 'utf8');
  const read = readLayout(text);
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}

test('the Ring takes 44.748 h one way and 43.359 h both ways, whichever is set', () => {
  const layout = ring();
  const { recoater } = layout.machine;
  for (const mode of ['oneWay', 'bothWays'] as const) {
    const machine = { ...layout.machine, recoater: { ...recoater, mode } };
    const { build } = analyse({ ...layout, machine });
    expect(build.timeOneWay_h).toBeCloseTo(44.748, 2);
    expect(build.timeBothWays_h).toBeCloseTo(43.359, 2);
    expect(build.time_h).toBe(mode === 'oneWay' ? build.timeOneWay_h : build.timeBothWays_h);
  }
});

test('a minimum layer time holds for either way of recoating', () => {
  const layout = ring();
  const process = { ...layout.process, minLayer_s: 100 };
  const { build } = analyse({ ...layout, process });
  // 2000 layers of 100 s: 70.546 s exposure + 10 s or 7.5 s recoating are less
  expect(build.timeOneWay_h).toBeCloseTo(2000 / 36, 6);
  expect(build.timeBothWays_h).toBeCloseTo(2000 / 36, 6);
});

test('the lasers expose 25446.90 + 5600 mm² of ring and blocks over 120 mm: 3725.6 cm³', () => {
  const { build } = analyse(ring());
  expect(totalVolume(build)).toBeCloseTo(((25446.9 + 5600) * 120) / 1000, 0);
});

test('corrected hours are the hours times the factor; without a schedule they stay', () => {
  const correction = { factor: 1.12, spread_pct: 6 };
  expect(correctedTime({ schedule: null }, { time_h: 50 })).toBe(50);
  const attended = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
  const schedule = {
    start: '2026-11-27T16:00',
    attended,
    feedFilled_l: 60,
    overflowFilled_l: 0,
    residue_laserH: 0,
    correction,
  };
  expect(correctedTime({ schedule }, { time_h: 50 })).toBeCloseTo(56, 9);
  const layout = { ...ring(), schedule };
  const analysis = analyse(layout);
  const words = explain('build-corrected', analysis, analysis.layer(1))!;
  expect(words.numbers.join(' ')).toMatch(/44\.7\d.*1\.12 = 50\.1\d.*± 3\.0\d/);
});
