// The frame for later versions: numbered steps applied in order, nothing for the newest version (numbered
// without gaps).
import { expect, test } from 'vitest';
import { migrate, type Migration } from '../../src/layout/migrate';

const steps: readonly Migration[] = [
  (older) => ({ ...older, trail: [...(older['trail'] as string[]), '1 to 2'] }),
  (older) => ({ ...older, trail: [...(older['trail'] as string[]), '2 to 3'] }),
];

test('version 1 is the newest and stays as it is', () => {
  expect(migrate({ version: 1, a: 2 })).toEqual({ ok: true, value: { version: 1, a: 2 } });
});

test('an older file takes every step from its own version on, in order', () => {
  expect(migrate({ version: 1, trail: [] }, steps)).toEqual({
    ok: true,
    value: { version: 3, trail: ['1 to 2', '2 to 3'] },
  });
  expect(migrate({ version: 2, trail: [] }, steps)).toEqual({
    ok: true,
    value: { version: 3, trail: ['2 to 3'] },
  });
  expect(migrate({ version: 3, trail: [] }, steps)).toEqual({ ok: true, value: { version: 3, trail: [] } });
});

test('a newer file is refused with both versions named', () => {
  expect(migrate({ version: 4 }, steps)).toEqual({
    ok: false,
    fault: { code: 'layout-newer-version', params: { found: 4, newest: 3 } },
  });
});

test.each([undefined, null, '1', 1.5, 0, -1, NaN, {}])('version %s is no version', (version) => {
  expect(migrate({ version })).toMatchObject({ ok: false, fault: { code: 'layout-wrong-version' } });
});
