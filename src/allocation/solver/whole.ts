/**
 * One laser per part for a whole build: the least Σ layers × exposure (seconds), exposure of a stretch being the slowest
 * laser's load, or, with load that stays divisible, max over sets S of (own load of S + shared load that only S can
 * take)/|S|. Among equal builds the flattest loads: every stretch's loads sorted from the slowest laser down and
 * compared lexicographically, stretch by stretch from the bottom; ties by part id. Unrelated to height one such
 * stretch is the schedule P||Cmax with eligible machines, which is hard: a good choice is searched for
 * (wholeSearch.ts) and then proven, as far as a budget of work reaches (wholeProof.ts).
 */
import type { WholeProblem, WholeSolution } from '../types';
import { lowerBound } from './bound';
import { orderOf } from './groups';
import { requireLaserCount, requireMask } from './sets';
import { prove, rootOf } from './wholeProof';
import { searchWhole } from './wholeSearch';
import { emptyState } from './wholeState';

/** How much the solver may try. */
export interface WholeOptions {
  /** How long to search and to prove, as a multiple of the usual. */
  readonly effort?: number;
}
/** Evaluations of one stretch: a share for every build, and more with parts × stretches. */
const EVALUATIONS = 12_000;
const EVALUATIONS_PER_LOAD = 350;
/** Sets visited by the proof. */
const PROOF = 60_000;

function requireProblem({ laserCount, parts, layers, fixed_s, shared }: WholeProblem): void {
  requireLaserCount(laserCount);
  for (const part of parts) {
    requireMask(part.mask, laserCount);
    if (part.loads_s.length !== layers.length)
      throw new RangeError(`part ${part.id}: ${part.loads_s.length} loads, expected ${layers.length}`);
    const bad = part.loads_s.find((load) => !(load >= 0 && load < Infinity));
    if (bad !== undefined) throw new RangeError(`part ${part.id}: load ${bad} s, expected 0 or more, finite`);
  }
  if (fixed_s.length !== layers.length || shared.length !== layers.length)
    throw new RangeError(
      `loads of ${fixed_s.length} and ${shared.length} stretches, expected ${layers.length}`,
    );
  for (const { mask } of shared.flat()) requireMask(mask, laserCount);
}

/** Exposure of the build by the lower bound of every stretch, which divisible load reaches. */
function exposureOf(problem: WholeProblem, laserOf: readonly number[]): number {
  return problem.layers.reduce((sum, count, s) => {
    const own = problem.fixed_s[s]!.slice();
    laserOf.forEach((k, p) => (own[k]! += problem.parts[p]!.loads_s[s]!));
    return sum + count * lowerBound(problem.laserCount, own, problem.shared[s]!).best_s;
  }, 0);
}

/**
 * Chooses a laser for every part. `proven`: no choice has less exposure (by 1e-9); the flattest of equal builds is found
 * where the proof's second pass ends within its budget. Deterministic; another order of the parts gives the same
 * choice. Throws where a part has no laser it may be on, or loads do not match the stretches.
 */
export function solveWhole(problem: WholeProblem, options: WholeOptions = {}): WholeSolution {
  requireProblem(problem);
  const order = orderOf(problem.parts);
  const sorted = { ...problem, parts: order.map((p) => problem.parts[p]!) };
  const effort = options.effort ?? 1;
  const state = emptyState(sorted);
  const loads = sorted.parts.length * sorted.layers.length;
  const root = rootOf(state);
  const found = searchWhole(state, root, effort * (EVALUATIONS + EVALUATIONS_PER_LOAD * loads));
  const { best, proven } = prove(state, found, root.bound_s, { left: effort * PROOF });
  const laserOf = sorted.parts.map(() => 0);
  order.forEach((p, i) => (laserOf[p] = best.laserOf[i]!));
  return { laserOf, exposure_s: exposureOf(problem, laserOf), proven };
}
