/**
 * Regions spread over a grid of columns along a direction and rows across it: every cell holds its exact area, found
 * edge by edge by Green's theorem (Σ ∫ u dv over the outlines). u runs along the direction, v to its left; in the grid
 * both count in rows and columns, so areas are in cells. A spread keeps only the part of the grid its regions touch.
 */
import { cosSin } from '../geometry/region';
import type { Region } from '../geometry/types';
import type { Degrees, Mm } from '../units/types';

/** Columns over the width of all areas, at least; rows along the direction. */
const COLUMNS = 512;
const ROWS = 128;

export interface Grid {
  readonly columns: number;
  /** Half-width of the strip in columns, a whole number. */
  readonly reach: number;
  readonly along: readonly [number, number];
  readonly minU: Mm;
  readonly minV: Mm;
  readonly perRow: number;
  readonly perColumn: number;
}
/** Area in cells, column by column: cell (k, r) of the grid at (k − firstColumn) · rows + r − firstRow. */
export interface Spread {
  readonly firstColumn: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly rows: number;
  readonly cells: Float64Array;
  readonly byColumn: Float64Array;
  readonly total: number;
  /** Least and greatest place along the direction, in rows. */
  readonly from: number;
  readonly to: number;
}
interface Extent {
  readonly minU: number;
  readonly maxU: number;
  readonly minV: number;
  readonly maxV: number;
}

function extentOf(regions: readonly Region[], [c, s]: readonly [number, number]): Extent {
  let [minU, maxU, minV, maxV] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const region of regions)
    for (const ring of region)
      for (let i = 0; i < ring.length; i += 2) {
        const u = c * ring[i] + s * ring[i + 1];
        const v = c * ring[i + 1] - s * ring[i];
        if (u < minU) minU = u;
        if (u > maxU) maxU = u;
        if (v < minV) minV = v;
        if (v > maxV) maxV = v;
      }
  return { minU, maxU, minV, maxV };
}

/** Width of all regions across a direction; 0 or less where there is nothing. */
export function widthAcross(regions: readonly Region[], along_deg: Degrees): Mm {
  const { minV, maxV } = extentOf(regions, cosSin(along_deg));
  return maxV - minV;
}

/** A grid over all regions whose columns divide the strip's half-width into whole numbers. */
export function gridOver(regions: readonly Region[], along_deg: Degrees, halfWidth: Mm): Grid {
  const along = cosSin(along_deg);
  const { minU, maxU, minV, maxV } = extentOf(regions, along);
  const reach = Math.ceil((halfWidth * COLUMNS) / (maxV - minV));
  const perColumn = reach / halfWidth;
  const columns = Math.max(1, Math.ceil((maxV - minV) * perColumn - 1e-9));
  return { columns, reach, along, minU, minV, perRow: ROWS / (maxU - minU), perColumn };
}

/** The regions over the grid; null where they have no area. */
export function spreadOver(regions: readonly Region[], grid: Grid): Spread | null {
  const { minU, maxU, minV, maxV } = extentOf(regions, grid.along);
  if (!(maxU > minU) || !(maxV > minV)) return null;
  const from = (minU - grid.minU) * grid.perRow;
  const to = (maxU - grid.minU) * grid.perRow;
  const firstRow = Math.min(ROWS - 1, Math.floor(from));
  const rows = Math.min(ROWS - 1, Math.floor(to)) - firstRow + 1;
  const firstColumn = Math.min(grid.columns - 1, Math.floor((minV - grid.minV) * grid.perColumn));
  const lastColumn = Math.min(grid.columns - 1, Math.floor((maxV - grid.minV) * grid.perColumn));
  const canvas = new Canvas(grid, firstColumn, lastColumn - firstColumn + 1, firstRow, rows);
  for (const region of regions) for (const ring of region) canvas.addRing(ring);
  const { byColumn, total } = canvas.finish();
  if (!(total > 0)) return null;
  return {
    firstColumn,
    columns: canvas.columns,
    firstRow,
    rows,
    cells: canvas.cells,
    byColumn,
    total,
    from,
    to,
  };
}

