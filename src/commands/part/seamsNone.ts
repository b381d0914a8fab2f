/** No seam may run through the selected parts. */
import { documentCommand, hasSelection } from '../make';
import { setPartFields } from '../operations';

export const seamsNone = documentCommand(
  { id: 'seams-none', label: 'Seams none', group: 'part', keys: ['n'], when: hasSelection },
  (layout, view) => setPartFields(layout, view.selection, { seams: 'none' }),
);
