/** Notices: one for each thing that is said, the newest last; the layout is none of their business. */
import { expect, test } from 'vitest';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from './plates';

const open = () => createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse });

test('notices are numbered, dismissed one by one, and the oldest gives way', () => {
  const bench = open();
  const shown = () => bench.store.getState().view.notices;
  for (let i = 0; i < 6; i++) bench.notify({ code: 'file-unreadable', params: { name: `plate ${i}.json` } });
  expect(shown().map((notice) => notice.fault.params['name'])).toEqual(
    [3, 4, 5].map((i) => `plate ${i}.json`),
  );
  bench.dismissNotice(shown()[1]!.id);
  expect(shown().map((notice) => notice.fault.params['name'])).toEqual([3, 5].map((i) => `plate ${i}.json`));
  expect(bench.store.getState().layout).toEqual(smallPlate());
});

test('equal notices are one, which stands last under a new number', () => {
  const bench = open();
  const shown = () => bench.store.getState().view.notices;
  const says = (name: string) => bench.notify({ code: 'file-unreadable', params: { name } });
  for (const name of ['a', 'b', 'a', 'a']) says(name);
  expect(shown().map(({ fault }) => fault.params['name'])).toEqual(['b', 'a']);
  expect(new Set(shown().map(({ id }) => id)).size).toBe(2);
  expect(shown()[1]!.id).toBe(4);
});
