/** Takes the selected parts off the plate. */
import { documentCommand, hasSelection } from '../make';
import { removeParts } from '../operations';

export const deleteParts = documentCommand(
  { id: 'delete-parts', label: 'Delete', group: 'edit', keys: ['Delete', 'Backspace'], when: hasSelection },
  (layout, view) => removeParts(layout, view.selection),
);
