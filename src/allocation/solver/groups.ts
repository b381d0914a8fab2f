/**
 * Takes a layer apart before it is solved: what is settled, what may be divided at no cost, what is a decision, and
 * which lasers hang together. Loads in seconds, lasers as indices; within a group lasers are numbered anew from 0.
 * - A fragment only one laser may take is settled.
 * - A part that ends on several lasers anyway (fixed fragments on two or more, or no laser that may take all of it)
 *   costs nothing more however it is divided: its fragments are free.
 * - Every other part is a decision: whole on one of the lasers that may take all of it, or cut.
 * - Lasers are in one group where a chain of shared fragments joins them; groups do not meet.
 */
import type { Seconds } from '../../units/types';
import type { BalanceProblem, SharedLoad, SharedPart } from '../types';
import { lowestOf, requireMask, sizeOf } from './sets';

/** One shared fragment; mask in the group's own numbering. */
export interface Fragment {
  readonly part: number;
  readonly fragment: number;
  readonly mask: number;
  readonly load_s: Seconds;
}
/** What may be placed as a whole: load by set of lasers, and the lasers that may take all of it. */
export interface Item {
  readonly allowed: number;
  readonly total_s: Seconds;
  readonly masks: readonly number[];
  readonly loads_s: readonly Seconds[];
}
/** A part that is cut or not, as the solver decides. */
export interface Decision extends Item {
  readonly fragments: readonly Fragment[];
}
/** Lasers that share load, directly or through others; masks count within the group. */
export interface Group {
  /** Index in the layer per laser of the group. */
  readonly lasers: readonly number[];
  /** Settled load per laser of the group. */
  readonly fixed_s: readonly Seconds[];
  readonly free: readonly Fragment[];
  /** Largest load first, then by part id. */
  readonly decisions: readonly Decision[];
}
/** A layer fallen into groups that share nothing with each other. */
export interface Parted {
  /** Per laser of the layer: fixed load and the fragments only it may take. */
  readonly settled_s: Float64Array;
  /** Fragments only one laser may take; mask in the layer's numbering. */
  readonly settled: readonly Fragment[];
  readonly groups: readonly Group[];
}

/** Load by set of lasers, every set once; what has no load left out. */
export function byMaskOf(loads: readonly SharedLoad[]): Map<number, number> {
  const out = new Map<number, number>();
  for (const { mask, load_s } of loads) if (load_s > 0) out.set(mask, (out.get(mask) ?? 0) + load_s);
  return out;
}

type Renumbered = Omit<Fragment, 'mask'> & { mask: number };

interface Draft {
  readonly allowed: number;
  /** In the layer's numbering until the groups are known, then in the group's. */
  readonly fragments: readonly Renumbered[];
}

function requireLoad(load_s: number, where: string): void {
  if (!(load_s >= 0 && load_s < Infinity))
    throw new RangeError(`load ${load_s} s of ${where}, expected 0 or more, finite`);
}

/** Splits one part into settled fragments and the rest; fragments without load take no part. */
function draftOf(part: SharedPart, index: number, laserCount: number, settled: Fragment[]): Draft {
  let used = part.fixedLasers;
  let allowed = -1;
  const fragments: Renumbered[] = [];
  part.fragments.forEach(({ mask, load_s }, f) => {
    requireMask(mask, laserCount);
    requireLoad(load_s, `part ${part.id}`);
    if (load_s === 0) return;
    const fragment = { part: index, fragment: f, mask, load_s };
    if ((mask & (mask - 1)) === 0) {
      settled.push(fragment);
      used |= mask;
    } else {
      fragments.push(fragment);
      allowed &= mask;
    }
  });
  if (used !== 0) allowed = sizeOf(used) === 1 ? allowed & used : 0;
  return { allowed, fragments };
}

