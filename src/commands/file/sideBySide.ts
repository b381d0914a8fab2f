/** Two to four layouts beside each other, at one height and zoom, with their figures in rows. */
import { always } from '../make';
import type { Command } from '../types';

export const sideBySide: Command = {
  id: 'side-by-side',
  label: 'Side by side …',
  group: 'file',
  keys: ['Shift+C'],
  when: always,
  run: ({ ports }) => ports.showDialog('compare'),
};
