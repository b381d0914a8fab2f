/**
 * Which lasers have nothing to expose, on plates whose zones are plain to see: five lasers under quadrants, a reach that
 * misses its quadrant, thirteen lasers under twelve strips.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { emptyLayout } from '../../src/layout/defaults';
import type { Laser, Layout, Zoning } from '../../src/layout/types';
import { lackOf } from '../../src/panels/readout/lack';
import { withoutZone } from '../../src/panels/readout/withoutZone';

const base = emptyLayout();
const laser = (id: string, more: Partial<Laser> = {}): Laser => ({ ...base.machine.lasers[0]!, id, ...more });
const four = ['L1', 'L2', 'L3', 'L4'];
const quadrants: Zoning = { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 0, lasers: four };

function plate(lasers: readonly Laser[], zoning: Zoning): Layout {
  return { ...base, machine: { ...base.machine, lasers }, zoning: [{ from_mm: 0, zoning }] };
}
function lacks(layout: Layout) {
  const [division] = analyse(layout).divisions;
  return layout.machine.lasers.map((_, i) => lackOf(division!, i));
}
const hints = (layout: Layout) => withoutZone(analyse(layout).divisions[0]!, layout.zoning[0]!.zoning);

describe('a laser that is on', () => {
  test('and fifth under quadrants has no zone; the hint says where to give it one', () => {
    const layout = plate(
      [...four, 'L5'].map((id) => laser(id)),
      quadrants,
    );
    expect(lacks(layout)).toEqual([null, null, null, null, 'no zone']);
    expect(hints(layout)).toEqual([expect.stringMatching(/^L5: on, no zone\. .*Division.*strips/)]);
  });
  test('whose reach misses its quadrant (front left) is told apart', () => {
    const corner: Laser['reach'] = [
      [10, 10],
      [100, 10],
      [100, 100],
    ];
    const layout = plate(
      [laser('L1', { reach: corner }), ...four.slice(1).map((id) => laser(id))],
      quadrants,
    );
    expect(lacks(layout)[0]).toBe('zone out of reach');
    expect(hints(layout)[0]).toMatch(/^L1: on, its zone is out of reach/);
  });
  test('and thirteenth under twelve strips is told that strips stop at 12', () => {
    const ids = Array.from({ length: 13 }, (_, i) => `L${i + 1}`);
    const strips: Zoning = {
      strategy: 'strips',
      run_deg: 90,
      lines_mm: Array.from({ length: 11 }, (_, i) => -125 + 25 * i),
      sharedBand_mm: 0,
      lasers: ids.slice(0, 12),
    };
    const layout = plate(
      ids.map((id) => laser(id)),
      strips,
    );
    expect(hints(layout)).toEqual([expect.stringMatching(/^L13: .*stop at 12/)]);
  });
  test('under the whole field always has one', () => {
    expect(
      hints(
        plate(
          [...four, 'L5'].map((id) => laser(id)),
          { strategy: 'wholeField' },
        ),
      ),
    ).toEqual([]);
  });
});

test('a laser that is off lacks nothing: it is off', () => {
  const layout = plate([...four.map((id) => laser(id)), laser('L5', { on: false })], quadrants);
  expect(lacks(layout)[4]).toBeNull();
});
