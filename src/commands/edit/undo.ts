/** One step back in the document's history. */
import { where } from '../make';
import type { Command } from '../types';

export const undo: Command = {
  id: 'undo',
  label: 'Undo',
  group: 'edit',
  keys: ['Ctrl+Z'],
  whileHeld: true,
  when: where('nothing to undo', ({ bench }) => bench.history().undo !== null),
  run: ({ bench }) => bench.undo(),
};