class Canvas {
  readonly cells: Float64Array;
  /** Signed width of the edges in a cell: every cell below it is covered in full over that width. */
  private readonly edges: Float64Array;
  private readonly offsetU: number;
  private readonly offsetV: number;

  constructor(
    private readonly grid: Grid,
    firstColumn: number,
    readonly columns: number,
    firstRow: number,
    readonly rows: number,
  ) {
    this.cells = new Float64Array(columns * rows);
    this.edges = new Float64Array(columns * rows);
    this.offsetU = grid.minU * grid.perRow + firstRow;
    this.offsetV = grid.minV * grid.perColumn + firstColumn;
  }

  addRing(ring: Float64Array): void {
    const { along, perRow, perColumn } = this.grid;
    const [cu, su] = [along[0] * perRow, along[1] * perRow];
    const [cv, sv] = [along[0] * perColumn, along[1] * perColumn];
    const n = ring.length;
    let u0 = cu * ring[n - 2] + su * ring[n - 1] - this.offsetU;
    let v0 = cv * ring[n - 1] - sv * ring[n - 2] - this.offsetV;
    for (let i = 0; i < n; i += 2) {
      const u1 = cu * ring[i] + su * ring[i + 1] - this.offsetU;
      const v1 = cv * ring[i + 1] - sv * ring[i] - this.offsetV;
      if (v0 < v1) this.addEdge(v0, u0, v1, u1, 1);
      else if (v1 < v0) this.addEdge(v1, u1, v0, u0, -1);
      u0 = u1;
      v0 = v1;
    }
  }

  /** The area under an edge (towards smaller u), column by column; sign +1 where the edge runs to greater v. */
  private addEdge(v0: number, u0: number, v1: number, u1: number, sign: number): void {
    const last = Math.min(this.columns - 1, Math.floor(v1));
    const first = Math.max(0, Math.floor(v0));
    if (first >= last) return this.addInColumn(last, u0, u1, sign * (v1 - v0));
    const slope = (u1 - u0) / (v1 - v0);
    let from = v0;
    let uFrom = u0;
    for (let k = first; k <= last; k++) {
      const to = k === last ? v1 : k + 1;
      const uTo = k === last ? u1 : u0 + slope * (to - v0);
      this.addInColumn(k, uFrom, uTo, sign * (to - from));
      from = to;
      uFrom = uTo;
    }
  }

  /** The same within one column, row by row: the row the edge passes is filled in part. */
  private addInColumn(k: number, ua: number, ub: number, width: number): void {
    const { cells, edges, rows } = this;
    const base = k * rows;
    const low = ua < ub ? ua : ub;
    const high = ua < ub ? ub : ua;
    const first = Math.max(0, Math.min(rows - 1, Math.floor(low)));
    const last = Math.max(0, Math.min(rows - 1, Math.floor(high)));
    if (first === last) {
      cells[base + first] += width * ((low + high) / 2 - first);
      edges[base + first] += width;
      return;
    }
    const perU = width / (high - low);
    for (let r = first; r <= last; r++) {
      const from = r === first ? low : r;
      const to = r === last ? high : r + 1;
      const share = perU * (to - from);
      cells[base + r] += share * ((from + to) / 2 - r);
      edges[base + r] += share;
    }
  }

  /** Adds the rows covered in full; afterwards the cells hold areas. */
  finish(): { byColumn: Float64Array; total: number } {
    const { cells, edges, columns, rows } = this;
    const byColumn = new Float64Array(columns);
    let total = 0;
    for (let k = 0; k < columns; k++) {
      let full = 0;
      let sum = 0;
      for (let at = (k + 1) * rows - 1; at >= k * rows; at--) {
        cells[at] += full;
        full += edges[at];
        sum += cells[at];
      }
      byColumn[k] = sum;
      total += sum;
    }
    return { byColumn, total };
  }
}
