/**
 * Has the checksums of revisions that are not edited any more worked out, from the first one on; the code for it is not
 * loaded before.
 */
import { isFixed } from '../layout/revision';
import type { Followed } from './formers';
import type { Revising } from './revising';
import type { WorkbenchState } from './types';

export function watchRevisions(
  store: Followed['store'],
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
    const onLayout = (listener: () => void): void => void listeners.push(listener);
    void import('./formers').then(
      ({ followFormers }) => followFormers(rule, { ...more, store, onLayout }),
      () => (asked = false),
    );
  };
  store.subscribe(look);
  look(store.getState());
}
