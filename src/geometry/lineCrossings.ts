/**
 * The workings of halfPlane.ts: where a region's outlines cross a line, and the rings on one side of it. Buffers are
 * kept between calls; one object serves one caller at a time. Millimetres.
 */
import { RingWriter } from './ringWriter';
import type { HalfPlane, Ring, TaggedRegion } from './types';

/** Vertices nearer to the line count as lying on it. */
export const SNAP_MM = 1e-9;
const INSERTION_SORT_UP_TO = 48;

/** An outline edge lying on the line, in the sense of travel of the side it belongs to. */
interface EdgeOnLine {
  readonly from: number;
  readonly to: number;
  readonly ring: number;
  readonly edge: number;
}

/** First `measure`, then `side` for one or both sides of the same region and line. */
export class LineCrossings {
  private nx = 0;
  private ny = 0;
  private c = 0;
  /** Signed distance of every vertex, ring after ring; exactly 0 on the line. */
  private distance = new Float64Array(1024);
  private anyOn = false;
  // one entry per crossing
  private count = 0;
  private t = new Float64Array(64);
  private slope = new Float64Array(64);
  private x = new Float64Array(64);
  private y = new Float64Array(64);
  private ring = new Int32Array(64);
  private edge = new Int32Array(64);
  private enters = new Uint8Array(64);
  /** leaving → the entering crossing it is joined to; entering → the leaving crossing at its chain's end */
  private next = new Int32Array(64);
  private onLine: EdgeOnLine[] = [];
  private readonly writer = new RingWriter();

  /** Distances of all vertices; says where the region lies as a whole. */
  measure(t: TaggedRegion, h: HalfPlane): 'inside' | 'outside' | 'across' {
    this.nx = h.nx;
    this.ny = h.ny;
    this.c = h.c;
    this.reserveDistances(t.rings);
    const d = this.distance;
    let min = 0;
    let max = 0;
    let k = 0;
    this.anyOn = false;
    for (const ring of t.rings) {
      for (let i = 0; i < ring.length; i += 2) {
        let v = h.nx * ring[i] + h.ny * ring[i + 1] - h.c;
        if (v < SNAP_MM && v > -SNAP_MM) {
          v = 0;
          this.anyOn = true;
        }
        d[k++] = v;
        if (v < min) min = v;
        else if (v > max) max = v;
      }
    }
    return max <= 0 ? 'inside' : min >= 0 ? 'outside' : 'across';
  }

  /** The rings on one side of the measured line: sign 1 for the inside, −1 for the outside. */
  side(t: TaggedRegion, sign: 1 | -1): TaggedRegion {
    const rings: Ring[] = [];
    const cut: Uint8Array[] = [];
    this.count = 0;
    this.onLine.length = 0;
    let offset = 0;
    for (let r = 0; r < t.rings.length; r++) {
      const n = t.rings[r].length >> 1;
      const kept = this.collect(t, r, offset, n, sign);
      if (kept === n) {
        rings.push(t.rings[r]);
        cut.push(t.cut[r]);
      }
      offset += n;
    }
    this.join();
    if (this.onLine.length > 1) this.onLine.sort((a, b) => a.from - b.from);
    this.trace(t, rings, cut);
    return { rings, cut };
  }

  /** Crossings of one ring, in its order; returns how many of its vertices are strictly on the side. */
  private collect(t: TaggedRegion, r: number, offset: number, n: number, sign: number): number {
    const d = this.distance;
    const first = this.count;
    let kept = 0;
    let keptHere = sign * d[offset] < 0;
    for (let i = 0; i < n; i++) {
      const j = i + 1 === n ? 0 : i + 1;
      const keptNext = sign * d[offset + j] < 0;
      if (keptHere) kept++;
      if (keptHere !== keptNext) this.addCrossing(t.rings[r], r, i, j, offset, sign, keptNext);
      else if (this.anyOn && !keptHere && d[offset + i] === 0 && d[offset + j] === 0)
        this.addEdgeOnLine(t.rings[r], r, i, j, sign);
      keptHere = keptNext;
    }
    this.linkChains(first);
    return kept;
  }

  /** Along a ring entering and leaving alternate: every entering crossing's chain ends at the crossing after it. */
  private linkChains(first: number): void {
    const last = this.count - 1;
    for (let k = first; k <= last; k++) if (this.enters[k]) this.next[k] = k === last ? first : k + 1;
  }

  private addCrossing(
    ring: Ring,
    r: number,
    i: number,
    j: number,
    offset: number,
    sign: number,
    enters: boolean,
  ) {
    const k = this.count++;
    if (k === this.t.length) this.growCrossings();
    const keptVertex = enters ? j : i;
    const otherVertex = enters ? i : j;
    const dKept = this.distance[offset + keptVertex];
    const dOther = this.distance[offset + otherVertex];
    let x = ring[2 * otherVertex];
    let y = ring[2 * otherVertex + 1];
    const kx = ring[2 * keptVertex];
    const ky = ring[2 * keptVertex + 1];
    if (dOther !== 0) {
      // From the negative to the positive end, so that both sides get the same point.
      const low = dKept < 0;
      const share = low ? dKept / (dKept - dOther) : dOther / (dOther - dKept);
      const ax = low ? kx : x;
      const ay = low ? ky : y;
      x = ax + share * ((low ? x : kx) - ax);
      y = ay + share * ((low ? y : ky) - ay);
      // Along an axis the line's own coordinate is known exactly.
      if (this.ny === 0) x = this.nx * this.c;
      else if (this.nx === 0) y = this.ny * this.c;
    }
    const along = sign * (-this.ny * x + this.nx * y);
    this.t[k] = along;
    this.slope[k] = (sign * (-this.ny * kx + this.nx * ky) - along) / Math.abs(dKept);
    this.x[k] = x;
    this.y[k] = y;
    this.ring[k] = r;
    this.edge[k] = i;
    this.enters[k] = enters ? 1 : 0;
  }

