/** Shows the link that holds the open plate, ready to be copied. */
import { always } from '../make';
import type { Command } from '../types';

export const copyLink: Command = {
  id: 'copy-link',
  label: 'Copy link …',
  group: 'file',
  keys: ['Shift+E'],
  when: always,
  run: ({ ports }) => ports.showDialog('link'),
};
