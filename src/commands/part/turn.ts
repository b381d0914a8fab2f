/**
 * Turns the selected part about its own origin, several about the middle of their common box: counter-clockwise, with
 * Shift clockwise.
 */
import { documentCommand, hasSelection } from '../make';
import { turnTogether } from '../operations';
import type { Command } from '../types';

const STEPS = [
  { by_deg: 15, key: 't' },
  { by_deg: 90, key: 'y' },
  { by_deg: 1, key: 'u' },
] as const;

const turnCommand = (by_deg: number, key: string): Command => {
  const way = by_deg > 0 ? 'counter-clockwise' : 'clockwise';
  return documentCommand(
    {
      id: `turn-${way}-${Math.abs(by_deg)}`,
      label: by_deg > 0 ? 'Turn {by}° counter-clockwise' : 'Turn {by}° clockwise',
      labelValues: { by: Math.abs(by_deg) },
      group: 'part',
      keys: [key],
      repeats: true,
      when: hasSelection,
    },
    (layout, view) => turnTogether(layout, view.selection, by_deg),
  );
};

export const turnCommands: readonly Command[] = STEPS.flatMap(({ by_deg, key }) => [
  turnCommand(by_deg, key),
  turnCommand(-by_deg, `Shift+${key.toUpperCase()}`),
]);
