/**
 * Layers whose shared bands form trees of lasers. Expected values: HiGHS (npm highs) on the same layer as a linear and a
 * mixed-integer program, and every choice tried one by one with Hall's condition (1935); the general solver is compared with,
 * never taken as right by itself. Seconds; a mask has bit k for laser k.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveBalance } from '../../../../src/allocation/solver/balance';
import { solveBands } from '../../../../src/allocation/solver/bands/solve';
import { allocationIsFeasible } from '../../../../src/allocation/solver/check';
import { orderOf } from '../../../../src/allocation/solver/groups';
import type { BalanceProblem, SharedPart } from '../../../../src/allocation/types';
import { fewestCutsByMip, flattestByMip, leastTimeByLp } from '../lp';

/** Laser → the laser it shares a band with; a chain where each takes the one before it, else any tree. */
const joined = (m: number, chain: boolean) =>
  fc.tuple(
    ...Array.from({ length: m - 1 }, (_, k) => (chain ? fc.constant(k) : fc.integer({ min: 0, max: k }))),
  );

/** Random layers of bands: parts bound to one side, free to choose, or cut already; integers so that exact fits happen. */
const layers = (most: { lasers: number; parts: number; load: number }, chain: boolean) =>
  fc.integer({ min: 2, max: most.lasers }).chain((m) =>
    joined(m, chain).chain((other) => {
      const band = fc.integer({ min: 1, max: m - 1 }).map((k) => [k, other[k - 1]] as const);
      const part = band.chain(([a, b]) => {
        const mask = (1 << a) | (1 << b);
        return fc.record({
          fixedLasers: fc.constantFrom(0, 1 << a, 1 << b, 1 << a, 1 << b, mask, 1),
          fragments: fc.array(
            fc.record({
              mask: fc.constantFrom(mask, mask, mask, 1 << a),
              load_s: fc.integer({ min: 0, max: most.load }),
            }),
            { minLength: 1, maxLength: 2 },
          ),
        });
      });
      return fc.record({
        laserCount: fc.constant(m),
        fixed_s: fc.array(fc.integer({ min: 0, max: 2 * most.load }), { minLength: m, maxLength: m }),
        parts: fc
          .array(part, { maxLength: most.parts })
          .map((list) => list.map((p, i) => ({ ...p, id: `P${String(i).padStart(2, '0')}` }))),
      });
    }),
  );

const asBands = (problem: BalanceProblem, work = 1_000_000) => {
  const solution = solveBands(problem, orderOf(problem.parts), { left: work });
  if (solution === null) throw new Error('not read as bands');
  return solution;
};

/** Fewest cut parts by trying every choice: each part whole on a laser, or divisible; feasible by Hall's condition (1935). */
function fewestByTrying(problem: BalanceProblem, time: number): number {
  const { laserCount, parts, fixed_s } = problem;
  const reach = fixed_s.map((load, k) => ({ mask: 1 << k, load }));
  const fits = (loads: readonly { mask: number; load: number }[]): boolean => {
    for (let set = 1; set < 1 << laserCount; set++) {
      const lasers = [...set.toString(2)].filter((bit) => bit === '1').length;
      const sum = loads.reduce((s, { mask, load }) => ((mask & ~set) === 0 ? s + load : s), 0);
      if (sum > lasers * time * (1 + 1e-9)) return false;
    }
    return true;
  };
  let best = Infinity;
  const walk = (p: number, loads: readonly { mask: number; load: number }[], cuts: number): void => {
    if (cuts >= best) return;
    if (p === parts.length) {
      if (fits(loads)) best = cuts;
      return;
    }
    const part = parts[p];
    const busy = part.fragments.filter((f) => f.load_s > 0);
    for (let k = 0; k < laserCount; k++) {
      const whole = busy.map((f) => ({ mask: 1 << k, load: f.load_s }));
      if (busy.every((f) => (f.mask >>> k) & 1) && (part.fixedLasers & ~(1 << k)) === 0)
        walk(p + 1, [...loads, ...whole], cuts);
    }
    walk(
      p + 1,
      [...loads, ...busy.map((f) => ({ mask: f.mask, load: f.load_s }))],
      cuts + (busy.length > 0 || (part.fixedLasers & (part.fixedLasers - 1)) !== 0 ? 1 : 0),
    );
  };
  walk(0, reach, 0);
  return best;
}

