/**
 * Selection from the list: the general habit of click, Ctrl-click and Shift-click (common practice, no source).
 */
import { describe, expect, test } from 'vitest';
import { selectionAfter, selectionFollowing } from '../../src/panels/parts/selecting';

const order = ['A', 'B', 'C', 'D'];
const plain = { shiftKey: false, ctrlKey: false, metaKey: false };
const ctrl = { ...plain, ctrlKey: true };
const shift = { ...plain, shiftKey: true };

describe('the selection', () => {
  test('is the clicked part alone', () => {
    expect(selectionAfter(order, ['A', 'B'], 'C', plain)).toEqual(['C']);
  });
  test('gains and loses one part with Ctrl', () => {
    expect(selectionAfter(order, ['A'], 'C', ctrl)).toEqual(['A', 'C']);
    expect(selectionAfter(order, ['A', 'C'], 'A', ctrl)).toEqual(['C']);
  });
  test('gains everything from the last part to this with Shift, either way', () => {
    expect([...selectionAfter(order, ['B'], 'D', shift)].sort()).toEqual(['B', 'C', 'D']);
    expect([...selectionAfter(order, ['D'], 'B', shift)].sort()).toEqual(['B', 'C', 'D']);
  });
  test('keeps its anchor, so that a second Shift-click spans from the same part', () => {
    const once = selectionAfter(order, ['B'], 'D', shift);
    expect(once.at(-1)).toBe('B');
  });
});

describe('the selection, when the focus steps from row to row,', () => {
  test('goes along', () => {
    expect(selectionFollowing(order, ['A'], 'B', plain)).toEqual(['B']);
    expect(selectionFollowing(order, ['A', 'C'], 'D', plain)).toEqual(['D']);
    expect(selectionFollowing(order, [], 'B', plain)).toEqual(['B']);
  });
  test('stays with Ctrl', () => {
    expect(selectionFollowing(order, ['A'], 'B', ctrl)).toEqual(['A']);
  });
  test('with Shift spans from where it began, and shrinks again on the way back and over it', () => {
    let selection: readonly string[] = ['B'];
    const spans = ['C', 'D', 'C', 'B', 'A'].map((id) => {
      selection = selectionFollowing(order, selection, id, shift);
      return [...selection].sort().join('');
    });
    expect(spans).toEqual(['BC', 'BCD', 'BC', 'B', 'AB']);
  });
  test('with Shift begins at the focus where nothing is selected, or what was is gone', () => {
    expect(selectionFollowing(order, [], 'B', shift)).toEqual(['B']);
    expect(selectionFollowing(order, ['X'], 'B', shift)).toEqual(['B']);
  });
});
