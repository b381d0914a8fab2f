/**
 * Which rule gives each part to lasers, over the whole height. A part with seams "none", and every part under
 * "wholeParts", keeps one laser from its first to its last layer where some zone holds it whole; the choice minimises
 * the build's exposure. Where no zone does, it is cut along the zones, each cell of it going to one laser,
 * and that is a fault; unless it is only that some of it is unassigned: the rest then keeps one laser all the same.
 * A pinned part is fixed by its cells already.
 */
import type { Rule } from '../allocation/allocate';
import { compactOf, type Compact } from '../allocation/plan';
import { rememberedDemand } from '../allocation/remembered';
import { solveWhole } from '../allocation/solver/whole';
import type { SharedLoad, StickyPart } from '../allocation/types';
import { pieceLoad, type TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import type { Layout, Part } from '../layout/types';
import type { Seconds } from '../units/types';
import { singleOf } from '../zoning/lasers';
import type { Division, LaserSet } from '../zoning/types';

/** The divided sections of one part by stretch; null where the part has no section. */
export type PartSections = readonly (DividedSection | null)[];

export interface Rules {
  readonly rules: readonly Rule[];
  /** Parts that should keep one laser and cannot. */
  readonly heldByNoZone: readonly number[];
  /** The choice is proven to be the best. */
  readonly proven: boolean;
}

/** True for a part that is to keep one laser from its first to its last layer; a pin decides that by itself. */
export const keepsLaser = (layout: Layout, part: Part): boolean =>
  part.laser === null && (part.seams === 'none' || layout.allocation === 'wholeParts');

/** True where a part keeps its laser over the height: then no layer can be divided without knowing the others. */
export const anyKeepsLaser = (layout: Layout): boolean =>
  layout.parts.some((part) => keepsLaser(layout, part));

/** Lasers that may expose all of a part in every layer. */
export function holdersOf(sections: PartSections, model: TimeModel, timeFactor: number): LaserSet {
  let set = ~0;
  for (const section of sections) if (section) set &= rememberedDemand(section, model, timeFactor).holders;
  return set === ~0 ? 0 : set;
}

/** Lasers that may expose all that any laser may, in every layer; every bit where that is nothing. */
function lasersForRest(sections: PartSections): LaserSet {
  let set: LaserSet = ~0;
  for (const section of sections) for (const fragment of section?.fragments ?? []) set &= fragment.set;
  return set;
}

/** In place of a cell's number. */
const WHOLE = -1;
const REST = -2;

/** A thing that keeps one laser: a whole part, what of it is not unassigned, or one cell of a part that no zone holds. */
interface Unit {
  readonly part: number;
  /** A cell's number, WHOLE or REST */
  readonly cell: number;
  readonly id: string;
  readonly set: LaserSet;
  readonly loads_s: Seconds[];
}

function loadOfCell(
  section: DividedSection | null,
  cell: number,
  model: TimeModel,
  timeFactor: number,
): Seconds {
  if (!section) return 0;
  return section.fragments
    .filter((f) => cell < 0 || f.cell === cell)
    .reduce(
      (sum, f) =>
        sum + pieceLoad(model, { hatch_mm2: f.hatch_mm2, outline_mm: f.outline_mm, seam_mm: 0 }, timeFactor),
      0,
    );
}

function unitsOf(part: Part, index: number, sections: PartSections, model: TimeModel): Unit[] {
  const loads = (cell: number): Seconds[] => sections.map((s) => loadOfCell(s, cell, model, part.timeFactor));
  const holders = holdersOf(sections, model, part.timeFactor);
  const unit = (cell: number, set: LaserSet): Unit => {
    const id = cell < 0 ? part.id : `${part.id}/${cell}`;
    return { part: index, cell, id, set, loads_s: loads(cell) };
  };
  if (holders !== 0) return [unit(WHOLE, holders)];
  const rest = lasersForRest(sections);
  if (rest === ~0) return [];
  if (rest !== 0) return [unit(REST, rest)];
  const cells = new Map<number, LaserSet>();
  for (const section of sections) for (const f of section?.fragments ?? []) cells.set(f.cell, f.set);
  return [...cells].map(([cell, set]) => unit(cell, set));
}

interface Background {
  readonly fixed_s: Seconds[][];
  readonly shared: SharedLoad[][];
}

/** Load per stretch that is not up for this choice, by the solver's laser index. */
function backgroundOf(
  layout: Layout,
  all: readonly PartSections[],
  free: readonly number[],
  model: TimeModel,
  compact: Compact,
): Background {
  const stretches = all[0]?.length ?? 0;
  const place = new Map(compact.lasers.map((laser, i) => [laser, i]));
  const fixed_s = Array.from({ length: stretches }, () => compact.lasers.map(() => 0));
  const shared: SharedLoad[][] = Array.from({ length: stretches }, () => []);
  for (const p of free) {
    all[p].forEach((section, s) => {
      if (!section) return;
      const demand = rememberedDemand(section, model, layout.parts[p].timeFactor);
      for (const [laser, load] of demand.fixed) fixed_s[s][place.get(laser)!] += load;
      for (const { set, load_s } of demand.shared) shared[s].push({ mask: compact.toMask(set), load_s });
    });
  }
  return { fixed_s, shared };
}

function choose(
  units: readonly Unit[],
  layers: readonly number[],
  background: Background,
  compact: Compact,
): { laserOf: number[]; proven: boolean } {
  const laserOf = units.map(({ set }) => singleOf(set));
  const open = units.flatMap((_, i) => (laserOf[i] < 0 ? [i] : []));
  if (open.length === 0) return { laserOf, proven: true };
  units.forEach(({ loads_s }, i) => {
    if (laserOf[i] < 0) return;
    loads_s.forEach((load, s) => (background.fixed_s[s][compact.lasers.indexOf(laserOf[i])] += load));
  });
  const parts: StickyPart[] = open.map((i) => ({
    id: units[i].id,
    mask: compact.toMask(units[i].set),
    loads_s: units[i].loads_s,
  }));
  const found = solveWhole({ laserCount: compact.lasers.length, layers, ...background, parts });
  open.forEach((i, k) => (laserOf[i] = compact.lasers[found.laserOf[k]]));
  return { laserOf, proven: found.proven };
}

function ruleOf(
  units: readonly Unit[],
  laserOf: readonly number[],
  part: number,
  sections: PartSections,
): Rule {
  const mine = units.flatMap((unit, i) => (unit.part === part ? [i] : []));
  const whole = mine.find((i) => units[i].cell === WHOLE);
  if (whole !== undefined) return { kind: 'whole', laser: laserOf[whole], holders: units[whole].set };
  const rest = mine.find((i) => units[i].cell === REST);
  if (rest === undefined)
    return { kind: 'alongZones', laserOfCell: new Map(mine.map((i) => [units[i].cell, laserOf[i]])) };
  const laserOfCell = new Map<number, number>();
  for (const section of sections)
    for (const { cell } of section?.fragments ?? []) laserOfCell.set(cell, laserOf[rest]);
  return { kind: 'alongZones', laserOfCell };
}

const FREE: Rule = { kind: 'free' };

/** The rule of every part. `sections` by part and stretch, `layers` the number of layers of each stretch. */
export function rulesOf(
  layout: Layout,
  division: Division,
  sections: readonly PartSections[],
  layers: readonly number[],
  model: TimeModel,
): Rules {
  const kept = layout.parts.flatMap((part, i) => (keepsLaser(layout, part) ? [i] : []));
  if (kept.length === 0) return { rules: layout.parts.map(() => FREE), heldByNoZone: [], proven: true };
  const compact = compactOf(division);
  const units = kept.flatMap((i) => unitsOf(layout.parts[i], i, sections[i], model));
  const free = layout.parts.flatMap((_, i) => (kept.includes(i) ? [] : [i]));
  const background = backgroundOf(layout, sections, free, model, compact);
  const { laserOf, proven } = choose(units, layers, background, compact);
  const rules = layout.parts.map((_, i) =>
    kept.includes(i) ? ruleOf(units, laserOf, i, sections[i]) : FREE,
  );
  // Where one laser would do, what is missing is unassigned: a fault of its own.
  const heldByNoZone = kept.filter((i) => lasersForRest(sections[i]) === 0);
  return { rules, heldByNoZone, proven };
}
