/** Lifts the pin of the selected parts: the zones say again which lasers expose them. */
import { documentCommand, hasSelection } from '../make';
import { setPartFields } from '../operations';

export const unpin = documentCommand(
  { id: 'unpin', label: 'Pin to no laser', group: 'part', keys: ['0'], when: hasSelection },
  (layout, view) => setPartFields(layout, view.selection, { laser: null }),
);
