/** Moves the zone line that is chosen for the keys; it goes along its normal (to +x or +y with the full stop). */
import { zoneLines } from '../../zoning/lines';
import { documentCommand, layoutOf, viewOf } from '../make';
import { setZoneLine } from '../operations';
import type { Command, Context } from '../types';

const lineCount = (context: Context): number => zoneLines(layoutOf(context).zoning).length;
const hasLines = (context: Context): boolean => lineCount(context) > 0;

export const nextZoneLine: Command = {
  id: 'next-zone-line',
  label: 'Choose the next zone line',
  group: 'division',
  keys: ['x'],
  when: hasLines,
  run: (context) =>
    context.bench.setView({ activeLine: (viewOf(context).activeLine + 1) % lineCount(context) }),
};

const nudge = (id: string, step_mm: number, key: string): Command =>
  documentCommand(
    {
      id,
      label: `Move the zone line by ${step_mm > 0 ? '+' : '−'}${Math.abs(step_mm)} mm`,
      group: 'division',
      keys: [key],
      repeats: true,
      when: hasLines,
    },
    (layout, view) => {
      const line = zoneLines(layout.zoning)[view.activeLine];
      return line ? setZoneLine(layout, line.key, line.c + step_mm) : layout;
    },
  );

export const zoneLineCommands: readonly Command[] = [
  nextZoneLine,
  nudge('zone-line-down-1', -1, ','),
  nudge('zone-line-up-1', 1, '.'),
  nudge('zone-line-down-tenth', -0.1, 'Ctrl+,'),
  nudge('zone-line-up-tenth', 0.1, 'Ctrl+.'),
];
