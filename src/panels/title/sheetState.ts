/**
 * Whether the plate may be handed over, and what the title block says of it: "NOT FOR USE" while anything blocks hand-over
 * or the revision is superseded, else the state of the revision.
 */
import type { Analysis } from '../../build/types';
import type { RevisionState } from '../../layout/types';
import type { LeftOut } from '../readout/leftOut';

export interface SheetState {
  readonly text: string;
  readonly blocked: boolean;
  /** Why hand-over is blocked, in a few words; empty where it is not. */
  readonly why: string;
}

const WORDS: Readonly<Record<Exclude<RevisionState, 'superseded'>, string>> = {
  draft: 'draft, not released',
  reviewed: 'reviewed, not released',
  released: 'released',
};
const blockedBy = (why: string): SheetState => ({ text: 'NOT FOR USE', blocked: true, why });
const open = (text: string): SheetState => ({ text, blocked: false, why: '' });

/** Looked through as it is now: what is known of an earlier plate, or of none, clears nothing. */
const checkedNow = ({ whole, checks }: Analysis): boolean => whole === 'present' && checks > 0;

/**
 * "NOT FOR USE" while anything blocks hand-over; otherwise the state of its revision, a draft where it has none. What is
 * known of an earlier plate only can block this one, never clear it; nor does a list of problems that nobody has looked for yet.
 */
export function sheetState(analysis: Analysis, left: LeftOut | null): SheetState {
  const { problems, layout } = analysis;
  const faults = problems.filter((problem) => problem.blocks).length;
  if (left !== null) return blockedBy('unassigned area blocks hand-over');
  if (faults > 0) return blockedBy(`${faults} ${faults === 1 ? 'fault blocks' : 'faults block'} hand-over`);
  const state = layout.revision?.state ?? 'draft';
  if (state === 'superseded') return blockedBy(`revision ${layout.revision?.name} is superseded`);
  if (layout.parts.length === 0) return open('empty plate');
  return open(checkedNow(analysis) ? WORDS[state] : 'being checked');
}

/** Whether it may be released: nothing blocks hand-over, there are parts, and all of it has been checked. */
export function handOverOf(
  analysis: Analysis,
  left: LeftOut | null,
): { readonly cleared: boolean; readonly why: string } {
  const { blocked, why } = sheetState(analysis, left);
  if (blocked) return { cleared: false, why };
  if (analysis.layout.parts.length === 0) return { cleared: false, why: 'the plate is empty' };
  return checkedNow(analysis)
    ? { cleared: true, why: '' }
    : { cleared: false, why: 'the plate is still being checked' };
}
