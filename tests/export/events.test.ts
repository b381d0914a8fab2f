// The report's events come with a schedule. Figures of the tall-one plate by hand: 20 l of overflow are full after layer
// 2304, 62 h 56 min after the start; 27 November 2026 is a Friday [mathematics].
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { analyse, layerAtHeight } from '../../src/build/analyse';
import { report, type Report } from '../../src/export/report';
import { readLayout } from '../../src/layout/read';
import type { ClockRange, Layout } from '../../src/layout/types';

const DAY: readonly ClockRange[] = [['06:00', '22:00']];
const FILE = new URL('../../shared/examples/tall-one.json', import.meta.url);

function tallOne(): Layout {
  const read = readLayout(readFileSync(FILE, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}
const scheduled = (): Layout => ({
  ...tallOne(),
  schedule: {
    start: '2026-11-27T16:00',
    attended: { mon: DAY, tue: DAY, wed: DAY, thu: DAY, fri: DAY, sat: [], sun: [] },
    feedFilled_l: 100,
    overflowFilled_l: 0,
    residue_laserH: 0,
    correction: { factor: 1, spread_pct: 10 },
  },
});
function reportOf(layout: Layout): Report {
  const analysis = analyse(layout);
  return report(analysis, layerAtHeight(analysis, 0)!.figures);
}

test('a layout without a schedule has no events', () => {
  expect('events' in reportOf(tallOne())).toBe(false);
});

test('events hold kind, layer, hour, clock time and whether they are attended, between build and problems', () => {
  const made = reportOf(scheduled());
  expect(Object.keys(made).slice(-3)).toEqual(['build', 'events', 'problems']);
  expect(made.events).toEqual([
    {
      kind: 'overflowFull',
      layer: 2304,
      hour: expect.closeTo(62.9346, 3),
      at: '2026-11-30T06:56',
      attended: true,
    },
    { kind: 'end', layer: 4000, hour: expect.closeTo(109.113, 3), at: '2026-12-02T05:06', attended: false },
  ]);
  expect(Object.keys(made.events![0]!)).toEqual(['kind', 'layer', 'hour', 'at', 'attended']);
});

test('an event in unattended hours is among the problems', () => {
  expect(reportOf(scheduled()).problems.map(({ code }) => code)).toEqual(['end-unattended']);
});
