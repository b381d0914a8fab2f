/** Who takes shared load: the exact balance, or every part whole. */
import type { AllocationRule } from '../../layout/types';
import { always, documentCommand } from '../make';
import { setAllocation } from '../operations';

const allocate = (id: string, label: string, key: string, rule: AllocationRule) =>
  documentCommand({ id, label, group: 'division', keys: [key], when: always }, (layout) =>
    setAllocation(layout, rule),
  );

export const allocateBalanced = allocate('allocate-balanced', 'Balanced loads', 'l', 'balanced');
export const allocateWholeParts = allocate('allocate-whole-parts', 'Whole parts', 'j', 'wholeParts');
