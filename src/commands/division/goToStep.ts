/**
 * Goes to the zones above or below: into the nearest step over height that holds in any layer. Which step is shown follows
 * from the height of the cut; millimetres above the platform.
 */
import type { Text } from '../../language/index';
import { shownStep } from '../../store/shown';
import { heightCommand, layoutOf, viewOf } from '../make';
import { middleOfStep } from '../operations';
import type { Command, Context } from '../types';

const shown = (context: Context): number => shownStep(layoutOf(context), viewOf(context).height_mm);

/** Moves the height into the nearest step on that side that holds in any layer. */
const goTo = (id: string, label: Text, lack: Text, key: string, by: 1 | -1): Command =>
  heightCommand({ id, label, keys: [key], lack }, (context) => {
    const layout = layoutOf(context);
    for (let step = shown(context) + by; step in layout.zoning; step += by) {
      const middle = middleOfStep(layout, step);
      if (middle !== null) return middle;
    }
    return null;
  });

export const goToStepCommands: readonly Command[] = [
  goTo('zones-above', 'Height to the zones above', 'no other zones above', 'Shift+PageUp', 1),
  goTo('zones-below', 'Height to the zones below', 'no other zones below', 'Shift+PageDown', -1),
];
