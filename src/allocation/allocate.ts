/**
 * Who exposes what in one layer: parts that keep their laser first, then the exact minimum of the slowest
 * laser's load over what may be shared, made real by straight cuts; and the best possible beside it. Seconds; lasers
 * by machine index.
 */
import type { AssembledPart } from '../exposure/pieces';
import type { DividedSection } from '../exposure/types';
import type { PartId } from '../layout/types';
import type { Seconds } from '../units/types';
import { membersOf, only, singleOf } from '../zoning/lasers';
import type { LaserSet } from '../zoning/types';
import type { Demand } from './demand';
import {
  askedOf,
  bestPossible,
  compactOf,
  plannedLoads,
  planLayer,
  type Compact,
  type Indivisible,
  type Plan,
} from './plan';
import { addLoads, realise, type Crumbled, type PartToRealise, type RealiseContext } from './realise';
import { assembleUncut, rememberedDemand } from './remembered';
import type { SharedLoad } from './types';

/** How a part is given to lasers. */
export type Rule =
  /** Its shared fragments are divisible. */
  | { readonly kind: 'free' }
  /** Whole to one laser of `holders`. */
  | { readonly kind: 'whole'; readonly laser: number; readonly holders: LaserSet }
  /** Cut along the zones: every cell's fragments to one laser. */
  | { readonly kind: 'alongZones'; readonly laserOfCell: ReadonlyMap<number, number> };

/** A part's section in one layer. */
export interface LayerPart {
  readonly id: PartId;
  readonly section: DividedSection;
  readonly timeFactor: number;
  readonly rule: Rule;
}
/** Who exposes what in one layer, what it takes, and what it could take at best. Seconds; sets of machine lasers. */
export interface Allocation {
  /** In the order of the parts given. */
  readonly parts: readonly AssembledPart[];
  /** By machine laser. */
  readonly loads_s: readonly Seconds[];
  readonly exposure_s: Seconds;
  /** The exact minimum before any cut is made real, given the parts that keep their laser. */
  readonly planned_s: Seconds;
  readonly best_s: Seconds;
  readonly setBy: LaserSet;
  readonly cutsProven: boolean;
  /** Parts that a cut was drafted in while looking, by their place among the parts given. */
  readonly drafted: ReadonlySet<number>;
}

const SAME = 1e-9;

/** The laser of every fragment where nothing is left to decide; null where the part is to be planned. */
function decidedLasers({ rule, section }: LayerPart, demand: Demand): readonly number[] | null {
  if (rule.kind === 'free') return demand.decided;
  if (rule.kind === 'whole') return section.fragments.map(() => rule.laser);
  const lasers = section.fragments.map((f) => rule.laserOfCell.get(f.cell) ?? singleOf(f.set));
  return lasers.every((laser) => laser >= 0) ? lasers : null;
}

interface Sorted {
  readonly demands: readonly Demand[];
  readonly decided: (AssembledPart | null)[];
  readonly free: PartToRealise[];
  readonly freeIndex: number[];
}

function sortParts({ model }: RealiseContext, parts: readonly LayerPart[]): Sorted {
  const demands = parts.map(({ section, timeFactor }) => rememberedDemand(section, model, timeFactor));
  const sorted: Sorted = { demands, decided: [], free: [], freeIndex: [] };
  parts.forEach((part, index) => {
    const { id, section, timeFactor } = part;
    const lasers = decidedLasers(part, demands[index]);
    sorted.decided.push(lasers && assembleUncut(section, lasers, model, timeFactor));
    if (lasers) return;
    sorted.free.push({ id, section, timeFactor, demand: demands[index] });
    sorted.freeIndex.push(index);
  });
  return sorted;
}

/** The bound asks what each part could do, not what was decided for it. */
function boundOf(context: RealiseContext, compact: Compact, parts: readonly LayerPart[], sorted: Sorted) {
  const fixed_s = context.machine.lasers.map(() => 0);
  const shared: SharedLoad[] = [];
  const whole: Indivisible[] = [];
  parts.forEach(({ rule, id }, i) => {
    const decided = sorted.decided[i];
    const demand = sorted.demands[i];
    if (rule.kind === 'whole') {
      whole.push({
        set: rule.holders,
        load_s: decided!.pieces.reduce((sum, piece) => sum + piece.load_s, 0),
      });
    } else if (decided && rule.kind === 'free') {
      for (const piece of decided.pieces) fixed_s[piece.laser] += piece.load_s;
    } else {
      for (const [laser, load_s] of demand.fixed) fixed_s[laser] += load_s;
      for (const load of askedOf(compact, id, demand).fragments) shared.push(load);
    }
  });
  return bestPossible(compact, fixed_s, shared, whole);
}

interface Trial {
  readonly free: Sorted['free'];
  readonly parts: readonly AssembledPart[];
  readonly loads_s: readonly Seconds[];
  readonly exposure_s: Seconds;
  readonly crumbled: readonly Crumbled[];
}

/** One layer's free parts and what is decided beside them. */
interface Task {
  readonly context: RealiseContext;
  readonly compact: Compact;
  readonly decided_s: readonly Seconds[];
  /** Free parts that a cut was drafted in so far. */
  readonly drafted: Set<number>;
}

function tryPlan({ context, decided_s, drafted }: Task, free: Sorted['free'], plan: Plan): Trial {
  const { parts, loads_s: own, crumbled, drafted: here } = realise(context, decided_s, free, plan);
  for (const part of here) drafted.add(part);
  const loads_s = own.map((load, k) => load + decided_s[k]);
  return { free, parts, loads_s, exposure_s: Math.max(0, ...loads_s), crumbled };
}

