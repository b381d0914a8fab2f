/**
 * Has the checksums of revisions that are not edited any more worked out, from the first one on; the code for it is not
 * loaded before.
 */
import type { TemporalState } from 'zundo';
import type { StoreApi } from 'zustand/vanilla';
import { isFixed } from '../layout/revision';
import type { Followed } from './formers';
import type { Revising } from './revising';
import type { Moment, WorkbenchState } from './types';

type Store = Pick<StoreApi<WorkbenchState>, 'getState' | 'setState' | 'subscribe'> & {
  readonly temporal: Pick<StoreApi<TemporalState<Partial<Moment>>>, 'getState' | 'setState'>;
};

/** Replaces every moment of the document, present and history, without an entry. */
function rewrite(store: Store, change: (moment: Moment) => Moment): void {
  const { pastStates, futureStates, pause, resume } = store.temporal.getState();
  const all = (moments: readonly Partial<Moment>[]) => moments.map((moment) => change(moment as Moment));
  const { layout, lastChange } = store.getState();
  pause();
  store.setState(change({ layout, lastChange }));
  resume();
  store.temporal.setState({ pastStates: all(pastStates), futureStates: all(futureStates) });
}

export function watchRevisions(
  store: Store,
  rule: Revising,
  more: Pick<Followed, 'gestureOpen' | 'dismissNotice'>,
): void {
  const listeners: (() => void)[] = [];
  let asked = false;
  const look = ({ layout }: WorkbenchState, before?: WorkbenchState): void => {
    if (layout === before?.layout) return;
    for (const listener of listeners) listener();
    if (asked || !isFixed(layout.revision)) return;
    asked = true;
    const followed: Followed = {
      ...more,
      state: store.getState,
      onLayout: (listener) => void listeners.push(listener),
      rewrite: (change) => rewrite(store, change),
    };
    void import('./formers').then(
      ({ followFormers }) => followFormers(rule, followed),
      () => (asked = false),
    );
  };
  store.subscribe(look);
  look(store.getState());
}
