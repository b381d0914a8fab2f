/**
 * Plates for the tests of exports, so plain that every figure can be had by hand. Millimetres.
 */
import { emptyLayout } from '../../src/layout/defaults';
import type { Layout, Part, Zoning } from '../../src/layout/types';

export const rectangleRing = (x: number, y: number, width: number, depth: number) =>
  [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ] as const;

export const partAt = (id: string, shape: string, x: number, y: number, more: Partial<Part> = {}): Part => ({
  id,
  shape,
  at_mm: [x, y],
  turn_deg: 0,
  seams: 'free',
  laser: null,
  timeFactor: 1,
  ...more,
});

export const strips = (line_mm: number, lasers = ['L1', 'L2'], sharedBand_mm = 0): Zoning => ({
  strategy: 'strips',
  run_deg: 90,
  lines_mm: [line_mm],
  sharedBand_mm,
  lasers,
});

/**
 * A block of 60 × 60 × 20 mm about the platform's centre, layers of 0.05 mm. Up to 12 mm the zones' line lies at x 10, so that L1
 * exposes 40 × 60 and L2 20 × 60; above, it lies at x 40 and L1 exposes all.
 */
export function block(change: Partial<Layout> = {}): Layout {
  const base = emptyLayout();
  return {
    ...base,
    name: 'Ferry spares, plate 1',
    process: { ...base.process, layer_mm: 0.05, seamOverlap_mm: 0.1 },
    shapes: { block: { slabs: [{ to_mm: 20, rings: [rectangleRing(0, 0, 60, 60)] }] } },
    parts: [partAt('P01', 'block', -30, -30)],
    zoning: [
      { from_mm: 0, zoning: strips(10) },
      { from_mm: 12, zoning: strips(40) },
    ],
    ...change,
  };
}

/** The same with L2 off: a third of its lower layers is unassigned, which blocks hand-over. */
export function blocked(): Layout {
  const base = block();
  const lasers = base.machine.lasers.map((laser) => (laser.id === 'L2' ? { ...laser, on: false } : laser));
  return { ...base, machine: { ...base.machine, lasers } };
}

/** Rows of an RFC 4180 text, or of one with another separator. */
export function readCsv(text: string, separator = ','): string[][] {
  const rows: string[][] = [];
  let [row, cell, quoted]: [string[], string, boolean] = [[], '', false];
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (quoted) {
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') cell += text[++i];
      else quoted = false;
    } else if (c === '"' && cell === '') quoted = true;
    else if (c === separator) {
      row.push(cell);
      cell = '';
    } else if (c === '\r' && text[i + 1] === '\n') {
      rows.push([...row, cell]);
      [row, cell] = [[], ''];
      i++;
    } else cell += c;
  }
  if (cell !== '' || row.length > 0) throw new Error('the last line is not ended');
  return rows;
}

/** Rows by the names of their columns. */
export function recordsOf(text: string, separator = ','): Record<string, string>[] {
  const [header = [], ...rows] = readCsv(text, separator);
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [header[i]!, cell])));
}
