/** Copies the selected parts to free places and selects the copies; refused at once where a layout may not hold them. */
import { MOST_PARTS } from '../../layout/limits';
import { addBy, hasSelection, layoutOf, viewOf } from '../make';
import { duplicateParts } from '../operations';
import type { Command } from '../types';

const placeCopies = addBy({ label: 'Duplicate' }, (layout, view) => duplicateParts(layout, view.selection));

export const duplicate: Command = {
  id: 'duplicate',
  label: 'Duplicate',
  group: 'edit',
  keys: ['Ctrl+D'],
  when: hasSelection,
  run: (context) => {
    const found = layoutOf(context).parts.length + viewOf(context).selection.length;
    if (found <= MOST_PARTS) return placeCopies(context);
    return context.bench.notify({ code: 'too-many-parts', params: { found, limit: MOST_PARTS } });
  },
};
