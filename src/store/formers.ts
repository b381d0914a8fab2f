/**
 * Works out the checksums of layouts that are not edited any more, so that the next revision can say what it is derived
 * from: ahead of the edit where there is time, else right after it, in the present and in its history. Loaded with the
 * first such layout.
 */
import { fitsAFrame } from '../build/analysis';
import { checksum } from '../layout/checksum';
import { isFixed } from '../layout/revision';
import type { Layout, Revision } from '../layout/types';
import type { Revising, Unfinished } from './revising';
import type { Moment, WorkbenchState } from './types';

/** A checksum reads the whole layout: it is worked out once the layout has been still for this long. */
const STILL_MS = 100;
/** While a gesture is open nothing is written; it is looked again after this long. */
const AGAIN_MS = 100;

/** What this needs of the workbench. */
export interface Followed {
  state(): WorkbenchState;
  onLayout(listener: () => void): void;
  gestureOpen(): boolean;
  /** Replaces every moment of the document, present and history, by what `change` makes of it; no entry. */
  rewrite(change: (moment: Moment) => Moment): void;
  dismissNotice(id: number): void;
}

/** Every moment of that line with the checksum it is derived from. */
function finisher({ former, line }: Unfinished): (moment: Moment) => Moment {
  const derivedFrom = checksum(former);
  const finished = new Map(
    [...line].map((revision): [Revision, Revision] => [revision, { ...revision, derivedFrom }]),
  );
  return (moment) => {
    const { revision } = moment.layout;
    const next = revision && finished.get(revision);
    return next ? { ...moment, layout: { ...moment.layout, revision: next } } : moment;
  };
}

/** The checksum of a fixed layout: the one that came from beside the page, else worked out here. */
function ahead(rule: Revising, layout: Layout, { height }: WorkbenchState): void {
  if (height.checksum?.layout === layout) rule.known = height.checksum;
  else if (fitsAFrame(layout)) rule.known = { layout, checksum: checksum(layout) };
}

/** Takes away what was said of a revision that undo has taken back. */
function dropStale({ layout, view }: WorkbenchState, bench: Followed): void {
  for (const { id, fault } of view.notices)
    if (fault.code === 'revision-begun' && fault.params['name'] !== layout.revision?.name)
      bench.dismissNotice(id);
}

/** Follows the document from here on. */
export function followFormers(rule: Revising, bench: Followed): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const look = (): void => {
    const state = bench.state();
    dropStale(state, bench);
    if (rule.unfinished.length > 0 && bench.gestureOpen()) return wait(AGAIN_MS);
    for (const line of rule.unfinished.splice(0)) bench.rewrite(finisher(line));
    if (isFixed(state.layout.revision) && rule.known?.layout !== state.layout)
      ahead(rule, state.layout, state);
  };
  const wait = (ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(look, ms);
  };
  bench.onLayout(() => wait(STILL_MS));
  look();
}
