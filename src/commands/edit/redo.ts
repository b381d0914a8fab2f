/** One step forward again. */
import type { Command } from '../types';

export const redo: Command = {
  id: 'redo',
  label: 'Redo',
  group: 'edit',
  keys: ['Ctrl+Y', 'Ctrl+Shift+Z'],
  whileHeld: true,
  when: ({ bench }) => bench.history().redo !== null,
  run: ({ bench }) => bench.redo(),
};
