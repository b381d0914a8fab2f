/** Begins a change of the zones at the bottom of the layer shown; millimetres above the platform. */
import { documentCommand, layoutOf, viewOf, where } from '../make';
import { addStep, bottomOfLayer, stepHeight } from '../operations';

export const changeFromHere = documentCommand(
  {
    id: 'change-from-here',
    label: 'Change the zones from this height on',
    group: 'division',
    keys: ['v'],
    when: where('the zones begin at this height already', (context) => {
      const layout = layoutOf(context);
      return stepHeight(layout, bottomOfLayer(layout, viewOf(context).height_mm)) !== null;
    }),
  },
  (layout, { height_mm }) => addStep(layout, bottomOfLayer(layout, height_mm)),
);
