/**
 * The edges of a region, found by place: a grid of square cells over the region's box holds the edges that pass each
 * cell. Millimetres.
 */
import type { Mm } from '../units/types';
import { boxOf } from './region';
import type { Box, Region } from './types';

const MOST_CELLS_A_SIDE = 64;

export class EdgeIndex {
  private readonly box: Box;
  private readonly side: number;
  private readonly cellX: Mm;
  private readonly cellY: Mm;
  /** x0, y0, x1, y1 per edge */
  readonly ends: Float64Array;
  private readonly cells: number[][];

  constructor(region: Region) {
    let count = 0;
    for (const ring of region) count += ring.length >> 1;
    this.ends = new Float64Array(4 * count);
    this.box = boxOf(region);
    this.side = Math.max(1, Math.min(MOST_CELLS_A_SIDE, Math.round(Math.sqrt(count))));
    this.cellX = (this.box.maxX - this.box.minX) / this.side || 1;
    this.cellY = (this.box.maxY - this.box.minY) / this.side || 1;
    this.cells = Array.from({ length: this.side * this.side }, () => []);
    let e = 0;
    for (const ring of region)
      for (let i = 0; i < ring.length; i += 2) {
        const j = i + 2 === ring.length ? 0 : i + 2;
        this.add(e++, ring[i], ring[i + 1], ring[j], ring[j + 1]);
      }
  }

  private add(e: number, x0: Mm, y0: Mm, x1: Mm, y1: Mm): void {
    this.ends.set([x0, y0, x1, y1], 4 * e);
    this.eachCell(Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1), 0, (cell) => {
      cell.push(e);
    });
  }

  private eachCell(minX: Mm, minY: Mm, maxX: Mm, maxY: Mm, slack: Mm, visit: (cell: number[]) => void): void {
    const column = (x: Mm): number => this.clamp((x - this.box.minX) / this.cellX);
    const row = (y: Mm): number => this.clamp((y - this.box.minY) / this.cellY);
    const lastColumn = column(maxX + slack);
    const lastRow = row(maxY + slack);
    for (let r = row(minY - slack); r <= lastRow; r++)
      for (let c = column(minX - slack); c <= lastColumn; c++) visit(this.cells[r * this.side + c]);
  }

  private clamp(place: number): number {
    return Math.max(0, Math.min(this.side - 1, Math.floor(place)));
  }

  /** Edges whose cells come within `slack` of a box; an edge may be named more than once. */
  near(box: Box, slack: Mm, visit: (edge: number) => void): void {
    this.eachCell(box.minX, box.minY, box.maxX, box.maxY, slack, (cell) => cell.forEach(visit));
  }

  /** True where an edge passes within `tolerance` of the point. */
  passes(x: Mm, y: Mm, tolerance: Mm): boolean {
    let found = false;
    this.eachCell(x, y, x, y, tolerance, (cell) => {
      for (const e of cell) {
        if (found) return;
        found = this.distance(e, x, y) <= tolerance;
      }
    });
    return found;
  }

  /** Distance of a point from an edge. */
  distance(e: number, x: Mm, y: Mm): Mm {
    const { ends } = this;
    const x0 = ends[4 * e];
    const y0 = ends[4 * e + 1];
    const dx = ends[4 * e + 2] - x0;
    const dy = ends[4 * e + 3] - y0;
    const length2 = dx * dx + dy * dy;
    const along = length2 > 0 ? ((x - x0) * dx + (y - y0) * dy) / length2 : 0;
    const s = Math.max(0, Math.min(1, along));
    return Math.hypot(x - x0 - s * dx, y - y0 - s * dy);
  }

  /** Vertices of the region strictly between the ends of a segment and within `tolerance` of it, in order. */
  verticesAlong(x0: Mm, y0: Mm, x1: Mm, y1: Mm, tolerance: Mm): { x: Mm; y: Mm; along: Mm }[] {
    const dx = x1 - x0;
    const dy = y1 - y0;
    const length = Math.hypot(dx, dy);
    const found = new Map<number, { x: Mm; y: Mm; along: Mm }>();
    const box = {
      minX: Math.min(x0, x1),
      minY: Math.min(y0, y1),
      maxX: Math.max(x0, x1),
      maxY: Math.max(y0, y1),
    };
    this.near(box, tolerance, (e) => {
      const x = this.ends[4 * e];
      const y = this.ends[4 * e + 1];
      const along = ((x - x0) * dx + (y - y0) * dy) / length;
      if (along <= 2 * tolerance || along >= length - 2 * tolerance) return;
      if (Math.abs((x - x0) * dy - (y - y0) * dx) <= tolerance * length) found.set(e, { x, y, along });
    });
    return [...found.values()].sort((a, b) => a.along - b.along);
  }
}
