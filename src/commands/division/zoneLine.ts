/**
 * Moves the zone line that is chosen for the keys, or chooses a drawn zone; a line goes along its normal (to +x or +y with the full stop).
 */
import { zoneLines } from '../../zoning/lines';
import { atShown, documentCommand, plateIn, viewOf } from '../make';
import { drawnZones, setZoneLine } from '../operations';
import type { Command, Context } from '../types';

const lineCount = (context: Context): number => zoneLines(plateIn(context).zoning).length;
const zoneCount = (context: Context): number => drawnZones(plateIn(context)).length;
const hasLines = (context: Context): boolean => lineCount(context) > 0;

export const nextZoneLine: Command = {
  id: 'next-zone-line',
  label: 'Choose the next zone line, or drawn zone',
  group: 'division',
  keys: ['x'],
  when: (context) => hasLines(context) || zoneCount(context) > 0,
  run: (context) => {
    const { activeLine, activeZone } = viewOf(context);
    if (hasLines(context)) context.bench.setView({ activeLine: (activeLine + 1) % lineCount(context) });
    else context.bench.setView({ activeZone: ((activeZone ?? -1) + 1) % zoneCount(context) });
  },
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
    atShown((plate, view) => {
      const line = zoneLines(plate.zoning)[view.activeLine];
      return line ? setZoneLine(plate, line.key, line.c + step_mm) : plate;
    }),
  );

export const zoneLineCommands: readonly Command[] = [
  nextZoneLine,
  nudge('zone-line-down-1', -1, ','),
  nudge('zone-line-up-1', 1, '.'),
  nudge('zone-line-down-tenth', -0.1, 'Ctrl+,'),
  nudge('zone-line-up-tenth', 0.1, 'Ctrl+.'),
];
