/**
 * Branch and bound over decisions: each part whole on one of its lasers, or cut, in a fixed order, the roomiest laser
 * first. A branch ends where a watched set is overdrawn, where too many parts of a size are left for the room, or
 * where the caller's own bound says so. What is the same twice is looked at once: equal parts take lasers in ascending
 * order, and of lasers nothing tells apart only the first is tried. Bounded by a count of work (watched sets
 * visited), never by the clock, so that the answer is the same on every machine.
 */
import type { Decision } from './groups';
import { fits, roomiest, take, type Slack } from './slack';

/** What a step costs besides its watched sets. */
export const OVERHEAD = 20;

/** Work that may still be done; shared by all searches of one call. */
export interface Budget {
  left: number;
}
/** A search under way; `slack` and `laserOf` are as the branch looked at has them. */
export interface Tree {
  readonly slack: Slack;
  readonly decisions: readonly Decision[];
  /** Decision → laser, −1 where it is cut or open. */
  readonly laserOf: Int32Array;
  /** Decision → how many of the ones before it are its equals, without a gap. */
  readonly equals: Int32Array;
  /** Laser → lasers of lower index that nothing but their room tells apart from it (bits). */
  readonly twins: Int32Array;
  readonly budget: Budget;
  /** Called where everything is decided: true ends the search. */
  readonly accept: () => boolean;
  /** True where nothing below can be of use. */
  readonly hopeless: (() => boolean) | null;
}
/** Accepted; searched to the end without; the budget ran out first. */
export type Outcome = 'found' | 'none' | 'unknown';

const alike = (a: Decision, b: Decision): boolean =>
  a.allowed === b.allowed &&
  a.masks.length === b.masks.length &&
  a.masks.every((mask, i) => mask === b.masks[i] && a.loads_s[i] === b.loads_s[i]);

/** Per decision, how many before it ask for the same loads of the same lasers, counted without a gap. */
export const equalsOf = (decisions: readonly Decision[]): Int32Array => {
  const equals = new Int32Array(decisions.length);
  for (let i = 1; i < decisions.length; i++)
    if (alike(decisions[i]!, decisions[i - 1]!)) equals[i] = equals[i - 1]! + 1;
  return equals;
};

/** Lasers that every mask holds both or neither of. */
export function twinsOf(lasers: number, masks: Iterable<number>): Int32Array {
  const twins = new Int32Array(lasers);
  const all = [...masks];
  for (let b = 1; b < lasers; b++)
    for (let a = 0; a < b; a++)
      if (all.every((mask) => (((mask >>> a) ^ (mask >>> b)) & 1) === 0)) twins[b]! |= 1 << a;
  return twins;
}

/** True where more parts of at least the size of decision `last` are open than the lasers can hold and the cuts spare. */
function crowded(tree: Tree, first: number, last: number, cuts: number): boolean {
  const { slack, decisions } = tree;
  const size = decisions[last]!.total_s;
  let places = cuts;
  for (let k = 0; k < slack.lasers; k++)
    places += Math.max(0, Math.floor((slack.left_s[k]! + slack.tiny_s) / (size - slack.tiny_s)));
  return size > 2 * slack.tiny_s && last - first + 1 > places;
}

const tried = (tree: Tree, k: number, before: number): boolean => {
  const { left_s, tiny_s } = tree.slack;
  for (let rest = tree.twins[k]! & before; rest !== 0; rest &= rest - 1)
    if (Math.abs(left_s[31 - Math.clz32(rest & -rest)]! - left_s[k]!) <= tiny_s * 1e-3) return true;
  return false;
};

/** Lasers the next decision may take so that equal parts stay in order. */
function open(tree: Tree, i: number): number {
  const { decisions, equals, laserOf } = tree;
  if (equals[i] === 0) return decisions[i]!.allowed;
  const before = laserOf[i - 1]!;
  return before < 0 ? 0 : decisions[i]!.allowed & ~((1 << before) - 1);
}

function runEnd(tree: Tree, i: number): number {
  let end = i;
  while (end + 1 < tree.equals.length && tree.equals[end + 1]! > 0) end++;
  return end;
}

function descend(tree: Tree, i: number, cuts: number): Outcome {
  const { slack, decisions, laserOf, budget } = tree;
  if (tree.hopeless !== null && tree.hopeless()) return 'none';
  if (i === decisions.length) return tree.accept() ? 'found' : 'none';
  if (crowded(tree, i, runEnd(tree, i), cuts)) return 'none';
  let before = 0;
  for (let left = open(tree, i); left !== 0;) {
    const k = roomiest(slack, left);
    left &= ~(1 << k);
    budget.left -= slack.sets.length + OVERHEAD;
    if (budget.left < 0) return 'unknown';
    if (tried(tree, k, before) || !fits(slack, decisions[i]!, k)) continue;
    before |= 1 << k;
    laserOf[i] = k;
    take(slack, decisions[i]!, k, 1);
    const outcome = descend(tree, i + 1, cuts);
    take(slack, decisions[i]!, k, -1);
    if (outcome !== 'none') return outcome;
    laserOf[i] = -1;
  }
  return cuts > 0 ? descend(tree, i + 1, cuts - 1) : 'none';
}

/**
 * Searches for a choice with at most `cuts` parts cut. 'found': accept() ended it, and laserOf holds the choice;
 * 'none': proven that there is no (further) one; 'unknown': the budget ran out.
 */
export function searchTree(tree: Tree, cuts: number): Outcome {
  tree.laserOf.fill(-1);
  for (let i = 0; i < tree.decisions.length; i++) if (crowded(tree, 0, i, cuts)) return 'none';
  return descend(tree, 0, cuts);
}
