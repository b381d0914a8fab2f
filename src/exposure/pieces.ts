/**
 * Fragments given to lasers → pieces: adjacent fragments of one laser merge (DESIGN 5.4), borders to another laser are
 * seams, borders to unassigned area are neither seam nor contour. Millimetres, seconds, platform coordinates.
 */
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Mm, Mm2, Seconds } from '../units/types';
import { seamsOf, type PartSeams } from './seams';
import { pieceLoad, type TimeModel } from './timeModel';
import type { Border } from './types';

/** A fragment, or part of one after a cut, given to a laser. */
export interface Given {
  readonly laser: number;
  readonly region: TaggedRegion;
  readonly box: Box;
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
}
export interface PartPiece {
  readonly laser: number;
  /** The regions that merged into it, side by side. */
  readonly regions: readonly Region[];
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly seam_mm: Mm;
  readonly load_s: Seconds;
  /** Indices of the given fragments that merged into it. */
  readonly members: readonly number[];
}
export interface AssembledPart extends PartSeams {
  readonly pieces: readonly PartPiece[];
}

function roots(count: number, given: readonly Given[], borders: readonly Border[]): number[] {
  const parent = Array.from({ length: count }, (_, i) => i);
  const find = (i: number): number => (parent[i] === i ? i : (parent[i] = find(parent[i])));
  for (const { a, b } of borders) {
    if (given[a].laser !== given[b].laser) continue;
    const [low, high] = [find(a), find(b)].sort((p, q) => p - q) as [number, number];
    parent[high] = low;
  }
  return parent.map((_, i) => find(i));
}

/** Seam length on the side of each given fragment. */
function seamLengths(given: readonly Given[], borders: readonly Border[]): number[] {
  const lengths = given.map(() => 0);
  for (const { a, b, length_mm } of borders) {
    if (given[a].laser === given[b].laser) continue;
    lengths[a] += length_mm;
    lengths[b] += length_mm;
  }
  return lengths;
}

function makePiece(
  members: readonly number[],
  given: readonly Given[],
  seamOf: readonly number[],
  model: TimeModel,
  timeFactor: number,
): PartPiece {
  const sum = (pick: (i: number) => number): number => members.reduce((total, i) => total + pick(i), 0);
  const measures = {
    hatch_mm2: sum((i) => given[i].hatch_mm2),
    outline_mm: sum((i) => given[i].outline_mm),
    seam_mm: sum((i) => seamOf[i]),
  };
  return {
    laser: given[members[0]].laser,
    regions: members.map((i) => given[i].region.rings),
    area_mm2: sum((i) => given[i].area_mm2),
    ...measures,
    load_s: pieceLoad(model, measures, timeFactor),
    members,
  };
}

/** Pieces and seams of one part in one layer. */
export function assemble(
  given: readonly Given[],
  borders: readonly Border[],
  section: Region,
  model: TimeModel,
  timeFactor: number,
): AssembledPart {
  const root = roots(given.length, given, borders);
  const seamOf = seamLengths(given, borders);
  const groups = new Map<number, number[]>();
  root.forEach((r, i) => {
    const group = groups.get(r);
    if (group) group.push(i);
    else groups.set(r, [i]);
  });
  const pieces = [...groups.values()].map((members) => makePiece(members, given, seamOf, model, timeFactor));
  const seamBorders = borders
    .filter(({ a, b }) => given[a].laser !== given[b].laser)
    .map(({ a, b, segments }) => ({
      lasers: [given[a].laser, given[b].laser] as const,
      segments,
    }));
  if (seamBorders.length === 0) return { pieces, seams: [], witnessLines: 0 };
  return { pieces, ...seamsOf(seamBorders, section) };
}
