/**
 * Shared load is split so that the slowest laser is as fast as can be, with the fewest cut parts and the flattest loads.
 * Expected values: the optima of the linear and mixed-integer programs that HiGHS (npm highs) finds for the same layer,
 * stated in lp.ts; what a case says by hand is mathematics. Seconds; a mask has bit k for laser k.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveBalance } from '../../../src/allocation/solver/balance';
import { allocationIsFeasible } from '../../../src/allocation/solver/check';
import type { BalanceProblem, BalanceSolution } from '../../../src/allocation/types';
import { fewestCutsByMip, flattestByMip, leastTimeByLp } from './lp';

/** Random layers; `most` bounds every load, integers so that exact fits happen. */
const layers = (lasers: number, parts: number, fragments: number, most: number) =>
  fc.integer({ min: 1, max: lasers }).chain((m) =>
    fc.record({
      laserCount: fc.constant(m),
      fixed_s: fc.array(fc.integer({ min: 0, max: 2 * most }), { minLength: m, maxLength: m }),
      parts: fc
        .array(
          fc.record({
            fixedLasers: fc.oneof(
              fc.constant(0),
              fc.integer({ min: 0, max: m - 1 }).map((k) => 1 << k),
              fc.integer({ min: 0, max: 2 ** m - 1 }),
            ),
            fragments: fc.array(
              fc.record({
                mask: fc.integer({ min: 1, max: 2 ** m - 1 }),
                load_s: fc.integer({ min: 0, max: most }),
              }),
              { maxLength: fragments },
            ),
          }),
          { maxLength: parts },
        )
        .map((list) => list.map((part, i) => ({ ...part, id: `P${String(i).padStart(2, '0')}` }))),
    }),
  );

const fragmentsOf = (problem: BalanceProblem) => problem.parts.flatMap((part) => part.fragments);
const falling = (loads: readonly number[]) => [...loads].sort((a, b) => b - a);
const wholeField = (lasers: number, loads: readonly number[]): BalanceProblem => ({
  laserCount: lasers,
  fixed_s: Array.from({ length: lasers }, () => 0),
  parts: loads.map((load_s, i) => ({
    id: `P${String(i).padStart(3, '0')}`,
    fixedLasers: 0,
    fragments: [{ mask: 2 ** lasers - 1, load_s }],
  })),
});
const pieces = (solution: BalanceSolution) => solution.shares_s.flat(2).filter((share) => share > 0).length;

