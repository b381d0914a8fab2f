/** Shows what files can be made of the plate for others: tables, picture, drawing, bodies, figures. */
import { always } from '../make';
import type { Command } from '../types';

export const handOver: Command = {
  id: 'hand-over',
  label: 'Hand over files …',
  group: 'file',
  keys: ['Shift+O'],
  when: always,
  run: ({ ports }) => ports.showDialog('handOver'),
};
