/**
 * What one part asks of the lasers in one layer, before anything is decided: load that is fixed, load that may be
 * shared, and what no choice can avoid. The bound and the plan count no seam a choice could avoid and a gap per piece
 * only where it cannot be avoided: a seam counts between fragments with no laser in common; a laser's
 * fixed fragments need as many pieces as they have groups that this laser could join up; shared fragments that no fixed
 * piece can take in need one piece per group. Seconds; lasers by machine index.
 */
import type { Keeps } from '../exposure/placed';
import { divisibleLoad, type TimeModel } from '../exposure/timeModel';
import type { DividedSection, Fragment } from '../exposure/types';
import type { Seconds } from '../units/types';
import { has, membersOf, singleOf } from '../zoning/lasers';
import type { LaserSet } from '../zoning/types';

/** Load that any laser of a set may take, in any split. */
export interface SharedDemand {
  /** Index of the fragment; −1: the gap of a group of fragments, of no one fragment. */
  readonly fragment: number;
  readonly set: LaserSet;
  readonly load_s: Seconds;
}
/** Everything one part asks for in one layer, before anything is decided. */
export interface Demand extends Keeps {
  /** Fixed load by laser index, sparse. */
  readonly fixed: ReadonlyMap<number, Seconds>;
  readonly shared: readonly SharedDemand[];
  /** Lasers with a fixed fragment. */
  readonly fixedSet: LaserSet;
  /** Lasers that may expose every fragment; 0 where part of the section is unassigned or no laser may. */
  readonly holders: LaserSet;
  /** The laser of every fragment where none is shared; null otherwise. */
  readonly decided: readonly number[] | null;
}

type Link = (a: number, b: number) => boolean;

/** Groups of fragments joined by borders that `link` lets through: the group number of each fragment. */
function groupsBy(section: DividedSection, link: Link): number[] {
  const group = section.fragments.map((_, i) => i);
  const find = (i: number): number => (group[i] === i ? i : (group[i] = find(group[i])));
  for (const { a, b } of section.borders) if (link(a, b)) group[find(Math.max(a, b))] = find(Math.min(a, b));
  return group.map((_, i) => find(i));
}

/** Per fragment, seam length that no choice avoids: borders to fragments with no laser in common. */
function certainSeams({ fragments, borders }: DividedSection): number[] {
  const lengths = fragments.map(() => 0);
  for (const { a, b, length_mm } of borders) {
    if ((fragments[a].set & fragments[b].set) !== 0) continue;
    lengths[a] += length_mm;
    lengths[b] += length_mm;
  }
  return lengths;
}

/** Pieces that each laser must make of its fixed fragments, and which shared fragments those pieces may take in. */
function certainPieces(section: DividedSection): { pieces: Map<number, number>; takenIn: boolean[] } {
  const { fragments } = section;
  const pieces = new Map<number, number>();
  const takenIn = fragments.map(() => false);
  const fixedSet = fragments.reduce((set, f) => (singleOf(f.set) >= 0 ? set | f.set : set), 0);
  for (const laser of membersOf(fixedSet)) {
    const mayTake = (i: number): boolean => has(fragments[i].set, laser);
    const group = groupsBy(section, (a, b) => mayTake(a) && mayTake(b));
    const mine = new Set(group.filter((_, i) => singleOf(fragments[i].set) === laser));
    pieces.set(laser, mine.size);
    group.forEach((g, i) => {
      if (mayTake(i) && mine.has(g)) takenIn[i] = true;
    });
  }
  return { pieces, takenIn };
}

/** Groups of shared fragments that no fixed piece can take in: each needs at least one piece of its own. */
function looseGroups(section: DividedSection, takenIn: readonly boolean[]): number[][] {
  const { fragments } = section;
  const group = groupsBy(section, (a, b) => (fragments[a].set & fragments[b].set) !== 0);
  const members = new Map<number, number[]>();
  group.forEach((g, i) => members.set(g, [...(members.get(g) ?? []), i]));
  return [...members.values()].filter((list) =>
    list.every((i) => !takenIn[i] && singleOf(fragments[i].set) < 0),
  );
}

const baseLoad = (model: TimeModel, fragment: Fragment, seam_mm: number, timeFactor: number): Seconds =>
  timeFactor *
  divisibleLoad(model, { hatch_mm2: fragment.hatch_mm2, outline_mm: fragment.outline_mm, seam_mm });

function holdersOf({ fragments, unassigned_mm2 }: DividedSection): LaserSet {
  if (unassigned_mm2 > 0 || fragments.length === 0) return 0;
  return fragments.reduce((set, fragment) => set & fragment.set, ~0);
}

/** The demand of one part's section. */
export function demandOf(section: DividedSection, model: TimeModel, timeFactor: number): Demand {
  const { fragments } = section;
  const seam = certainSeams(section);
  const { pieces, takenIn } = certainPieces(section);
  const gap_s = timeFactor * model.perPiece;
  const fixed = new Map<number, Seconds>();
  for (const [laser, count] of pieces) fixed.set(laser, count * gap_s);
  const shared: { fragment: number; set: LaserSet; load_s: Seconds }[] = [];
  fragments.forEach((fragment, i) => {
    const load_s = baseLoad(model, fragment, seam[i], timeFactor);
    const laser = singleOf(fragment.set);
    if (laser >= 0) fixed.set(laser, fixed.get(laser)! + load_s);
    else shared.push({ fragment: i, set: fragment.set, load_s });
  });
  for (const group of looseGroups(section, takenIn)) {
    const set = group.reduce((all, i) => all | fragments[i].set, 0);
    const only = group.length === 1 ? shared.find((s) => s.fragment === group[0]) : undefined;
    if (only) only.load_s += gap_s;
    else shared.push({ fragment: -1, set, load_s: gap_s });
  }
  return {
    fixed,
    shared,
    fixedSet: fragments.reduce((set, f) => (singleOf(f.set) >= 0 ? set | f.set : set), 0),
    holders: holdersOf(section),
    decided: shared.length === 0 ? fragments.map((f) => singleOf(f.set)) : null,
    kept: null,
  };
}
