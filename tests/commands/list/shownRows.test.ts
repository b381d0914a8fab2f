/** Rows of the part list: looked for by words, sorted by columns. */
import { expect, test } from 'vitest';
import { nextSort, shownRows } from '../../../src/commands/list/shownRows';
import type { PartRow } from '../../../src/commands/list/partRows';

const row = (id: string, more: Partial<PartRow> = {}): PartRow => ({
  id,
  shape: 'bracket',
  height_mm: 10,
  turn_deg: 0,
  lasers: '',
  locked: false,
  hidden: false,
  pinned: false,
  mayNotBeCut: false,
  problem: 0,
  ...more,
});
const LASERS = ['L1', 'L2'];
const rows = [
  row('P10', { height_mm: 40, lasers: '0' }),
  row('P9', { shape: 'Cleat', height_mm: 5, lasers: '0 1', locked: true }),
  row('P2', { height_mm: 40, lasers: '1', pinned: true }),
];
const shown = (search: string, ...sort: [Parameters<typeof shownRows>[2]?]) =>
  shownRows(rows, search, sort[0] ?? null, LASERS).map(({ id }) => id);

test('no words show every row in the order of the layout', () => {
  expect(shown('  ')).toEqual(['P10', 'P9', 'P2']);
});
test('all words have to be found: in id, shape, lasers and marks, large or small letters', () => {
  expect(shown('cleat')).toEqual(['P9']);
  expect(shown('l2')).toEqual(['P9', 'P2']);
  expect(shown('L2 bracket')).toEqual(['P2']);
  expect(shown('locked')).toEqual(['P9']);
  expect(shown('pinned')).toEqual(['P2']);
  expect(shown('rudder')).toEqual([]);
});
test('names sort by their numbers, heights by size, equal rows as in the layout', () => {
  expect(shown('', { column: 'id', down: false })).toEqual(['P2', 'P9', 'P10']);
  expect(shown('', { column: 'id', down: true })).toEqual(['P10', 'P9', 'P2']);
  expect(shown('', { column: 'height', down: false })).toEqual(['P9', 'P10', 'P2']);
  expect(shown('', { column: 'height', down: true })).toEqual(['P10', 'P2', 'P9']);
});
test('a column sorts upwards, downwards, and then the list is as the layout has it', () => {
  const up = nextSort(null, 'turn');
  expect(up).toEqual({ column: 'turn', down: false });
  expect(nextSort(up, 'turn')).toEqual({ column: 'turn', down: true });
  expect(nextSort(nextSort(up, 'turn'), 'turn')).toBeNull();
  expect(nextSort(up, 'id')).toEqual({ column: 'id', down: false });
});