describe('solveBalance', () => {
  it('reaches the optimum of the linear program, feasibly (HiGHS)', () => {
    fc.assert(
      fc.property(layers(8, 40, 4, 5000), (problem) => {
        const solution = solveBalance(problem);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        const least = leastTimeByLp(problem.laserCount, problem.fixed_s, fragmentsOf(problem));
        expect(Math.max(...solution.loads_s)).toBeCloseTo(least, 5);
      }),
      { seed: 31_001, numRuns: 150 },
    );
  }, 30_000);

  it('cuts the fewest parts, and proves it on small layers (HiGHS, mixed-integer)', () => {
    fc.assert(
      fc.property(layers(4, 6, 2, 12), (problem) => {
        const solution = solveBalance(problem);
        const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
        expect([solution.cutParts, solution.cutsProven]).toEqual([fewest, true]);
      }),
      { seed: 31_002, numRuns: 150 },
    );
  }, 30_000);

  it('never claims a proof where fewer cuts are possible, whatever its budget (HiGHS, mixed-integer)', () => {
    fc.assert(
      fc.property(layers(4, 8, 2, 30), fc.constantFrom(0, 30, 300), (problem, work) => {
        const solution = solveBalance(problem, { work });
        const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
        expect(solution.cutParts - fewest).toBeGreaterThanOrEqual(0);
        expect(solution.cutsProven && solution.cutParts > fewest).toBe(false);
      }),
      { seed: 31_008, numRuns: 150 },
    );
  }, 30_000);

  it('has the flattest loads among the fewest cuts (HiGHS, mixed-integer, sums of the j slowest)', () => {
    fc.assert(
      fc.property(layers(4, 6, 2, 12), (problem) => {
        const solution = solveBalance(problem, { work: 5_000_000 });
        const wanted = flattestByMip(problem, solution.cutParts);
        falling(solution.loads_s).forEach((load, j) => expect(load).toBeCloseTo(wanted[j]!, 4));
      }),
      { seed: 31_003, numRuns: 80 },
    );
  }, 30_000);

  it('cuts nothing where equal parts divide evenly', () => {
    const solution = solveBalance(
      wholeField(
        8,
        Array.from({ length: 96 }, () => 7.3),
      ),
    );
    expect([solution.cutParts, solution.cutsProven]).toEqual([0, true]);
  });

  it('cuts four of sixty equal parts on eight lasers: each holds seven whole ones at most (mathematics)', () => {
    const solution = solveBalance(
      wholeField(
        8,
        Array.from({ length: 60 }, () => 1.1),
      ),
    );
    expect([solution.cutParts, solution.cutsProven]).toEqual([4, true]);
    expect(solution.best_s).toBeCloseTo(8.25, 9);
  });

  it('finds a perfect fit by search: parts cut from full lasers, shuffled (construction)', () => {
    const sizes = [7, 5, 3, 9, 6, 8, 4, 2, 1, 11, 3, 1];
    const solution = solveBalance(wholeField(4, sizes), { work: 2_000_000 });
    expect(solution.best_s).toBe(15);
    expect([solution.cutParts, solution.cutsProven]).toEqual([0, true]);
  });

  it('leaves a part uncut on its one fixed laser where all its shared load may go there', () => {
    const problem: BalanceProblem = {
      laserCount: 2,
      fixed_s: [4, 10],
      parts: [{ id: 'A', fixedLasers: 1, fragments: [{ mask: 3, load_s: 5 }] }],
    };
    const solution = solveBalance(problem);
    expect(solution.loads_s).toEqual([9, 10]);
    expect([solution.cutParts, solution.cutsProven]).toEqual([0, true]);
  });

  it('counts a part with fixed fragments on two lasers as cut, and divides it at no further cost', () => {
    const problem: BalanceProblem = {
      laserCount: 2,
      fixed_s: [3, 1],
      parts: [
        { id: 'A', fixedLasers: 3, fragments: [{ mask: 3, load_s: 4 }] },
        { id: 'B', fixedLasers: 0, fragments: [{ mask: 3, load_s: 3 }] },
      ],
    };
    const solution = solveBalance(problem);
    expect(solution.best_s).toBeCloseTo(5.5, 12);
    expect(solution.cutParts).toBe(1);
    expect(solution.shares_s[1]![0]!.filter((share) => share > 0)).toHaveLength(1);
  });

  it('divides at most lasers − 1 fragments of a group: a basic solution (linear programming)', () => {
    fc.assert(
      fc.property(layers(8, 30, 3, 5000), (problem) => {
        const solution = solveBalance(problem);
        const busy = fragmentsOf(problem).filter(({ load_s }) => load_s > 0).length;
        expect(pieces(solution)).toBeLessThanOrEqual(busy + Math.max(0, problem.laserCount - 1));
      }),
      { seed: 31_004, numRuns: 200 },
    );
  }, 30_000);

  it('answers the same when the parts come in another order', () => {
    fc.assert(
      fc.property(layers(5, 12, 3, 20), (problem) => {
        const there = solveBalance(problem);
        const back = solveBalance({ ...problem, parts: [...problem.parts].reverse() });
        expect(back.cutParts).toBe(there.cutParts);
        expect([...back.shares_s].reverse()).toEqual(there.shares_s);
      }),
      { seed: 31_005, numRuns: 150 },
    );
  }, 30_000);

  it('scales: loads in hours give the same cuts as loads in microseconds', () => {
    fc.assert(
      fc.property(layers(5, 10, 3, 40), fc.constantFrom(2 ** -30, 2 ** 20), (problem, scale) => {
        const scaled: BalanceProblem = {
          ...problem,
          fixed_s: problem.fixed_s.map((load) => load * scale),
          parts: problem.parts.map((part) => ({
            ...part,
            fragments: part.fragments.map((f) => ({ ...f, load_s: f.load_s * scale })),
          })),
        };
        expect(solveBalance(scaled).cutParts).toBe(solveBalance(problem).cutParts);
        expect(allocationIsFeasible(scaled, solveBalance(scaled))).toBeNull();
      }),
      { seed: 31_006, numRuns: 100 },
    );
  }, 30_000);

  it('stays feasible with loads of any magnitude side by side, 1e-12 to 1e9 s', () => {
    const wide = fc
      .record({
        mantissa: fc.double({ min: 1, max: 10, noNaN: true }),
        exponent: fc.integer({ min: -12, max: 8 }),
      })
      .map(({ mantissa, exponent }) => mantissa * 10 ** exponent);
    const random = fc.integer({ min: 2, max: 8 }).chain((m) => {
      const mask = fc.integer({ min: 1, max: 2 ** m - 1 });
      const part = fc.record({
        fixedLasers: fc.constantFrom(0, 1, 3),
        fragments: fc.array(fc.record({ mask, load_s: wide }), { maxLength: 4 }),
      });
      return fc.record({
        laserCount: fc.constant(m),
        fixed_s: fc.array(wide, { minLength: m, maxLength: m }),
        parts: fc.array(part, { maxLength: 25 }).map((list) => list.map((p, i) => ({ ...p, id: `P${i}` }))),
      });
    });
    fc.assert(
      fc.property(random, (problem) => {
        expect(allocationIsFeasible(problem, solveBalance(problem))).toBeNull();
      }),
      { seed: 31_009, numRuns: 400 },
    );
  }, 30_000);

  it('solves layers of 13 to 31 lasers exactly', () => {
    const random = fc.integer({ min: 13, max: 31 }).chain((m) =>
      fc.record({
        fixed: fc.array(fc.integer({ min: 0, max: 900 }), { minLength: m, maxLength: m }),
        fragments: fc.array(
          fc.record({
            mask: fc.integer({ min: 1, max: 2 ** m - 1 }),
            load_s: fc.integer({ min: 0, max: 900 }),
          }),
          { maxLength: 25 },
        ),
      }),
    );
    fc.assert(
      fc.property(random, ({ fixed, fragments }) => {
        const parts = fragments.map((f, i) => ({ id: `P${i}`, fixedLasers: 0, fragments: [f] }));
        const problem = { laserCount: fixed.length, fixed_s: fixed, parts };
        const solution = solveBalance(problem);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        expect(Math.max(...solution.loads_s)).toBeCloseTo(leastTimeByLp(fixed.length, fixed, fragments), 5);
      }),
      { seed: 31_007, numRuns: 40 },
    );
  }, 30_000);

  it('solves empty layers: no lasers, no parts, no fragments, no load', () => {
    expect(solveBalance({ laserCount: 0, fixed_s: [], parts: [] })).toMatchObject({ best_s: 0, cutParts: 0 });
    expect(solveBalance({ laserCount: 2, fixed_s: [0, 0], parts: [] }).loads_s).toEqual([0, 0]);
    const idle = wholeField(3, [0, 0]);
    expect(solveBalance(idle)).toMatchObject({ best_s: 0, setBy: 1, loads_s: [0, 0, 0], cutParts: 0 });
    const none = { ...idle, parts: [{ id: 'A', fixedLasers: 5, fragments: [] }] };
    expect(solveBalance(none)).toMatchObject({ cutParts: 1, cutsProven: true });
  });

  it('refuses negative loads and loads that are no number', () => {
    for (const load of [-1, Number.NaN, Infinity])
      expect(() => solveBalance(wholeField(2, [load]))).toThrow(/expected 0 or more/);
  });
});