/** Laser → the lowest laser it hangs together with. */
function rootsOf(laserCount: number, drafts: readonly Draft[]): Int32Array {
  const root = Int32Array.from({ length: laserCount }, (_, k) => k);
  const seen = new Set<number>();
  for (const { fragments } of drafts)
    for (const { mask } of fragments) {
      if (seen.has(mask)) continue;
      seen.add(mask);
      let low = laserCount;
      for (let rest = mask; rest !== 0; rest &= rest - 1) low = Math.min(low, root[lowestOf(rest)]!);
      for (let rest = mask; rest !== 0; rest &= rest - 1) {
        const old = root[lowestOf(rest)]!;
        if (old !== low) root.forEach((r, k) => r === old && (root[k] = low));
      }
    }
  return root;
}

interface Build {
  readonly lasers: number[];
  readonly fixed_s: number[];
  readonly free: Fragment[];
  readonly decisions: Decision[];
}

function decisionOf(allowed: number, fragments: readonly Fragment[]): Decision {
  const byMask = new Map<number, number>();
  let total_s = 0;
  for (const { mask, load_s } of fragments) {
    byMask.set(mask, (byMask.get(mask) ?? 0) + load_s);
    total_s += load_s;
  }
  const masks = [...byMask.keys()];
  return { allowed, total_s, masks, loads_s: [...byMask.values()], fragments };
}

/** Parts come in the order of their ids and a sort keeps the order of equals. */
const largestFirst = (a: Decision, b: Decision): number => b.total_s - a.total_s;

/** Indices of the parts in the order of their ids, in which everything is done. */
export function orderOf(parts: readonly { readonly id: string }[]): number[] {
  const id = (p: number): string => parts[p]!.id;
  const order = parts.map((_, p) => p);
  if (order.every((p) => p === 0 || id(p - 1) <= id(p))) return order;
  return order.sort((a, b) => (id(a) < id(b) ? -1 : id(a) > id(b) ? 1 : a - b));
}

/** Takes the layer apart, parts in the order given. Throws where a set names no laser or a load is negative or not finite. */
export function partOut(problem: BalanceProblem, order: readonly number[]): Parted {
  const m = problem.laserCount;
  const settled: Fragment[] = [];
  const drafts = order.map((p) => draftOf(problem.parts[p]!, p, m, settled));
  const settled_s = Float64Array.from({ length: m }, (_, k) => {
    requireLoad(problem.fixed_s[k]!, `laser ${k}`);
    return problem.fixed_s[k]!;
  });
  for (const { mask, load_s } of settled) settled_s[lowestOf(mask)]! += load_s;
  return { settled_s, settled, groups: groupsOf(m, drafts, settled_s) };
}

function groupsOf(m: number, drafts: readonly Draft[], settled_s: Float64Array): Group[] {
  const root = rootsOf(m, drafts);
  const place = new Int32Array(m);
  const builds = new Map<number, Build>();
  for (let k = 0; k < m; k++) {
    const build = builds.get(root[k]!) ?? { lasers: [], fixed_s: [], free: [], decisions: [] };
    builds.set(root[k]!, build);
    place[k] = build.lasers.push(k) - 1;
    build.fixed_s.push(settled_s[k]!);
  }
  const local = new Map<number, number>();
  const localOf = (mask: number): number => {
    let out = local.get(mask);
    if (out !== undefined) return out;
    out = 0;
    for (let rest = mask; rest !== 0; rest &= rest - 1) out |= 1 << place[lowestOf(rest)]!;
    local.set(mask, out);
    return out;
  };
  for (const { allowed, fragments } of drafts) {
    const decided = allowed !== 0 && fragments.length > 0;
    for (const fragment of fragments) {
      const build = builds.get(root[lowestOf(fragment.mask)]!)!;
      fragment.mask = localOf(fragment.mask);
      if (!decided) build.free.push(fragment);
    }
    if (!decided) continue;
    builds.get(root[lowestOf(allowed)]!)!.decisions.push(decisionOf(localOf(allowed), fragments));
  }
  for (const { decisions } of builds.values()) decisions.sort(largestFirst);
  return [...builds.values()].filter(({ lasers }) => lasers.length > 1);
}