const falling = (loads: readonly number[]) => [...loads].sort((a, b) => b - a);
const random = (seed: number) => {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647; // Park and Miller 1988
};

describe('solveBands', () => {
  it('cuts as few parts as any of all choices, on chains (every choice tried)', () => {
    fc.assert(
      fc.property(layers({ lasers: 4, parts: 7, load: 12 }, true), (problem) => {
        const solution = asBands(problem);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        expect([solution.cutParts, solution.cutsProven]).toEqual([
          fewestByTrying(problem, solution.best_s),
          true,
        ]);
      }),
      { seed: 32_001, numRuns: 300 },
    );
  }, 30_000);

  it('cuts the fewest parts on trees of lasers (HiGHS, mixed-integer)', () => {
    fc.assert(
      fc.property(layers({ lasers: 6, parts: 14, load: 30 }, false), (problem) => {
        const solution = asBands(problem);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
        expect([solution.cutParts, solution.cutsProven]).toEqual([fewest, true]);
      }),
      { seed: 32_002, numRuns: 150 },
    );
  }, 30_000);

  it('never claims a proof where fewer cuts are possible, with little budget or none (HiGHS, mixed-integer)', () => {
    fc.assert(
      fc.property(
        layers({ lasers: 4, parts: 10, load: 12 }, true),
        fc.constantFrom(0, 3, 10, 40),
        (problem, work) => {
          const solution = asBands(problem, work);
          expect(allocationIsFeasible(problem, solution)).toBeNull();
          const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
          expect(solution.cutParts).toBeGreaterThanOrEqual(fewest);
          expect(solution.cutsProven && solution.cutParts > fewest).toBe(false);
        },
      ),
      { seed: 32_003, numRuns: 120 },
    );
  }, 30_000);

  it('claims no proof where choosers would fit whole and the search for them was cut short (HiGHS, mixed-integer)', () => {
    const choosers = fc.record({
      fixed: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 3 }),
      loads: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 6, maxLength: 12 }),
      work: fc.constantFrom(0, 2, 5, 15),
    });
    fc.assert(
      fc.property(choosers, ({ fixed, loads, work }) => {
        const parts = loads.map((load_s, i) => ({
          id: `P${String(i).padStart(2, '0')}`,
          fixedLasers: 0,
          fragments: [{ mask: i % 2 === 0 ? 3 : 6, load_s }],
        }));
        const problem = { laserCount: 3, fixed_s: fixed, parts };
        const solution = asBands(problem, work);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
        expect(solution.cutsProven && solution.cutParts > fewest).toBe(false);
        const searched = asBands(problem);
        expect([searched.cutParts, searched.cutsProven]).toEqual([fewest, true]);
      }),
      { seed: 32_007, numRuns: 150 },
    );
  }, 30_000);

  it('spends cuts where they relieve a laser in the middle of others most, time to spare (HiGHS, mixed-integer)', () => {
    const side = fc.record({
      own: fc.integer({ min: 0, max: 40 }),
      loads: fc.array(fc.integer({ min: 1, max: 15 }), { minLength: 1, maxLength: 4 }),
    });
    fc.assert(
      fc.property(
        fc.array(side, { minLength: 2, maxLength: 4 }),
        fc.integer({ min: 20, max: 70 }),
        (sides, slowest) => {
          // laser 0 is in the middle and holds a piece of every part; the last laser shares nothing and sets the time
          const parts = sides.flatMap(({ loads }, s) =>
            loads.map((load_s, i) => ({
              id: `P${s}${i}`,
              fixedLasers: 1,
              fragments: [{ mask: 1 | (2 << s), load_s }],
            })),
          );
          const fixed_s = [10, ...sides.map(({ own }) => own), slowest];
          const problem = { laserCount: fixed_s.length, fixed_s, parts };
          const solution = asBands(problem);
          expect(allocationIsFeasible(problem, solution)).toBeNull();
          const fewest = fewestCutsByMip(problem, solution.best_s + 1e-7);
          expect([solution.cutParts, solution.cutsProven]).toEqual([fewest, true]);
        },
      ),
      { seed: 32_008, numRuns: 150 },
    );
  }, 30_000);

  it('reaches the optimum of the linear program on chains of up to 12 lasers (HiGHS)', () => {
    fc.assert(
      fc.property(layers({ lasers: 12, parts: 60, load: 900 }, true), (problem) => {
        const solution = asBands(problem);
        expect(allocationIsFeasible(problem, solution)).toBeNull();
        const least = leastTimeByLp(
          problem.laserCount,
          problem.fixed_s,
          problem.parts.flatMap((p) => p.fragments),
        );
        expect(Math.max(...solution.loads_s)).toBeCloseTo(least, 5);
      }),
      { seed: 32_004, numRuns: 80 },
    );
  }, 30_000);

  it('has the flattest loads among the fewest cuts on small layers (HiGHS, mixed-integer)', () => {
    fc.assert(
      fc.property(layers({ lasers: 4, parts: 7, load: 12 }, false), (problem) => {
        const solution = asBands(problem);
        const wanted = flattestByMip(problem, solution.cutParts);
        falling(solution.loads_s).forEach((load, j) => expect(load).toBeCloseTo(wanted[j], 4));
      }),
      { seed: 32_005, numRuns: 80 },
    );
  }, 30_000);

  it('proves the fewest cuts of eight strips with eighty parts, and they are the fewest (HiGHS, mixed-integer)', () => {
    for (const seed of [1, 2, 3]) {
      const next = random(seed);
      const parts = Array.from({ length: 80 }, (_, i): SharedPart => {
        const k = Math.floor(next() * 7);
        const sides = [1 << k, 1 << k, 2 << k, 3 << k];
        return {
          id: `P${String(i).padStart(2, '0')}`,
          fixedLasers: sides[Math.floor(next() * 4)],
          fragments: [{ mask: 3 << k, load_s: 0.5 + 3 * next() }],
        };
      });
      const problem = { laserCount: 8, fixed_s: Array.from({ length: 8 }, () => 15 + 20 * next()), parts };
      const solution = solveBalance(problem);
      expect(allocationIsFeasible(problem, solution)).toBeNull();
      const fewest = fewestCutsByMip(problem, solution.best_s * (1 + 1e-9));
      expect([solution.cutParts, solution.cutsProven]).toEqual([fewest, true]);
    }
  }, 30_000);

  it('leaves what is no band to the general solver: a set of three, a cycle, a part between two bands, bad loads', () => {
    const layerOf = (masks: readonly number[][], load_s = 1): BalanceProblem => ({
      laserCount: 3,
      fixed_s: [0, 0, 0],
      parts: masks.map((list, i) => ({
        id: `P${i}`,
        fixedLasers: 0,
        fragments: list.map((mask) => ({ mask, load_s })),
      })),
    });
    const read = (problem: BalanceProblem) => solveBands(problem, orderOf(problem.parts), { left: 1000 });
    expect(read(layerOf([[3], [6]]))).not.toBeNull();
    expect(read(layerOf([[7]]))).toBeNull();
    expect(read(layerOf([[3], [6], [5]]))).toBeNull();
    expect(read(layerOf([[3, 6]]))).toBeNull();
    expect(read(layerOf([[3]], -1))).toBeNull();
    expect(read(layerOf([[8]]))).toBeNull();
  });

  it('answers the same after other layers of any size, and when the parts come in another order', () => {
    fc.assert(
      fc.property(
        layers({ lasers: 5, parts: 20, load: 20 }, false),
        layers({ lasers: 12, parts: 400, load: 9 }, true),
        (problem, between) => {
          const there = asBands(problem);
          asBands(between);
          expect(asBands(problem)).toEqual(there);
          const back = asBands({ ...problem, parts: [...problem.parts].reverse() });
          expect([...back.shares_s].reverse()).toEqual(there.shares_s);
        },
      ),
      { seed: 32_006, numRuns: 100 },
    );
  }, 30_000);
});
