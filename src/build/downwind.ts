/**
 * Downwind, geometry only: the mean number of other lasers' plumes over each laser's beam. For i and j the
 * chance that j's spot lies in a strip of half-width b behind i's spot along the flow, both uniform over their own scan
 * areas, times min(1, E_i / E_j); summed over i. Millimetres, seconds.
 *
 * Scan areas are spread over columns along the flow and rows across it (spread.ts). Where one area lies behind the other
 * as a whole, column sums decide; elsewhere "behind" is decided row by row, within one row by halves. The width of
 * columns and rows enters the result by its square only.
 */
import type { Region } from '../geometry/types';
import type { Degrees, Mm, Seconds } from '../units/types';
import { gridOver, spreadOver, widthAcross, type Grid, type Spread } from './spread';
import type { Analysis, LayerFigures } from './types';

/** Strips narrower than this share of the width are computed at it and scaled: the chance is proportional there. */
const NARROWEST_SHARE = 1 / 1024;
/** Overlap along the flow that is rounding, in rows. */
const TOUCH_ROWS = 1e-6;

/**
 * Mean number of plumes over each laser's beam; 0 for a laser without load or area.
 * @param areas per laser the regions it exposes
 * @param loads_s per laser its load
 * @param towards_deg where the flow goes, counter-clockwise from +x
 * @param halfWidth_mm half the width of the strip behind a spot
 */
export function plumesOver(
  areas: readonly (readonly Region[])[],
  loads_s: readonly Seconds[],
  towards_deg: Degrees,
  halfWidth_mm: Mm,
): number[] {
  const plumes = areas.map(() => 0);
  const all = areas.flat();
  const width = widthAcross(all, towards_deg);
  if (!(width > 0) || !(halfWidth_mm > 0)) return plumes;
  const strip = Math.min(Math.max(halfWidth_mm, width * NARROWEST_SHARE), width);
  const scale = Math.min(1, halfWidth_mm / strip);
  const grid = gridOver(all, towards_deg, strip);
  const spreads = areas.map((regions, i) => (loads_s[i] > 0 ? spreadOver(regions, grid) : null));
  for (let j = 1; j < areas.length; j++) {
    const later = spreads[j];
    if (later === null) continue;
    const follower = new Follower(later, grid);
    for (let i = 0; i < j; i++) {
      const first = spreads[i];
      if (first === null) continue;
      const share = scale / (first.total * later.total);
      const { either, behind } = follower.after(first);
      plumes[j] += share * behind * Math.min(1, loads_s[i] / loads_s[j]);
      plumes[i] += share * (either - behind) * Math.min(1, loads_s[j] / loads_s[i]);
    }
  }
  return plumes;
}

/** The same for a layer of a plate, laser by laser in the machine's order. */
export function downwindPlumes(analysis: Analysis, figures: LayerFigures): number[] {
  const areas: Region[][] = figures.lasers.map(() => []);
  for (const piece of figures.pieces) if (piece.laser >= 0) areas[piece.laser].push(piece.region);
  return plumesOver(
    areas,
    figures.lasers.map((laser) => laser.load_s),
    analysis.layout.machine.gasFlow.towards_deg,
    analysis.layout.limits.plumeHalfWidth_mm,
  );
}

/** One laser's spread, asked how much of it lies in the strip behind another's. */
class Follower {
  /** Area in the strip about each column of the grid. */
  private readonly inStrip: Float64Array;
  /** Per column of the strip and row of the spread: area in the strip that lies behind; made when first needed. */
  private behindRows: Float64Array | null = null;
  private readonly firstColumn: number;
  private readonly lastColumn: number;

  constructor(
    private readonly spread: Spread,
    private readonly grid: Grid,
  ) {
    this.firstColumn = Math.max(0, spread.firstColumn - grid.reach);
    this.lastColumn = Math.min(grid.columns - 1, spread.firstColumn + spread.columns - 1 + grid.reach);
    this.inStrip = this.windowed(spread.byColumn, 1);
  }

  /** Σ over pairs of cells in one strip: all of them, and those with this spread behind the other. */
  after(first: Spread): { either: number; behind: number } {
    const from = Math.max(first.firstColumn, this.firstColumn);
    const to = Math.min(first.firstColumn + first.columns - 1, this.lastColumn);
    let either = 0;
    for (let k = from; k <= to; k++)
      either += first.byColumn[k - first.firstColumn] * this.inStrip[k - this.firstColumn];
    if (first.to <= this.spread.from + TOUCH_ROWS) return { either, behind: either };
    if (this.spread.to <= first.from + TOUCH_ROWS) return { either, behind: 0 };
    let behind = 0;
    for (let k = from; k <= to; k++)
      if (first.byColumn[k - first.firstColumn] !== 0) behind += this.column(first, k);
    return { either, behind };
  }

  private column(first: Spread, k: number): number {
    const { spread } = this;
    const rows = (this.behindRows ??= this.makeBehind());
    const base = (k - this.firstColumn) * spread.rows - spread.firstRow;
    const cells = (k - first.firstColumn) * first.rows - first.firstRow;
    const start = Math.max(first.firstRow, spread.firstRow);
    const end = Math.min(first.firstRow + first.rows, spread.firstRow + spread.rows);
    let before = 0;
    for (let r = first.firstRow; r < Math.min(start, first.firstRow + first.rows); r++)
      before += first.cells[cells + r];
    let sum = before * this.inStrip[k - this.firstColumn];
    for (let r = start; r < end; r++) sum += first.cells[cells + r] * rows[base + r];
    return sum;
  }

  private makeBehind(): Float64Array {
    const { rows } = this.spread;
    const window = this.windowed(this.spread.cells, rows);
    for (let base = 0; base < window.length; base += rows) {
      let later = 0;
      for (let at = base + rows - 1; at >= base; at--) {
        const here = window[at];
        window[at] = later + here / 2;
        later += here;
      }
    }
    return window;
  }

  /**
   * Sums over the strip about every column, for values stored `rows` to a column: columns nearer than the reach count in
   * full, those at the reach by half, since two spots are uniform over their columns.
   */
  private windowed(values: Float64Array, rows: number): Float64Array {
    const { firstColumn, lastColumn, spread } = this;
    const { reach } = this.grid;
    const window = new Float64Array((lastColumn - firstColumn + 1) * rows);
    const sum = new Float64Array(rows);
    const add = (k: number, factor: number): void => {
      const base = (k - spread.firstColumn) * rows;
      if (base < 0 || base >= values.length) return;
      for (let r = 0; r < rows; r++) sum[r] += factor * values[base + r];
    };
    for (let k = firstColumn - reach + 1; k < firstColumn + reach; k++) add(k, 1);
    add(firstColumn - reach, 0.5);
    add(firstColumn + reach, 0.5);
    for (let k = firstColumn; k <= lastColumn; k++) {
      window.set(sum, (k - firstColumn) * rows);
      add(k + reach, 0.5);
      add(k + reach + 1, 0.5);
      add(k - reach, -0.5);
      add(k - reach + 1, -0.5);
    }
    return window;
  }
}
