/** Shows the operator's sheet as it prints: one page that goes with the plate to the machine. */
import { always } from '../make';
import type { Command } from '../types';

export const sheet: Command = {
  id: 'sheet',
  label: 'Sheet …',
  group: 'file',
  keys: ['Ctrl+P'],
  when: always,
  run: ({ ports }) => ports.showDialog('sheet'),
};
