/** Escape: gives up what is going on, one thing at a time: the gesture, then what was measured, then the tool, then the
 * selection and the chosen zone. */
import { hasSelection, viewOf, where } from '../make';
import type { Command } from '../types';

export const stepBack: Command = {
  id: 'step-back',
  label: 'Cancel, or deselect',
  group: 'edit',
  keys: ['Escape'],
  when: where(
    'nothing to cancel',
    (context) =>
      context.bench.gestureOpen() ||
      viewOf(context).tool !== 'select' ||
      viewOf(context).measured !== null ||
      hasSelection(context) ||
      viewOf(context).activeZone !== null,
  ),
  run: (context) => {
    const { bench } = context;
    if (bench.gestureOpen()) bench.cancelGesture();
    else if (viewOf(context).measured !== null) bench.setView({ measured: null });
    else if (viewOf(context).tool !== 'select') bench.setView({ tool: 'select' });
    else bench.setView({ selection: [], activeZone: null });
  },
};