  private addEdgeOnLine(ring: Ring, r: number, i: number, j: number, sign: number): void {
    const from = sign * (-this.ny * ring[2 * i] + this.nx * ring[2 * i + 1]);
    const to = sign * (-this.ny * ring[2 * j] + this.nx * ring[2 * j + 1]);
    if (to > from) this.onLine.push({ from, to, ring: r, edge: i });
  }

  /** Sorts the crossings along the line and joins each leaving one to the entering one after it. */
  private join(): void {
    const order = this.sorted();
    for (let k = 0; k + 1 < order.length; k += 2) {
      this.bringForward(order, k, 0);
      this.bringForward(order, k + 1, 1);
      this.next[order[k]] = order[k + 1];
    }
  }

  private sorted(): number[] {
    const { t, slope, count } = this;
    const order: number[] = [];
    const before = (a: number, b: number): number => t[a] - t[b] || slope[a] - slope[b];
    for (let k = 0; k < count; k++) order.push(k);
    if (count > INSERTION_SORT_UP_TO) return order.sort(before);
    for (let k = 1; k < count; k++) {
      const item = order[k];
      let m = k - 1;
      while (m >= 0 && before(order[m], item) > 0) {
        order[m + 1] = order[m];
        m--;
      }
      order[m + 1] = item;
    }
    return order;
  }

  /** Crossings a rounding error apart may be in the wrong order; leaving and entering must alternate. */
  private bringForward(order: number[], k: number, enters: number): void {
    let m = k;
    while (m < order.length && this.enters[order[m]] !== enters) m++;
    if (m === k || m === order.length) return;
    order.splice(k, 0, order.splice(m, 1)[0]);
  }

  /** Walks chain, line, chain … until every entering crossing has been used. */
  private trace(t: TaggedRegion, rings: Ring[], cut: Uint8Array[]): void {
    for (let start = 0; start < this.count; start++) {
      if (this.enters[start] !== 1) continue;
      this.writer.begin();
      let at = start;
      do {
        this.writeChain(t, at);
        this.enters[at] = 2;
        const leaving = this.next[at];
        at = this.next[leaving];
        this.writeLine(t, leaving, at);
      } while (at !== start);
      this.writer.finish(rings, cut);
    }
  }

  private writeChain(t: TaggedRegion, entering: number): void {
    const r = this.ring[entering];
    const ring = t.rings[r];
    const cut = t.cut[r];
    const n = ring.length >> 1;
    const last = this.edge[this.next[entering]];
    let i = this.edge[entering];
    this.writer.point(this.x[entering], this.y[entering], cut[i]);
    do {
      i = i + 1 === n ? 0 : i + 1;
      this.writer.point(ring[2 * i], ring[2 * i + 1], cut[i]);
    } while (i !== last);
  }

  /** From a leaving crossing to the entering one: a cut edge, but for the stretches that were outline already. */
  private writeLine(t: TaggedRegion, leaving: number, entering: number): void {
    const end = this.t[entering];
    let at = this.t[leaving];
    if (Math.abs(end - at) <= SNAP_MM) return;
    this.writer.point(this.x[leaving], this.y[leaving], end > at ? 1 : this.tagBack(t, leaving, entering));
    for (const edge of this.onLine) {
      if (edge.from < at - SNAP_MM || edge.to > end + SNAP_MM) continue;
      const ring = t.rings[edge.ring];
      const i = 2 * edge.edge;
      const j = i + 2 === ring.length ? 0 : i + 2;
      if (edge.from > at + SNAP_MM) this.writer.point(ring[i], ring[i + 1], 1);
      this.writer.retag(t.cut[edge.ring][edge.edge]);
      if (edge.to < end - SNAP_MM) this.writer.point(ring[j], ring[j + 1], 1);
      at = edge.to;
    }
  }

  /**
   * The tag of a stretch that runs back along the line, as an outline does that rounding has turned inside out there:
   * that of the outline's own edge between the two crossings.
   */
  private tagBack(t: TaggedRegion, leaving: number, entering: number): number {
    const r = this.ring[leaving];
    const n = t.rings[r].length >> 1;
    const between = (this.edge[leaving] + 1) % n;
    const isOwn = this.ring[entering] === r && (between + 1) % n === this.edge[entering];
    return isOwn ? t.cut[r][between] : 1;
  }

  private reserveDistances(rings: readonly Ring[]): void {
    let n = 0;
    for (const ring of rings) n += ring.length >> 1;
    if (n > this.distance.length) this.distance = new Float64Array(2 * n);
  }

  private growCrossings(): void {
    const size = 2 * this.t.length;
    const grown = (old: Float64Array): Float64Array<ArrayBuffer> => {
      const array = new Float64Array(size);
      array.set(old);
      return array;
    };
    const grownInts = (old: Int32Array): Int32Array<ArrayBuffer> => {
      const array = new Int32Array(size);
      array.set(old);
      return array;
    };
    this.t = grown(this.t);
    this.slope = grown(this.slope);
    this.x = grown(this.x);
    this.y = grown(this.y);
    this.ring = grownInts(this.ring);
    this.edge = grownInts(this.edge);
    this.next = grownInts(this.next);
    const enters = new Uint8Array(size);
    enters.set(this.enters);
    this.enters = enters;
  }
}
