/**
 * Fragments given to lasers → pieces: adjacent fragments of one laser merge, borders to another laser are
 * seams, borders to unassigned area are neither seam nor contour. Figures come first; outlines of pieces and seams are
 * worked out when somebody looks at them. Millimetres, seconds, platform coordinates.
 */
import type { Region } from '../geometry/types';
import type { Mm, Mm2, Seconds } from '../units/types';
import { seamsOf, type PartSeams } from './seams';
import { pieceLoad, type TimeModel } from './timeModel';

/** A fragment, or part of one after a cut, given to a laser. */
export interface Given {
  readonly laser: number;
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
}
/** Two given fragments touch along this length. */
export interface Link {
  readonly a: number;
  readonly b: number;
  readonly length_mm: Mm;
}
/** Where the given fragments lie. */
export interface PartGeometry {
  /** Per given fragment the regions it is made of. */
  readonly regions: readonly (readonly Region[])[];
  /** x0, y0, x1, y1 per segment. */
  readonly borders: readonly { readonly a: number; readonly b: number; readonly segments: Float64Array }[];
  readonly section: Region;
}
/** What one laser exposes of a part without a break; figures as the load formula wants them, before seam overlap. */
export interface PartPiece {
  readonly laser: number;
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly seam_mm: Mm;
  readonly load_s: Seconds;
  /** Indices of the given fragments that merged into it. */
  readonly members: readonly number[];
}

/** One part in one layer, given to lasers. */
export class AssembledPart {
  readonly pieces: readonly PartPiece[];
  readonly seamLength_mm: Mm;
  private geometryMade: PartGeometry | null = null;
  private seamsMade: PartSeams | null = null;

  constructor(
    readonly given: readonly Given[],
    links: readonly Link[],
    private readonly makeGeometry: () => PartGeometry,
    model: TimeModel,
    timeFactor: number,
  ) {
    const seamOf = seamLengths(given, links);
    this.seamLength_mm = sum(seamOf) / 2;
    this.pieces = groups(given, links).map((members) => makePiece(members, given, seamOf, model, timeFactor));
  }

  geometry(): PartGeometry {
    return (this.geometryMade ??= this.makeGeometry());
  }

  /** The regions that make up a piece, side by side. */
  regionsOf(piece: PartPiece): readonly Region[] {
    const { regions } = this.geometry();
    return piece.members.flatMap((i) => regions[i]);
  }

  seams(): PartSeams {
    return (this.seamsMade ??= this.seamLength_mm > 0 ? this.findSeams() : NO_SEAMS);
  }

  private findSeams(): PartSeams {
    const { borders, section } = this.geometry();
    const between = borders
      .map(({ a, b, segments }) => ({
        lasers: [this.given[a].laser, this.given[b].laser] as const,
        segments,
      }))
      .filter(({ lasers: [p, q] }) => p !== q);
    return seamsOf(between, section);
  }
}

const NO_SEAMS: PartSeams = { seams: [], witnessLines: 0 };
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const WHOLE: readonly (readonly number[])[] = [[0]];

/** Given fragments of one laser that touch, as lists of indices in ascending order. */
function groups(given: readonly Given[], links: readonly Link[]): readonly (readonly number[])[] {
  if (given.length === 1) return WHOLE;
  const root = given.map((_, i) => i);
  const find = (i: number): number => (root[i] === i ? i : (root[i] = find(root[i])));
  for (const { a, b } of links) {
    if (given[a].laser !== given[b].laser) continue;
    const [p, q] = [find(a), find(b)];
    root[Math.max(p, q)] = Math.min(p, q);
  }
  const place: number[] = [];
  const members: number[][] = [];
  for (let i = 0; i < given.length; i++) {
    const r = find(i);
    if (r === i) place[i] = members.push([i]) - 1;
    else members[place[r]].push(i);
  }
  return members;
}

/** Seam length on the side of each given fragment. */
function seamLengths(given: readonly Given[], links: readonly Link[]): number[] {
  const lengths = given.map(() => 0);
  for (const { a, b, length_mm } of links) {
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
  let area_mm2 = 0;
  let hatch_mm2 = 0;
  let outline_mm = 0;
  let seam_mm = 0;
  for (const i of members) {
    area_mm2 += given[i].area_mm2;
    hatch_mm2 += given[i].hatch_mm2;
    outline_mm += given[i].outline_mm;
    seam_mm += seamOf[i];
  }
  const load_s = pieceLoad(model, { hatch_mm2, outline_mm, seam_mm }, timeFactor);
  return { laser: given[members[0]].laser, area_mm2, hatch_mm2, outline_mm, seam_mm, load_s, members };
}
