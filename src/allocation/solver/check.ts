/**
 * Holds a balanced allocation against its problem, in seconds: every share at least 0 and on a laser that may take it,
 * every fragment given out in full, every laser's load the sum of what it was given. Part of the engine, so that
 * tests and screens ask the same question.
 */
import type { BalanceProblem, BalanceSolution } from '../types';
import { RELATIVE_TIE } from './sets';

const differs = (a: number, b: number, scale: number): boolean => !(Math.abs(a - b) <= scale * RELATIVE_TIE);

/** What is wrong with a fragment's shares, null where nothing is. */
function faultOfShares(
  mask: number,
  load_s: number,
  shares: readonly number[],
  where: string,
): string | null {
  const bad = shares.findIndex((share) => !(share >= 0));
  if (bad >= 0) return `${where}: share ${shares[bad]} s on laser ${bad}, expected 0 or more`;
  const foreign = shares.findIndex((share, k) => share > 0 && ((mask >>> k) & 1) === 0);
  if (foreign >= 0) return `${where}: laser ${foreign} has a share, but may not take it`;
  const sum = shares.reduce((a, b) => a + b, 0);
  return differs(sum, load_s, load_s) ? `${where}: shares add up to ${sum} s, expected ${load_s} s` : null;
}

/** Null where the solution is a feasible answer to the problem; otherwise the first thing that is wrong. */
export function allocationIsFeasible(problem: BalanceProblem, solution: BalanceSolution): string | null {
  const loads = problem.fixed_s.slice(0, problem.laserCount);
  let cutParts = 0;
  for (const [p, part] of problem.parts.entries()) {
    let used = part.fixedLasers;
    for (const [f, { mask, load_s }] of part.fragments.entries()) {
      const shares = solution.shares_s[p]?.[f] ?? [];
      const fault = faultOfShares(mask, load_s, shares, `part ${part.id}, fragment ${f}`);
      if (fault !== null) return fault;
      shares.forEach((share, k) => {
        loads[k]! += share;
        if (share > 0) used |= 1 << k;
      });
    }
    if ((used & (used - 1)) !== 0) cutParts++;
  }
  for (const [k, load] of loads.entries())
    if (differs(load, solution.loads_s[k] ?? NaN, Math.max(...loads)))
      return `laser ${k}: load ${solution.loads_s[k]} s, but its shares add up to ${load} s`;
  const slowest = Math.max(0, ...loads);
  if (slowest > solution.best_s * (1 + 2 * RELATIVE_TIE))
    return `slowest laser ${slowest} s, more than the best possible ${solution.best_s} s`;
  if (cutParts !== solution.cutParts) return `${solution.cutParts} cut parts reported, ${cutParts} found`;
  return null;
}
