/** Recorded builds in the browser's database, which is stood in for by a map that can refuse. */
import { beforeEach, expect, test, vi } from 'vitest';
import {
  changeRecords,
  isOf,
  readRecords,
  RECORDS_KEY,
  type NamedRecord,
} from '../../src/panels/schedule/records';

const base = vi.hoisted(() => ({ kept: new Map<string, unknown>(), refuses: false }));
vi.mock('idb-keyval', () => {
  const open = (): Map<string, unknown> => {
    if (base.refuses) throw new Error('no database in a private window');
    return base.kept;
  };
  return {
    get: async (key: string) => open().get(key),
    update: async (key: string, change: (old: unknown) => unknown) =>
      void open().set(key, change(open().get(key))),
  };
});

const record = (planned_h: number): NamedRecord => ({
  name: 'Ferry spares',
  planned_h,
  real_h: planned_h + 1,
  site: { machine: 'Ferry hall 2', process: '316L, 0.05 mm' },
});
beforeEach(() => {
  base.kept.clear();
  base.refuses = false;
});

test('nothing is recorded at first; what is added is there when it is read again', async () => {
  expect(await readRecords()).toEqual({ ok: true, value: [] });
  await changeRecords((kept) => [...kept, record(10)]);
  await changeRecords((kept) => [...kept, record(20)]);
  expect(await readRecords()).toEqual({ ok: true, value: [record(10), record(20)] });
});

test('a change starts from what is kept, not from what a page has seen', async () => {
  base.kept.set(RECORDS_KEY, [record(1)]);
  expect(await changeRecords((kept) => [...kept, record(2)])).toEqual({
    ok: true,
    value: [record(1), record(2)],
  });
});

test('what makes no sense in the database is left out', async () => {
  base.kept.set(RECORDS_KEY, [record(1), null, { name: 'no hours' }, 7]);
  expect(await readRecords()).toEqual({ ok: true, value: [record(1)] });
  base.kept.set(RECORDS_KEY, 'not a list');
  expect(await readRecords()).toEqual({ ok: true, value: [] });
});

test('a record counts for its own machine and process; one that names none counts everywhere', async () => {
  const { site, ...bare } = record(10);
  base.kept.set(RECORDS_KEY, [bare, record(20), { ...record(30), site: { machine: 'only half' } }]);
  const kept = await readRecords();
  if (!kept.ok) throw new Error(kept.fault.code);
  expect(kept.value.map((one) => one.site)).toEqual([null, site, null]);
  const counted = (machine: string, process: string) =>
    kept.value.filter((one) => isOf(one, { machine, process })).map(({ planned_h }) => planned_h);
  expect(counted('Ferry hall 2', '316L, 0.05 mm')).toEqual([10, 20, 30]);
  expect(counted('Ferry hall 1', '316L, 0.05 mm')).toEqual([10, 30]);
  expect(counted('Ferry hall 2', '316L, 0.03 mm')).toEqual([10, 30]);
});

test('the newest 500 are kept', async () => {
  const many = Array.from({ length: 501 }, (_, i) => record(i + 1));
  const kept = await changeRecords(() => many);
  expect(kept.ok && [kept.value.length, kept.value[0]!.planned_h]).toEqual([500, 2]);
});

test('a browser without a database is a fault, not a crash', async () => {
  base.refuses = true;
  const expected = { ok: false, fault: { code: 'records-not-kept' } };
  expect(await readRecords()).toMatchObject(expected);
  expect(await changeRecords((kept) => [...kept, record(1)])).toMatchObject(expected);
});
