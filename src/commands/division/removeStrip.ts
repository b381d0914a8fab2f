/** One strip less: the narrowest goes to the narrower of its neighbours. */
import { atShown, documentCommand } from '../make';
import { FEWEST_STRIPS, removeStrip as remove } from '../operations';
import { stripCount } from './stripCount';

export const removeStrip = documentCommand(
  {
    id: 'remove-strip',
    label: 'Remove the narrowest strip',
    group: 'division',
    keys: ['Shift+S'],
    when: (context) => stripCount(context) > FEWEST_STRIPS,
  },
  atShown((plate) => remove(plate)),
);
