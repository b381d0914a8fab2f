/** Copies the selected parts to free places and selects the copies. */
import { addBy, hasSelection } from '../make';
import { duplicateParts } from '../operations';
import type { Command } from '../types';

export const duplicate: Command = {
  id: 'duplicate',
  label: 'Duplicate',
  group: 'edit',
  keys: ['Ctrl+D'],
  when: hasSelection,
  run: addBy('Duplicate', (layout, view) => duplicateParts(layout, view.selection)),
};
