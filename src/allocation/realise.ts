/**
 * A plan made real: shared fragments that several lasers divide are cut by straight lines, the loads that
 * come out, seams and gaps included, are spread again until the lasers joined by cuts end at one load, and crumbs are
 * given to the neighbour. Seconds; lasers by machine index.
 */
import type { AssembledPart } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import type { Limits, Machine, PartId } from '../layout/types';
import type { Seconds } from '../units/types';
import { cutNormal } from '../zoning/cutDirection';
import { singleOf } from '../zoning/lasers';
import type { Division } from '../zoning/types';
import { cutFragment } from './cutFragment';
import { assembleByFigures, cutByPolygons, type CutPart } from './cutPart';
import type { Demand } from './demand';
import { addSeams, fateOf, keepsSeveral, mendCrumbs, type Draft } from './draft';
import type { Fate } from './fate';
import { orderAlong } from './order';
import type { Plan, Share } from './plan';
import { assembleUncut } from './remembered';
import { Spreader } from './spread';

/** What cuts are made with in one step of the zoning. */
export interface RealiseContext {
  readonly machine: Machine;
  readonly division: Division;
  readonly model: TimeModel;
  readonly limits: Limits;
}
/** A part whose shared fragments were planned. */
export interface PartToRealise {
  readonly id: PartId;
  readonly section: DividedSection;
  readonly timeFactor: number;
  readonly demand: Demand;
}
/** A plan as it came out, seams and gaps included. */
export interface Realised {
  /** Per part, in the order given. */
  readonly parts: readonly AssembledPart[];
  /** By machine laser, these parts only. */
  readonly loads_s: readonly Seconds[];
  /** Fragments whose planned cut would have left a crumb. */
  readonly crumbled: readonly Crumbled[];
  /** Parts that a cut was drafted in. */
  readonly drafted: readonly number[];
}
/** A fragment that could not be cut as planned. */
export interface Crumbled {
  /** In the order of the parts given. */
  readonly part: number;
  readonly fragment: number;
}

function draftCut(
  context: RealiseContext,
  part: PartToRealise,
  fragment: number,
  shares: readonly Share[],
): Draft {
  const piece = part.section.fragments[fragment];
  const x = (piece.box.minX + piece.box.maxX) / 2;
  const y = (piece.box.minY + piece.box.maxY) / 2;
  const normal = cutNormal(context.division, x, y);
  const lasers = orderAlong(
    context,
    part.section,
    fragment,
    normal,
    shares.map((s) => s.laser),
  );
  const cut = cutFragment(piece, normal, context.model, part.timeFactor);
  const planned = shares.reduce((sum, s) => sum + s.load_s, 0);
  const scale = planned > 0 ? cut.total_s / planned : 0;
  const shareOf = (laser: number): Seconds => shares.find((s) => s.laser === laser)!.load_s * scale;
  return { fragment, cut, lasers, shares_s: lasers.map(shareOf), held: -1, stand: null };
}

/** A part as it came out with its cuts where they stood. */
interface Made extends CutPart {
  /** It needed no polygon. */
  readonly byFigures: boolean;
  readonly sound: () => boolean;
}

/** One cut part on its way from plan to pieces: by figures while shares move, by polygons where figures do not hold. */
class PartInMaking {
  private readonly fates: Fate[];
  private byPolygons = false;
  readonly crumbled = new Set<number>();
  made: Made;

  constructor(
    private readonly context: RealiseContext,
    private readonly part: PartToRealise,
    lasers: readonly number[],
    readonly drafts: readonly Draft[],
  ) {
    this.fates = lasers.map((laser): Fate => ({ kind: 'laser', laser }));
    this.made = this.makeNow();
  }

  make(): void {
    this.made = this.makeNow();
  }

  private makeNow(): Made {
    const { section, timeFactor } = this.part;
    const { model, limits } = this.context;
    for (const draft of this.drafts) this.fates[draft.fragment] = fateOf(draft);
    const fates = [...this.fates];
    const figures = this.byPolygons ? null : assembleByFigures(section, fates, model, timeFactor, limits);
    if (figures) return { ...figures, crumbSides: [], byFigures: true };
    const made = cutByPolygons(section, fates, model, timeFactor, limits);
    return { ...made, byFigures: false, sound: () => true };
  }

  /** Turns to polygons where figures do not hold, deals with crumbs; true where anything changed. */
  settle(): boolean {
    const unsound = !this.made.sound();
    if (unsound) {
      this.byPolygons = true;
      this.make();
    }
    const { crumbSides } = this.made;
    for (const { fragment } of crumbSides) this.crumbled.add(fragment);
    const mended = mendCrumbs(this.drafts, crumbSides, this.context.limits);
    if (mended) this.make();
    return unsound || mended;
  }
}

/** Shares that move by less than this part of the slowest load have settled. */
const SETTLED = 1e-6;
const MOST_ROUNDS = 8;
const MOST_SETTLINGS = 6;

/** Gives the drafts new shares where any differs by more than `settled`; true where it did. */
function take(drafts: readonly Draft[], next: readonly Seconds[][], settled: Seconds): boolean {
  const differs = drafts.some((d, i) =>
    next[i].some((share, k) => Math.abs(share - d.shares_s[k]) > settled),
  );
  if (differs) drafts.forEach((draft, i) => (draft.shares_s = next[i]));
  return differs;
}

/**
 * Shares that even out loads as they came out. Only the cuts' own seams change as cuts move, so the shares are followed
 * by these alone; true where any moved.
 */
