/** The selected parts are drawn as outlines only, or whole again; every figure counts them either way. */
import { hasSelection, viewOf, where } from '../make';
import type { Command } from '../types';

const hide: Command = {
  id: 'hide',
  label: 'Outline only, or whole',
  group: 'part',
  keys: ['Shift+I'],
  when: hasSelection,
  run: (context) => {
    const { selection, hidden } = viewOf(context);
    const others = hidden.filter((id) => !selection.includes(id));
    const allHidden = selection.every((id) => hidden.includes(id));
    context.bench.setView({ hidden: allHidden ? others : [...others, ...selection] });
  },
};

const showAll: Command = {
  id: 'show-all',
  label: 'Show every part whole',
  group: 'part',
  keys: [],
  when: where('no part is an outline only', (context) => viewOf(context).hidden.length > 0),
  run: ({ bench }) => bench.setView({ hidden: [] }),
};

export const hideCommands: readonly Command[] = [hide, showAll];
