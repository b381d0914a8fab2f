// The frame for later versions: numbered steps applied in order from a file's own version on, nothing for the newest
// version (numbered without gaps); and what steps 1 and 2 make of older files.
import { expect, test } from 'vitest';
import { migrate, versionOf, type Migration } from '../../src/layout/migrate';

const steps: readonly Migration[] = [
  (older) => ({ ...older, trail: [...(older['trail'] as string[]), '1 to 2'] }),
  (older) => ({ ...older, trail: [...(older['trail'] as string[]), '2 to 3'] }),
];

test('version 3 is the newest and stays as it is', () => {
  expect(versionOf({ version: 3 })).toEqual({ ok: true, value: 3 });
  expect(versionOf({ version: 4 })).toMatchObject({ ok: false, fault: { code: 'layout-newer-version' } });
  expect(migrate({ version: 3, a: 2 }, 3)).toEqual({ version: 3, a: 2 });
});

test('an older file takes every step from its own version on, in order', () => {
  expect(migrate({ version: 1, trail: [] }, 1, steps)).toEqual({
    version: 3,
    trail: ['1 to 2', '2 to 3'],
  });
  expect(migrate({ version: 2, trail: [] }, 2, steps)).toEqual({ version: 3, trail: ['2 to 3'] });
  expect(migrate({ version: 3, trail: [] }, 3, steps)).toEqual({ version: 3, trail: [] });
});

test('a step writes nothing into the value it was given', () => {
  const older = Object.freeze({ version: 1, zoning: Object.freeze({ strategy: 'wholeField' }) });
  migrate(older, 1);
  expect(older).toEqual({ version: 1, zoning: { strategy: 'wholeField' } });
});

test('version 2 becomes a layout that nobody has filed', () => {
  const older = Object.freeze({ version: 2, zoning: [], schedule: null });
  expect(migrate(older, 2)).toEqual({ version: 3, zoning: [], schedule: null, revision: null });
});

test('version 1 becomes one division from the platform up, no schedule and no revision', () => {
  const zoning = { strategy: 'wholeField' };
  expect(migrate({ version: 1, name: 'n', zoning }, 1)).toEqual({
    version: 3,
    name: 'n',
    zoning: [{ from_mm: 0, zoning }],
    schedule: null,
    revision: null,
  });
});

test('a newer file is refused with both versions named', () => {
  expect(versionOf({ version: 4 }, 3)).toEqual({
    ok: false,
    fault: { code: 'layout-newer-version', params: { found: 4, newest: 3 } },
  });
});

test.each([undefined, null, '1', 1.5, 0, -1, NaN, {}])('version %s is no version', (version) => {
  expect(versionOf({ version })).toMatchObject({ ok: false, fault: { code: 'layout-wrong-version' } });
});
