/** One strip less: the narrowest goes to the narrower of its neighbours. */
import { all, atShown, documentCommand, where } from '../make';
import { FEWEST_STRIPS, removeStrip as remove } from '../operations';
import { hasStrips, stripCount } from './stripCount';

export const removeStrip = documentCommand(
  {
    id: 'remove-strip',
    label: 'Remove the narrowest strip',
    group: 'division',
    keys: ['Shift+S'],
    when: all(
      hasStrips,
      where('two strips at least', (context) => stripCount(context) > FEWEST_STRIPS),
    ),
  },
  atShown((plate) => remove(plate)),
);
