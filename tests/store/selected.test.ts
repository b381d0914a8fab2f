/** Mathematics: a member of a list is one of its set. */
import { expect, test } from 'vitest';
import { isSelected } from '../../src/store/selected';

test('a part is selected where the selection names it, in every selection by itself', () => {
  const [first, second] = [['P01', 'P03'], ['P02']];
  const found = (selection: readonly string[]) =>
    ['P01', 'P02', 'P03'].map((id) => isSelected(selection, id));
  expect(found(first)).toEqual([true, false, true]);
  expect(found(second)).toEqual([false, true, false]);
  expect(found(first)).toEqual([true, false, true]);
  expect(found([])).toEqual([false, false, false]);
});
