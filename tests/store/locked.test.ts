/** Locked parts stay where they stand, whatever an edit does; locks and outlines belong to the view. */
import { describe, expect, test } from 'vitest';
import * as op from '../../src/commands/operations';
import { createWorkbench } from '../../src/store/workbench';
import { keepLocked } from '../../src/store/locked';
import { countingAnalyse, smallPlate } from './plates';

const bench = () => createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });
const ids = (layout: ReturnType<typeof smallPlate>): string[] => layout.parts.map(({ id }) => id);

describe('what an edit may do', () => {
  test('a locked part is not moved, the others are', () => {
    const before = smallPlate();
    const { layout, held } = keepLocked(before, op.moveParts(before, ids(before), 5, 0), ['P01']);
    expect(held).toEqual(['P01']);
    expect(layout.parts[0]).toBe(before.parts[0]);
    expect(layout.parts[1]!.at_mm[0]).toBe(before.parts[1]!.at_mm[0] + 5);
  });
  test('a locked part is not turned, but its other fields change', () => {
    const before = smallPlate();
    const after = op.setPartFields(op.turnParts(before, ['P01'], 30), ['P01'], { timeFactor: 2 });
    const { layout } = keepLocked(before, after, ['P01']);
    expect(layout.parts[0]).toEqual({ ...before.parts[0], timeFactor: 2 });
  });
  test('a locked part is not taken away and keeps its place in the list', () => {
    const before = smallPlate();
    const { layout, held } = keepLocked(before, op.removeParts(before, ids(before)), ['P02']);
    expect(ids(layout)).toEqual(['P02']);
    expect(held).toEqual(['P02']);
    expect(keepLocked(before, op.removeParts(before, ['P02']), ['P02']).layout.parts).toBe(before.parts);
  });
  test('a locked part gets another name and stays one part', () => {
    const before = smallPlate();
    const { layout, held } = keepLocked(before, op.renamePart(before, 'P01', 'pump'), ['P01']);
    expect(ids(layout)).toEqual(ids(before).map((id) => (id === 'P01' ? 'pump' : id)));
    expect(held).toEqual([]);
  });
});

describe('the workbench', () => {
  test('leaves no entry of history where all is locked, and says so once', () => {
    const { store, change, history, setView } = bench();
    setView({ locked: ['P01'] });
    for (let i = 0; i < 3; i++) change('move', (layout) => op.moveParts(layout, ['P01'], 1, 0));
    expect(history().undo).toBeNull();
    expect(store.getState().view.notices.map(({ fault }) => fault)).toEqual([
      { code: 'parts-locked', params: { parts: 'P01' } },
    ]);
  });
  test('undo brings back what was, locked or not', () => {
    const { store, change, undo, setView } = bench();
    const before = store.getState().layout;
    change('move', (layout) => op.moveParts(layout, ['P01'], 1, 0));
    setView({ locked: ['P01'] });
    undo();
    expect(store.getState().layout).toBe(before);
  });
  test('another layout keeps the locks of the very same parts only', () => {
    const { store, replace, setView } = bench();
    setView({ locked: ['P01', 'P02'], hidden: ['P02'] });
    replace('open', op.moveParts(smallPlate(), ['P02'], 1, 0));
    expect(store.getState().view).toMatchObject({ locked: ['P01'], hidden: [] });
  });
  test('a lock of a part that is gone is gone too', () => {
    const { store, change, setView } = bench();
    setView({ hidden: ['P01'] });
    change('delete', (layout) => op.removeParts(layout, ['P01']));
    expect(store.getState().view.hidden).toEqual([]);
  });
});
