/**
 * Whatever a command does to a released plate, the released plate stays as it is: the command begins a draft derived from
 * it, undo brings it back, and only commands that open another plate leave it without one.
 */
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/commands';
import type { Command } from '../../src/commands/types';
import { demoLayout } from '../../src/layout/demo';
import type { Layout, Zoning } from '../../src/layout/types';
import { chosen, workplace } from './bench';

const RELEASED: Layout = {
  ...demoLayout(),
  revision: {
    name: 'A',
    date: '2026-11-27',
    reason: '',
    state: 'released',
    author: 'Ada Quay',
    reviewer: 'Bo Pier',
    derivedFrom: null,
  },
};
const STRIPS: Zoning = {
  strategy: 'strips',
  run_deg: 90,
  lines_mm: [-85, 0, 85],
  sharedBand_mm: 0,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};
const START = { start: '2026-11-27T16:00', feedFilled_l: 60, overflowFilled_l: 0, residue_laserH: 0 };
const ALWAYS = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
/** Between them every command that edits has something to do. */
const PLATES: readonly Layout[] = [
  RELEASED,
  {
    ...RELEASED,
    allocation: 'wholeParts',
    parts: RELEASED.parts.map((part, i) => (i === 0 ? { ...part, seams: 'none', laser: 'L1' } : part)),
    zoning: [
      { from_mm: 0, zoning: STRIPS },
      { from_mm: 20, zoning: { strategy: 'wholeField' } },
    ],
    schedule: { ...START, attended: ALWAYS, correction: { factor: 1, spread_pct: 10 } },
  },
];
const OPENS = ['new-plate', 'open-demo'];

/** What a command made of a released plate; null where it did not change it. */
async function made(command: Command, layout: Layout) {
  const place = workplace(layout);
  chosen(place, 1);
  if (!command.when(place.context)) return null;
  await command.run(place.context);
  place.bench.endGesture();
  return place.layout() === layout ? null : place;
}

describe.each([0, 1])('on released plate %i', (which) => {
  const layout = PLATES[which]!;
  test.each(COMMANDS.filter(({ id }) => !OPENS.includes(id)))(
    '$id begins a draft, or does nothing',
    async (command) => {
      const place = await made(command, layout);
      if (place === null) return;
      expect(place.layout().revision).toMatchObject({ name: 'B', state: 'draft', author: '', reviewer: '' });
      place.bench.undo();
      expect(place.layout()).toEqual(layout);
    },
  );
});

test('dozens of commands edited one of the plates', async () => {
  const edited = async (command: Command): Promise<boolean> =>
    (await Promise.all(PLATES.map((layout) => made(command, layout)))).some(Boolean);
  const edits = COMMANDS.filter(({ id }) => !OPENS.includes(id));
  expect((await Promise.all(edits.map(edited))).filter(Boolean).length).toBeGreaterThan(36);
});

test.each(OPENS)('%s opens a plate without a revision, and undo brings the released one back', async (id) => {
  const place = (await made(
    COMMANDS.find((command) => command.id === id)!,
    RELEASED,
  ))!;
  expect(place.layout().revision).toBeNull();
  place.bench.undo();
  expect(place.layout()).toEqual(RELEASED);
});
