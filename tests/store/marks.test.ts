/** Padlocks and outlines come back with the parts that undo and redo bring back. */
import { expect, test } from 'vitest';
import * as op from '../../src/commands/operations';
import { emptyLayout } from '../../src/layout/defaults';
import { rememberMarks } from '../../src/store/marks';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from './plates';

function open() {
  const bench = createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });
  rememberMarks(bench.store);
  const marks = () => {
    const { locked, hidden } = bench.store.getState().view;
    return { locked, hidden };
  };
  return { ...bench, marks };
}
const take = (id: string) => (layout: ReturnType<typeof smallPlate>) => op.removeParts(layout, [id]);

test('a new plate undone brings the marks back', () => {
  const { replace, undo, setView, marks } = open();
  setView({ locked: ['P03'], hidden: ['P01', 'P03'] });
  replace('New plate', emptyLayout());
  expect(marks()).toEqual({ locked: [], hidden: [] });
  undo();
  expect(marks().locked).toEqual(['P03']);
  expect(marks().hidden.toSorted()).toEqual(['P01', 'P03']);
});

test('a part deleted and undone is hidden as before; redone and undone once more too', () => {
  const { change, undo, redo, setView, marks } = open();
  setView({ hidden: ['P02'] });
  change('delete', take('P02'));
  expect(marks().hidden).toEqual([]);
  for (let i = 0; i < 2; i++) {
    undo();
    expect(marks().hidden).toEqual(['P02']);
    redo();
    expect(marks().hidden).toEqual([]);
  }
});

test('a copy locked, undone and redone is locked', () => {
  const { store, change, undo, redo, setView, marks } = open();
  change('duplicate', (layout) => op.duplicateParts(layout, ['P01']));
  const copy = store.getState().layout.parts.at(-1)!.id;
  setView({ locked: [copy] });
  undo();
  redo();
  expect(marks().locked).toEqual([copy]);
});

test('what was unlocked by hand stays unlocked, also after its name came back', () => {
  const { change, undo, redo, setView, marks } = open();
  setView({ locked: ['P01'] });
  change('rename', (layout) => op.renamePart(layout, 'P01', 'pump'));
  expect(marks().locked).toEqual(['pump']);
  setView({ locked: [] });
  undo();
  expect(marks().locked).toEqual([]);
  redo();
  undo();
  expect(marks().locked).toEqual([]);
});