function fixedLoads({ decided_s }: Task, free: Sorted['free']): Seconds[] {
  const fixed_s = [...decided_s];
  for (const part of free) for (const [laser, load_s] of part.demand.fixed) fixed_s[laser] += load_s;
  return fixed_s;
}

const MOST_PLANS = 3;
/** A plan is made anew where it promises at least this part of the exposure. */
const WORTH_A_PLAN = 5e-4;

/** Plans again with what seams and gaps came to, while that promises a faster layer. */
function replan(task: Task, first: Trial, firstPlan: Plan): Trial {
  const { compact } = task;
  const { free } = first;
  const fixed_s = fixedLoads(task, free);
  const shared = free.flatMap(({ id, demand }) => askedOf(compact, id, demand).fragments);
  let [planFor, plan, last, best] = [fixed_s, firstPlan, first, first];
  for (let n = 1; n < MOST_PLANS && best.exposure_s > firstPlan.exposure_s * (1 + SAME); n++) {
    const planned = plannedLoads(planFor, free, plan);
    const extra = last.loads_s.map((load, k) => load - planned[k] + (planFor[k] - fixed_s[k]));
    planFor = fixed_s.map((load, k) => Math.max(0, load + extra[k]));
    if (bestPossible(compact, planFor, shared, []).best_s >= best.exposure_s * (1 - WORTH_A_PLAN)) break;
    plan = planLayer(compact, planFor, free);
    last = tryPlan(task, free, plan);
    if (last.exposure_s < best.exposure_s * (1 - SAME)) best = last;
  }
  return best;
}

/** The free parts with one fragment given whole to a laser. */
function withWhole(free: Sorted['free'], { part, fragment }: Crumbled, laser: number): Sorted['free'] {
  return free.map((own, p) => {
    if (p !== part) return own;
    const shared = own.demand.shared.map((s) => (s.fragment === fragment ? { ...s, set: only(laser) } : s));
    return { ...own, demand: { ...own.demand, shared, kept: null } };
  });
}

const MOST_CRUMBLED = 4;

/** A fragment given whole to one laser, and what that promises. */
interface Option {
  readonly free: Sorted['free'];
  readonly plan: Plan;
}

/** The crumbled fragment whole to each of its lasers in turn, the most promising first. */
function optionsFor(task: Task, { free, crumbled: [at] }: Trial): Option[] {
  const { set } = free[at.part].section.fragments[at.fragment];
  return membersOf(set & task.context.division.on)
    .map((laser) => {
      const given = withWhole(free, at, laser);
      return { free: given, plan: planLayer(task.compact, fixedLoads(task, given), given) };
    })
    .sort((a, b) => a.plan.exposure_s - b.plan.exposure_s);
}

/** The first option that comes out as fast as wanted, else the fastest; a plan promises no less than it comes out at. */
function fastest(task: Task, options: readonly Option[], enough_s: Seconds): Trial {
  let least: Trial | null = null;
  for (const { free, plan } of options) {
    if (least && plan.exposure_s >= least.exposure_s * (1 - SAME)) break;
    const trial = tryPlan(task, free, plan);
    if (!least || trial.exposure_s < least.exposure_s * (1 - SAME)) least = trial;
    if (least.exposure_s <= enough_s) break;
  }
  return least!;
}

/** Where a planned cut would leave a crumb: that fragment whole to one of its lasers, cuts made elsewhere. */
function avoidCrumbs(task: Task, trial: Trial, goal_s: Seconds): Trial {
  const enough_s = goal_s * (1 + WORTH_A_PLAN);
  let best = trial;
  let open = trial;
  for (let n = 0; n < MOST_CRUMBLED && open.crumbled.length > 0; n++) {
    if (best.exposure_s <= enough_s) break;
    open = fastest(task, optionsFor(task, open), enough_s);
    if (open.exposure_s < best.exposure_s * (1 - SAME)) best = open;
  }
  return best;
}

function solve(task: Task, free: Sorted['free']): Trial & { planned_s: Seconds; cutsProven: boolean } {
  const plan = planLayer(task.compact, fixedLoads(task, free), free);
  const first = replan(task, tryPlan(task, free, plan), plan);
  const best = first.crumbled.length > 0 ? avoidCrumbs(task, first, plan.exposure_s) : first;
  return { ...best, planned_s: plan.exposure_s, cutsProven: plan.cutsProven && best === first };
}

/** Divides one layer among the lasers. */
export function allocate(context: RealiseContext, parts: readonly LayerPart[]): Allocation {
  const compact = compactOf(context.division);
  const sorted = sortParts(context, parts);
  const decided = sorted.decided.filter((part) => part !== null);
  const decided_s = addLoads(
    context.machine.lasers.map(() => 0),
    decided,
  );
  if (compact.lasers.length === 0) {
    return {
      parts: decided,
      loads_s: decided_s,
      exposure_s: 0,
      planned_s: 0,
      best_s: 0,
      setBy: 0,
      cutsProven: true,
      drafted: new Set(),
    };
  }
  const bound = boundOf(context, compact, parts, sorted);
  const drafted = new Set<number>();
  const solved = solve({ context, compact, decided_s, drafted }, sorted.free);
  const all = [...sorted.decided];
  sorted.freeIndex.forEach((index, i) => (all[index] = solved.parts[i]));
  return {
    parts: all as AssembledPart[],
    loads_s: solved.loads_s,
    exposure_s: solved.exposure_s,
    planned_s: solved.planned_s,
    best_s: bound.best_s,
    setBy: bound.setBy,
    cutsProven: solved.cutsProven,
    drafted: new Set([...drafted].map((i) => sorted.freeIndex[i])),
  };
}
