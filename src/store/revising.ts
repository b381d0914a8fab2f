/**
 * The rule of revisions, at the one place that every change of the document passes: a draft is edited in place; what was
 * reviewed, released or superseded stays as it is, and its first edit begins the next revision, derived from its checksum.
 */
import { isFixed, successor } from '../layout/revision';
import { sameValue } from '../layout/same';
import type { Fault } from '../layout/result';
import type { Layout, Revision } from '../layout/types';

/** A draft whose "derived from" is still to come. */
export interface Unfinished {
  readonly former: Layout;
  /** Its revision as it was begun, and what has become of it since. */
  readonly line: Set<Revision>;
}
export interface Revising {
  /** The checksum of a layout that is not edited any more, once it has been worked out. */
  known: { readonly layout: Layout; readonly checksum: string } | null;
  readonly unfinished: Unfinished[];
  /**
   * `after` as the document gets it, where it is an edit of `before`: no edit changes a plate under a fixed revision, nor
   * brings one back onto the draft that followed it. A change of the revision alone passes.
   */
  edited(before: Layout, after: Layout): Layout;
}

const two = (value: number): string => String(value).padStart(2, '0');
/** The day by the clock of this computer, "2026-11-27". */
export const localDay = (now: Date): string =>
  [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join('-');

const begun = ({ known, unfinished }: Revising, former: Layout, fixed: Revision, day: string): Revision => {
  const derivedFrom = known?.layout === former ? known.checksum : null;
  const revision = successor(fixed, derivedFrom, day);
  if (derivedFrom === null) unfinished.push({ former, line: new Set([revision]) });
  return revision;
};

/** True where two layouts differ in their revision at most. */
const samePlate = (one: Layout, other: Layout): boolean =>
  sameValue(one, { ...other, revision: one.revision });

/** @param today the day that new revisions get */
export function createRevising(today: () => string): Revising {
  const rule: Revising = {
    known: null,
    unfinished: [],
    edited: (before, after) => {
      const { revision } = before;
      if (isFixed(after.revision) && !samePlate(before, after))
        return {
          ...after,
          revision: revision && isFixed(revision) ? begun(rule, before, revision, today()) : revision,
        };
      for (const { line } of rule.unfinished)
        if (revision && after.revision && line.has(revision)) line.add(after.revision);
      return after;
    },
  };
  return rule;
}

/**
 * True where an edit led back to where it began: the same layout but for the revision that it has begun meanwhile.
 * Then that revision has no reason to be.
 */
export const broughtBack = (start: Layout, now: Layout): boolean =>
  isFixed(start.revision) ? samePlate(start, now) : sameValue(start, now);

/** That an edit of `before` has begun the revision of `after`. */
export const begunFault = (before: Layout, after: Layout): Fault => ({
  code: 'revision-begun',
  params: {
    former: before.revision?.name ?? '',
    state: { state: before.revision?.state ?? 'draft' },
    name: after.revision?.name ?? '',
  },
});
