/**
 * The outlines of one cut: from triangle to triangle over shared edges. In each triangle the outline runs from the side that
 * goes down through the cut to the side that goes up, so that the solid lies on its left. Millimetres.
 */
import type { Ring } from '../../../geometry/types';
import type { Mm } from '../../../units/types';
import { NONE, sideAfter } from '../edges';
import type { PreparedMesh } from '../prepare';
import { SNAP_mm, type Sweep } from './sweep';

export interface Traced {
  readonly rings: Ring[];
  /** Outlines that end at an open edge, from their first to their last point. */
  readonly chains: Ring[];
}

/** Points of one outline, then of the next; the room is used again for every cut. */
class Points {
  private values = new Float64Array(4096);
  private length = 0;
  /** A point that repeats the one before is left out. */
  push(x: Mm, y: Mm): void {
    const { length } = this;
    if (length > 0 && this.values[length - 2] === x && this.values[length - 1] === y) return;
    if (length + 2 > this.values.length) {
      const larger = new Float64Array(2 * this.values.length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[length] = x;
    this.values[length + 1] = y;
    this.length += 2;
  }
  /** What was pushed; a last point that repeats the first is left out of a ring. */
  take(closed: boolean): Ring {
    const { values } = this;
    let end = this.length;
    if (closed && end > 2 && values[0] === values[end - 2] && values[1] === values[end - 1]) end -= 2;
    this.length = 0;
    return values.slice(0, end);
  }
}

export class Tracer {
  /** For each triangle the last cut in which it was followed. */
  private readonly seen: Int32Array;
  private readonly pen = new Points();
  private z: Mm = 0;

  constructor(private readonly mesh: PreparedMesh) {
    this.seen = new Int32Array(mesh.triangles.length / 3);
  }

  /** The outlines of the sweep's current layer, the k-th, at height z. */
  trace(sweep: Sweep, k: number, z: Mm): Traced {
    this.z = z;
    const rings: Ring[] = [];
    const chains: Ring[] = [];
    for (let i = 0; i < sweep.count; i++) {
      const start = sweep.active[i];
      if (this.seen[start] === k) continue;
      let closed = this.follow(start, k);
      if (!closed) {
        // Begun somewhere along an open outline: once more from its first triangle.
        this.pen.take(false);
        closed = this.follow(this.chainStart(start), k);
      }
      const outline = this.pen.take(closed);
      if (!closed) chains.push(outline);
      else if (outline.length >= 6) rings.push(outline);
    }
    return { rings, chains };
  }

  /** Back along an open outline to the triangle where it begins. */
  private chainStart(start: number): number {
    for (let t = start; ;) {
      const before = this.mesh.across[this.side(t, false)];
      if (before === NONE) return t;
      t = (before - (before % 3)) / 3;
    }
  }

  /** Draws the outline from a triangle on; true where it comes back to it. */
  private follow(start: number, k: number): boolean {
    const { across } = this.mesh;
    this.point(this.side(start, false));
    for (let t = start; ;) {
      this.seen[t] = k;
      const up = this.side(t, true);
      this.point(up);
      const next = across[up];
      if (next === NONE) return false;
      t = (next - (next % 3)) / 3;
      if (t === start) return true;
    }
  }

  /** The side of a triangle that goes up (or down) through the cut. */
  private side(t: number, up: boolean): number {
    const { points, triangles } = this.mesh;
    const cut = this.z + SNAP_mm;
    const a = points[3 * triangles[3 * t] + 2] > cut;
    const b = points[3 * triangles[3 * t + 1] + 2] > cut;
    const c = points[3 * triangles[3 * t + 2] + 2] > cut;
    if (a !== b && b === up) return 3 * t;
    return b !== c && c === up ? 3 * t + 1 : 3 * t + 2;
  }

  /** Where a side meets the cut. */
  private point(side: number): void {
    const { points, triangles } = this.mesh;
    const one = 3 * triangles[side];
    const other = 3 * triangles[sideAfter(side)];
    const a = points[one + 2] < points[other + 2] ? one : other;
    const b = a === one ? other : one;
    const share = Math.max(0, (this.z - points[a + 2]) / (points[b + 2] - points[a + 2]));
    this.pen.push(
      points[a] + share * (points[b] - points[a]),
      points[a + 1] + share * (points[b + 1] - points[a + 1]),
    );
  }
}
