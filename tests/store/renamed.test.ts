/** A part that gets another name, by an edit or by undo, stays the part that is selected, locked or hidden. */
import { describe, expect, test } from 'vitest';
import { placeInList, renamePart } from '../../src/commands/operations';
import { renamed } from '../../src/store/locked';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from './plates';

const marked = () => {
  const bench = createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });
  bench.setView({ selection: ['P02', 'P01'], locked: ['P01'], hidden: ['P01', 'P02'] });
  return bench;
};
const marks = ({ store }: ReturnType<typeof marked>) => {
  const { selection, locked, hidden } = store.getState().view;
  return { selection, locked, hidden };
};
const NEW = { selection: ['P02', 'pump'], locked: ['pump'], hidden: ['pump', 'P02'] };
const OLD = { selection: ['P02', 'P01'], locked: ['P01'], hidden: ['P01', 'P02'] };

describe('the marks of a renamed part', () => {
  test('follow the rename, its undo and its redo, in the very state that shows it', () => {
    const bench = marked();
    const seen: unknown[] = [];
    bench.store.subscribe(() => seen.push(marks(bench)));
    bench.change('id', (layout) => renamePart(layout, 'P01', 'pump'));
    bench.undo();
    bench.redo();
    expect(seen).toEqual([NEW, OLD, NEW]);
  });
  test('follow a rename that a gesture takes back', () => {
    const bench = marked();
    bench.beginGesture('id');
    bench.change('id', (layout) => renamePart(layout, 'P01', 'pump'));
    expect(marks(bench)).toEqual(NEW);
    bench.cancelGesture();
    expect(marks(bench)).toEqual(OLD);
  });
  test('follow two renames that one step takes back', () => {
    const bench = marked();
    bench.beginGesture('ids');
    bench.change('id', (layout) => renamePart(layout, 'P01', 'pump'));
    bench.change('id', (layout) => renamePart(layout, 'P02', 'valve'));
    bench.endGesture();
    bench.undo();
    expect(marks(bench)).toEqual(OLD);
  });
});

describe('what counts as renamed', () => {
  const layout = smallPlate();
  const [first, second, ...others] = layout.parts;
  const like = { ...first!, id: 'P90' };

  test('not two equal parts that changed places', () => {
    const twins = { ...layout, parts: [first!, like, ...others] };
    expect([...renamed(twins, placeInList(twins, ['P90'], 0))]).toEqual([]);
  });
  test('not another part in the same place of the list', () => {
    const other = { ...layout, parts: [{ ...second!, id: 'P90' }, second!, ...others] };
    expect([...renamed(layout, other)]).toEqual([]);
  });
  test('not where a part came or went', () => {
    expect([...renamed(layout, { ...layout, parts: [like, first!, second!, ...others] })]).toEqual([]);
  });
});
