/** Asks for count and pitch of rows of copies. */
import { hasSelection } from '../make';
import type { Command } from '../types';

export const copyInRows: Command = {
  id: 'copy-in-rows',
  label: 'Copies in rows …',
  group: 'edit',
  keys: ['k'],
  when: hasSelection,
  run: ({ ports }) => ports.showDialog('copies'),
};
