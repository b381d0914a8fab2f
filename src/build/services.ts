/**
 * When a store of powder or residue has to be served over the layers of a build: overflow and feed count in litres, residue in
 * laser-hours (the sum of all lasers' loads).
 * Taken for granted: a store is served on its own and in full (overflow emptied, feed filled to what it holds, residue
 * cleaned away); nothing flows back out of the overflow, so a layer that needs more than its dose adds nothing to it.
 */

/** Layers in a row that each take the same out of a store's room. */
export interface Taking {
  readonly layers: number;
  readonly each: number;
}
/** A store and its room at the start, both in the unit of what the layers take. */
export interface Store {
  readonly capacity: number;
  readonly room: number;
}
export interface Services {
  /** Per service the last layer that can finish before it; 0 where not even the first one can. Ascending. */
  readonly after: readonly number[];
  /** The first layer that takes more than the whole store: the build cannot pass it, and no service follows. */
  readonly stuck: { readonly layer: number; readonly each: number } | null;
  /** More services than are worth listing: only the first are. */
  readonly cut: boolean;
}

/** Services of one store that are listed. */
export const MOST_SERVICES = 1000;
/** Of one layer: sums that differ by rounding spend no layer. */
const ROUNDING = 1e-6;

/** Number of layers that fit into what is left of a store. */
const fitting = (left: number, each: number): number => Math.max(0, Math.floor(left / each + ROUNDING));

/**
 * When a store has to be served, without walking layer by layer.
 * @param takings from the platform up; a negative `each` takes nothing
 */
export function servicesOf(takings: readonly Taking[], { capacity, room }: Store): Services {
  const after: number[] = [];
  let [done, left] = [0, Math.min(room, capacity)];
  for (const { layers, each } of takings) {
    const end = done + layers;
    while (each > 0 && done + fitting(left, each) < end) {
      done += fitting(left, each);
      if (after.length === MOST_SERVICES) return { after, stuck: null, cut: true };
      after.push(done);
      if (fitting(capacity, each) === 0) return { after, stuck: { layer: done + 1, each }, cut: false };
      left = capacity;
    }
    if (each > 0) left -= (end - done) * each;
    done = end;
  }
  return { after, stuck: null, cut: false };
}
