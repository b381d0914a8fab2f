/** An empty plate on the machine, with the process and the division, that are open now. */
import { always, layoutOf } from '../make';
import type { Command } from '../types';
import { openLayout } from './openLayout';

export const newPlate: Command = {
  id: 'new-plate',
  label: 'New plate',
  group: 'file',
  keys: [],
  when: always,
  run: (context) => {
    const empty = { ...layoutOf(context), name: 'New plate', note: '', shapes: {}, parts: [] };
    openLayout(context.bench, 'New plate', empty);
  },
};
