/** A seam may run through the selected parts. */
import { documentCommand, hasSelection } from '../make';
import { setPartFields } from '../operations';

export const seamsFree = documentCommand(
  { id: 'seams-free', label: 'Seams free', group: 'part', keys: ['f'], when: hasSelection },
  (layout, view) => setPartFields(layout, view.selection, { seams: 'free' }),
);
