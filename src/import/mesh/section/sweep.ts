/**
 * Which triangles a layer cuts: a sweep from the lowest layer to the highest over triangles sorted by the first layer that
 * cuts them. Layer k (from 1) of thickness t is cut at (k − ½)·t above the mesh's lowest point. Millimetres.
 *
 * A point exactly on the cut counts as below it, so that a section is what stands just above the cut: a flat top that lies
 * on the cut is gone, a flat bottom that lies on it is there, nothing doubles and nothing vanishes, and a slab's top belongs
 * to the slab above as in a layout. "Exactly" includes points up to SNAP_mm above it, as 32-bit floats put them.
 */
import type { Mm } from '../../../units/types';
import type { PreparedMesh } from '../prepare';

/** The rounding error of a 32-bit float at half a metre. */
export const SNAP_mm: Mm = 5e-5;

export interface Levels {
  readonly bottom: Mm;
  readonly layer_mm: Mm;
  readonly layers: number;
}
/** Where layer k is cut. */
export const levelOf = ({ bottom, layer_mm }: Levels, k: number): Mm => bottom + (k - 0.5) * layer_mm;

/** The first layer whose cut lies at or above a height (snap included). */
function firstFrom(levels: Levels, z: Mm): number {
  const guess = Math.ceil((z - levels.bottom) / levels.layer_mm + 0.5);
  let k = Math.min(levels.layers + 1, Math.max(1, guess));
  while (k > 1 && levelOf(levels, k - 1) + SNAP_mm >= z) k -= 1;
  while (k <= levels.layers && levelOf(levels, k) + SNAP_mm < z) k += 1;
  return k;
}

/** The triangles of one layer after the other. */
export class Sweep {
  /** The triangles that the current layer cuts: the first `count` entries. */
  readonly active: Int32Array;
  count = 0;
  /** Triangles in the order of the first layer that cuts them, and where each layer's begin. */
  private readonly order: Int32Array;
  private readonly begins: Int32Array;
  /** For each triangle the layer from which on it is not cut any more. */
  private readonly ends: Int32Array;

  constructor({ points, triangles }: PreparedMesh, levels: Levels) {
    const count = triangles.length / 3;
    const starts = new Int32Array(count);
    this.ends = new Int32Array(count);
    this.begins = new Int32Array(levels.layers + 3);
    for (let t = 0; t < count; t++) {
      const a = points[3 * triangles[3 * t] + 2];
      const b = points[3 * triangles[3 * t + 1] + 2];
      const c = points[3 * triangles[3 * t + 2] + 2];
      starts[t] = firstFrom(levels, Math.min(a, b, c));
      this.ends[t] = firstFrom(levels, Math.max(a, b, c));
      if (starts[t] < this.ends[t]) this.begins[starts[t] + 1] += 1;
    }
    for (let k = 1; k < this.begins.length; k++) this.begins[k] += this.begins[k - 1];
    this.order = new Int32Array(this.begins[this.begins.length - 1]);
    const filled = this.begins.slice();
    for (let t = 0; t < count; t++) {
      if (starts[t] >= this.ends[t]) continue;
      this.order[filled[starts[t]]] = t;
      filled[starts[t]] += 1;
    }
    this.active = new Int32Array(this.order.length);
  }

  /** To layer k; layers have to be asked for in ascending order without gaps. */
  advance(k: number): void {
    let kept = 0;
    for (let i = 0; i < this.count; i++) {
      const t = this.active[i];
      if (this.ends[t] <= k) continue;
      this.active[kept] = t;
      kept += 1;
    }
    for (let i = this.begins[k]; i < this.begins[k + 1]; i++) {
      this.active[kept] = this.order[i];
      kept += 1;
    }
    this.count = kept;
  }
}
