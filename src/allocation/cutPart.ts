/**
 * One part with its cuts made: which laser exposes which region of it, crumbs given to the neighbour across the cut.
 * A crumb is a piece that only cutting made and that is under `crumbArea_mm2` or, along the cut's normal, narrower than
 * `crumbWidth_mm`. What fixed zones or the drawing itself make small stays as it is.
 */
import { bordersBetween } from '../exposure/fragments';
import { AssembledPart, type Given, type PartGeometry, type PartPiece } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { Border, DividedSection, Fragment } from '../exposure/types';
import type { Box, TaggedRegion } from '../geometry/types';
import type { Limits } from '../layout/types';
import { cutByFigures, isCrumb, leavesTwoSides } from './cutByFigures';
import { cutSides, extentAlong, type CutFragment } from './cutFragment';
import type { CrumbSide, Fate } from './fate';

/** A whole fragment or a connected part of one side of a cut, as a polygon. */
interface Element extends Given {
  readonly region: TaggedRegion;
  readonly box: Box;
  readonly fragment: number;
  /** −1: the fragment is whole. */
  readonly side: number;
}
/** A part with its cuts made by polygons. */
export interface CutPart {
  readonly assembled: AssembledPart;
  /** Sides none of which may stay. */
  readonly crumbSides: readonly CrumbSide[];
}

function wholeElement(from: Fragment, laser: number, fragment: number): Element {
  const { region, box, area_mm2, hatch_mm2, outline_mm } = from;
  return { region, box, area_mm2, hatch_mm2, outline_mm, laser, fragment, side: -1 };
}

function elementsOf(section: DividedSection, fates: readonly Fate[]): Element[] {
  return fates.flatMap((fate, fragment): Element[] => {
    if (fate.kind === 'laser') return [wholeElement(section.fragments[fragment], fate.laser, fragment)];
    return cutSides(fate.cut, fate.positions).map((side) => ({
      ...side,
      laser: fate.lasers[side.side],
      fragment,
    }));
  });
}

const renumbered = ({ length_mm, segments, line }: Border, a: number, b: number): Border => ({
  a,
  b,
  length_mm,
  segments,
  line,
});

/** Borders among elements: those between whole fragments are known, the others are looked for. */
function bordersOf(section: DividedSection, elements: readonly Element[]): Border[] {
  const whole = new Map(elements.flatMap((e, i) => (e.side < 0 ? [[e.fragment, i] as const] : [])));
  const known = section.borders.flatMap((border) => {
    const a = whole.get(border.a);
    const b = whole.get(border.b);
    return a === undefined || b === undefined ? [] : [renumbered(border, a, b)];
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

/** Pieces made by cutting alone that are too small, as lists of elements. */
function crumbs(
  elements: readonly Element[],
  fates: readonly Fate[],
  part: AssembledPart,
  limits: Limits,
): number[][] {
  return part.pieces
    .filter(({ members, area_mm2 }) => {
      if (members.some((i) => elements[i].side < 0)) return false;
      const { normal } = cutOf(fates, elements[members[0]].fragment)!;
      const regions = members.map((i) => elements[i].region.rings);
      return area_mm2 < limits.crumbArea_mm2 || extentAlong(regions, normal) < limits.crumbWidth_mm;
    })
    .map((piece) => [...piece.members]);
}

const mayExpose = (fates: readonly Fate[], fragment: number, laser: number): boolean =>
  ((cutOf(fates, fragment)!.fragment.set >>> laser) & 1) === 1;

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
    if (inA === members.includes(b) || length_mm <= longest) continue;
    const { laser } = elements[inA ? b : a];
    if (members.every((i) => mayExpose(fates, elements[i].fragment, laser)))
      [longest, best] = [length_mm, laser];
  }
  return best;
}

/** The side of a cut that a crumb is all of; null where its laser keeps something of that side. */
function wholeSide(members: readonly number[], elements: readonly Element[]): CrumbSide | null {
  const { fragment, side, laser } = elements[members[0]];
  const all = elements.every((e, i) => e.fragment !== fragment || e.side !== side || members.includes(i));
  return all ? { fragment, laser } : null;
}

const MOST_ROUNDS = 8;

/** Cuts the part's polygons as its fates say, absorbs crumbs and reports the sides that are crumbs as a whole. */
export function cutByPolygons(
  section: DividedSection,
  fates: readonly Fate[],
  model: TimeModel,
  timeFactor: number,
  limits: Limits,
): CutPart {
  let elements = elementsOf(section, fates);
  const borders = bordersOf(section, elements);
  const geometry = (): PartGeometry => ({
    regions: elements.map((e) => [e.region.rings]),
    borders,
    section: section.section,
  });
  const assembleNow = (): AssembledPart => new AssembledPart(elements, borders, geometry, model, timeFactor);
  const crumbSides: CrumbSide[] = [];
  let assembled = assembleNow();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const move = crumbs(elements, fates, assembled, limits)
      .map((members) => ({ members, laser: absorber(members, elements, borders, fates) }))
      .find((m) => m.laser >= 0);
    if (!move) break;
    const side = round === 0 ? wholeSide(move.members, elements) : null;
    if (side) crumbSides.push(side);
    elements = elements.map((e, i) => (move.members.includes(i) ? { ...e, laser: move.laser } : e));
    assembled = assembleNow();
  }
  return { assembled, crumbSides };
}

/** Polygons for a part that was cut by figures: parts of one side belong together. */
function geometryOf(
  section: DividedSection,
  fates: readonly Fate[],
  sides: readonly { fragment: number; side: number }[],
): PartGeometry {
  const elements = elementsOf(section, fates);
  const placeOf = (e: Element): number =>
    sides.findIndex((s) => s.fragment === e.fragment && s.side === e.side);
  const place = elements.map(placeOf);
  const borders = bordersOf(section, elements).map((border) => ({
    a: place[border.a],
    b: place[border.b],
    segments: border.segments,
  }));
  const regions = sides.map((_, i) => elements.filter((_e, k) => place[k] === i).map((e) => e.region.rings));
  return { regions, borders, section: section.section };
}

/** The part by figures alone; null where polygons have to tell. `sound` says whether the figures hold. */
export function assembleByFigures(
  section: DividedSection,
  fates: readonly Fate[],
  model: TimeModel,
  timeFactor: number,
  limits: Limits,
): { assembled: AssembledPart; sound: () => boolean } | null {
  const figures = cutByFigures(section, fates);
  if (!figures) return null;
  const { sides, links } = figures;
  const assembled = new AssembledPart(
    sides,
    links,
    () => geometryOf(section, fates, sides),
    model,
    timeFactor,
  );
  const small = ({ members, area_mm2 }: PartPiece): boolean => isCrumb(sides, members, area_mm2, limits);
  return { assembled, sound: () => leavesTwoSides(fates) && !assembled.pieces.some(small) };
}
