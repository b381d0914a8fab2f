/**
 * Balanced allocation of one layer: the exact minimum of the slowest laser's load, among those the fewest cut parts, then
 * the flattest loads; ties by part id. Loads in seconds. The time is the lower bound itself (bound.ts), reached because
 * shared load may be divided. Bands between two lasers each, without a cycle, decompose (bands/solve.ts). Else groups of
 * lasers that share nothing are solved apart, and within a group: which parts
 * are cut (cuts.ts), flatter choices with as few (flatten.ts), then every fragment's lasers (shares.ts). Loads are
 * equal within 1e-9 of the time.
 */
import type { BalanceProblem, BalanceSolution } from '../types';
import { solveBands } from './bands/solve';
import { lowerBound } from './bound';
import { fewestCuts } from './cuts';
import { flatten, loadsOf } from './flatten';
import { byMaskOf, orderOf, partOut, type Fragment, type Group } from './groups';
import { RELATIVE_TIE, requireLaserCount, sizeOf } from './sets';
import { divideAll, divideByFlow, divisible, type Give } from './shares';
import { slackOf, watchedSets } from './slack';
import type { Budget } from './tree';

/** How much the solver may try. */
export interface BalanceOptions {
  /** How long to search for fewer cuts and flatter loads: sets of lasers looked at. More proves more. */
  readonly work?: number;
}
/** 0.1 to 0.4 ms as measured where it is used up; a search that cannot end takes less (cuts.ts, flatten.ts). */
const DEFAULT_WORK = 40_000;

/** All load as divisible, up to a target per laser: where the sets of lasers are too many to watch. */
function fillByFlow(
  { fixed_s }: Group,
  targets_s: Float64Array,
  all: readonly Fragment[],
  best_s: number,
  give: Give,
): void {
  const room_s = fixed_s.map((own, k) => Math.max(0, targets_s[k]! - own));
  divideByFlow(room_s, all, best_s, give);
}

/** Solves one group; true where its number of cuts is proven the fewest. */
function solveGroup(
  group: Group,
  fixedLasers: FixedLasers,
  best_s: number,
  budget: Budget,
  give: Give,
): boolean {
  const all = [...group.free, ...group.decisions.flatMap(({ fragments }) => fragments)];
  if (all.length === 0) return true;
  const loads = byMaskOf(all);
  const sets = watchedSets(group.lasers.length, [...loads.keys()]);
  const tiny_s = best_s * RELATIVE_TIE;
  const open = new Int32Array(group.decisions.length).fill(-1);
  if (sets === null) {
    fillByFlow(group, loadsOf(group, open), all, best_s, give);
    return group.decisions.length === 0;
  }
  const slack = slackOf(
    sets,
    group.fixed_s.map((own) => best_s - own),
    loads,
    tiny_s,
  );
  const plan = fewestCuts(slack, group, loads, budget);
  const { laserOf, loads_s } = flatten(slack, group, loads, budget, plan);
  const room_s = group.fixed_s.map((own, k) => loads_s[k]! - own);
  group.decisions.forEach(({ fragments }, i) => {
    const k = laserOf[i]!;
    if (k < 0) return;
    for (const fragment of fragments) {
      give(fragment, k, fragment.load_s);
      room_s[k]! -= fragment.load_s;
    }
  });
  const rest = divisible(group, laserOf);
  if (rest.length > 0) divideAll(sets, room_s, rest, fixedLasers(group, rest), tiny_s, give);
  return plan.proven;
}

/** Part → lasers of the group that hold a fixed fragment of it. */
type FixedLasers = (group: Group, rest: readonly Fragment[]) => Map<number, number>;

/**
 * Divides a layer's shared load. Feasible by allocationIsFeasible (check.ts); the slowest laser works best_s (1e-9).
 * An empty problem is solved by zeros. Deterministic. Throws where a set names no laser or a load is negative.
 */
export function solveBalance(problem: BalanceProblem, options: BalanceOptions = {}): BalanceSolution {
  const { laserCount, parts } = problem;
  requireLaserCount(laserCount);
  const order = orderOf(parts);
  const budget = { left: options.work ?? DEFAULT_WORK };
  return solveBands(problem, order, budget) ?? solveGeneral(problem, order, budget);
}

/** Sets of any lasers, joined in any way. */
function solveGeneral(problem: BalanceProblem, order: readonly number[], budget: Budget): BalanceSolution {
  const { laserCount, fixed_s, parts } = problem;
  const bound = lowerBound(
    laserCount,
    fixed_s,
    order.flatMap((p) => parts[p]!.fragments),
  );
  const none = Array.from({ length: laserCount }, () => 0);
  const shares_s = parts.map(({ fragments }) => fragments.map(() => none.slice()));
  const used = parts.map((part) => part.fixedLasers);
  const { groups, settled, settled_s } = partOut(problem, order);
  const loads_s = [...settled_s];
  const settle = (part: number, fragment: number, laser: number, load_s: number): void => {
    shares_s[part]![fragment]![laser]! += load_s;
    used[part]! |= 1 << laser;
  };
  for (const { part, fragment, mask, load_s } of settled)
    settle(part, fragment, 31 - Math.clz32(mask), load_s);
  const heldIn: FixedLasers = ({ lasers }, rest) =>
    new Map(
      rest.map(({ part }) => [part, lasers.reduce((set, k, i) => set | (((used[part]! >>> k) & 1) << i), 0)]),
    );
  let cutsProven = true;
  for (const group of groups) {
    const proven = solveGroup(group, heldIn, bound.best_s, budget, ({ part, fragment }, k, load_s) => {
      settle(part, fragment, group.lasers[k]!, load_s);
      loads_s[group.lasers[k]!]! += load_s;
    });
    cutsProven &&= proven;
  }
  const cutParts = used.reduce((n, lasers) => (sizeOf(lasers) > 1 ? n + 1 : n), 0);
  return { ...bound, loads_s, shares_s, cutParts, cutsProven };
}
