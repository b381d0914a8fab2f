/** Takes the change of zones away that holds at the height shown: the zones below it then hold there too. */
import { shownStep } from '../../store/shown';
import { documentCommand, layoutOf, viewOf, where } from '../make';
import { removeStep } from '../operations';

export const removeChange = documentCommand(
  {
    id: 'remove-change',
    label: 'Remove this change of zones',
    group: 'division',
    keys: ['Shift+V'],
    when: where(
      'the zones do not change below this height',
      (context) => shownStep(layoutOf(context), viewOf(context).height_mm) > 0,
    ),
  },
  (layout, { height_mm }) => removeStep(layout, shownStep(layout, height_mm)),
);
