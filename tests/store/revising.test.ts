/**
 * The rule of revisions in the store: what is no draft any more is never edited in place. Checksums are compared with
 * those of the former layout, worked out apart.
 */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { fitsAFrame } from '../../src/build/analysis';
import { checksum } from '../../src/layout/checksum';
import type { Layout, Revision, RevisionState } from '../../src/layout/types';
import { openLayout } from '../../src/commands/file/openLayout';
import { readTimeline, timelineText } from '../../src/store/timelineText';
import type { Workbench } from '../../src/store/types';
import { localDay } from '../../src/store/revising';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from './plates';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const TODAY = '2026-11-28';
const B: Revision = {
  name: 'B',
  date: '2026-11-27',
  reason: 'first plate of the week',
  state: 'released',
  author: 'Ada Quay',
  reviewer: 'Bo Pier',
  derivedFrom: '4532415f99f5',
};
const filed = (state: RevisionState): Layout => ({ ...smallPlate(), revision: { ...B, state } });
const open = (layout: Layout): Workbench =>
  createWorkbench({ layout, analyse: countingAnalyse().analyse, today: () => TODAY });
const layoutOf = (bench: Workbench): Layout => bench.store.getState().layout;
const revisionOf = (bench: Workbench): Revision | null => layoutOf(bench).revision;
const moveTo =
  (x: number) =>
  (layout: Layout): Layout => ({
    ...layout,
    parts: layout.parts.map((part, i) => (i === 0 ? { ...part, at_mm: [x, part.at_mm[1]] as const } : part)),
  });
/** Until what is worked out behind the page is there. */
const still = async (): Promise<void> => {
  for (let i = 0; i < 20; i++) await vi.advanceTimersByTimeAsync(50);
  await vi.dynamicImportSettled();
  for (let i = 0; i < 20; i++) await vi.advanceTimersByTimeAsync(50);
};
const codes = (bench: Workbench): string[] =>
  bench.store.getState().view.notices.map(({ fault }) => fault.code);

describe.each(['reviewed', 'released', 'superseded'] as const)('an edit of a %s layout', (state) => {
  test('begins the next revision, derived from the checksum of the former', async () => {
    const bench = open(filed(state));
    await still();
    bench.change('Move', moveTo(1));
    expect(revisionOf(bench)).toEqual({
      name: 'C',
      date: TODAY,
      reason: '',
      state: 'draft',
      author: '',
      reviewer: '',
      derivedFrom: checksum(smallPlate()),
    });
    expect(bench.store.getState().view.notices.map(({ fault }) => fault)).toEqual([
      { code: 'revision-begun', params: { former: 'B', state: { state }, name: 'C' } },
    ]);
  });

  test('is one entry; undo goes back to the former revision and takes the message away', async () => {
    const bench = open(filed(state));
    await still();
    bench.change('Move', moveTo(1));
    const draft = layoutOf(bench);
    bench.undo();
    expect(layoutOf(bench)).toEqual(filed(state));
    expect(bench.history()).toEqual({ undo: null, redo: 'Move' });
    await still();
    expect(codes(bench)).toEqual([]);
    bench.redo();
    expect(layoutOf(bench)).toEqual(draft);
  });

  test('begins one even where only the note or the name changes', async () => {
    const bench = open(filed(state));
    await still();
    bench.change('note', (layout) => ({ ...layout, note: 'other' }));
    expect(revisionOf(bench)?.name).toBe('C');
  });
});

describe('a second edit', () => {
  test('stays in the draft that the first one began', async () => {
    const bench = open(filed('released'));
    await still();
    bench.change('Move', moveTo(1));
    const draft = revisionOf(bench);
    bench.change('Move', moveTo(2));
    expect(revisionOf(bench)).toBe(draft);
    expect(codes(bench)).toEqual(['revision-begun']);
  });

  test('after undo begins it anew', async () => {
    const bench = open(filed('released'));
    await still();
    bench.change('Move', moveTo(1));
    bench.undo();
    bench.change('Move', moveTo(2));
    expect(revisionOf(bench)).toMatchObject({ name: 'C', derivedFrom: checksum(smallPlate()) });
  });
});

test('a change made from a state before the draft does not bring the fixed revision back', async () => {
  const bench = open(filed('released'));
  await still();
  const stale = moveTo(2)(layoutOf(bench));
  bench.change('Move', moveTo(1));
  const draft = revisionOf(bench);
  bench.change('Move', () => stale);
  expect(layoutOf(bench)).toEqual({ ...stale, revision: draft });
});

test.each([null, { ...B, state: 'draft' as const }])(
  'a draft, or no revision, is edited in place',
  (revision) => {
    const bench = open({ ...smallPlate(), revision });
    bench.change('Move', moveTo(1));
    expect(revisionOf(bench)).toEqual(revision);
    expect(codes(bench)).toEqual([]);
  },
);

