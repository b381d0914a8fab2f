/**
 * The plan of one layer: the parts' demands put to the solver, and its answer read back as shares by machine laser.
 * The solver knows only lasers that are on, as 0 … m−1 in the order of their ids, since ties go by id. Seconds.
 */
import type { PartId } from '../layout/types';
import type { Seconds } from '../units/types';
import { membersOf, only } from '../zoning/lasers';
import type { Division, LaserSet } from '../zoning/types';
import type { Demand } from './demand';
import { solveBalance } from './solver/balance';
import { lowerBound } from './solver/bound';
import type { BalanceSolution, Bound, SharedLoad, SharedPart } from './types';

/** Machine laser index ↔ the solver's index. */
export interface Compact {
  readonly lasers: readonly number[];
  toMask(set: LaserSet): number;
  toSet(mask: number): LaserSet;
}

function makeCompact({ on, laserIds }: Division): Compact {
  const lasers = membersOf(on).sort((a, b) => (laserIds[a] < laserIds[b] ? -1 : 1));
  const same = lasers.every((laser, i) => laser === i);
  const move = (bits: number, from: (i: number) => number, to: (i: number) => number): number =>
    lasers.reduce((out, _, i) => ((bits >>> from(i)) & 1 ? out | (1 << to(i)) : out), 0);
  const index = (i: number): number => i;
  const laser = (i: number): number => lasers[i];
  return {
    lasers,
    toMask: (set) => (same ? set & on : move(set, laser, index)),
    toSet: (mask) => (same ? mask : move(mask, index, laser)),
  };
}

const compacts = new WeakMap<Division, Compact>();

/** The translation for a division's lasers that are on; the same division gives the same object. */
export function compactOf(division: Division): Compact {
  let compact = compacts.get(division);
  if (!compact) compacts.set(division, (compact = makeCompact(division)));
  return compact;
}

/** A part whose shared fragments are to be given out. */
export interface FreePart {
  readonly id: PartId;
  readonly demand: Demand;
}
/** One laser's share of a shared demand; the laser by machine index. */
export interface Share {
  readonly laser: number;
  readonly load_s: Seconds;
}
/** Who gets what of the shared demands, in the order of the parts asked for. */
export interface Plan {
  readonly exposure_s: Seconds;
  readonly cutsProven: boolean;
  /** The one laser that gets all of a shared demand; −1 where several divide it. */
  onlyLaser(part: number, shared: number): number;
  /** The lasers that get a share. */
  sharesOf(part: number, shared: number): Share[];
}

/** A demand in the solver's words, kept with it. */
class Asked implements SharedPart {
  readonly fixedLasers: number;
  readonly fragments: readonly SharedLoad[];
  constructor(
    readonly id: PartId,
    readonly compact: Compact,
    demand: Demand,
  ) {
    this.fixedLasers = compact.toMask(demand.fixedSet);
    this.fragments = demand.shared.map(({ set, load_s }) => ({ mask: compact.toMask(set), load_s }));
  }
}

/** The demand of a part as the solver reads it. */
export function askedOf(compact: Compact, id: PartId, demand: Demand): SharedPart {
  const known = demand.kept instanceof Asked ? demand.kept : null;
  if (known && known.compact === compact && known.id === id) return known;
  const asked = new Asked(id, compact, demand);
  demand.kept = asked;
  return asked;
}

/** A share smaller than this part of its fragment is rounding. */
const NO_SHARE = 1e-9;

/** The solver's answer, read back by machine laser. */
class SolvedPlan implements Plan {
  constructor(
    private readonly compact: Compact,
    private readonly parts: readonly FreePart[],
    private readonly solution: BalanceSolution,
  ) {}
  get exposure_s(): Seconds {
    return this.solution.best_s;
  }
  get cutsProven(): boolean {
    return this.solution.cutsProven;
  }
  onlyLaser(part: number, shared: number): number {
    const { set, load_s } = this.parts[part].demand.shared[shared];
    const given = this.solution.shares_s[part][shared];
    let found = -1;
    for (let i = 0; i < given.length; i++) {
      if (given[i] <= NO_SHARE * load_s) continue;
      if (found >= 0) return -1;
      found = i;
    }
    return found >= 0 ? this.compact.lasers[found] : membersOf(set)[0];
  }
  sharesOf(part: number, shared: number): Share[] {
    const { load_s } = this.parts[part].demand.shared[shared];
    return this.solution.shares_s[part][shared].flatMap((given, i) =>
      given > NO_SHARE * load_s ? [{ laser: this.compact.lasers[i], load_s: given }] : [],
    );
  }
}

/** The plan that minimises the slowest laser's load; `fixed_s` by machine laser holds all load that cannot move. */
export function planLayer(compact: Compact, fixed_s: readonly Seconds[], parts: readonly FreePart[]): Plan {
  const solution = solveBalance({
    laserCount: compact.lasers.length,
    fixed_s: compact.lasers.map((laser) => fixed_s[laser]),
    parts: parts.map(({ id, demand }) => askedOf(compact, id, demand)),
  });
  return new SolvedPlan(compact, parts, solution);
}

/** Loads as a plan has them, by machine laser. */
export function plannedLoads(fixed_s: readonly Seconds[], parts: readonly FreePart[], plan: Plan): Seconds[] {
  const loads = [...fixed_s];
  parts.forEach(({ demand }, p) => {
    demand.shared.forEach(({ load_s }, i) => {
      const only = plan.onlyLaser(p, i);
      if (only >= 0) loads[only] += load_s;
      else for (const share of plan.sharesOf(p, i)) loads[share.laser] += share.load_s;
    });
  });
  return loads;
}

/** Load that must stay in one piece, reachable by the lasers of `set`. */
export interface Indivisible {
  readonly set: LaserSet;
  readonly load_s: Seconds;
}

/**
 * Best possible exposure of a layer: the densest set of lasers, and no lower than the largest part that may not be
 * cut. `setBy` is a set of machine lasers.
 */
export function bestPossible(
  compact: Compact,
  fixed_s: readonly Seconds[],
  shared: readonly SharedLoad[],
  whole: readonly Indivisible[],
): Bound {
  const loads = whole.length === 0 ? shared : [...shared, ...whole.map((w) => loadOf(compact, w))];
  const own = compact.lasers.map((laser) => fixed_s[laser]);
  const bound = lowerBound(compact.lasers.length, own, loads);
  const largest = whole.reduce<Indivisible | null>((m, w) => (m && m.load_s >= w.load_s ? m : w), null);
  if (largest && largest.load_s > bound.best_s * (1 + NO_SHARE)) {
    return { best_s: largest.load_s, setBy: largest.set };
  }
  return { best_s: bound.best_s, setBy: bound.best_s > 0 ? compact.toSet(bound.setBy) : firstOf(compact) };
}

/** With all loads zero the first laser that is on sets the time. */
const firstOf = ({ lasers }: Compact): LaserSet => only(Math.min(...lasers));

const loadOf = (compact: Compact, { set, load_s }: Indivisible): SharedLoad => ({
  mask: compact.toMask(set),
  load_s,
});
