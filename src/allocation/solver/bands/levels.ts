/**
 * Flatter loads (seconds) at the fewest cuts, from the slowest laser down: is there a choice with as few cuts whose
 * highest laser works a little less? If so its own flattest loads are the next to be bettered; if not, the lasers at
 * that height stay there, and the same is asked of the others. Exact where no two choices share the heights so far and
 * differ in which lasers reach them; bounded by a number of questions.
 */
import { compareFlatness, flattestOfSets } from '../flattest';
import { RELATIVE_TIE } from '../sets';
import { fewestCuts, type FewestCuts } from './fewest';
import { MOST_LASERS, type BandLayer } from './layer';
import { openUp, placeItems } from './place';
import type { Reach } from './reach';

/** Questions of one call, each a run of fewestCuts. */
const MOST_QUESTIONS = 24;

const time_s = new Float64Array(MOST_LASERS);
const own_s = new Float64Array(MOST_LASERS);
const open_s = new Float64Array(MOST_LASERS);
const cutsOfTree = new Int32Array(MOST_LASERS);
let trial = new Int32Array(256);

/** Places the items of the uneven trees as planned, into `to`; false where that takes more cuts. */
function place(layer: BandLayer, reach: Reach, plan: FewestCuts, uneven: number, to: Int32Array): boolean {
  let asPlanned = true;
  for (let b = 0; b < layer.bands; b++)
    if ((uneven >>> plan.rootOf[reach.forest.child[b]]) & 1)
      asPlanned = placeItems(reach, b, plan.amount_s[b], plan.cuts[b], to) && asPlanned;
  return asPlanned;
}

function loadsWith(layer: BandLayer, reach: Reach, to: Int32Array): Float64Array {
  openUp(layer, reach.forest, to, own_s, open_s);
  return flattestOfSets(own_s, layer.lasers, layer.maskOf, open_s, layer.bands);
}

/** True where the uneven trees are cut no more often than allowed. */
function spares(layer: BandLayer, plan: FewestCuts, uneven: number): boolean {
  for (let v = 0; v < layer.lasers; v++)
    if ((uneven >>> v) & 1 && plan.ofTree[v] > cutsOfTree[v]) return false;
  return true;
}

/** Betters the choice `to` (item → laser or cut) in the trees whose roots are in `uneven` (bits). */
export function lowerLevels(
  layer: BandLayer,
  reach: Reach,
  plan: FewestCuts,
  uneven: number,
  most_s: number,
  to: Int32Array,
): void {
  const same_s = most_s * RELATIVE_TIE;
  if (trial.length < layer.items) trial = new Int32Array(2 * layer.items);
  cutsOfTree.set(plan.ofTree);
  let loads_s = loadsWith(layer, reach, to);
  let open = 0;
  for (let v = 0; v < layer.lasers; v++) if ((uneven >>> plan.rootOf[v]) & 1) open |= 1 << v;
  time_s.fill(most_s);
  for (let n = 0; n < MOST_QUESTIONS && open !== 0; n++) {
    let high_s = 0;
    for (let v = 0; v < layer.lasers; v++) if ((open >>> v) & 1) high_s = Math.max(high_s, loads_s[v]);
    for (let v = 0; v < layer.lasers; v++) if ((open >>> v) & 1) time_s[v] = high_s - 2 * same_s;
    const better = high_s > 2 * same_s ? fewestCuts(layer, reach, time_s) : null;
    if (better !== null && spares(layer, better, uneven)) {
      trial.set(to.subarray(0, layer.items));
      const asPlanned = place(layer, reach, better, uneven, trial);
      const lower_s = loadsWith(layer, reach, trial);
      if (asPlanned && compareFlatness(lower_s, loads_s, same_s) < 0) {
        loads_s = lower_s;
        to.set(trial.subarray(0, layer.items));
        continue;
      }
    }
    for (let v = 0; v < layer.lasers; v++) {
      if (((open >>> v) & 1) === 0 || loads_s[v] < high_s - same_s) continue;
      open &= ~(1 << v);
      time_s[v] = loads_s[v];
    }
  }
}
