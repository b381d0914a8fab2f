/**
 * Which items of a layer of bands are cut and where the others go, once it is known how much (seconds) the child side of
 * a band takes; and back: how much it takes once the lasers' loads are known.
 */
import { CHILD, CHOICE, PARENT, type Forest } from './forest';
import { MOST_LASERS, type BandLayer } from './layer';
import { chosen, largestSum, type Reach } from './reach';

/** Laser an item is whole on; CUT where it is cut. */
export const CUT = -1;

/** Choosers filled in one after the other; the one that overflows is cut. */
function cutOneChooser(
  { forest, itemLoad_s, tiny_s }: Reach,
  b: number,
  up: number,
  amount_s: number,
  to: Int32Array,
) {
  const { start, sorted, child, sum_s } = forest;
  let left_s = amount_s - sum_s[3 * b + CHILD];
  let i = start[3 * b + CHOICE];
  const end = start[3 * b + CHOICE + 1];
  for (; i < end && itemLoad_s[sorted[i]] <= left_s + tiny_s; i++) {
    to[sorted[i]] = child[b];
    left_s -= itemLoad_s[sorted[i]];
  }
  if (i < end) to[sorted[i++]] = CUT;
  for (; i < end; i++) to[sorted[i]] = up;
}

/** False where the search among the choosers found no subset that fits without a cut. */
function placeChoosers(reach: Reach, b: number, up: number, over_s: number, to: Int32Array): boolean {
  const { start, sorted, child, free_s } = reach.forest;
  const first = start[3 * b + CHOICE];
  const end = start[3 * b + CHOICE + 1];
  if (end === first) return true;
  const sum_s = largestSum(reach, b, over_s, over_s - free_s[b]);
  if (sum_s < over_s - free_s[b] - reach.tiny_s) return false;
  for (let i = first; i < end; i++) to[sorted[i]] = chosen(i - first) ? child[b] : up;
  return true;
}

/** Items of a run to a laser, the first `cuts` of them cut. */
const sendRun = (
  { start, sorted }: Forest,
  run: number,
  laser: number,
  cuts: number,
  to: Int32Array,
): void => {
  for (let i = start[run]; i < start[run + 1]; i++) to[sorted[i]] = i - start[run] < cuts ? CUT : laser;
};

/**
 * Places the items of band b with `cuts` cuts so that its child side can take `amount_s`. False where that took one cut
 * more, because a search among the choosers ran out of budget.
 */
export function placeItems(reach: Reach, b: number, amount_s: number, cuts: number, to: Int32Array): boolean {
  const { forest, tiny_s } = reach;
  const { child, parent, sum_s, free_s } = forest;
  const down = child[b];
  const up = parent[down];
  const over_s = amount_s - sum_s[3 * b + CHILD];
  const more_s = over_s - free_s[b] - sum_s[3 * b + CHOICE];
  const less = cuts > 0 && over_s < -tiny_s;
  const more = cuts > 0 && more_s > tiny_s;
  sendRun(forest, 3 * b + CHILD, down, less ? cuts : 0, to);
  sendRun(forest, 3 * b + PARENT, up, more ? cuts : 0, to);
  if (less || more) sendRun(forest, 3 * b + CHOICE, less ? up : down, 0, to);
  else if (cuts > 0) cutOneChooser(reach, b, up, amount_s, to);
  else if (!placeChoosers(reach, b, up, over_s, to)) {
    cutOneChooser(reach, b, up, amount_s, to);
    return false;
  }
  return true;
}

const taken_s = new Float64Array(MOST_LASERS);

/**
 * Band → seconds of its divisible load that the child side takes, where lasers work `loads_s` in all, `own_s` of it
 * settled, and `open_s` of every band is divisible. Into `amount_s`.
 */
export function amountsOf(
  { lasers }: BandLayer,
  { order, parent, bandUp }: Forest,
  own_s: ArrayLike<number>,
  open_s: ArrayLike<number>,
  loads_s: ArrayLike<number>,
  amount_s: Float64Array,
): void {
  for (let v = 0; v < lasers; v++) taken_s[v] = loads_s[v] - own_s[v];
  for (let i = lasers - 1; i >= 0; i--) {
    const v = order[i];
    if (parent[v] < 0) continue;
    const b = bandUp[v];
    amount_s[b] = Math.min(open_s[b], Math.max(0, taken_s[v]));
    taken_s[parent[v]] -= open_s[b] - amount_s[b];
  }
}

/** What every laser holds (`own_s`) and what stays divisible in every band (`open_s`), given the items' lasers. */
export function openUp(
  layer: BandLayer,
  forest: Forest,
  to: Int32Array,
  own_s: Float64Array,
  open_s: Float64Array,
): void {
  const { lasers, bands, items, itemBand, itemLoad_s } = layer;
  for (let k = 0; k < lasers; k++) own_s[k] = layer.own_s[k];
  for (let b = 0; b < bands; b++) open_s[b] = forest.free_s[b];
  for (let i = 0; i < items; i++)
    if (to[i] === CUT) open_s[itemBand[i]] += itemLoad_s[i];
    else own_s[to[i]] += itemLoad_s[i];
}
