/**
 * The proven bound and the lasers that set it. Expected values: the optimum of the linear program by HiGHS (npm highs), and
 * the definition itself, every subset of lasers over the load that only it can take (mathematics: Hall's condition, 1935).
 * Seconds; a mask has bit k for laser k.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowerBound } from '../../../src/allocation/solver/bound';
import { imbalance } from '../../../src/allocation/solver/imbalance';
import { leastTimeByLp } from './lp';

const instance = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).chain((m) =>
    fc.record({
      fixed: fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: m, maxLength: m }),
      shared: fc.array(
        fc.record({
          mask: fc.integer({ min: 1, max: 2 ** m - 1 }),
          load_s: fc.integer({ min: 0, max: 5000 }),
        }),
        { maxLength: 30 },
      ),
    }),
  );

/** The definition itself: every subset, load that only it can take, over its size. [mathematics] */
function byDefinition(m: number, fixed: number[], shared: { mask: number; load_s: number }[]) {
  const members = (set: number) => fixed.map((_, k) => k).filter((k) => set & (1 << k));
  let best = { ratio: -1, set: [] as number[] };
  for (let set = 1; set < 2 ** m; set++) {
    const own = members(set).reduce((sum, k) => sum + fixed[k]!, 0);
    const only = shared.filter(({ mask }) => (mask | set) === set).reduce((sum, s) => sum + s.load_s, 0);
    const ratio = (own + only) / members(set).length;
    const tied = Math.abs(ratio - best.ratio) <= 1e-9 * best.ratio;
    const earlier =
      members(set).length < best.set.length ||
      (members(set).length === best.set.length && members(set).join(',') < best.set.join(','));
    if ((!tied && ratio > best.ratio) || (tied && earlier)) best = { ratio, set: members(set) };
  }
  return best;
}

describe('lowerBound', () => {
  it('is the optimum of the linear program, 2 to 12 lasers (HiGHS)', () => {
    fc.assert(
      fc.property(instance(2, 12), ({ fixed, shared }) => {
        const { best_s } = lowerBound(fixed.length, fixed, shared);
        expect(best_s).toBeCloseTo(leastTimeByLp(fixed.length, fixed, shared), 5);
      }),
      { seed: 20_261, numRuns: 60 },
    );
  });

  it('is the optimum of the linear program, 13 to 31 lasers (HiGHS)', () => {
    fc.assert(
      fc.property(instance(13, 31), ({ fixed, shared }) => {
        const { best_s } = lowerBound(fixed.length, fixed, shared);
        expect(best_s).toBeCloseTo(leastTimeByLp(fixed.length, fixed, shared), 5);
      }),
      { seed: 20_262, numRuns: 40 },
    );
  });

  it('names the smallest binding set, then the first by index (definition)', () => {
    const coarse = fc.integer({ min: 1, max: 4 }).chain((m) =>
      fc.record({
        fixed: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: m, maxLength: m }),
        shared: fc.array(
          fc.record({
            mask: fc.integer({ min: 1, max: 2 ** m - 1 }),
            load_s: fc.integer({ min: 1, max: 4 }),
          }),
          { maxLength: 5 },
        ),
      }),
    );
    fc.assert(
      fc.property(coarse, ({ fixed, shared }) => {
        const wanted = byDefinition(fixed.length, fixed, shared);
        const { best_s, setBy } = lowerBound(fixed.length, fixed, shared);
        const lasers = fixed.map((_, k) => k).filter((k) => setBy & (1 << k));
        expect(best_s).toBeCloseTo(wanted.ratio, 9);
        expect(lasers).toEqual(wanted.ratio > 0 ? wanted.set : [0]);
      }),
      { seed: 20_263, numRuns: 500 },
    );
  });

  it('finds the same set by flow as by subsets: idle lasers added beyond the twelfth change nothing', () => {
    fc.assert(
      fc.property(instance(2, 12), ({ fixed, shared }) => {
        fc.pre(fixed.some((f) => f > 0) || shared.some((s) => s.load_s > 0));
        const more = [...fixed, ...Array.from({ length: 13 }, () => 0)];
        const few = lowerBound(fixed.length, fixed, shared);
        const many = lowerBound(more.length, more, shared);
        expect(many.best_s).toBeCloseTo(few.best_s, 9);
        expect(many.setBy).toBe(few.setBy);
      }),
      { seed: 20_264, numRuns: 300 },
    );
  });

  it('judges ties relatively, at any scale', () => {
    for (const scale of [1e-6, 1, 1e6]) {
      const fixed = [3 * scale, 5 * scale * (1 + 1e-12), 5 * scale, 1 * scale];
      expect(lowerBound(4, fixed, []).setBy).toBe(0b0010);
      expect(lowerBound(4, [...fixed].reverse(), []).setBy).toBe(0b0010);
    }
  });

  it('is 0, set by the first laser, where all loads are zero; 0 set by none where no laser is on', () => {
    expect(lowerBound(3, [0, 0, 0], [{ mask: 0b110, load_s: 0 }])).toEqual({ best_s: 0, setBy: 1 });
    expect(
      lowerBound(
        20,
        Array.from({ length: 20 }, () => 0),
        [],
      ),
    ).toEqual({ best_s: 0, setBy: 1 });
    expect(lowerBound(0, [], [])).toEqual({ best_s: 0, setBy: 0 });
  });

  it('refuses a set without lasers and a laser that does not exist', () => {
    expect(() => lowerBound(2, [0, 0], [{ mask: 0, load_s: 1 }])).toThrow(/expected 1 to 3/);
    expect(() => lowerBound(2, [0, 0], [{ mask: 4, load_s: 1 }])).toThrow(/expected 1 to 3/);
    expect(() => lowerBound(32, [], [])).toThrow(/0 to 31/);
  });
});

describe('imbalance', () => {
  it('reaches lasers − 1 where one laser does everything, and is 0 where all are equal or nothing is done', () => {
    expect(imbalance([8, 0, 0, 0])).toBe(3);
    expect(imbalance([2, 2, 2])).toBe(0);
    expect(imbalance([0, 0])).toBe(0);
    expect(imbalance([])).toBe(0);
  });

  it('lies between 0 and lasers − 1 (mathematics)', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 1e6 }), { minLength: 1, maxLength: 31 }), (loads) => {
        expect(imbalance(loads)).toBeGreaterThanOrEqual(-1e-12);
        expect(imbalance(loads)).toBeLessThanOrEqual(loads.length - 1 + 1e-9);
      }),
      { seed: 20_265, numRuns: 200 },
    );
  });
});
