/** What the wheel does on the plan: zoom, or move the view as on a trackpad; a pinch always zooms. */
import { always, viewOf } from '../make';
import type { Command } from '../types';

export const wheel: Command = {
  id: 'wheel',
  label: 'Wheel: zoom, or move the view',
  group: 'view',
  keys: ['Shift+W'],
  when: always,
  run: (context) => context.bench.setView({ wheel: viewOf(context).wheel === 'zoom' ? 'pan' : 'zoom' }),
};
