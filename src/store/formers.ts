/**
 * Works out the checksums of layouts that are not edited any more, so that the next revision can say what it is derived
 * from: ahead of the edit where there is time, else right after it, in the present and in its history. Loaded with the
 * first such layout.
 */
import type { TemporalState } from 'zundo';
import type { StoreApi } from 'zustand/vanilla';
import { fitsAFrame } from '../build/analysis';
import { checksum, checksumSteps } from '../layout/checksum';
import { isFixed } from '../layout/revision';
import type { Layout, Revision } from '../layout/types';
import type { Revising, Unfinished } from './revising';
import type { Moment, WorkbenchState } from './types';

/** A checksum reads the whole layout: it is worked out once the layout has been still for this long. */
const STILL_MS = 100;
/** While a gesture is open nothing is written; it is looked again after this long. */
const AGAIN_MS = 100;
/** Longest piece of work on a large layout at one time. */
const SLICE_MS = 8;

/** What this needs of the workbench. */
export interface Followed {
  readonly store: Pick<StoreApi<WorkbenchState>, 'getState' | 'setState' | 'subscribe'> & {
    readonly temporal: Pick<StoreApi<TemporalState<Partial<Moment>>>, 'getState' | 'setState'>;
  };
  onLayout(listener: () => void): void;
  gestureOpen(): boolean;
  dismissNotice(id: number): void;
}

/** Replaces every moment of the document, present and history, without an entry. */
function rewrite({ store }: Followed, change: (moment: Moment) => Moment): void {
  const { pastStates, futureStates, pause, resume } = store.temporal.getState();
  const all = (moments: readonly Partial<Moment>[]) => moments.map((moment) => change(moment as Moment));
  const { layout, lastChange } = store.getState();
  pause();
  store.setState(change({ layout, lastChange }));
  resume();
  store.temporal.setState({ pastStates: all(pastStates), futureStates: all(futureStates) });
}

const waited = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Of a large layout a slice at a time, so that the page goes on meanwhile. */
async function checksumBeside(layout: Layout): Promise<string> {
  if (fitsAFrame(layout)) return checksum(layout);
  const steps = checksumSteps(layout);
  let step = steps.next();
  for (let until = performance.now() + SLICE_MS; !step.done; step = steps.next()) {
    if (performance.now() < until) continue;
    await waited(0);
    until = performance.now() + SLICE_MS;
  }
  return step.value;
}

/** Every moment of that line with the checksum it is derived from. */
function finisher({ line }: Unfinished, derivedFrom: string): (moment: Moment) => Moment {
  const finished = new Map(
    [...line].map((revision): [Revision, Revision] => [revision, { ...revision, derivedFrom }]),
  );
  return (moment) => {
    const { revision } = moment.layout;
    const next = revision && finished.get(revision);
    return next ? { ...moment, layout: { ...moment.layout, revision: next } } : moment;
  };
}

/** Finishes the drafts one after the other; what is edited meanwhile stays in their line. */
async function finishAll(rule: Revising, bench: Followed): Promise<void> {
  for (let first = rule.unfinished[0]; first; first = rule.unfinished[0]) {
    const { former } = first;
    if (rule.known?.layout !== former)
      rule.known = { layout: former, checksum: await checksumBeside(former) };
    const derivedFrom = rule.known.checksum;
    while (bench.gestureOpen()) await waited(AGAIN_MS);
    rewrite(bench, finisher(first, derivedFrom));
    rule.unfinished.shift();
  }
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
  let finishing = false;
  const look = (): void => {
    const state = bench.store.getState();
    dropStale(state, bench);
    if (isFixed(state.layout.revision) && rule.known?.layout !== state.layout)
      ahead(rule, state.layout, state);
    if (finishing || rule.unfinished.length === 0) return;
    finishing = true;
    void finishAll(rule, bench).finally(() => (finishing = false));
  };
  bench.onLayout(() => {
    clearTimeout(timer);
    timer = setTimeout(look, STILL_MS);
  });
  look();
}
