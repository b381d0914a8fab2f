/**
 * Collects the points of one ring with the tags of the edges that start there, in buffers kept between rings.
 * Millimetres.
 */
import type { Ring } from './types';

/** Rings of less area are dropped: they are rounding, not material. */
const LEAST_AREA_MM2 = 1e-9;

/** One ring at a time: `begin`, its points in order, `finish`. */
export class RingWriter {
  private n = 0;
  private xy = new Float64Array(2048);
  private tags = new Uint8Array(1024);

  begin(): void {
    this.n = 0;
  }

  /** Adds a point; a point equal to the last one only replaces its tag. */
  point(x: number, y: number, tag: number): void {
    const k = this.n;
    if (k > 0 && this.xy[2 * k - 2] === x && this.xy[2 * k - 1] === y) {
      this.tags[k - 1] = tag;
      return;
    }
    if (k === this.tags.length) this.grow();
    this.xy[2 * k] = x;
    this.xy[2 * k + 1] = y;
    this.tags[k] = tag;
    this.n = k + 1;
  }

  /** Gives the edge that starts at the last point another tag. */
  retag(tag: number): void {
    this.tags[this.n - 1] = tag;
  }

  /** Closes the ring and appends it, unless it holds no area. */
  finish(rings: Ring[], cut: Uint8Array[]): void {
    const { xy } = this;
    let n = this.n;
    while (n > 1 && xy[0] === xy[2 * n - 2] && xy[1] === xy[2 * n - 1]) n--;
    if (n < 3 || Math.abs(this.area(n)) < LEAST_AREA_MM2) return;
    rings.push(xy.slice(0, 2 * n));
    cut.push(this.tags.slice(0, n));
  }

  private area(n: number): number {
    const { xy } = this;
    let twice = 0;
    for (let i = 2; i < 2 * n - 2; i += 2)
      twice += (xy[i] - xy[0]) * (xy[i + 3] - xy[1]) - (xy[i + 2] - xy[0]) * (xy[i + 1] - xy[1]);
    return twice / 2;
  }

  private grow(): void {
    const xy = new Float64Array(2 * this.xy.length);
    xy.set(this.xy);
    this.xy = xy;
    const tags = new Uint8Array(2 * this.tags.length);
    tags.set(this.tags);
    this.tags = tags;
  }
}
