/**
 * How many lasers may take a part whole, on plates where it is plain to see: quadrants that meet in the middle, blocks
 * inside one quadrant, on a line, in a shared band. Millimetres from the front-left corner of 400 × 400.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { layerRanges } from '../../src/build/layers';
import { modelOf } from '../../src/build/layerFigures';
import { plateOf, sectionsIn } from '../../src/build/plate';
import { holdersOf } from '../../src/build/rules';
import { lasersThatHold, wholePartChoices } from '../../src/build/choices';
import { membersOf } from '../../src/zoning/lasers';
import type { Layout } from '../../src/layout/types';
import { plate, rect, standing } from '../support/plates';
import { layouts, runs } from '../support/random';

const inFrontLeft = standing('A', 60, rect(20, 20, 60, 60));
const onTheLine = standing('B', 60, rect(180, 20, 220, 60));
const inTheMiddle = standing('C', 60, rect(190, 190, 210, 210));
const quadrants = (sharedBand_mm: number) => ({
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm,
  lasers: ['L1', 'L2', 'L3', 'L4'],
});

const choices = (layout: Layout) => {
  const { divisions, parts } = analyse(layout);
  return wholePartChoices(layout, divisions, parts);
};
const holders = (layout: Layout) => {
  const { divisions, parts } = analyse(layout);
  return parts.map((part) => membersOf(lasersThatHold(layout, divisions, part)));
};
const of = (sharedBand_mm: number) => plate([inFrontLeft, onTheLine, inTheMiddle], quadrants(sharedBand_mm));

describe('lasers that may take a part whole', () => {
  test('under quadrants without a band: one in its quadrant, none on a line or in the middle', () => {
    expect(holders(of(0))).toEqual([[0], [], []]);
    expect(choices(of(0))).toEqual({ several: 0, one: 1, none: 2 });
  });
  test('under a band of 40 mm: both neighbours on the line, all four in the middle', () => {
    expect(holders(of(40))).toEqual([[0], [0, 1], [0, 1, 2, 3]]);
    expect(choices(of(40))).toEqual({ several: 2, one: 1, none: 0 });
  });
  test('under a band narrower than the part: none on the line', () => {
    expect(holders(of(39))[1]).toEqual([]);
  });
  test('under the whole field every part has all four', () => {
    const layout = plate([inFrontLeft, onTheLine, inTheMiddle], { strategy: 'wholeField' });
    expect(choices(layout)).toEqual({ several: 3, one: 0, none: 0 });
  });
  test('a pinned part has one, whatever its zones allow', () => {
    const layout = of(40);
    const pinned = { ...layout, parts: layout.parts.map((part) => ({ ...part, laser: 'L1' })) };
    expect(choices(pinned)).toEqual({ several: 0, one: 3, none: 0 });
  });
  test('a division that changes above the part does not touch it; one that changes inside it does', () => {
    const layout = of(40);
    const above = (from_mm: number): Layout => ({
      ...layout,
      zoning: [
        { from_mm: 0, zoning: { strategy: 'wholeField' } },
        { ...layout.zoning[0]!, from_mm },
      ],
    });
    expect(holders(above(60))[0]).toEqual([0, 1, 2, 3]);
    expect(holders(above(30))[0]).toEqual([0]);
  });
});

/** The division's own account: the lasers of every fragment of every section. */
function byFragments(layout: Layout): readonly number[][] {
  const set = plateOf({ ...layout, parts: layout.parts.map((part) => ({ ...part, laser: null })) });
  const t = layout.process.layer_mm;
  const sections = layerRanges(set.placed, layout.zoning, t).map((range) => sectionsIn(set, range));
  const model = modelOf(layout.process);
  return layout.parts.map((part, p) =>
    membersOf(
      holdersOf(
        sections.map((inRange) => inRange[p]!),
        model,
        part.timeFactor,
      ),
    ),
  );
}

test('agree with the fragments of every section on random plates', () => {
  fc.assert(
    fc.property(layouts({ bands: true, faults: true }), (layout) => {
      expect(holders(layout)).toEqual(byFragments(layout));
    }),
    runs(60),
  );
});
