/**
 * Published and provable schedules. Lasers are machines, parts are jobs, seconds are time units.
 * Graham 1969, "Bounds on multiprocessing timing anomalies"; family and bound 4/3 − 1/(3m) as given in
 * J. Scheduling, doi 10.1007/s10951-022-00742-w. França et al. 1994: 5 machines, optimum 125. McNaughton: cutting
 * allowed anywhere but never twice at once, max(longest, Σ/m), webia.lip6.fr/~durrc/P_pmtn_Cmax.
 */
import { describe, expect, it } from 'vitest';
import { solveBalance } from '../../src/allocation/solver/balance';
import { allocationIsFeasible } from '../../src/allocation/solver/check';
import { imbalance } from '../../src/allocation/solver/imbalance';
import { solveWhole } from '../../src/allocation/solver/whole';
import type { BalanceProblem, WholeProblem } from '../../src/allocation/types';

const oneStretch = (lasers: number, loads: readonly number[]): WholeProblem => ({
  laserCount: lasers,
  layers: [1],
  fixed_s: [Array.from({ length: lasers }, () => 0)],
  shared: [[]],
  parts: loads.map((load, i) => ({
    id: `J${String(i).padStart(2, '0')}`,
    mask: 2 ** lasers - 1,
    loads_s: [load],
  })),
});
const divisible = (lasers: number, loads: readonly number[]): BalanceProblem => ({
  laserCount: lasers,
  fixed_s: Array.from({ length: lasers }, () => 0),
  parts: loads.map((load_s, i) => ({
    id: `J${String(i).padStart(2, '0')}`,
    fixedLasers: 0,
    fragments: [{ mask: 2 ** lasers - 1, load_s }],
  })),
});

/** 2m+1 jobs 2m−1, 2m−1, …, m+1, m+1, m, m, m. */
const graham = (m: number): number[] => [
  ...Array.from({ length: 2 * m - 2 }, (_, i) => 2 * m - 1 - Math.floor(i / 2)),
  m,
  m,
  m,
];
const franca = [62, 97, 42, 44, 58, 85, 40, 78, 3, 68];

describe('schedules with a known optimum', () => {
  it.each([2, 3, 4, 5, 6])('Graham, %i lasers: 3m, where longest first alone stops at 4m − 1', (m) => {
    expect(graham(m)).toHaveLength(2 * m + 1);
    const { exposure_s, proven } = solveWhole(oneStretch(m, graham(m)));
    expect(exposure_s).toBe(3 * m);
    expect(proven).toBe(true);
  });

  it('França et al.: 125 on five lasers, proven', () => {
    const { exposure_s, proven } = solveWhole(oneStretch(5, franca));
    expect(exposure_s).toBe(125);
    expect(proven).toBe(true);
  });

  it('whole parts reach McNaughton’s bound at best, and divided parts reach Σ/m, below it', () => {
    const loads = [50, 10, 9, 8, 7];
    const mcNaughton = Math.max(Math.max(...loads), 84 / 4);
    expect(solveWhole(oneStretch(4, loads)).exposure_s).toBe(mcNaughton);
    const divided = solveBalance(divisible(4, loads));
    expect(divided.best_s).toBe(84 / 4);
    expect(Math.max(...divided.loads_s)).toBeCloseTo(21, 9);
  });

  it('a divided schedule cuts at most lasers − 1 parts (McNaughton’s wrap-around)', () => {
    for (const m of [2, 3, 4, 5]) {
      const { cutParts } = solveBalance(divisible(m, franca));
      expect(cutParts).toBeLessThanOrEqual(m - 1);
    }
  });
});

describe('shared load', () => {
  // [mathematics] exclusive 1:120 2:60 3:90 4:30, shared {12}:40 {13}:30 {24}:50 {34}:20 {1234}:40: 480 s over 4 lasers
  const problem: BalanceProblem = {
    laserCount: 4,
    fixed_s: [120, 60, 90, 30],
    parts: [
      { id: 'A', fixedLasers: 0, fragments: [{ mask: 0b0011, load_s: 40 }] },
      { id: 'B', fixedLasers: 0, fragments: [{ mask: 0b0101, load_s: 30 }] },
      { id: 'C', fixedLasers: 0, fragments: [{ mask: 0b1010, load_s: 50 }] },
      { id: 'D', fixedLasers: 0, fragments: [{ mask: 0b1100, load_s: 20 }] },
      { id: 'E', fixedLasers: 0, fragments: [{ mask: 0b1111, load_s: 40 }] },
    ],
  };

  it('comes out at 120 s each, imbalance 0; laser 1 alone sets it', () => {
    const solution = solveBalance(problem);
    expect(allocationIsFeasible(problem, solution)).toBeNull();
    expect([solution.best_s, solution.setBy]).toEqual([120, 0b0001]);
    for (const load of solution.loads_s) expect(load).toBeCloseTo(120, 9);
    expect(imbalance(solution.loads_s)).toBeCloseTo(0, 9);
  });

  it('cuts one part, and no division cuts none: laser 2 needs 60 s out of 40, 50 and 40', () => {
    // 1 is full, so A goes to 2 and B to 3, which is full then; C and D go to 4; E is divided 20 : 20 between 2 and 4.
    const { cutParts, cutsProven } = solveBalance(problem);
    expect([cutParts, cutsProven]).toEqual([1, true]);
  });

  it('one laser doing everything has imbalance lasers − 1', () => {
    const alone = solveBalance({ ...problem, fixed_s: [480, 0, 0, 0], parts: [] });
    expect(imbalance(alone.loads_s)).toBe(3);
  });

  it('reports the smallest binding set of tied ones, then the first', () => {
    const tied = { ...problem, fixed_s: [100, 120, 120, 20], parts: problem.parts.slice(3) };
    expect(solveBalance(tied).setBy).toBe(0b0010);
    const pair = {
      ...problem,
      fixed_s: [40, 40, 40, 40],
      parts: [
        problem.parts[0]!,
        { ...problem.parts[3]!, id: 'F', fragments: [{ mask: 0b1100, load_s: 40 }] },
      ],
    };
    expect([solveBalance(pair).best_s, solveBalance(pair).setBy]).toEqual([60, 0b0011]);
  });
});