describe('allocationIsFeasible', () => {
  const problem: BalanceProblem = {
    laserCount: 3,
    fixed_s: [1, 1, 0],
    parts: [{ id: 'A', fixedLasers: 0, fragments: [{ mask: 3, load_s: 4 }] }],
  };
  const good = solveBalance(problem);
  const withShares = (shares: number[]): BalanceSolution => ({ ...good, shares_s: [[shares]] });

  it('accepts a solution and says what is wrong with a spoilt one', () => {
    expect(allocationIsFeasible(problem, good)).toBeNull();
    expect(allocationIsFeasible(problem, withShares([5, -1, 0]))).toMatch(/share -1 s on laser 1/);
    expect(allocationIsFeasible(problem, withShares([2, 1, 1]))).toMatch(/laser 2 has a share/);
    expect(allocationIsFeasible(problem, withShares([2, 1, 0]))).toMatch(/add up to 3 s, expected 4 s/);
    expect(allocationIsFeasible(problem, withShares([4, 0, 0]))).toMatch(/its shares add up to 5 s/);
    expect(allocationIsFeasible(problem, { ...good, cutParts: 0 })).toMatch(/0 cut parts reported, 1 found/);
    expect(allocationIsFeasible(problem, { ...good, best_s: 2 })).toMatch(/more than the best possible/);
  });
});
