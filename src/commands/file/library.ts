/** Shows what this browser keeps: layouts, machines, processes, shapes. */
import { always } from '../make';
import type { Command } from '../types';

export const library: Command = {
  id: 'library',
  label: 'Library …',
  group: 'file',
  keys: ['Shift+L'],
  when: always,
  run: ({ ports }) => ports.showDialog('library'),
};
