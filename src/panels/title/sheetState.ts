/**
 * Whether the plate may be handed over, and what the title block says of it: "NOT FOR USE" while anything blocks hand-over
 * or the revision is superseded, else the state of the revision.
 */
import { t, type Text } from '../../language/index';
import type { Analysis } from '../../build/types';
import { isBlocked, isChecked, NOT_FOR_USE } from '../../export/forUse';
import type { RevisionState } from '../../layout/types';
import type { LeftOut } from '../readout/leftOutBuild';

export interface SheetState {
  readonly text: string;
  readonly blocked: boolean;
  /** Why hand-over is blocked, in a few words; empty where it is not. */
  readonly why: string;
}

const WORDS: Readonly<Record<Exclude<RevisionState, 'superseded'>, Text>> = {
  draft: 'draft, not released',
  reviewed: 'reviewed, not released',
  released: 'released',
};
const blockedBy = (why: string): SheetState => ({ text: t(NOT_FOR_USE), blocked: true, why });
const open = (text: string): SheetState => ({ text, blocked: false, why: '' });

/** In a few words, of a plate that is blocked: the first of unassigned area, faults, its revision. */
function whyBlocked({ problems, layout }: Analysis, left: LeftOut | null): string {
  const faults = problems.filter(({ blocks }) => blocks).length;
  if (left !== null) return t('unassigned area blocks hand-over');
  if (faults > 0) return t('{count} [fault blocks|faults block] hand-over', { count: faults });
  return t('revision {name} is superseded', { name: layout.revision?.name ?? '?' });
}

/**
 * "NOT FOR USE" while anything blocks hand-over; otherwise the state of its revision, a draft where it has none. What is
 * known of an earlier plate only can block this one, never clear it; nor does a list of problems that nobody has looked for yet.
 */
export function sheetState(analysis: Analysis, left: LeftOut | null): SheetState {
  const { layout } = analysis;
  if (left !== null || isBlocked(analysis)) return blockedBy(whyBlocked(analysis, left));
  if (layout.parts.length === 0) return open(t('empty plate'));
  const state = layout.revision?.state ?? 'draft';
  return open(isChecked(analysis) && state !== 'superseded' ? t(WORDS[state]) : t('being checked'));
}

/** Whether it may be released: nothing blocks hand-over, there are parts, and all of it has been checked. */
export function handOverOf(
  analysis: Analysis,
  left: LeftOut | null,
): { readonly cleared: boolean; readonly why: string } {
  const { blocked, why } = sheetState(analysis, left);
  if (blocked) return { cleared: false, why };
  if (analysis.layout.parts.length === 0) return { cleared: false, why: t('the plate is empty') };
  return isChecked(analysis)
    ? { cleared: true, why: '' }
    : { cleared: false, why: t('the plate is still being checked') };
}
