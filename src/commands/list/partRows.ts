/**
 * The rows of the part table: what stands where, which lasers expose it in the layer shown, and whether a problem
 * names it. Degrees, millimetres.
 */
import type { Analysis, LayerFigures } from '../../build/types';
import type { PartId } from '../../layout/types';

export interface PartRow {
  readonly id: PartId;
  readonly shape: string;
  readonly height_mm: number;
  readonly turn_deg: number;
  /** Indices of the lasers that expose it in this layer, as "0" or "0 2"; "" where it has no section here. */
  readonly lasers: string;
  readonly pinned: boolean;
  readonly locked: boolean;
  readonly hidden: boolean;
  readonly mayNotBeCut: boolean;
  /** 1-based number of the first problem that names it; 0 where there is none. */
  readonly problem: number;
}

function lasersByPart(figures: LayerFigures | undefined): ReadonlyMap<number, readonly number[]> {
  const found = new Map<number, Set<number>>();
  for (const { part, laser } of figures?.pieces ?? []) {
    const set = found.get(part) ?? new Set<number>();
    found.set(part, set.add(laser));
  }
  return new Map([...found].map(([part, set]) => [part, [...set].sort((a, b) => a - b)]));
}

/** Parts that the view marks. */
export interface Marks {
  readonly locked: readonly PartId[];
  readonly hidden: readonly PartId[];
}

/** One row for each part, in the order of the layout. */
export function partRows(
  analysis: Analysis,
  figures: LayerFigures | undefined,
  { locked, hidden }: Marks = { locked: [], hidden: [] },
): PartRow[] {
  const lasers = lasersByPart(figures);
  const problems = new Map<PartId, number>();
  analysis.problems.forEach((problem, i) => {
    for (const id of problem.parts) if (!problems.has(id)) problems.set(id, i + 1);
  });
  return analysis.layout.parts.map((part, i) => ({
    id: part.id,
    shape: part.shape,
    height_mm: analysis.parts[i]?.height_mm ?? 0,
    turn_deg: part.turn_deg,
    lasers: (lasers.get(i) ?? []).join(' '),
    locked: locked.includes(part.id),
    hidden: hidden.includes(part.id),
    pinned: part.laser !== null,
    mayNotBeCut: part.seams === 'none',
    problem: problems.get(part.id) ?? 0,
  }));
}
