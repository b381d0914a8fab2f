/** Moves the zone line that is chosen for the keys along its normal, in mm (to +x or +y with the full stop). */
import { zoneLines } from '../../zoning/lines';
import { atShown, documentCommand, plateIn, where } from '../make';
import { setZoneLine } from '../operations';
import type { Command } from '../types';

const hasLines = where(
  'this division has no zone line',
  (context) => zoneLines(plateIn(context).zoning).length > 0,
);

const nudge = (id: string, step_mm: number, key: string): Command =>
  documentCommand(
    {
      id,
      label: step_mm > 0 ? 'Move the zone line by +{step} mm' : 'Move the zone line by −{step} mm',
      labelValues: { step: Math.abs(step_mm) },
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
  nudge('zone-line-down-1', -1, ','),
  nudge('zone-line-up-1', 1, '.'),
  nudge('zone-line-down-tenth', -0.1, 'Ctrl+,'),
  nudge('zone-line-up-tenth', 0.1, 'Ctrl+.'),
];