describe('no revision is begun by', () => {
  test('a change that changes nothing', () => {
    const bench = open(filed('released'));
    bench.change('Nothing', (layout) => structuredClone(layout));
    expect(layoutOf(bench)).toEqual(filed('released'));
    expect(bench.history().undo).toBeNull();
  });

  test('a change of the revision itself', () => {
    const bench = open(filed('released'));
    bench.change('State', (layout) => ({ ...layout, revision: { ...B, state: 'superseded' } }));
    expect(revisionOf(bench)).toEqual({ ...B, state: 'superseded' });
  });

  test('opening another layout, be it under the same revision', () => {
    const bench = open(filed('released'));
    const other = moveTo(7)(filed('released'));
    openLayout(bench, 'Open', other);
    expect(layoutOf(bench)).toBe(other);
    expect(codes(bench)).toEqual([]);
    bench.undo();
    expect(layoutOf(bench)).toEqual(filed('released'));
  });
});

describe('a gesture', () => {
  test('that moves begins one revision, in one entry', async () => {
    const bench = open(filed('released'));
    await still();
    bench.beginGesture('Drag');
    for (const x of [1, 2, 3]) bench.change('Move', moveTo(x));
    bench.endGesture();
    expect(revisionOf(bench)?.name).toBe('C');
    expect(bench.history().undo).toBe('Drag');
    bench.undo();
    expect(layoutOf(bench)).toEqual(filed('released'));
  });

  test('that comes back to where it began, or is cancelled, begins none', () => {
    const bench = open(filed('released'));
    const x = smallPlate().parts[0]!.at_mm[0];
    bench.beginGesture('Drag');
    bench.change('Move', moveTo(1));
    bench.change('Move', moveTo(x));
    bench.endGesture();
    expect(layoutOf(bench)).toEqual(filed('released'));
    expect(bench.history().undo).toBeNull();
    bench.beginGesture('Drag');
    bench.change('Move', moveTo(1));
    bench.cancelGesture();
    expect(layoutOf(bench)).toEqual(filed('released'));
  });
});

describe('an edit before the checksum is known', () => {
  test('gets it as soon as it is there, in every state of the history, without an entry', async () => {
    const bench = open(filed('released'));
    bench.change('Move', moveTo(1));
    expect(revisionOf(bench)).toMatchObject({ name: 'C', derivedFrom: null });
    bench.change('Reason', (layout) => ({ ...layout, revision: { ...layout.revision!, reason: 'seam' } }));
    bench.change('Move', moveTo(2));
    bench.undo();
    await still();
    const derivedFrom = checksum(smallPlate());
    expect(revisionOf(bench)).toMatchObject({ reason: 'seam', derivedFrom });
    expect(bench.history()).toEqual({ undo: 'Reason', redo: 'Move' });
    bench.redo();
    expect(revisionOf(bench)).toMatchObject({ reason: 'seam', derivedFrom });
    bench.undo();
    bench.undo();
    expect(revisionOf(bench)).toMatchObject({ reason: '', derivedFrom });
    bench.undo();
    expect(layoutOf(bench)).toEqual(filed('released'));
  });

  test('gets it after the gesture, not during it', async () => {
    const bench = open(filed('released'));
    bench.beginGesture('Drag');
    bench.change('Move', moveTo(1));
    await still();
    expect(revisionOf(bench)?.derivedFrom).toBeNull();
    bench.change('Move', moveTo(2));
    bench.endGesture();
    await still();
    expect(revisionOf(bench)?.derivedFrom).toBe(checksum(smallPlate()));
    expect(bench.history().undo).toBe('Drag');
    bench.undo();
    expect(layoutOf(bench)).toEqual(filed('released'));
  });
});

test('a plate too high for one frame gets its checksum too', async () => {
  const rings = smallPlate().shapes['block']!.slabs[0]!.rings;
  const block = { slabs: Array.from({ length: 300 }, (_, i) => ({ to_mm: (i + 1) / 10, rings })) };
  const high: Layout = { ...filed('reviewed'), shapes: { ...smallPlate().shapes, block } };
  expect(fitsAFrame(high)).toBe(false);
  const bench = open(high);
  bench.change('Move', moveTo(1));
  bench.change('Move', moveTo(2));
  await still();
  expect(revisionOf(bench)).toMatchObject({ name: 'C', derivedFrom: checksum(high) });
  bench.undo();
  expect(revisionOf(bench)).toMatchObject({ name: 'C', derivedFrom: checksum(high) });
  expect(bench.history()).toEqual({ undo: 'Move', redo: 'Move' });
});

test('the history of a revision survives a reload', async () => {
  const bench = open(filed('released'));
  await still();
  bench.change('Move', moveTo(1));
  const present = layoutOf(bench);
  const timeline = readTimeline(timelineText(bench.timeline())!, structuredClone(present));
  expect(timeline?.past[0]?.layout.revision).toEqual({ ...B, state: 'released' });
  expect(timeline?.present.layout).toEqual(present);
});

test('a day is the local one', () => {
  expect(localDay(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
  expect(localDay(new Date(2026, 11, 31, 0, 0))).toBe('2026-12-31');
});
