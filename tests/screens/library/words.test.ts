/** Where a plate's machine or process differs from an entry, value by value and in words. */
import { describe, expect, test } from 'vitest';
import { DEFAULT_MACHINE, DEFAULT_PROCESS } from '../../../src/layout/defaults';
import type { Machine } from '../../../src/layout/types';
import { importedWords } from '../../../src/screens/library/actions';
import { differencesText, savedText } from '../../../src/screens/library/words';
import { differences } from '../../../src/store/library/differences';
import { NARROW_SPACE } from '../../../src/units/format';

const words = (entry: object, plate: object): string =>
  differencesText(differences(entry, plate)).replaceAll(NARROW_SPACE, ' ');
const machine = (patch: Partial<Machine>): Machine => ({ ...DEFAULT_MACHINE, ...patch });

describe('differences', () => {
  test('are none between equal ones of another name', () => {
    expect(differences(machine({ name: 'Other' }), structuredClone(DEFAULT_MACHINE))).toEqual([]);
  });
  test('name the value, what the plate has and what the entry has', () => {
    const process = { ...DEFAULT_PROCESS, layer_mm: 0.03, density_g_cm3: 8 };
    expect(words(process, DEFAULT_PROCESS)).toBe(
      'density 4.43 g/cm³, here 8 g/cm³; layer 0.06 mm, here 0.03 mm',
    );
  });
  test('find lasers by their id, whatever their order', () => {
    const lasers = DEFAULT_MACHINE.lasers.toReversed();
    expect(differences(machine({ lasers }), DEFAULT_MACHINE)).toEqual([]);
    const weaker = lasers.map((laser) => (laser.id === 'L2' ? { ...laser, power_W: 400, on: false } : laser));
    expect(words(machine({ lasers: weaker }), DEFAULT_MACHINE)).toBe(
      'L2 power 450 W, here 400 W; L2 on yes, here no',
    );
    expect(words(machine({ lasers: DEFAULT_MACHINE.lasers.slice(0, 3) }), DEFAULT_MACHINE)).toBe(
      'L4 stated, here none',
    );
  });
  test('take places, outlines and stores as one value each', () => {
    const [first, ...rest] = DEFAULT_MACHINE.lasers;
    const moved = machine({ lasers: [{ ...first!, foot_mm: [-80, -75] }, ...rest] });
    expect(words(moved, DEFAULT_MACHINE)).toBe('L1 foot (-75, -75) mm, here (-80, -75) mm');
    expect(words(machine({ powder: null }), DEFAULT_MACHINE)).toBe('powder stated, here none');
    const keepOut = (r: number) =>
      machine({ platform: { ...DEFAULT_MACHINE.platform, keepOuts: [{ circle_mm: [0, 0, r] }] } });
    expect(words(keepOut(5), keepOut(6))).toBe('platform keep outs differs');
    expect(words(keepOut(5), DEFAULT_MACHINE)).toBe('platform keep outs none, here 1 listed');
  });
  test('beyond twelve are counted', () => {
    const doubled = Object.entries(DEFAULT_PROCESS).map(([key, found]) => [
      key,
      typeof found === 'number' ? found * 2 + 1 : found,
    ]);
    // fourteen numbers of a process: density, packing, dose, layer, hatch, speed, inset, vector, gap, contours, contour speed,
    // piece gap, minimum layer time, seam overlap
    expect(words(Object.fromEntries(doubled), DEFAULT_PROCESS)).toMatch(/(; .*){11}; and 2 more$/);
  });
});

test('a date is local time and sorts as it reads', () => {
  expect(savedText(new Date(2026, 10, 5, 7, 3).getTime())).toBe('2026-11-05 07:03');
});

test('what an import has done is said in one line', () => {
  expect(importedWords({ added: 1, beside: 0, renamed: 0, known: 0 })).toBe('1 entry added.');
  expect(importedWords({ added: 3, beside: 1, renamed: 2, known: 4 })).toBe(
    '3 entries added, 1 of them beside another state of the same entry, 2 renamed, 4 here already.',
  );
});
