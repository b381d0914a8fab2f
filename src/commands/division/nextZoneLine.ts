/** Chooses the next zone line for the keys or, where the strategy has no lines, the next drawn zone. */
import { zoneLines } from '../../zoning/lines';
import { plateIn, viewOf, where } from '../make';
import { drawnZones } from '../operations';
import type { Command, Context } from '../types';

const lineCount = (context: Context): number => zoneLines(plateIn(context).zoning).length;
const zoneCount = (context: Context): number => drawnZones(plateIn(context)).length;

export const nextZoneLine: Command = {
  id: 'next-zone-line',
  label: 'Choose the next zone line, or drawn zone',
  group: 'division',
  keys: ['x'],
  when: where(
    'this division has no zone line',
    (context) => lineCount(context) > 0 || zoneCount(context) > 0,
  ),
  run: (context) => {
    const { activeLine, activeZone } = viewOf(context);
    const lines = lineCount(context);
    if (lines > 0) context.bench.setView({ activeLine: (activeLine + 1) % lines });
    else context.bench.setView({ activeZone: ((activeZone ?? -1) + 1) % zoneCount(context) });
  },
};
