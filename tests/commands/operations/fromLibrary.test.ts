/** A machine, a process or a shape from elsewhere becomes the plate's own copy; zones and pins follow the lasers. */
import { describe, expect, test } from 'vitest';
import {
  heirs,
  withLibraryMachine,
  withLibraryProcess,
  withLibraryShape,
} from '../../../src/commands/operations/fromLibrary';
import { DEFAULT_MACHINE, DEFAULT_PROCESS } from '../../../src/layout/defaults';
import { readLayoutValue } from '../../../src/layout/read';
import type { Result } from '../../../src/layout/result';
import type { Layout, Machine, Zoning } from '../../../src/layout/types';
import { smallPlate } from '../../store/plates';

const value = (result: Result<Layout>): Layout => {
  if (!result.ok) throw new Error(result.fault.code);
  expect(readLayoutValue(result.value).ok).toBe(true);
  return result.value;
};
const withLasers = (...ids: string[]): Machine => ({
  ...DEFAULT_MACHINE,
  name: 'Other',
  lasers: ids.map((id, i) => ({ ...DEFAULT_MACHINE.lasers[i % 4]!, id })),
});
const divided = (zoning: Zoning): Layout => ({ ...smallPlate(), zoning: [{ from_mm: 0, zoning }] });
const QUADRANTS: Zoning = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 20,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};
const pinned = (layout: Layout, ...lasers: (string | null)[]): Layout => ({
  ...layout,
  parts: layout.parts.map((part, i) => ({ ...part, laser: lasers[i] ?? null })),
});
const zoningOf = (layout: Layout): Zoning => layout.zoning[0]!.zoning;
const pins = ({ parts }: Layout) => parts.map(({ laser }) => laser);

describe('a machine', () => {
  test('with the same laser ids leaves zones and pins alone, in whatever order it lists them', () => {
    const layout = pinned(divided(QUADRANTS), 'L1', 'L4');
    const machine = withLasers('L4', 'L3', 'L2', 'L1');
    expect(heirs(layout.machine, machine)).toEqual([]);
    const next = value(withLibraryMachine(layout, machine));
    expect(next).toEqual({ ...layout, machine });
    expect(next.shapes).toBe(layout.shapes);
  });

  test('with other ids is followed by the place in the list', () => {
    const layout = pinned(divided(QUADRANTS), 'L1', null, 'L3');
    const next = value(withLibraryMachine(layout, withLasers('A', 'B', 'C', 'D')));
    expect(zoningOf(next)).toEqual({ ...QUADRANTS, lasers: ['A', 'B', 'C', 'D'] });
    expect(pins(next)).toEqual(['A', null, 'C']);
  });

  test('with fewer lasers gives their zones to the nearest foot and lifts their pins', () => {
    const layout = pinned(divided(QUADRANTS), 'L1', 'L3', 'L4');
    // feet at (-75, -75) and (75, -75): L3 at (-75, 75) is nearest to L1, L4 at (75, 75) to L2
    const next = value(withLibraryMachine(layout, withLasers('L1', 'L2')));
    expect(zoningOf(next)).toEqual({ ...QUADRANTS, lasers: ['L1', 'L2', 'L1', 'L2'] });
    expect(pins(next)).toEqual(['L1', null, null]);
  });

  test('keeps drawn zones, each laser once', () => {
    const zones = [{ lasers: ['L1', 'L3'], rings: [{ circle_mm: [0, 0, 50] as const }] }];
    const layout = divided({ strategy: 'drawn', zones });
    const next = value(withLibraryMachine(layout, withLasers('L1', 'L2')));
    expect(zoningOf(next)).toEqual({ strategy: 'drawn', zones: [{ ...zones[0], lasers: ['L1'] }] });
  });

  test('changes the zones at every height', () => {
    const layout: Layout = {
      ...smallPlate(),
      zoning: [
        { from_mm: 0, zoning: QUADRANTS },
        { from_mm: 20, zoning: { strategy: 'wholeField' } },
        { from_mm: 30, zoning: { ...QUADRANTS, lasers: ['L4', 'L4', 'L4', 'L4'] } },
      ],
    };
    const next = value(withLibraryMachine(layout, withLasers('A', 'B', 'C', 'D')));
    expect(next.zoning.map(({ zoning }) => ('lasers' in zoning ? zoning.lasers.join('') : ''))).toEqual([
      'ABCD',
      '',
      'DDDD',
    ]);
  });
});

test('a process takes the place of the plate’s and changes nothing else', () => {
  const layout = smallPlate();
  const process = { ...DEFAULT_PROCESS, name: 'Thin', layer_mm: 0.03 };
  expect(value(withLibraryProcess(layout, process))).toEqual({ ...layout, process });
  expect(withLibraryProcess(layout, { ...process, layer_mm: -1 }).ok).toBe(false);
});

describe('a shape', () => {
  const block = { slabs: [{ to_mm: 30, rings: [{ circle_mm: [0, 0, 8] as const }] }] };
  test('that the plate has is placed once more', () => {
    const layout = smallPlate();
    const next = value(withLibraryShape(layout, 'block', structuredClone(layout.shapes['block']!)));
    expect(next.shapes).toEqual(layout.shapes);
    expect(next.parts.at(-1)).toMatchObject({ id: 'P04', shape: 'block' });
  });
  test('of a name that another one has gets a name of its own', () => {
    const layout = smallPlate();
    const next = value(withLibraryShape(layout, 'block', block));
    expect(next.shapes['block']).toBe(layout.shapes['block']);
    const added = next.parts.at(-1)!;
    expect(added.shape).not.toBe('block');
    expect(next.shapes[added.shape]).toEqual(block);
    expect(next.parts).toHaveLength(4);
  });
});
