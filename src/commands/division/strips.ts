/** One strip more or less. */
import type { Context } from '../types';
import { atShown, documentCommand, plateIn } from '../make';
import { addStrip, FEWEST_STRIPS, MOST_STRIPS, removeStrip } from '../operations';

const strips = (context: Context): number => {
  const { zoning } = plateIn(context);
  return zoning.strategy === 'strips' ? zoning.lasers.length : 0;
};

export const moreStrips = documentCommand(
  {
    id: 'add-strip',
    label: 'Cut the widest strip in two',
    group: 'division',
    keys: ['s'],
    when: (context) => strips(context) > 0 && strips(context) < MOST_STRIPS,
  },
  atShown((plate) => addStrip(plate)),
);

export const fewerStrips = documentCommand(
  {
    id: 'remove-strip',
    label: 'Remove the narrowest strip',
    group: 'division',
    keys: ['Shift+S'],
    when: (context) => strips(context) > FEWEST_STRIPS,
  },
  atShown((plate) => removeStrip(plate)),
);
