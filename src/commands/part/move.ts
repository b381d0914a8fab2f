/** Arrow keys move the selected parts: 1 mm, with Shift 10 mm, with Ctrl 0.1 mm. A held key is one history entry. */
import { t } from '../../language/index';
import { documentCommand, hasSelection } from '../make';
import { moveParts } from '../operations';
import type { Command } from '../types';

const DIRECTIONS = [
  { name: 'left', key: 'ArrowLeft', dx: -1, dy: 0 },
  { name: 'right', key: 'ArrowRight', dx: 1, dy: 0 },
  { name: 'back', key: 'ArrowUp', dx: 0, dy: 1 },
  { name: 'front', key: 'ArrowDown', dx: 0, dy: -1 },
] as const;
const STEPS = [
  { name: 'by-1', step_mm: 1, modifier: '' },
  { name: 'by-10', step_mm: 10, modifier: 'Shift+' },
  { name: 'by-tenth', step_mm: 0.1, modifier: 'Ctrl+' },
] as const;

const moves = (step: (typeof STEPS)[number]): Command[] =>
  DIRECTIONS.map(({ name, key, dx, dy }) =>
    documentCommand(
      {
        id: `move-${name}-${step.name}`,
        label: t('Move {step} mm to the {name}', { step: step.step_mm, name }),
        group: 'part',
        keys: [`${step.modifier}${key}`],
        repeats: true,
        when: hasSelection,
      },
      (layout, view) => moveParts(layout, view.selection, dx * step.step_mm, dy * step.step_mm),
    ),
  );

export const moveCommands: readonly Command[] = STEPS.flatMap(moves);
