/** Whether parts that are dragged come to rest at edges, middles, zone lines and equal gaps. */
import { always, viewOf } from '../make';
import type { Command } from '../types';

export const snapping: Command = {
  id: 'snapping',
  label: 'Snapping on or off',
  group: 'view',
  keys: ['Shift+G'],
  when: always,
  run: (context) => context.bench.setView({ snapping: !viewOf(context).snapping }),
};
