/**
 * How unequal loads are: the slowest laser over the mean of all lasers that are on, less one (Pearce et al. 2012
 * [memory]). 0: all equal; m − 1: one of m lasers does everything.
 */

/** max/mean − 1 over the loads given (one per laser that is on); 0 where all loads are 0 or there are none. */
export function imbalance(loads: readonly number[]): number {
  const sum = loads.reduce((a, b) => a + b, 0);
  return sum > 0 ? (Math.max(...loads) * loads.length) / sum - 1 : 0;
}
