/**
 * A part with its cuts made, by figures alone: where every cut leaves two connected sides, areas, outlines and the length
 * of the cut follow from the sweep profile, and no polygon is touched until somebody looks. That holds for nearly every
 * cut, and makes a drag cheap. Millimetres.
 */
import type { Given, Link } from '../exposure/pieces';
import type { Border, DividedSection } from '../exposure/types';
import type { Limits } from '../layout/types';
import type { Mm } from '../units/types';
import type { CutFragment } from './cutFragment';
import type { Fate } from './fate';

/** A whole fragment or one side of a cut, told by figures alone. */
export interface Side extends Given {
  readonly fragment: number;
  /** −1: the fragment is whole. */
  readonly side: number;
  /** Extent along the cut's normal. */
  readonly extent_mm: Mm;
}
/**
 * A part with its cuts made, without its polygons: what touches what along which length; `links` count within
 * `sides`.
 */
export interface Figures {
  readonly sides: readonly Side[];
  readonly links: readonly Link[];
}

const ON_LINE_MM = 1e-6;

function wholeSide(
  { area_mm2, hatch_mm2, outline_mm }: Omit<Given, 'laser'>,
  fragment: number,
  laser: number,
): Side {
  return { laser, area_mm2, hatch_mm2, outline_mm, fragment, side: -1, extent_mm: Infinity };
}

function lowSide(cut: CutFragment, c: Mm, laser: number, fragment: number): Side {
  const { region, hatch } = cut;
  return {
    laser,
    area_mm2: region.area(c),
    hatch_mm2: hatch ? hatch.area(c) : 0,
    outline_mm: region.outline(c),
    fragment,
    side: 0,
    extent_mm: c - region.min,
  };
}

function highSide(cut: CutFragment, c: Mm, laser: number, fragment: number): Side {
  const { region, hatch, fragment: whole } = cut;
  return {
    laser,
    area_mm2: whole.area_mm2 - region.area(c),
    hatch_mm2: whole.hatch_mm2 - (hatch ? hatch.area(c) : 0),
    outline_mm: whole.outline_mm - region.outline(c),
    fragment,
    side: 1,
    extent_mm: region.max - c,
  };
}

function sidesOf(section: DividedSection, fates: readonly Fate[]): Side[] | null {
  const sides: Side[] = [];
  for (let f = 0; f < fates.length; f++) {
    const fate = fates[f];
    if (fate.kind === 'laser') {
      sides.push(wholeSide(section.fragments[f], f, fate.laser));
      continue;
    }
    const { cut, lasers, positions } = fate;
    if (positions.length !== 1) return null;
    sides.push(lowSide(cut, positions[0], lasers[0], f), highSide(cut, positions[0], lasers[1], f));
  }
  return sides;
}

/** Smallest and largest n·p of a border. */
function rangeAlong(border: Border, { normal: [nx, ny] }: CutFragment): readonly [Mm, Mm] {
  const { line } = border;
  if (line && line.nx === nx && line.ny === ny) return [line.c, line.c];
  const s = border.segments;
  let min = Infinity;
  let max = -Infinity;
  for (let i = 0; i < s.length; i += 2) {
    const p = nx * s[i] + ny * s[i + 1];
    if (p < min) min = p;
    if (p > max) max = p;
  }
  return [min, max];
}

/** Which side of a fragment a border lies on; −1 where the cut meets the border. */
function sideOfBorder(border: Border, fate: Fate): number {
  if (fate.kind === 'laser') return 0;
  const [min, max] = rangeAlong(border, fate.cut);
  if (max <= fate.positions[0] + ON_LINE_MM) return 0;
  return min >= fate.positions[0] - ON_LINE_MM ? 1 : -1;
}

function linksOf(section: DividedSection, fates: readonly Fate[]): Link[] | null {
  const first: number[] = [];
  let count = 0;
  for (const fate of fates) {
    first.push(count);
    count += fate.kind === 'laser' ? 1 : 2;
  }
  const links: Link[] = [];
  for (const border of section.borders) {
    const a = sideOfBorder(border, fates[border.a]);
    const b = sideOfBorder(border, fates[border.b]);
    if (a < 0 || b < 0) return null;
    links.push({ a: first[border.a] + a, b: first[border.b] + b, length_mm: border.length_mm });
  }
  fates.forEach((fate, f) => {
    if (fate.kind === 'laser') return;
    links.push({ a: first[f], b: first[f] + 1, length_mm: fate.cut.region.chord(fate.positions[0]) });
  });
  return links;
}

/** True where every cut leaves two connected sides, which is what figures alone take for granted. */
export const leavesTwoSides = (fates: readonly Fate[]): boolean =>
  fates.every((fate) => fate.kind === 'laser' || fate.cut.leavesTwo(fate.positions[0]));

/** Figures of all sides, given that leavesTwoSides; null where a cut meets a border or several cuts one fragment. */
export function cutByFigures(section: DividedSection, fates: readonly Fate[]): Figures | null {
  const sides = sidesOf(section, fates);
  const links = sides && linksOf(section, fates);
  return sides && links ? { sides, links } : null;
}

/** True where a piece that only cutting made is too small, told from its sides; several sides count as one is enough. */
export function isCrumb(
  sides: readonly Side[],
  members: readonly number[],
  area_mm2: number,
  limits: Limits,
): boolean {
  if (members.some((i) => sides[i].side < 0)) return false;
  if (area_mm2 < limits.crumbArea_mm2) return true;
  return members.every((i) => sides[i].extent_mm < limits.crumbWidth_mm);
}
