/** One key for each way of dividing the platform. */
import type { Text } from '../../language/index';
import type { Strategy } from '../../layout/types';
import { always, atShown, documentCommand } from '../make';
import { setStrategy } from '../operations';
import type { Command } from '../types';

const divide = (id: string, label: Text, key: string, strategy: Strategy, run_deg?: number): Command =>
  documentCommand(
    { id, label, group: 'division', keys: [key], when: always },
    atShown((plate) => setStrategy(plate, strategy, run_deg)),
  );

export const strategyCommands: readonly Command[] = [
  divide('divide-quadrants', 'Quadrants', 'q', 'quadrants'),
  divide('divide-strips-x', 'Strips side by side in x', 'w', 'strips', 90),
  divide('divide-strips-y', 'Strips front to back in y', 'e', 'strips', 0),
  divide('divide-whole-field', 'Whole field', 'r', 'wholeField'),
  divide('divide-drawn', 'Drawn zones', 'a', 'drawn'),
];
