/** What the pointer does on the plan. The tool in hand is taken up anew: a drawing under way is given up. */
import type { Text } from '../../language/index';
import type { Tool } from '../../store/types';
import { always } from '../make';
import type { Command } from '../types';

const tool = (name: Tool, label: Text, key: string): Command => ({
  id: `tool-${name}`,
  label,
  group: 'draw',
  keys: [key],
  when: always,
  run: ({ bench }) => {
    if (bench.store.getState().view.tool === name) bench.setView({ tool: 'select' });
    bench.setView({ tool: name, measured: null });
  },
});

export const toolCommands: readonly Command[] = [
  tool('select', 'Select and move', 'm'),
  tool('pan', 'Shift the view', 'h'),
  tool('rectangle', 'Draw a rectangle', 'b'),
  tool('disc', 'Draw a disc', 'c'),
  tool('ring', 'Draw a ring', 'o'),
  tool('polygon', 'Draw a polygon', 'p'),
  tool('zone', 'Draw a zone', 'd'),
  tool('measure', 'Measure', 'Shift+R'),
];
