/** Shared load goes part by part: each part whole to one laser. */
import { always, documentCommand } from '../make';
import { setAllocation } from '../operations';

export const allocateWholeParts = documentCommand(
  { id: 'allocate-whole-parts', label: 'Whole parts', group: 'division', keys: ['j'], when: always },
  (layout) => setAllocation(layout, 'wholeParts'),
);
