/** Selects every part. */
import { hasParts, layoutOf } from '../make';
import type { Command } from '../types';

export const selectAll: Command = {
  id: 'select-all',
  label: 'Select all parts',
  group: 'edit',
  keys: ['Ctrl+A'],
  when: hasParts,
  run: (context) =>
    context.bench.setView({ selection: layoutOf(context).parts.map((part) => part.id), tool: 'select' }),
};
