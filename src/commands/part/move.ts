/** Arrow keys move the selected parts: 1 mm, with Shift 10 mm, with Ctrl 0.1 mm. A held key is one history entry. */
import type { Text } from '../../language/index';
import { documentCommand, hasSelection } from '../make';
import { moveParts } from '../operations';
import type { Command } from '../types';

const DIRECTIONS: readonly {
  readonly name: string;
  readonly label: Text;
  readonly key: string;
  readonly dx: number;
  readonly dy: number;
}[] = [
  { name: 'left', label: 'Move {step} mm to the left', key: 'ArrowLeft', dx: -1, dy: 0 },
  { name: 'right', label: 'Move {step} mm to the right', key: 'ArrowRight', dx: 1, dy: 0 },
  { name: 'back', label: 'Move {step} mm to the back', key: 'ArrowUp', dx: 0, dy: 1 },
  { name: 'front', label: 'Move {step} mm to the front', key: 'ArrowDown', dx: 0, dy: -1 },
];
const STEPS = [
  { name: 'by-1', step_mm: 1, modifier: '' },
  { name: 'by-10', step_mm: 10, modifier: 'Shift+' },
  { name: 'by-tenth', step_mm: 0.1, modifier: 'Ctrl+' },
] as const;

const moves = (step: (typeof STEPS)[number]): Command[] =>
  DIRECTIONS.map(({ name, label, key, dx, dy }) =>
    documentCommand(
      {
        id: `move-${name}-${step.name}`,
        label,
        labelValues: { step: step.step_mm },
        group: 'part',
        keys: [`${step.modifier}${key}`],
        repeats: true,
        when: hasSelection,
      },
      (layout, view) => moveParts(layout, view.selection, dx * step.step_mm, dy * step.step_mm),
    ),
  );

export const moveCommands: readonly Command[] = STEPS.flatMap(moves);
