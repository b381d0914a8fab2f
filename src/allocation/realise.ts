/**
 * A plan made real (DESIGN 5.5): shared fragments that several lasers divide are cut by straight lines, the loads that
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
import { cutPart, type CutPart } from './cutPart';
import type { Demand } from './demand';
import { fateOf, keepsSeveral, mendCrumbs, type Draft } from './draft';
import type { Fate } from './fate';
import { orderAlong } from './order';
import type { Share } from './plan';
import { assembleUncut } from './remembered';
import { spread } from './spread';

export interface RealiseContext {
  readonly machine: Machine;
  readonly division: Division;
  readonly model: TimeModel;
  readonly limits: Limits;
}
export interface PartToRealise {
  readonly id: PartId;
  readonly section: DividedSection;
  readonly timeFactor: number;
  readonly demand: Demand;
}
export interface Realised {
  /** Per part, in the order given. */
  readonly parts: readonly AssembledPart[];
  /** By machine laser, these parts only. */
  readonly loads_s: readonly Seconds[];
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
  return { fragment, cut, lasers, shares_s: lasers.map(shareOf), held: -1 };
}

/** One part on its way from plan to pieces. */
class PartInMaking {
  readonly drafts: Draft[] = [];
  /** Laser of every fragment that stays whole; of a cut one until then. */
  private readonly lasers: number[];
  private result: CutPart;

  constructor(
    private readonly context: RealiseContext,
    private readonly part: PartToRealise,
    shares: readonly (readonly Share[])[],
  ) {
    this.lasers = part.section.fragments.map((f) => singleOf(f.set));
    part.demand.shared.forEach(({ fragment }, i) => {
      if (fragment < 0) return;
      this.lasers[fragment] = shares[i][0].laser;
      if (shares[i].length > 1) this.drafts.push(draftCut(context, part, fragment, shares[i]));
    });
    this.result = this.make();
  }

  get assembled(): AssembledPart {
    return this.result.assembled;
  }

  remake(): void {
    this.result = this.make();
  }

  /** Deals with the crumbs of the last making; true where there were any. */
  mend(): boolean {
    return mendCrumbs(this.drafts, this.result.crumbSides, this.context.limits);
  }

  private make(): CutPart {
    const { section, timeFactor } = this.part;
    const { model, limits } = this.context;
    const fates = this.lasers.map((laser): Fate => ({ kind: 'laser', laser }));
    for (const draft of this.drafts) fates[draft.fragment] = fateOf(draft);
    if (fates.some((fate) => fate.kind === 'cut')) return cutPart(section, fates, model, timeFactor, limits);
    const lasers = fates.map((fate) => (fate.kind === 'laser' ? fate.laser : -1));
    return { assembled: assembleUncut(section, lasers, model, timeFactor), crumbSides: [] };
  }
}

/** Shares that even out the loads just realised; true where any moved. */
function respread(drafts: readonly Draft[], loads_s: readonly Seconds[]): boolean {
  const moving = drafts.filter((d) => d.held < 0 && keepsSeveral(d));
  const rest = [...loads_s];
  for (const d of moving) d.lasers.forEach((laser, i) => (rest[laser] -= d.shares_s[i]));
  const next = spread(
    moving.map((d) => ({ lasers: d.lasers, total_s: d.cut.total_s, shares_s: d.shares_s })),
    rest,
  );
  let moved = false;
  moving.forEach((d, i) => {
    const most = Math.max(...next[i].map((share, k) => Math.abs(share - d.shares_s[k])));
    if (most > SETTLED * d.cut.total_s) moved = true;
    d.shares_s = next[i];
  });
  return moved;
}

/** A share that moves by less than this part of its fragment has settled. */
const SETTLED = 1e-6;
const MOST_ROUNDS = 12;

export function addLoads(loads_s: Seconds[], parts: readonly AssembledPart[]): Seconds[] {
  for (const part of parts) for (const piece of part.pieces) loads_s[piece.laser] += piece.load_s;
  return loads_s;
}

/** Makes a plan real; `fixed_s` is the load of all other parts, by machine laser. */
export function realise(
  context: RealiseContext,
  fixed_s: readonly Seconds[],
  parts: readonly PartToRealise[],
  shares: readonly (readonly (readonly Share[])[])[],
): Realised {
  const making = parts.map((part, p) => new PartInMaking(context, part, shares[p]));
  const cut = making.filter((part) => part.drafts.length > 0);
  const uncut = making.filter((part) => part.drafts.length === 0).map((part) => part.assembled);
  const settled_s = addLoads([...fixed_s], uncut);
  const drafts = cut.flatMap((part) => part.drafts);
  for (let round = 0; round < MOST_ROUNDS && cut.length > 0; round++) {
    let mended = false;
    for (const part of cut) if (part.mend()) mended = true;
    if (
      !mended &&
      !respread(
        drafts,
        addLoads(
          [...settled_s],
          cut.map((part) => part.assembled),
        ),
      )
    )
      break;
    for (const part of cut) part.remake();
  }
  const assembled = making.map((part) => part.assembled);
  return {
    parts: assembled,
    loads_s: addLoads(
      context.machine.lasers.map(() => 0),
      assembled,
    ),
  };
}
