/** The open plate under every division at once. */
import { hasParts } from '../make';
import type { Command } from '../types';

export const allDivisions: Command = {
  id: 'all-divisions',
  label: 'All divisions …',
  group: 'division',
  keys: ['Shift+A'],
  when: hasParts,
  run: ({ ports }) => ports.showDialog('divisions'),
};
