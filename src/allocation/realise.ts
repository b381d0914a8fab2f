/**
 * A plan made real (DESIGN 5.5): shared fragments that several lasers divide are cut by straight lines, the loads that
 * come out, seams and gaps included, are spread again until the lasers joined by cuts end at one load, and crumbs are
 * given to the neighbour. Seconds; lasers by machine index.
 */
import type { AssembledPart } from '../exposure/pieces';
import type { TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import type { Limits, Machine, PartId } from '../layout/types';
import type { Mm, Seconds } from '../units/types';
import { cutNormal } from '../zoning/cutDirection';
import type { Division } from '../zoning/types';
import { cutFragment, placeCuts, type CutFragment } from './cutFragment';
import type { Demand } from './demand';
import { orderAlong } from './order';
import type { Share } from './plan';
import { assembleUncut } from './remembered';
import { realisePart, type CrumbSide, type Fate, type RealisedPart } from './realisePart';
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

/** A cut in the making. `held` shares do not move any more. */
interface Draft {
  readonly part: number;
  readonly fragment: number;
  readonly cut: CutFragment;
  shares_s: Seconds[];
  readonly held: Map<number, Seconds>;
}

/** Lasers per fragment as planned; one entry where the fragment stays whole. */
function plannedLasers(part: PartToRealise, shares: readonly (readonly Share[])[]): (readonly Share[])[] {
  const byFragment: (readonly Share[])[] = part.section.fragments.map((f) => [
    { laser: 31 - Math.clz32(f.set), load_s: 0 },
  ]);
  part.demand.shared.forEach(({ fragment }, i) => {
    if (fragment >= 0) byFragment[fragment] = shares[i];
  });
  return byFragment;
}

function draftCut(
  context: RealiseContext,
  part: PartToRealise,
  p: number,
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
  const cut = cutFragment(piece, normal, lasers, context.model, part.timeFactor);
  const planned = shares.reduce((sum, s) => sum + s.load_s, 0);
  const scale = planned > 0 ? cut.total_s / planned : 0;
  const shareOf = (laser: number): Seconds => shares.find((s) => s.laser === laser)!.load_s * scale;
  return { part: p, fragment, cut, shares_s: lasers.map(shareOf), held: new Map() };
}

/** Fate of every fragment of one part. */
function fatesOf(planned: readonly (readonly Share[])[], drafts: readonly Draft[]): Fate[] {
  return planned.map((shares, fragment): Fate => {
    const draft = drafts.find((d) => d.fragment === fragment);
    if (!draft) return { kind: 'laser', laser: shares[0].laser };
    const kept = draft.shares_s.filter((share) => share > 0).length;
    if (kept <= 1) return { kind: 'laser', laser: draft.cut.lasers[draft.shares_s.findIndex((s) => s > 0)] };
    return { kind: 'cut', cut: draft.cut, positions: placeCuts(draft.cut, draft.shares_s) };
  });
}

/** The least share that leaves a side wide and large enough at its end of the fragment. */
function leastShare({ cut }: Draft, side: number, limits: Limits): Seconds {
  const { min, max } = cut.region;
  const whole = cut.region.area(max);
  if (side === 0) {
    const c = Math.max(min + limits.crumbWidth_mm, cut.region.atArea(limits.crumbArea_mm2));
    return cut.loadBelow(c + MARGIN_MM);
  }
  const c = Math.min(max - limits.crumbWidth_mm, cut.region.atArea(whole - limits.crumbArea_mm2));
  return cut.total_s - cut.loadBelow(c - MARGIN_MM);
}

const MARGIN_MM: Mm = 1e-6;

/** A side that is a crumb gets its least share where that is nearer than nothing, else its share goes to the others. */
function mendCrumb(draft: Draft, side: number, limits: Limits): void {
  const least = leastShare(draft, side, limits);
  const others = draft.cut.total_s - least;
  const mayHold = !draft.held.has(side) && draft.cut.lasers.length === 2 && draft.shares_s[side] >= least / 2;
  const room = mayHold && others > 0 && leastShare(draft, 1 - side, limits) <= others;
  if (room) draft.held.set(side, least);
  else draft.held.delete(side);
  draft.shares_s[side] = room ? least : 0;
  const rest = draft.shares_s.reduce((sum, s, i) => (i === side ? sum : sum + s), 0);
  const target = draft.cut.total_s - draft.shares_s[side];
  draft.shares_s = draft.shares_s.map((s, i) => (i === side ? s : rest > 0 ? (s * target) / rest : s));
}

function mendCrumbs(drafts: readonly Draft[], sides: readonly CrumbSide[], limits: Limits): boolean {
  for (const { fragment, side } of sides) {
    const draft = drafts.find((d) => d.fragment === fragment);
    if (draft && draft.shares_s[side] > 0) mendCrumb(draft, side, limits);
  }
  return sides.length > 0;
}

/** Shares that even out the loads just realised; true where any moved. */
function respread(drafts: readonly Draft[], loads_s: readonly Seconds[]): boolean {
  const moving = drafts.filter((d) => d.held.size === 0 && d.shares_s.filter((s) => s > 0).length > 1);
  const rest = [...loads_s];
  for (const d of moving) d.cut.lasers.forEach((laser, i) => (rest[laser] -= d.shares_s[i]));
  const next = spread(
    moving.map((d) => ({ lasers: d.cut.lasers, total_s: d.cut.total_s, shares_s: d.shares_s })),
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
const SETTLED = 1e-9;
const MOST_ROUNDS = 12;

export function loadsOf(machine: Machine, parts: readonly AssembledPart[]): Seconds[] {
  const loads = machine.lasers.map(() => 0);
  for (const part of parts) for (const piece of part.pieces) loads[piece.laser] += piece.load_s;
  return loads;
}

function realiseOne(
  { model, limits }: RealiseContext,
  part: PartToRealise,
  fates: readonly Fate[],
): RealisedPart {
  const lasers = fates.map((fate) => (fate.kind === 'laser' ? fate.laser : -1));
  if (lasers.includes(-1)) return realisePart(part.section, fates, model, part.timeFactor, limits);
  return { assembled: assembleUncut(part.section, lasers, model, part.timeFactor), crumbSides: [] };
}

/** Makes a plan real; `fixed_s` is the load of all other parts, by machine laser. */
export function realise(
  context: RealiseContext,
  fixed_s: readonly Seconds[],
  parts: readonly PartToRealise[],
  shares: readonly (readonly (readonly Share[])[])[],
): Realised {
  const { machine, limits } = context;
  const planned = parts.map((part, p) => plannedLasers(part, shares[p]));
  const drafts = planned.map((fragments, p) =>
    fragments.flatMap((s, f) => (s.length > 1 ? [draftCut(context, parts[p], p, f, s)] : [])),
  );
  const all = drafts.flat();
  const results: RealisedPart[] = [];
  const make = (p: number): RealisedPart => realiseOne(context, parts[p], fatesOf(planned[p], drafts[p]));
  parts.forEach((_, p) => (results[p] = make(p)));
  for (let round = 0; round < MOST_ROUNDS && all.length > 0; round++) {
    const mended = drafts.map((d, p) => mendCrumbs(d, results[p].crumbSides, limits)).some(Boolean);
    const loads = loadsOf(
      machine,
      results.map((r) => r.assembled),
    );
    const moved =
      mended ||
      respread(
        all,
        loads.map((load, k) => load + fixed_s[k]),
      );
    if (!moved) break;
    drafts.forEach((d, p) => {
      if (d.length > 0) results[p] = make(p);
    });
  }
  const assembled = results.map((r) => r.assembled);
  return { parts: assembled, loads_s: loadsOf(machine, assembled) };
}
