/** One strip more: the widest is cut in two. */
import { all, atShown, documentCommand, where } from '../make';
import { addStrip as add, MOST_STRIPS } from '../operations';
import { hasStrips, stripCount } from './stripCount';

export const addStrip = documentCommand(
  {
    id: 'add-strip',
    label: 'Cut the widest strip in two',
    group: 'division',
    keys: ['s'],
    when: all(
      hasStrips,
      where('no more strips fit', (context) => stripCount(context) < MOST_STRIPS),
    ),
  },
  atShown((plate) => add(plate)),
);
