/** What autosave has kept aside is read in both of its forms, and is put away only where it is still what was seen. */
import { expect, test } from 'vitest';
import { keptAside, putAway } from '../../../src/store/library/keptAside';
import { ASIDE_KEYS, LAYOUT_KEY, OTHER_KEY } from '../../../src/store/savedForm';
import { apartText } from '../../../src/store/apartForm';
import { smallPlate } from '../plates';
import { largeMemory, memory, noLarge } from '../storages';

const seen = async (storage: ReturnType<typeof memory> | null, load = noLarge) =>
  (await keptAside(storage, load)).map(({ key, from, read }) => [
    key,
    from,
    read.ok ? read.value : read.fault.code,
  ]);

test('nothing is kept aside in a fresh browser, nor in one without storage', async () => {
  expect(await seen(null)).toEqual([]);
  expect(await seen(memory())).toEqual([]);
});

test('another window’s plate is read, whole or with its shapes apart', async () => {
  const storage = memory();
  storage.setItem(OTHER_KEY, JSON.stringify(smallPlate()));
  expect(await seen(storage)).toEqual([[OTHER_KEY, 'another window', smallPlate()]]);
  const large = largeMemory();
  large.map.set('123-abc', JSON.stringify(smallPlate().shapes));
  storage.setItem(OTHER_KEY, apartText('123-abc', smallPlate()));
  expect(await seen(storage, large.load)).toEqual([[OTHER_KEY, 'another window', smallPlate()]]);
  expect(await seen(storage)).toEqual([[OTHER_KEY, 'another window', 'saved-shapes-missing']]);
});

test('saved work that cannot be read is listed with why', async () => {
  const storage = memory();
  storage.setItem(ASIDE_KEYS[0]!, '{"format"');
  storage.setItem(ASIDE_KEYS[2]!, '{}');
  expect(await seen(storage)).toEqual([
    [ASIDE_KEYS[0], 'unread', 'layout-not-json'],
    [ASIDE_KEYS[2], 'unread', 'layout-wrong-format'],
  ]);
});

test('only what was seen is put away', async () => {
  const storage = memory();
  storage.setItem(LAYOUT_KEY, 'mine');
  storage.setItem(OTHER_KEY, JSON.stringify(smallPlate()));
  const [kept] = await keptAside(storage, noLarge);
  storage.setItem(OTHER_KEY, 'a newer one');
  expect(putAway(storage, kept!)).toBe(false);
  expect(storage.map.get(OTHER_KEY)).toBe('a newer one');
  expect(putAway(storage, { key: OTHER_KEY, text: 'a newer one' })).toBe(true);
  expect([...storage.map]).toEqual([[LAYOUT_KEY, 'mine']]);
});
