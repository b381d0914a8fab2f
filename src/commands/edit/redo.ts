/** One step forward again. */
import { where } from '../make';
import type { Command } from '../types';

export const redo: Command = {
  id: 'redo',
  label: 'Redo',
  group: 'edit',
  keys: ['Ctrl+Y', 'Ctrl+Shift+Z'],
  whileHeld: true,
  when: where('nothing to redo', ({ bench }) => bench.history().redo !== null),
  run: ({ bench }) => bench.redo(),
};
