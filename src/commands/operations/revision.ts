/**
 * Revisions of a layout: the first one, what a draft records, and its way from draft to reviewed to released to
 * superseded. The date is the day of the last of these steps, "2026-11-27". Names are recorded as typed.
 */
import { isFixed } from '../../layout/revision';
import { firstRevision } from '../../layout/revisionNames';
import { fail, ok, type Result } from '../../layout/result';
import type { Layout, Revision, RevisionState } from '../../layout/types';
import { reviewed } from './review';

/** What may be typed into a draft. */
export type RevisionText = Pick<Revision, 'name' | 'reason' | 'author' | 'reviewer'>;

/** Whether a plate may be handed over, and why not in a few words. */
export interface HandOver {
  readonly cleared: boolean;
  readonly why: string;
}

/** The only state that may follow each one. */
const FOLLOWS: Readonly<Record<RevisionState, RevisionState | null>> = {
  draft: 'reviewed',
  reviewed: 'released',
  released: 'superseded',
  superseded: null,
};
/** The state that may follow; null after the last. */
export const stateAfter = (state: RevisionState): RevisionState | null => FOLLOWS[state];

/** Files a layout that has no revision as the draft of its first one; the layout itself where it has one. */
export const beginRevision = (layout: Layout, today: string): Layout =>
  layout.revision === null ? { ...layout, revision: firstRevision(today) } : layout;

const trimmed = (fields: Partial<RevisionText>): Partial<RevisionText> =>
  Object.fromEntries(Object.entries(fields).map(([key, text]) => [key, text.trim()]));

/**
 * Typed fields of a draft, without blanks at their ends; the layout itself where it has no revision.
 * Faults: revision-fixed, and those of a layout for what no file may hold.
 */
export function setRevision(layout: Layout, fields: Partial<RevisionText>): Result<Layout> {
  const { revision } = layout;
  if (revision === null) return ok(layout);
  if (isFixed(revision))
    return fail('revision-fixed', { name: revision.name, state: { state: revision.state } });
  return reviewed(layout, { ...layout, revision: { ...revision, ...trimmed(fields) } });
}

function missing({ name, author, reviewer }: Revision): Result<never> | null {
  if (author.trim() === '') return fail('revision-no-author', { name });
  if (reviewer.trim() === '') return fail('revision-no-reviewer', { name });
  return null;
}

/**
 * The revision in its next state, of today.
 * Faults: revision-order, revision-no-author and revision-no-reviewer for a review, revision-not-cleared for a release.
 */
export function advanceRevision(
  layout: Layout,
  to: RevisionState,
  today: string,
  { cleared, why }: HandOver,
): Result<Layout> {
  const { revision } = layout;
  if (revision === null) return ok(layout);
  const { name, state } = revision;
  if (FOLLOWS[state] !== to) return fail('revision-order', { name, state: { state }, wanted: { state: to } });
  const lacking = to === 'superseded' ? null : missing(revision);
  if (lacking) return lacking;
  if (to === 'released' && !cleared) return fail('revision-not-cleared', { name, why });
  return ok({ ...layout, revision: { ...revision, state: to, date: today } });
}
