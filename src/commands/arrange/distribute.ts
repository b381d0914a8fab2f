/** Spreads the selected parts evenly between the first and the last. */
import type { Text } from '../../language/index';
import { documentCommand, viewOf, where } from '../make';
import { distributeParts, FEWEST_DISTRIBUTED, type Axis } from '../operations/arrange';
import type { Command } from '../types';

const WAYS: readonly {
  readonly axis: Axis;
  readonly equal: 'gaps' | 'centres';
  readonly label: Text;
  readonly key: string;
}[] = [
  { axis: 'x', equal: 'gaps', label: 'Equal gaps in x', key: 'Shift+D' },
  { axis: 'y', equal: 'gaps', label: 'Equal gaps in y', key: 'Shift+F' },
  { axis: 'x', equal: 'centres', label: 'Centres evenly in x', key: 'Shift+J' },
  { axis: 'y', equal: 'centres', label: 'Centres evenly in y', key: 'Shift+K' },
];

const row = where(
  'fewer than three parts are selected',
  (context) => viewOf(context).selection.length >= FEWEST_DISTRIBUTED,
);

export const distributeCommands: readonly Command[] = WAYS.map(({ axis, equal, label, key }) =>
  documentCommand(
    { id: `equal-${equal}-${axis}`, label, group: 'part', keys: [key], when: row },
    (layout, view) => distributeParts(layout, view.selection, axis, equal),
  ),
);
