/** An entry of the library on the workbench: a copy, one step, and a word where lasers took over from others. */
import { describe, expect, test } from 'vitest';
import { putEntry } from '../../src/commands/file/putEntry';
import { DEFAULT_MACHINE, DEFAULT_PROCESS } from '../../src/layout/defaults';
import type { Machine } from '../../src/layout/types';
import { makeEntry } from '../../src/store/library/library';
import type { Content, Entry } from '../../src/store/library/types';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from '../store/plates';

const entryOf = (held: Content, name: string): Entry =>
  ({ head: makeEntry(held, name, 'id', 0).head, content: held.content }) as Entry;
const open = () => {
  const bench = createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });
  const state = bench.store.getState;
  return {
    bench,
    layout: () => state().layout,
    codes: () => state().view.notices.map(({ fault }) => [fault.code, fault.params]),
    selection: () => state().view.selection,
  };
};
const other: Machine = {
  ...DEFAULT_MACHINE,
  name: 'Two lasers',
  lasers: [
    { ...DEFAULT_MACHINE.lasers[0]!, id: 'A' },
    { ...DEFAULT_MACHINE.lasers[1]!, id: 'L2' },
  ],
};

describe('putting an entry on the workbench', () => {
  test.each<[string, Content]>([
    ['layout', { kind: 'layout', content: { ...smallPlate(), name: 'Other', parts: [] } }],
    ['machine', { kind: 'machine', content: other }],
    ['process', { kind: 'process', content: { ...DEFAULT_PROCESS, layer_mm: 0.03 } }],
    ['shape', { kind: 'shape', content: { slabs: [{ to_mm: 5, rings: [{ circle_mm: [0, 0, 5] }] }] } }],
  ])('%s: one step, which undo takes back and names', (_, held) => {
    const { bench, layout } = open();
    const before = layout();
    expect(putEntry(bench, entryOf(held, 'Kept')).ok).toBe(true);
    expect(layout()).not.toEqual(before);
    expect(bench.history().undo).toContain('“Kept” of the library');
    bench.undo();
    expect(layout()).toEqual(before);
    expect(bench.history().undo).toBeNull();
  });

  test('a machine with other lasers says who takes over; the same machine says nothing and makes no step', () => {
    const { bench, layout, codes } = open();
    putEntry(bench, entryOf({ kind: 'machine', content: layout().machine }, 'Same'));
    expect([codes(), bench.history().undo]).toEqual([[], null]);
    putEntry(bench, entryOf({ kind: 'machine', content: other }, 'Two lasers'));
    // by place: A for L1; by the nearest foot, (-75, -75) or (75, -75): A for L3 and L2 for L4
    expect(codes()).toEqual([
      [
        'library-machine-lasers',
        { moves: 'A takes over from L1, A takes over from L3, L2 takes over from L4' },
      ],
    ]);
  });

  test('a shape’s new part is selected and named', () => {
    const { bench, layout, selection } = open();
    const content = structuredClone(layout().shapes['stepped']!);
    expect(putEntry(bench, entryOf({ kind: 'shape', content }, 'stepped'))).toEqual({
      ok: true,
      value: ['P04'],
    });
    expect(selection()).toEqual(['P04']);
    expect(layout().shapes).toEqual(smallPlate().shapes);
  });

  test('what cannot be put there is a fault and changes nothing', () => {
    const { bench, layout } = open();
    const before = layout();
    const bad = { ...DEFAULT_PROCESS, hatch_mm: 0 };
    expect(putEntry(bench, entryOf({ kind: 'process', content: bad }, 'Bad')).ok).toBe(false);
    expect(layout()).toBe(before);
    expect(bench.history().undo).toBeNull();
  });
});
