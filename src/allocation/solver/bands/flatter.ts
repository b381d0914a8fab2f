/**
 * Flatter loads at the same number of cuts, for trees of bands where the flattest that divisible load allows would cost
 * further cuts: the choice is handed to the general improvement and search (flatten.ts) and read back. Seconds.
 */
import type { BalanceProblem } from '../../types';
import { flatten } from '../flatten';
import { byMaskOf, partOut, type Group } from '../groups';
import { lowestOf, RELATIVE_TIE } from '../sets';
import { slackOf, watchedSets } from '../slack';
import type { Budget } from '../tree';
import type { FewestCuts } from './fewest';
import type { BandLayer } from './layer';
import { CUT } from './place';
import type { Reach } from './reach';
import { lowerLevels } from './levels';

/** So few items are searched through to the end besides. */
const FEW_ITEMS = 7;

function countItems({ items, itemBand, maskOf }: BandLayer, { rootOf }: FewestCuts, root: number): number {
  let count = 0;
  for (let i = 0; i < items; i++) if (rootOf[lowestOf(maskOf[itemBand[i]])] === root) count++;
  return count;
}

/** Part → item. */
function itemsByPart({ items, itemPart }: BandLayer): Map<number, number> {
  const out = new Map<number, number>();
  for (let i = 0; i < items; i++) out.set(itemPart[i], i);
  return out;
}

function flattenGroup(
  group: Group,
  itemOf: ReadonlyMap<number, number>,
  cuts: number,
  time_s: number,
  budget: Budget,
  to: Int32Array,
): void {
  const loads = byMaskOf([...group.free, ...group.decisions.flatMap(({ fragments }) => fragments)]);
  const sets = watchedSets(group.lasers.length, [...loads.keys()]);
  if (sets === null) return;
  const room_s = group.fixed_s.map((own) => time_s - own);
  const slack = slackOf(sets, room_s, loads, time_s * RELATIVE_TIE);
  const items = group.decisions.map(({ fragments }) => itemOf.get(fragments[0].part)!);
  const laserOf = Int32Array.from(items, (i) => (to[i] === CUT ? -1 : group.lasers.indexOf(to[i])));
  const flat = flatten(slack, group, loads, budget, { laserOf, cuts });
  items.forEach((item, d) => (to[item] = flat.laserOf[d] < 0 ? CUT : group.lasers[flat.laserOf[d]]));
}

/**
 * Changes `to` (item → laser or CUT) in the trees whose roots are in `uneven` (bits). Searches
 * small trees to the end besides.
 */
export function flatterChoice(
  problem: BalanceProblem,
  order: readonly number[],
  layer: BandLayer,
  reach: Reach,
  plan: FewestCuts,
  uneven: number,
  time_s: number,
  to: Int32Array,
): void {
  const cutsOf = plan.ofTree.slice(); // the plan is overwritten
  lowerLevels(layer, reach, plan, uneven, time_s, to);
  let others = 0;
  for (let rest = uneven; rest !== 0; rest &= rest - 1)
    if (countItems(layer, plan, lowestOf(rest)) <= FEW_ITEMS) others |= rest & -rest;
  if (others === 0) return;
  const itemOf = itemsByPart(layer);
  for (const group of partOut(problem, order).groups) {
    const root = plan.rootOf[group.lasers[0]];
    if ((others >>> root) & 1) flattenGroup(group, itemOf, cutsOf[root], time_s, reach.budget, to);
  }
}
