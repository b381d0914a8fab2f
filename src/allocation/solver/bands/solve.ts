/**
 * Balanced allocation where shared load always lies between two lasers and the bands join the lasers without a cycle, as
 * strips do. The time is the lower bound; the fewest cuts by dynamic programming (fewest.ts); then the flattest
 * loads: where those that divisible load would allow cost no further cut they are taken as they are, else the choice
 * found is improved (flatten.ts). Loads in seconds.
 */
import type { BalanceProblem, BalanceSolution } from '../../types';
import { boundOfReach } from '../bound';
import { flattestOfSets } from '../flattest';
import { RELATIVE_TIE, sizeOf } from '../sets';
import type { Budget } from '../tree';
import { fewestCuts, type FewestCuts } from './fewest';
import { forestOf, loadOfBand, type Forest } from './forest';
import { flatterChoice } from './flatter';
import { MOST_LASERS, readBands, type BandLayer } from './layer';
import { amountsOf, openUp, placeItems } from './place';
import { cutsFor, type Reach } from './reach';
import { shareOut } from './share';

/** Amounts closer than this part of the time are the same; a laser meets up to 11 bands. */
const SAME = RELATIVE_TIE / 50;

let to = new Int32Array(256);
const open_s = new Float64Array(MOST_LASERS);
const own_s = new Float64Array(MOST_LASERS);
const times_s = new Float64Array(MOST_LASERS);
const flat_s = new Float64Array(MOST_LASERS);
const flatCuts = new Int32Array(MOST_LASERS);
const treeCuts = new Int32Array(MOST_LASERS);

/** The flattest loads if every item could be divided at no cost. */
function goalOf(
  { lasers, bands, own_s: own, maskOf }: BandLayer,
  forest: Forest,
  time_s: number,
): Float64Array {
  let total_s = 0;
  for (let b = 0; b < bands; b++) total_s += open_s[b] = loadOfBand(forest, b);
  for (let k = 0; k < lasers; k++) total_s += own[k];
  if (total_s >= lasers * time_s * (1 - SAME)) return new Float64Array(lasers).fill(time_s);
  return flattestOfSets(own, lasers, maskOf, open_s, bands);
}

/** Takes the goal's amounts in every tree where they cost no further cut; the roots of the others (bits). */
function takeGoal(layer: BandLayer, reach: Reach, plan: FewestCuts, goal_s: Float64Array): number {
  const { forest } = reach;
  amountsOf(layer, forest, layer.own_s, open_s, goal_s, flat_s);
  treeCuts.fill(0, 0, layer.lasers);
  for (let b = 0; b < layer.bands; b++) {
    flatCuts[b] = cutsFor(reach, b, flat_s[b]);
    treeCuts[plan.rootOf[forest.child[b]]] += flatCuts[b];
  }
  let uneven = 0;
  for (let b = 0; b < layer.bands; b++) {
    const root = plan.rootOf[forest.child[b]];
    if (treeCuts[root] > plan.ofTree[root]) {
      uneven |= 1 << root;
      continue;
    }
    plan.amount_s[b] = flat_s[b];
    plan.cuts[b] = flatCuts[b];
  }
  return uneven;
}

function solutionOf(problem: BalanceProblem, layer: BandLayer, forest: Forest, tiny_s: number) {
  const { laserCount, parts, fixed_s } = problem;
  const none = Array.from({ length: laserCount }, () => 0);
  const shares_s: number[][][] = [];
  for (let p = 0; p < parts.length; p++) {
    const ofPart: number[][] = [];
    for (let f = 0; f < parts[p].fragments.length; f++) ofPart.push(none.slice());
    shares_s.push(ofPart);
  }
  const loads_s = fixed_s.slice(0, laserCount);
  const { used, settled, settledAt } = layer;
  const give = (p: number, f: number, k: number, load_s: number): void => {
    shares_s[p][f][k] += load_s;
    loads_s[k] += load_s;
    used[p] |= 1 << k;
  };
  for (let i = 0; i < settled; i++) {
    const [p, f] = [settledAt[2 * i], settledAt[2 * i + 1]];
    give(p, f, 31 - Math.clz32(parts[p].fragments[f].mask), parts[p].fragments[f].load_s);
  }
  shareOut(layer, forest, to, flat_s, tiny_s, give);
  let cutParts = 0;
  for (let p = 0; p < parts.length; p++) if (sizeOf(used[p]) > 1) cutParts++;
  return { loads_s, shares_s, cutParts };
}

/** The solution, parts taken in the order given; null where the layer is none of this kind. */
export function solveBands(
  problem: BalanceProblem,
  order: readonly number[],
  budget: Budget,
): BalanceSolution | null {
  const layer = readBands(problem, order);
  if (layer === null) return null;
  const bound = boundOfReach(layer.reach_s, layer.lasers);
  const forest = forestOf(layer);
  const tiny_s = bound.best_s * SAME;
  const search: Reach = {
    forest,
    itemLoad_s: layer.itemLoad_s,
    tiny_s,
    budget: { left: budget.left },
    exact: true,
  };
  const plan = fewestCuts(layer, search, times_s.fill(bound.best_s));
  if (plan === null) return null;
  let cutsProven = search.exact;
  const reach: Reach = { ...search, budget };
  const goal_s = goalOf(layer, forest, bound.best_s);
  const uneven = takeGoal(layer, reach, plan, goal_s);
  if (to.length < layer.items) to = new Int32Array(2 * layer.items);
  for (let b = 0; b < layer.bands; b++)
    cutsProven = placeItems(reach, b, plan.amount_s[b], plan.cuts[b], to) && cutsProven;
  if (uneven !== 0) flatterChoice(problem, order, layer, reach, plan, uneven, bound.best_s, to);
  openUp(layer, forest, to, own_s, open_s);
  const loads_s =
    uneven === 0 ? goal_s : flattestOfSets(own_s, layer.lasers, layer.maskOf, open_s, layer.bands);
  amountsOf(layer, forest, own_s, open_s, loads_s, flat_s);
  return { ...bound, ...solutionOf(problem, layer, forest, tiny_s), cutsProven };
}