function respread(drafts: readonly Draft[], loads_s: readonly Seconds[]): boolean {
  const moving = drafts.filter((d) => d.held < 0 && keepsSeveral(d));
  const settled = SETTLED * Math.max(...loads_s);
  const bare = [...loads_s];
  for (const draft of moving) {
    draft.lasers.forEach((laser, i) => (bare[laser] -= draft.shares_s[i]));
    addSeams(draft, bare, -1);
  }
  const spreader = new Spreader(moving.map(spreadable), loads_s.length);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const rest = [...bare];
    for (const draft of moving) addSeams(draft, rest, 1);
    if (!take(moving, spreader.spread(rest), settled)) return round > 0;
  }
  return true;
}

const spreadable = ({ lasers, cut, shares_s }: Draft) => ({ lasers, total_s: cut.total_s, shares_s });

function addLoad(loads_s: Seconds[], part: AssembledPart): void {
  for (const piece of part.pieces) loads_s[piece.laser] += piece.load_s;
}

/** Adds what parts come to, by machine laser. */
export function addLoads(loads_s: Seconds[], parts: readonly AssembledPart[]): Seconds[] {
  for (const part of parts) addLoad(loads_s, part);
  return loads_s;
}

/** Parts in the making with their cuts where they stand, to come back to. */
interface Stage {
  readonly loads_s: readonly Seconds[];
  readonly made: readonly Made[];
  readonly shares_s: readonly Seconds[][];
}

function stageOf(
  making: readonly PartInMaking[],
  drafts: readonly Draft[],
  settled_s: readonly Seconds[],
): Stage {
  const loads_s = [...settled_s];
  for (const { made } of making) addLoad(loads_s, made.assembled);
  return { loads_s, made: making.map((part) => part.made), shares_s: drafts.map((draft) => draft.shares_s) };
}

function backTo({ made, shares_s }: Stage, making: readonly PartInMaking[], drafts: readonly Draft[]): void {
  making.forEach((part, i) => (part.made = made[i]));
  drafts.forEach((draft, i) => (draft.shares_s = shares_s[i]));
}

/** True where loads, from the slowest down, are smaller at the first place where they differ. */
function flatter(loads_s: readonly Seconds[], others_s: readonly Seconds[]): boolean {
  const [own, others] = [loads_s, others_s].map((loads) => loads.toSorted((a, b) => b - a));
  const at = own.findIndex((load, i) => Math.abs(load - others[i]) > SETTLED * others[0]);
  return at >= 0 && own[at] < others[at];
}

/**
 * Moves the cuts until the lasers they join end at one load. By figures alone the first answer is exact. By polygons a
 * crumb may pass from laser to laser as a cut moves, to and fro without end: the flattest loads on the way count.
 */
function evenOut(
  making: readonly PartInMaking[],
  drafts: readonly Draft[],
  settled_s: readonly Seconds[],
): void {
  let best = stageOf(making, drafts, settled_s);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = drafts.map(keepsSeveral);
    if (!respread(drafts, best.loads_s)) return;
    for (const part of making) part.make();
    const asExpected = drafts.every((draft, i) => keepsSeveral(draft) === before[i]);
    if (asExpected && making.every(({ made }) => made.byFigures)) return;
    const stage = stageOf(making, drafts, settled_s);
    if (!flatter(stage.loads_s, best.loads_s)) return backTo(best, making, drafts);
    best = stage;
  }
}

/** Lasers of one part's fragments as planned, reused from part to part; −1 where a fragment is to be cut. */
const planned: number[] = [];

/** Fills `planned`; true where a fragment is to be cut. */
function readPlan({ section, demand }: PartToRealise, p: number, plan: Plan): boolean {
  section.fragments.forEach((f, i) => (planned[i] = singleOf(f.set)));
  let cut = false;
  demand.shared.forEach(({ fragment }, i) => {
    if (fragment < 0) return;
    planned[fragment] = plan.onlyLaser(p, i);
    if (planned[fragment] < 0) cut = true;
  });
  return cut;
}

function draftsOf(context: RealiseContext, part: PartToRealise, p: number, plan: Plan): Draft[] {
  return part.demand.shared.flatMap(({ fragment }, i) =>
    fragment >= 0 && planned[fragment] < 0 ? [draftCut(context, part, fragment, plan.sharesOf(p, i))] : [],
  );
}

/** Makes a plan real; `fixed_s` is the load of all other parts, by machine laser. */
export function realise(
  context: RealiseContext,
  fixed_s: readonly Seconds[],
  parts: readonly PartToRealise[],
  plan: Plan,
): Realised {
  const assembled: AssembledPart[] = [];
  const making: PartInMaking[] = [];
  const places: number[] = [];
  const settled_s = [...fixed_s];
  parts.forEach((part, p) => {
    if (readPlan(part, p, plan)) {
      places.push(p);
      const drafts = draftsOf(context, part, p, plan);
      making.push(new PartInMaking(context, part, planned.slice(0, part.section.fragments.length), drafts));
      return;
    }
    assembled[p] = assembleUncut(part.section, planned, context.model, part.timeFactor);
    addLoad(settled_s, assembled[p]);
  });
  const drafts = making.flatMap((part) => part.drafts);
  for (let n = 0; n < MOST_SETTLINGS && making.length > 0; n++) {
    evenOut(making, drafts, settled_s);
    let changed = false;
    for (const part of making) if (part.settle()) changed = true;
    if (!changed) break;
  }
  const loads_s = settled_s.map((load, k) => load - fixed_s[k]);
  places.forEach((p, i) => {
    assembled[p] = making[i].made.assembled;
    addLoad(loads_s, assembled[p]);
  });
  const crumbled = making.flatMap((part, i) =>
    [...part.crumbled].map((fragment) => ({ part: places[i], fragment })),
  );
  return { parts: assembled, loads_s, crumbled, drafted: places };
}
