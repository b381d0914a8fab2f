/**
 * Layers of one kind as they come from below: how many there are, and the lowest run of them. Layers count from 1.
 */
import type { LayerRun } from '../types';

export class LayerRuns {
  count = 0;
  first: LayerRun | null = null;

  /** Counts one more layer, above all counted before. */
  add(layer: number): void {
    this.count += 1;
    if (this.first === null) this.first = [layer, layer];
    else if (this.first[1] === layer - 1) this.first = [this.first[0], layer];
  }

  /** The lowest run with the layer below it, which its layers are like. */
  get firstWithBelow(): LayerRun | null {
    return this.first && [this.first[0] - 1, this.first[1]];
  }
}
