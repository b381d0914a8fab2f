/** Rows dragged in the list: where they land, one step of history, and that every other end leaves all as it was. Rows of 24 px from 100 px on. */
import { describe, expect, test } from 'vitest';
import { renamePart } from '../../src/commands/operations';
import { dragRows, gapAt, placeWords, type Carried } from '../../src/panels/parts/listDrag';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from '../store/plates';

const ROWS = { top: 100, height: 72 };

/** Parts P01, P02, P03. */
const list = (selection: readonly string[] = []) => {
  const bench = createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });
  bench.setView({ selection });
  const shown: (Carried | null)[] = [];
  const host = { bench, rows: () => ROWS, show: (carried: Carried | null) => void shown.push(carried) };
  const order = () => bench.store.getState().layout.parts.map(({ id }) => id);
  const chosen = () => bench.store.getState().view.selection;
  return { bench, host, shown, order, chosen };
};

test.each([
  [0, 0],
  [111, 0],
  [113, 1],
  [135, 1],
  [137, 2],
  [999, 3],
])('at %i px the gap below %i rows is nearest', (y, gap) => {
  expect(gapAt(y, ROWS, 3)).toBe(gap);
});
test('an empty list has one gap', () => expect(gapAt(50, { top: 100, height: 0 }, 0)).toBe(0));

test.each([
  [['P02'], '2 of 3'],
  [['P03', 'P02'], '2 to 3 of 3'],
  [['P01', 'P03'], '1, 3 of 3'],
])('%j stand at %s', (ids, words) => {
  expect(placeWords(smallPlate(), ids)).toBe(words);
});

describe('a drag', () => {
  test('moves nothing until it is let go, then in one step that undo takes back', () => {
    const { bench, host, shown, order, chosen } = list();
    const drag = dragRows(host, 'P01', 110);
    drag.move(150);
    drag.move(170);
    expect(order()).toEqual(['P01', 'P02', 'P03']);
    expect(shown.at(-1)).toMatchObject({ ids: ['P01'], gap: 3, words: '3 of 3' });
    expect(drag.end()).toBe(true);
    expect(order()).toEqual(['P02', 'P03', 'P01']);
    expect(chosen()).toEqual(['P01']);
    expect(shown.at(-1)).toBeNull();
    bench.undo();
    expect(order()).toEqual(['P01', 'P02', 'P03']);
    expect(bench.history().undo).toBeNull();
  });
  test('takes the selection along where the grabbed row is in it, in the order of the list', () => {
    const { host, order } = list(['P03', 'P02']);
    const drag = dragRows(host, 'P02', 130);
    drag.move(101);
    drag.end();
    expect(order()).toEqual(['P02', 'P03', 'P01']);
  });
  test('that ends where it began leaves no step', () => {
    const { bench, host, shown } = list(['P01']);
    const drag = dragRows(host, 'P02', 130);
    drag.move(120);
    expect(shown.at(-1)).toMatchObject({ words: null });
    drag.end();
    expect(bench.history().undo).toBeNull();
    expect(bench.gestureOpen()).toBe(false);
  });
  test('of two px is a press', () => {
    const { bench, host, shown, chosen } = list(['P03']);
    const drag = dragRows(host, 'P01', 110);
    drag.move(112);
    expect(drag.end()).toBe(false);
    expect([shown, chosen(), bench.gestureOpen()]).toEqual([[], ['P03'], false]);
  });
  test('that the system cancels puts order, selection, history and the hand back', () => {
    const { bench, host, shown, order, chosen } = list(['P03']);
    const drag = dragRows(host, 'P01', 110);
    drag.move(170);
    drag.cancel();
    expect(order()).toEqual(['P01', 'P02', 'P03']);
    expect(chosen()).toEqual(['P03']);
    expect([bench.gestureOpen(), bench.history().undo, shown.at(-1)]).toEqual([false, null, null]);
  });
  test('whose gesture somebody else has ended goes no further', () => {
    const { bench, host, shown, order } = list();
    bench.change('id', (layout) => renamePart(layout, 'P03', 'pump'));
    const drag = dragRows(host, 'P01', 110);
    drag.move(170);
    bench.undo();
    expect(drag.move(150)).toBe(false);
    expect(shown.at(-1)).toBeNull();
    drag.end();
    expect(order()).toEqual(['P01', 'P02', 'P03']);
  });
});
