/**
 * One part with its cuts made: which laser exposes which region of it, crumbs given to the neighbour across the cut.
 * A crumb is a piece that only cutting made and that is under `crumbArea_mm2` or, along the cut's normal, narrower than
 * `crumbWidth_mm` (DESIGN 5.5). What fixed zones or the drawing itself make small stays as it is.
 */
import { bordersBetween } from '../exposure/fragments';
import { assemble, type AssembledPart, type Given } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { Border, DividedSection } from '../exposure/types';
import type { Limits } from '../layout/types';
import type { Mm } from '../units/types';
import { cutSides, extentAlong, type CutFragment } from './cutFragment';

/** A fragment goes to one laser, or is cut. */
export type Fate =
  | { readonly kind: 'laser'; readonly laser: number }
  | { readonly kind: 'cut'; readonly cut: CutFragment; readonly positions: readonly Mm[] };

interface Element extends Given {
  /** Index of the fragment it comes from. */
  readonly fragment: number;
  /** Side of the cut it comes from; −1: the fragment is whole. */
  readonly side: number;
}
/** A side of a cut none of which may stay: it is a crumb as a whole. */
export interface CrumbSide {
  readonly fragment: number;
  readonly side: number;
}
export interface RealisedPart {
  readonly assembled: AssembledPart;
  readonly crumbSides: readonly CrumbSide[];
}

function elementsOf(section: DividedSection, fates: readonly Fate[]): Element[] {
  return fates.flatMap((fate, fragment): Element[] => {
    if (fate.kind === 'cut') {
      return cutSides(fate.cut, fate.positions).map((side) => ({ ...side, fragment }));
    }
    return [{ ...section.fragments[fragment], laser: fate.laser, fragment, side: -1 }];
  });
}

/** Borders among elements: those between whole fragments are known, the others are looked for. */
function bordersOf(section: DividedSection, elements: readonly Element[]): Border[] {
  const whole = new Map(elements.flatMap((e, i) => (e.side < 0 ? [[e.fragment, i] as const] : [])));
  const known = section.borders.flatMap((border) => {
    const a = whole.get(border.a);
    const b = whole.get(border.b);
    return a === undefined || b === undefined ? [] : [{ ...border, a, b }];
  });
  const neighbours = new Set(section.borders.flatMap(({ a, b }) => [`${a}/${b}`, `${b}/${a}`]));
  const found = bordersBetween(elements, (a, b) => {
    const [p, q] = [elements[a], elements[b]];
    if (p.side < 0 && q.side < 0) return false;
    if (p.fragment === q.fragment) return p.side !== q.side;
    return neighbours.has(`${p.fragment}/${q.fragment}`);
  });
  return [...known, ...found];
}

const cutOf = (fates: readonly Fate[], fragment: number): CutFragment | null => {
  const fate = fates[fragment];
  return fate.kind === 'cut' ? fate.cut : null;
};

/** Pieces made by cutting alone that are too small. */
function crumbs(
  elements: readonly Element[],
  fates: readonly Fate[],
  part: AssembledPart,
  limits: Limits,
): number[][] {
  return part.pieces
    .filter((piece) => {
      if (!piece.members.every((i) => elements[i].side >= 0)) return false;
      const { normal } = cutOf(fates, elements[piece.members[0]].fragment)!;
      return (
        piece.area_mm2 < limits.crumbArea_mm2 || extentAlong(piece.regions, normal) < limits.crumbWidth_mm
      );
    })
    .map((piece) => [...piece.members]);
}

/** The laser across the longest border of a crumb that may expose all of it; −1 where there is none. */
function absorber(
  members: readonly number[],
  elements: readonly Element[],
  borders: readonly Border[],
  fates: readonly Fate[],
): number {
  let best = -1;
  let longest = 0;
  for (const { a, b, length_mm } of borders) {
    const inA = members.includes(a);
    if (inA === members.includes(b)) continue;
    const laser = elements[inA ? b : a].laser;
    const mayTake = members.every((i) => cutOf(fates, elements[i].fragment)!.lasers.includes(laser));
    if (mayTake && length_mm > longest) [longest, best] = [length_mm, laser];
  }
  return best;
}

/** True where the crumb is all that its laser gets on that side of the cut. */
function isWholeSide(members: readonly number[], elements: readonly Element[]): CrumbSide | null {
  const { fragment, side } = elements[members[0]];
  const all = elements.flatMap((e, i) => (e.fragment === fragment && e.side === side ? [i] : []));
  return all.every((i) => members.includes(i)) ? { fragment, side } : null;
}

const MOST_ROUNDS = 8;

/** Cuts a part as its fates say and reports its pieces, seams and the sides that are crumbs. */
export function realisePart(
  section: DividedSection,
  fates: readonly Fate[],
  model: TimeModel,
  timeFactor: number,
  limits: Limits,
): RealisedPart {
  let elements = elementsOf(section, fates);
  const borders = bordersOf(section, elements);
  const crumbSides: CrumbSide[] = [];
  let assembled = assemble(elements, borders, section.section, model, timeFactor);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = crumbs(elements, fates, assembled, limits);
    const move = found
      .map((members) => ({ members, laser: absorber(members, elements, borders, fates) }))
      .find((m) => m.laser >= 0);
    if (!move) break;
    const side = round === 0 ? isWholeSide(move.members, elements) : null;
    if (side) crumbSides.push(side);
    elements = elements.map((e, i) => (move.members.includes(i) ? { ...e, laser: move.laser } : e));
    assembled = assemble(elements, borders, section.section, model, timeFactor);
  }
  return { assembled, crumbSides };
}
