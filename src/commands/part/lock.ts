/** The selected parts keep their place and turn until they are unlocked; where one of them is free, all are locked. */
import { hasSelection, viewOf } from '../make';
import type { Command } from '../types';

export const lock: Command = {
  id: 'lock',
  label: 'Lock or unlock',
  group: 'part',
  keys: ['Shift+P'],
  when: hasSelection,
  run: (context) => {
    const { selection, locked } = viewOf(context);
    const others = locked.filter((id) => !selection.includes(id));
    const allLocked = selection.every((id) => locked.includes(id));
    context.bench.setView({ locked: allLocked ? others : [...others, ...selection] });
  },
};
