/** Undo and redo survive a reload, as long as they belong to the plate that is opened. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { addPart, addShapes, moveParts, removeParts, setTexts } from '../../src/commands/operations';
import type { Layout } from '../../src/layout/types';
import { SAVE_DELAY_MS } from '../../src/store/persist';
import { LAYOUT_KEY, TIMELINE_KEY, type WorkStorage } from '../../src/store/savedForm';
import { readTimeline, timelineText } from '../../src/store/timelineText';
import type { Workbench } from '../../src/store/types';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from './plates';
import { fakePage, memory, noLarge, opened } from './storages';

const SEED = 20_261_125;
const { analyse } = countingAnalyse();
const visit = (storage: WorkStorage, page = fakePage()) =>
  opened({ first: smallPlate, analyse, storage, loadLarge: noLarge, pages: [page] });
const layoutOf = (bench: Workbench): Layout => bench.store.getState().layout;
const x = (bench: Workbench) => layoutOf(bench).parts[0]!.at_mm[0];
const move = (bench: Workbench) => bench.change('Move', (layout) => moveParts(layout, ['P01'], 1, 0));
const accepted = (result: ReturnType<typeof setTexts>): Layout => {
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('a reload keeps what can be undone and redone, under its names', async () => {
  const storage = memory();
  const first = await visit(storage);
  for (let i = 0; i < 3; i++) move(first.bench);
  first.bench.undo();
  vi.advanceTimersByTime(SAVE_DELAY_MS);
  const { bench } = await visit(storage);
  expect(x(bench)).toBe(-58);
  expect(bench.history()).toEqual({ undo: 'Move', redo: 'Move' });
  bench.redo();
  expect(x(bench)).toBe(-57);
  for (let i = 0; i < 3; i++) bench.undo();
  expect(layoutOf(bench)).toEqual(smallPlate());
  expect(bench.history()).toEqual({ undo: null, redo: 'Move' });
});

test('a reload in mid-drag keeps what could be undone before it', async () => {
  const [storage, page] = [memory(), fakePage()];
  const { bench } = await visit(storage, page);
  move(bench);
  bench.beginGesture('Drag');
  move(bench);
  page.leave();
  const again = (await visit(storage)).bench;
  expect(x(again)).toBe(-59);
  again.undo();
  expect(layoutOf(again)).toEqual(smallPlate());
  expect(again.history()).toEqual({ undo: null, redo: 'Move' });
});

test('states share their shapes with the plate that is opened, so nothing is computed anew for them', async () => {
  const storage = memory();
  const first = await visit(storage);
  move(first.bench);
  vi.advanceTimersByTime(SAVE_DELAY_MS);
  const { bench } = await visit(storage);
  const { shapes, machine, parts } = layoutOf(bench);
  bench.undo();
  expect(layoutOf(bench).shapes).toBe(shapes);
  expect(layoutOf(bench).machine).toBe(machine);
  expect(layoutOf(bench).parts[1]).toBe(parts[1]);
});

test('a plate that someone else has saved meanwhile opens without a foreign history', async () => {
  const storage = memory();
  const first = await visit(storage);
  move(first.bench);
  vi.advanceTimersByTime(SAVE_DELAY_MS);
  storage.map.set(LAYOUT_KEY, JSON.stringify({ ...smallPlate(), name: 'another' }));
  const { bench } = await visit(storage);
  expect(layoutOf(bench).name).toBe('another');
  expect(bench.history()).toEqual({ undo: null, redo: null });
});

test('a plate comes before its history where the storage has room for one of them only', async () => {
  const storage = memory(JSON.stringify(smallPlate()).length + 400);
  const first = await visit(storage);
  for (let i = 0; i < 40; i++) {
    move(first.bench);
    vi.advanceTimersByTime(SAVE_DELAY_MS);
  }
  expect(storage.map.has(TIMELINE_KEY)).toBe(false);
  expect(x((await visit(storage)).bench)).toBe(-20);
  expect(first.bench.store.getState().view.notices).toEqual([]);
});

describe('the timeline as text', () => {
  const steps: readonly ((bench: Workbench, n: number) => void)[] = [
    (bench, n) => bench.change(`Move ${n}`, (layout) => moveParts(layout, [`P0${n % 4}`], n, -n / 7)),
    (bench, n) => bench.change('Delete', (layout) => removeParts(layout, [`P0${n % 4}`])),
    (bench, n) => bench.change('Place', (layout) => addPart(layout, Object.keys(layout.shapes)[n % 3] ?? '')),
    (bench, n) => bench.change('Name', (layout) => accepted(setTexts(layout, { name: `plate ${n}` }))),
    (bench, n) =>
      bench.change('Open', (layout) =>
        accepted(
          addShapes(layout, [
            { name: `disc ${n}`, shape: { slabs: [{ to_mm: n + 1, rings: [{ circle_mm: [0, 0, 5] }] }] } },
          ]),
        ),
      ),
    (bench) => bench.undo(),
    (bench) => bench.undo(),
    (bench) => bench.redo(),
  ];
  const session = fc.array(fc.tuple(fc.nat({ max: steps.length - 1 }), fc.nat({ max: 60 })), {
    maxLength: 40,
  });

  test('reads back as it was, after any session', () => {
    fc.assert(
      fc.property(session, (taken) => {
        const bench = createWorkbench({ layout: smallPlate(), analyse });
        for (const [step, n] of taken) steps[step]!(bench, n);
        const timeline = bench.timeline();
        const text = timelineText(timeline);
        const empty = timeline.past.length + timeline.future.length === 0;
        expect(text === null).toBe(empty);
        // what a reload reads of the plate itself
        const opened = JSON.parse(JSON.stringify(timeline.present.layout)) as Layout;
        if (text !== null) expect(readTimeline(text, opened)).toEqual(timeline);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test('takes a few hundred characters for a moved part, however many parts there are', () => {
    const bench = createWorkbench({ layout: smallPlate(), analyse });
    move(bench);
    const one = timelineText(bench.timeline())!.length;
    for (let i = 0; i < 100; i++) move(bench);
    expect((timelineText(bench.timeline())!.length - one) / 100).toBeLessThan(400);
  });

  test('leaves out what lies farthest where it would be too long', () => {
    const bench = createWorkbench({ layout: smallPlate(), analyse });
    for (let i = 0; i < 100; i++)
      bench.change(`Note ${i}`, (layout) => accepted(setTexts(layout, { note: `${i} ${'x'.repeat(9000)}` })));
    const text = timelineText(bench.timeline())!;
    expect(text.length).toBeLessThanOrEqual(500_000);
    const kept = readTimeline(text, layoutOf(bench))!;
    expect(kept.past.length).toBeGreaterThan(10);
    expect(kept.past).toEqual(bench.timeline().past.slice(-kept.past.length));
  });

  test.each(['', '{', 'null', '[]', '{"keys":[]}', '{"keys":["name"],"present":[null,[7],0,0]}'])(
    '“%s” is none',
    (text) => {
      expect(readTimeline(text, smallPlate())).toBeNull();
    },
  );
});
