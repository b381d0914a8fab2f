/** Pins the selected parts to a laser by its number on the machine. */
import { MOST_LASERS } from '../../layout/limits';
import { all, documentCommand, hasLaser, hasSelection } from '../make';
import { setPartFields } from '../operations';
import type { Command } from '../types';

/** Lasers that have a digit of their own. */
const NUMBERED_LASERS = 9;

const pinCommand = (number: number): Command =>
  documentCommand(
    {
      id: `pin-laser-${number}`,
      label: 'Pin to laser {number}',
      labelValues: { number },
      group: 'part',
      keys: number <= NUMBERED_LASERS ? [String(number)] : [],
      when: all(hasSelection, hasLaser(number)),
    },
    (layout, view) =>
      setPartFields(layout, view.selection, { laser: layout.machine.lasers[number - 1]?.id ?? null }),
  );

export const pinCommands: readonly Command[] = Array.from({ length: MOST_LASERS }, (_, i) =>
  pinCommand(i + 1),
);
