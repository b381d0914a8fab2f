/** Words of a comparison. Expected: the rules of the screen, written down by hand. */
import { describe, expect, it } from 'vitest';
import { whatChanged } from '../../../src/build/whatChanged';
import { emptyLayout } from '../../../src/layout/defaults';
import { changeLines } from '../../../src/screens/compare/changeWords';
import { difference, ROW_WORDS } from '../../../src/screens/compare/rowWords';
import { plate, QUADRANTS, rect, standing } from '../../support/plates';

const { format } = ROW_WORDS.time_h;

describe('a difference', () => {
  it('has its sign, and none where it rounds to nothing', () => {
    expect(difference(3.25, format)).toBe('+3.25\u202fh');
    expect(difference(-3.25, format)).toBe('−3.25\u202fh');
    expect(difference(0.0004, format)).toBe('±0');
    expect(difference(0, format)).toBe('±0');
  });

  it('of percentages is in percentage points', () => {
    expect(difference(-12.5, ROW_WORDS.imbalance_pct.format)).toBe('−12.5\u202fpoints');
  });
});

describe('what changed, in words', () => {
  it('is no line where nothing changed', () => {
    expect(changeLines(whatChanged(emptyLayout(), emptyLayout()))).toEqual([]);
  });

  it('names the farthest moved parts first and counts the rest', () => {
    const before = plate(
      [1, 2, 3, 4, 5, 6].map((k) => standing(`P0${k}`, 10, rect(20 * k, 20, 20 * k + 9, 29))),
      QUADRANTS,
    );
    const parts = before.parts.map((part, i) => ({
      ...part,
      at_mm: [part.at_mm[0], part.at_mm[1] + 10 * i] as const,
    }));
    expect(changeLines(whatChanged(before, { ...before, parts }))).toEqual([
      'moved: P06 by 50.00\u202fmm, P05 by 40.00\u202fmm, P04 by 30.00\u202fmm, P03 by 20.00\u202fmm and 1 more',
    ]);
  });

  it('says keys of process and machine without their units', () => {
    const before = emptyLayout();
    const process = { ...before.process, contourSpeed_mm_s: 1, density_g_cm3: 1 };
    expect(changeLines(whatChanged(before, { ...before, process }))).toEqual([
      'process: density, contour speed',
    ]);
  });
});
