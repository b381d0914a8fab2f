/**
 * Factor and spread of recorded builds: ratio of sums, and the sample standard deviation about it, worked out by hand
 * [mathematics].
 */
import { describe, expect, test } from 'vitest';
import { corrected, learnCorrection, type BuildRecord } from '../../src/build/correction';

const records = (...hours: readonly (readonly [number, number])[]): BuildRecord[] =>
  hours.map(([planned_h, real_h]) => ({ planned_h, real_h }));
const learned = (...hours: readonly (readonly [number, number])[]) => {
  const result = learnCorrection(records(...hours));
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};

describe('what builds teach', () => {
  test('three builds: 68 h for 60 h, spread 6.976 %', () => {
    // Ratios 1.1, 1.05, 1.2 about 68/60: squares 1/900, 1/144, 1/225, sum 1/80; √(1/160)/(68/60) = 0.0697561
    const { factor, spread_pct, builds } = learned([10, 11], [20, 21], [30, 36]);
    expect(factor).toBeCloseTo(68 / 60, 12);
    expect(spread_pct).toBeCloseTo(6.97561, 5);
    expect(builds).toBe(3);
  });

  test('long builds count for more than short ones', () => {
    expect(learned([1, 2], [99, 99]).factor).toBeCloseTo(1.01, 12);
  });

  test('builds that all miss by the same share have no spread', () => {
    expect(learned([10, 11], [40, 44]).spread_pct).toBeCloseTo(0, 9);
  });

  test('a single build says nothing of the spread: the given one stays', () => {
    const one = learned([50, 60]);
    expect(one).toEqual({ factor: 1.2, spread_pct: null, builds: 1 });
    expect(corrected(one, { factor: 1, spread_pct: 10 })).toEqual({ factor: 1.2, spread_pct: 10 });
    expect(corrected(learned([10, 11], [40, 44]), { factor: 1, spread_pct: 10 }).spread_pct).toBeCloseTo(
      0,
      9,
    );
  });
});

describe('nonsense is refused', () => {
  test('without a record', () => {
    expect(learnCorrection([])).toEqual({ ok: false, fault: { code: 'correction-no-records', params: {} } });
  });

  test.each([
    [0, 10],
    [10, 0],
    [-5, 10],
    [10, -5],
    [Number.NaN, 10],
    [10, Infinity],
    [10, 1e9],
  ])('%d h planned and %d h real, and the record is named', (planned, real) => {
    expect(learnCorrection(records([10, 11], [planned, real]))).toMatchObject({
      ok: false,
      fault: { code: 'correction-bad-record', params: { record: 2 } },
    });
  });

  test('minutes taken for hours', () => {
    expect(learnCorrection(records([0.1, 6000]))).toMatchObject({
      ok: false,
      fault: { code: 'correction-out-of-range' },
    });
  });
});
