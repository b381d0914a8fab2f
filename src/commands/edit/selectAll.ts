/** Selects every part. */
import { always, layoutOf } from '../make';
import type { Command } from '../types';

export const selectAll: Command = {
  id: 'select-all',
  label: 'Select all parts',
  group: 'edit',
  keys: ['Ctrl+A'],
  // on an empty plate too: else the browser would mark the words of the page
  when: always,
  run: (context) =>
    context.bench.setView({ selection: layoutOf(context).parts.map((part) => part.id), tool: 'select' }),
};
