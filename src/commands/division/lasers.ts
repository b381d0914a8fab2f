/** Switches a laser on or off by its number on the machine: what the plate would be like without it. */
import { MOST_LASERS } from '../../layout/limits';
import { documentCommand, hasLaser } from '../make';
import { switchLaser } from '../operations';
import type { Command } from '../types';

const switchCommand = (number: number): Command =>
  documentCommand(
    {
      id: `switch-laser-${number}`,
      label: 'Laser {number} on or off',
      labelValues: { number },
      group: 'division',
      keys: [],
      when: hasLaser(number),
    },
    (layout) => {
      const laser = layout.machine.lasers[number - 1];
      return laser ? switchLaser(layout, laser.id, !laser.on) : layout;
    },
  );

export const laserCommands: readonly Command[] = Array.from({ length: MOST_LASERS }, (_, i) =>
  switchCommand(i + 1),
);
