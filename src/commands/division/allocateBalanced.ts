/** Shared load is split so that the loads are as even as they can be. */
import { always, documentCommand } from '../make';
import { setAllocation } from '../operations';

export const allocateBalanced = documentCommand(
  { id: 'allocate-balanced', label: 'Balanced loads', group: 'division', keys: ['l'], when: always },
  (layout) => setAllocation(layout, 'balanced'),
);
