/**
 * The union of many regions that are nearly alike, as the sections of one part are: most lie inside the union of a few,
 * and only those that stick out of it are united. Millimetres; +x right, +y back.
 *
 * Sections are looked at from coarse to fine: the largest, then every 1024th, 512th … one. Of each round only what the
 * union of the rounds before leaves uncovered by more than `slack` is added. A region counts as covered where its outline,
 * looked at every SAMPLE_MM, is inside or no further outside than `slack`, and no hole of the union begins inside it; so
 * the result falls short of the exact union by `slack` at most, but for gaps narrower than SAMPLE_MM that it bridges.
 */
import type { Mm } from '../units/types';
import { unite } from './clipper';
import { edgesOf } from './edges';
import { area, boxOf, containsPoint } from './region';
import { signedArea } from './ring';
import type { Box, Region, Ring } from './types';

/** No two parts stand in a gap as narrow as this. */
const SAMPLE_MM: Mm = 1;
const FEWEST_ROWS = 8;
const MOST_ROWS = 1024;

/** Everything that lies in at least one of the regions, but for what sticks out by `slack` or less. */
export function uniteNearlyAlike(regions: readonly Region[], slack: Mm): Region {
  const filled = regions.filter((region) => region.length > 0);
  if (filled.length <= 2) return filled.length === 1 ? filled[0] : unite(filled);
  const areas = filled.map(area);
  let whole = filled[areas.indexOf(Math.max(...areas))];
  for (const round of coarseToFine(filled.length)) {
    const cover = new Cover(whole, slack);
    const missing = round.map((i) => filled[i]).filter((region) => !cover.covers(region));
    if (missing.length > 0) whole = unite([whole, uniteAll(missing)]);
  }
  return whole;
}

/** 0 … count − 1 in rounds: first and last, the middle, the quarters … */
function coarseToFine(count: number): number[][] {
  let step = 2 ** Math.ceil(Math.log2(count));
  const rounds: number[][] = [[0, count - 1]];
  for (; step > 1; step /= 2) {
    const round: number[] = [];
    for (let i = step / 2; i < count - 1; i += step) round.push(i);
    if (round.length > 0) rounds.push(round);
  }
  return rounds;
}

/** Pair by pair, since one union of many nearly equal regions takes the square of their number. */
function uniteAll(regions: readonly Region[]): Region {
  if (regions.length <= 2) return regions.length === 1 ? regions[0] : unite(regions);
  const half = regions.length >> 1;
  return unite([uniteAll(regions.slice(0, half)), uniteAll(regions.slice(half))]);
}

/** A region whose edges are sorted into rows of y, for many questions about points. */
class Cover {
  private readonly box: Box;
  private readonly holes: readonly Ring[];
  /** x0, y0, x1, y1 per edge */
  private readonly edges: Float64Array;
  private readonly rowHeight: Mm;
  private readonly rows: number;
  /** Row r holds the edges inRow[firstOf[r] … firstOf[r + 1] − 1]. */
  private readonly firstOf: Int32Array;
  private readonly inRow: Int32Array;

  constructor(
    region: Region,
    private readonly slack: Mm,
  ) {
    this.box = boxOf(region);
    this.holes = region.filter((ring) => signedArea(ring) < 0);
    this.edges = edgesOf(region).ends;
    const count = this.edges.length / 4;
    this.rows = Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, count));
    this.rowHeight = (this.box.maxY - this.box.minY + 2 * slack) / this.rows;
    this.firstOf = new Int32Array(this.rows + 1);
    this.eachRow((row) => this.firstOf[row + 1]++);
    for (let r = 0; r < this.rows; r++) this.firstOf[r + 1] += this.firstOf[r];
    this.inRow = new Int32Array(this.firstOf[this.rows]);
    const next = this.firstOf.slice();
    this.eachRow((row, edge) => (this.inRow[next[row]++] = edge));
  }

  private rowOf(y: Mm): number {
    const row = Math.floor((y - this.box.minY + this.slack) / this.rowHeight);
    return row < 0 ? 0 : row >= this.rows ? this.rows - 1 : row;
  }

  /** Every row that an edge comes within `slack` of. */
  private eachRow(visit: (row: number, edge: number) => void): void {
    const { edges, slack } = this;
    for (let e = 0; e < edges.length; e += 4) {
      const last = this.rowOf(Math.max(edges[e + 1], edges[e + 3]) + slack);
      for (let row = this.rowOf(Math.min(edges[e + 1], edges[e + 3]) - slack); row <= last; row++)
        visit(row, e);
    }
  }

  covers(region: Region): boolean {
    const box = boxOf(region);
    if (box.minX < this.box.minX - this.slack || box.maxX > this.box.maxX + this.slack) return false;
    if (box.minY < this.box.minY - this.slack || box.maxY > this.box.maxY + this.slack) return false;
    if (this.holes.some((hole) => containsPoint(region, hole[0], hole[1]))) return false;
    return region.every((ring) => this.coversRing(ring));
  }

  private coversRing(ring: Ring): boolean {
    const n = ring.length;
    let px = ring[n - 2];
    let py = ring[n - 1];
    for (let i = 0; i < n; i += 2) {
      const dx = ring[i] - px;
      const dy = ring[i + 1] - py;
      const samples = Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / SAMPLE_MM);
      for (let k = 1; k <= samples; k++)
        if (!this.coversPoint(px + (k / samples) * dx, py + (k / samples) * dy)) return false;
      px = ring[i];
      py = ring[i + 1];
    }
    return true;
  }

  private coversPoint(x: Mm, y: Mm): boolean {
    const row = this.rowOf(y);
    return this.holds(row, x, y) || this.isNear(row, x, y);
  }

  /** Inside by the even-odd rule. */
  private holds(row: number, x: Mm, y: Mm): boolean {
    const { edges, inRow, firstOf } = this;
    let inside = false;
    for (let k = firstOf[row]; k < firstOf[row + 1]; k++) {
      const e = inRow[k];
      const y0 = edges[e + 1];
      const y1 = edges[e + 3];
      if (y < y0 === y < y1) continue;
      if (x - edges[e] < ((y - y0) / (y1 - y0)) * (edges[e + 2] - edges[e])) inside = !inside;
    }
    return inside;
  }

  /** Within `slack` of the outline. */
  private isNear(row: number, x: Mm, y: Mm): boolean {
    const { edges, inRow, firstOf, slack } = this;
    for (let k = firstOf[row]; k < firstOf[row + 1]; k++) {
      const e = inRow[k];
      const dx = edges[e + 2] - edges[e];
      const dy = edges[e + 3] - edges[e + 1];
      const rx = x - edges[e];
      const ry = y - edges[e + 1];
      const along = Math.max(0, Math.min(1, (rx * dx + ry * dy) / (dx * dx + dy * dy)));
      const ox = rx - along * dx;
      const oy = ry - along * dy;
      if (ox * ox + oy * oy <= slack * slack) return true;
    }
    return false;
  }
}
