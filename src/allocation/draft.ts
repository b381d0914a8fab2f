/**
 * A cut in the making: which fragment, among which lasers, in what shares; and what happens to a share that comes out
 * too small to be exposed on its own. Seconds, millimetres.
 */
import type { Limits } from '../layout/types';
import type { Mm, Seconds } from '../units/types';
import { placeCut, type CutFragment } from './cutFragment';
import type { CrumbSide, Fate } from './fate';

/** One fragment to be cut: its shares move until the loads come out even. */
export interface Draft {
  readonly fragment: number;
  readonly cut: CutFragment;
  /** In the order of their sides along the cut's normal. */
  readonly lasers: readonly number[];
  /** In the order of `lasers`; 0 where a laser was dropped. */
  shares_s: Seconds[];
  /** A share that is held at its least value; −1: none. */
  held: number;
  /** Where the cuts were placed last. */
  stand: Stand | null;
}
/** Lasers that keep a share, and the cuts between them. */
interface Stand {
  readonly shares_s: readonly Seconds[];
  readonly lasers: readonly number[];
  readonly positions: readonly Mm[];
}

/** True where more than one laser still has a share, so that there is a cut to place. */
export const keepsSeveral = (draft: Draft): boolean => draft.shares_s.filter((share) => share > 0).length > 1;

/** Worked out once per set of shares; the next places are looked for from the last ones. */
function standing(draft: Draft): Stand {
  const { shares_s, stand } = draft;
  if (stand?.shares_s === shares_s) return stand;
  const lasers: number[] = [];
  const positions: Mm[] = [];
  let sum = 0;
  for (let i = 0; i < shares_s.length; i++) {
    if (shares_s[i] <= 0) continue;
    if (lasers.length > 0) positions.push(placeCut(draft.cut, sum, stand?.positions[positions.length]));
    lasers.push(draft.lasers[i]);
    sum += shares_s[i];
  }
  return (draft.stand = { shares_s, lasers, positions });
}

/** Where the draft stands now. */
export function fateOf(draft: Draft): Fate {
  const { lasers, positions } = standing(draft);
  if (lasers.length === 1) return { kind: 'laser', laser: lasers[0] };
  return { kind: 'cut', cut: draft.cut, lasers, positions };
}

/** Adds `sign` times the load that the draft's cuts put on the lasers beside them as seams. */
export function addSeams(draft: Draft, loads_s: Seconds[], sign: 1 | -1): void {
  const { lasers, positions } = standing(draft);
  positions.forEach((c, i) => {
    const load = sign * draft.cut.seamLoad(c);
    loads_s[lasers[i]] += load;
    loads_s[lasers[i + 1]] += load;
  });
}

const MARGIN_MM: Mm = 1e-6;

/** The least share that leaves an end of the fragment wide and large enough. */
function leastShare({ cut }: Draft, side: number, limits: Limits): Seconds {
  const { min, max } = cut.region;
  if (side === 0) {
    const c = Math.max(min + limits.crumbWidth_mm, cut.region.atArea(limits.crumbArea_mm2));
    return cut.loadBelow(c + MARGIN_MM);
  }
  const rest = cut.region.area(max) - limits.crumbArea_mm2;
  const c = Math.min(max - limits.crumbWidth_mm, cut.region.atArea(rest));
  return cut.total_s - cut.loadBelow(c - MARGIN_MM);
}

/** True where a side may be held at its least share: two lasers, not tried before, nearer to it than to nothing. */
function mayHold(draft: Draft, side: number, least: Seconds, limits: Limits): boolean {
  if (draft.held >= 0 || draft.lasers.length !== 2 || draft.shares_s[side] < least / 2) return false;
  const others = draft.cut.total_s - least;
  return others > 0 && leastShare(draft, 1 - side, limits) <= others;
}

function mendCrumb(draft: Draft, side: number, limits: Limits): void {
  const least = leastShare(draft, side, limits);
  const hold = mayHold(draft, side, least, limits);
  draft.held = hold ? side : -1;
  const share = hold ? least : 0;
  const rest = draft.shares_s.reduce((sum, s, i) => (i === side ? sum : sum + s), 0);
  const scale = rest > 0 ? (draft.cut.total_s - share) / rest : 1;
  draft.shares_s = draft.shares_s.map((s, i) => (i === side ? share : s * scale));
}

/** Gives every crumb its least share where that is nearer than nothing, else its share to the others; true where any. */
export function mendCrumbs(drafts: readonly Draft[], sides: readonly CrumbSide[], limits: Limits): boolean {
  let mended = false;
  for (const { fragment, laser } of sides) {
    const draft = drafts.find((d) => d.fragment === fragment);
    const side = draft ? draft.lasers.indexOf(laser) : -1;
    if (!draft || side < 0 || !keepsSeveral(draft) || draft.shares_s[side] === 0) continue;
    mendCrumb(draft, side, limits);
    mended = true;
  }
  return mended;
}
