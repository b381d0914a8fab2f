/**
 * Changes of the zones over height: begun at the height shown, taken away, gone to. Which step is shown follows from the
 * height of the cut; millimetres above the platform.
 */
import { shownStep } from '../../store/shown';
import type { Mm } from '../../units/types';
import { documentCommand, layoutOf, viewOf } from '../make';
import { addStep, bottomOfLayer, middleOfStep, removeStep, stepHeight } from '../operations';
import type { Command, Context } from '../types';

const shown = (context: Context): number => shownStep(layoutOf(context), viewOf(context).height_mm);

export const changeFromHere = documentCommand(
  {
    id: 'change-from-here',
    label: 'Change the zones from this height on',
    group: 'division',
    keys: ['v'],
    when: (context) => {
      const layout = layoutOf(context);
      return stepHeight(layout, bottomOfLayer(layout, viewOf(context).height_mm)) !== null;
    },
  },
  (layout, { height_mm }) => addStep(layout, bottomOfLayer(layout, height_mm)),
);

export const removeChange = documentCommand(
  {
    id: 'remove-change',
    label: 'Remove this change of zones',
    group: 'division',
    keys: ['Shift+V'],
    when: (context) => shown(context) > 0,
  },
  (layout, { height_mm }) => removeStep(layout, shownStep(layout, height_mm)),
);

/** Moves the height into the nearest step on that side that holds in any layer. */
const goTo = (id: string, label: string, key: string, by: 1 | -1): Command => {
  const target = (context: Context): Mm | null => {
    const layout = layoutOf(context);
    for (let step = shown(context) + by; step in layout.zoning; step += by) {
      const middle = middleOfStep(layout, step);
      if (middle !== null) return middle;
    }
    return null;
  };
  return {
    id,
    label,
    group: 'view',
    keys: [key],
    whileHeld: true,
    when: (context) => target(context) !== null,
    run: (context) => {
      const height_mm = target(context);
      if (height_mm !== null) context.bench.setView({ height_mm });
    },
  };
};

export const stepCommands: readonly Command[] = [
  changeFromHere,
  removeChange,
  goTo('zones-above', 'Height to the zones above', 'Shift+PageUp', 1),
  goTo('zones-below', 'Height to the zones below', 'Shift+PageDown', -1),
];
