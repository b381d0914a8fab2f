/**
 * Whole parts over all stretches of a build. Expected values: the best of every choice with the exposure by its definition
 * (mathematics), and the mixed-integer program that HiGHS (npm highs) solves for larger builds. Seconds, layers as counts;
 * a mask has bit k for laser k.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveWhole } from '../../../src/allocation/solver/whole';
import type { WholeProblem } from '../../../src/allocation/types';
import { leastExposureByMip } from './lp';

const builds = (lasers: number, stretches: number, parts: number, shared: number, most: number) =>
  fc
    .record({ m: fc.integer({ min: 1, max: lasers }), n: fc.integer({ min: 1, max: stretches }) })
    .chain(({ m, n }) => {
      const loads = (length: number) =>
        fc.array(fc.integer({ min: 0, max: most }), { minLength: length, maxLength: length });
      const mask = fc.integer({ min: 1, max: 2 ** m - 1 });
      return fc.record({
        laserCount: fc.constant(m),
        layers: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: n, maxLength: n }),
        fixed_s: fc.array(loads(m), { minLength: n, maxLength: n }),
        shared: fc.array(
          fc.array(fc.record({ mask, load_s: fc.integer({ min: 0, max: most }) }), { maxLength: shared }),
          { minLength: n, maxLength: n },
        ),
        parts: fc
          .array(fc.record({ mask, loads_s: loads(n) }), { maxLength: parts })
          .map((list) => list.map((part, i) => ({ ...part, id: `P${String(i).padStart(2, '0')}` }))),
      });
    });

/** Exposure of a build by the definition: every subset of lasers in every stretch. [mathematics] */
function exposureByDefinition(problem: WholeProblem, laserOf: readonly number[]): number {
  let sum = 0;
  problem.layers.forEach((count, s) => {
    let most = 0;
    for (let set = 1; set < 2 ** problem.laserCount; set++) {
      const inside = (k: number) => (set >>> k) % 2 === 1;
      const size = problem.fixed_s[s]!.filter((_, k) => inside(k)).length;
      let load = problem.fixed_s[s]!.reduce((all, own, k) => all + (inside(k) ? own : 0), 0);
      laserOf.forEach((k, p) => (load += inside(k) ? problem.parts[p]!.loads_s[s]! : 0));
      for (const { mask, load_s } of problem.shared[s]!) if ((mask | set) === set) load += load_s;
      most = Math.max(most, load / size);
    }
    sum += count * most;
  });
  return sum;
}

/** Every way to give each part one of its lasers. */
function everyChoice(problem: WholeProblem): number[][] {
  return problem.parts.reduce<number[][]>(
    (choices, { mask }) =>
      choices.flatMap((choice) =>
        Array.from({ length: problem.laserCount }, (_, k) => k)
          .filter((k) => (mask >>> k) % 2 === 1)
          .map((k) => [...choice, k]),
      ),
    [[]],
  );
}

/** Loads of every stretch from the bottom, each from the slowest laser down (nothing shared). */
const fallingLoads = (problem: WholeProblem, laserOf: readonly number[]): number[] =>
  problem.fixed_s.flatMap((fixed, s) => {
    const loads = [...fixed];
    laserOf.forEach((k, p) => (loads[k]! += problem.parts[p]!.loads_s[s]!));
    return loads.sort((a, b) => b - a);
  });

const lexicographic = (a: readonly number[], b: readonly number[]): number =>
  a.map((x, i) => x - b[i]!).find((difference) => Math.abs(difference) > 1e-9) ?? 0;

describe('solveWhole', () => {
  it('is the best of all choices (all of them tried, exposure by its definition)', () => {
    fc.assert(
      fc.property(builds(3, 3, 6, 3, 20), (problem) => {
        const solution = solveWhole(problem);
        const least = Math.min(
          ...everyChoice(problem).map((choice) => exposureByDefinition(problem, choice)),
        );
        expect(solution.exposure_s).toBeCloseTo(least, 9);
        expect(exposureByDefinition(problem, solution.laserOf)).toBeCloseTo(least, 9);
        expect(solution.proven).toBe(true);
        solution.laserOf.forEach((k, p) => expect((problem.parts[p]!.mask >>> k) % 2).toBe(1));
      }),
      { seed: 41_001, numRuns: 150 },
    );
  }, 30_000);

  it('is as short as the mixed-integer program wherever it says proven, and never shorter (HiGHS)', () => {
    fc.assert(
      fc.property(builds(4, 3, 11, 3, 60), (problem) => {
        const solution = solveWhole(problem);
        const least = leastExposureByMip(problem);
        expect(solution.exposure_s - least).toBeGreaterThan(-1e-5);
        expect(solution.proven && solution.exposure_s - least > 1e-5).toBe(false);
      }),
      { seed: 41_002, numRuns: 40 },
    );
  }, 30_000);

  it('has the flattest loads of all equally short builds, stretch by stretch from the bottom (all tried)', () => {
    fc.assert(
      fc.property(builds(3, 2, 6, 0, 9), (problem) => {
        const { laserOf, exposure_s } = solveWhole(problem);
        const flattest = everyChoice(problem)
          .filter((choice) => exposureByDefinition(problem, choice) <= exposure_s + 1e-9)
          .map((choice) => fallingLoads(problem, choice))
          .sort(lexicographic)[0]!;
        expect(fallingLoads(problem, laserOf)).toEqual(flattest);
      }),
      { seed: 41_003, numRuns: 150 },
    );
  }, 30_000);

  it('keeps a tall part alone where low parts can go elsewhere: stretches are weighed by their layers', () => {
    const part = (id: string, ...loads_s: number[]) => ({ id, mask: 3, loads_s });
    const problem: WholeProblem = {
      laserCount: 2,
      layers: [100, 900],
      fixed_s: [
        [0, 0],
        [0, 0],
      ],
      shared: [[], []],
      parts: [part('A', 10, 10), part('B', 10, 10), part('C', 8, 0), part('D', 8, 0)],
    };
    const { laserOf, exposure_s, proven } = solveWhole(problem);
    expect(laserOf[0]).not.toBe(laserOf[1]);
    expect([exposure_s, proven]).toEqual([100 * 18 + 900 * 10, true]);
  });

  it('chooses the same when the parts come in another order', () => {
    fc.assert(
      fc.property(builds(4, 3, 14, 2, 50), (problem) => {
        const there = solveWhole(problem);
        const back = solveWhole({ ...problem, parts: [...problem.parts].reverse() });
        expect([...back.laserOf].reverse()).toEqual(there.laserOf);
      }),
      { seed: 41_004, numRuns: 40 },
    );
  }, 30_000);

  it('stays within 1 % of the bound on 100 parts, 4 lasers, 1 stretch (mean load cannot be beaten)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 500, max: 9000 }), { minLength: 100, maxLength: 100 }),
        (loads) => {
          const parts = loads.map((load, i) => ({ id: `P${i}`, mask: 15, loads_s: [load] }));
          const problem = { laserCount: 4, layers: [1], fixed_s: [[0, 0, 0, 0]], shared: [[]], parts };
          const mean = loads.reduce((a, b) => a + b, 0) / 4;
          expect(solveWhole(problem).exposure_s / mean).toBeLessThan(1.01);
        },
      ),
      { seed: 41_005, numRuns: 10 },
    );
  }, 30_000);

  it('solves builds without parts, stretches or load', () => {
    expect(solveWhole({ laserCount: 2, layers: [], fixed_s: [], shared: [], parts: [] })).toEqual({
      laserOf: [],
      exposure_s: 0,
      proven: true,
    });
    const idle = { laserCount: 2, layers: [5], fixed_s: [[0, 0]], shared: [[]] };
    expect(solveWhole({ ...idle, parts: [{ id: 'A', mask: 2, loads_s: [0] }] })).toEqual({
      laserOf: [1],
      exposure_s: 0,
      proven: true,
    });
    expect(
      solveWhole({ laserCount: 0, layers: [3], fixed_s: [[]], shared: [[]], parts: [] }).exposure_s,
    ).toBe(0);
  });

  it('refuses a part without a laser, or with loads for other stretches', () => {
    const one = { laserCount: 2, layers: [1], fixed_s: [[0, 0]], shared: [[]] };
    expect(() => solveWhole({ ...one, parts: [{ id: 'A', mask: 0, loads_s: [1] }] })).toThrow(
      /expected 1 to 3/,
    );
    expect(() => solveWhole({ ...one, parts: [{ id: 'A', mask: 1, loads_s: [] }] })).toThrow(/expected 1/);
    expect(() => solveWhole({ ...one, parts: [{ id: 'A', mask: 1, loads_s: [-1] }] })).toThrow(/0 or more/);
  });
});
